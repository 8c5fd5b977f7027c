import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { OrderRow } from '../../../api/index.ts'
import { VirtualList } from '../../parts/virtual-list.tsx'
import { Chance } from '../../pictures/chance/chance.tsx'
import { Mark } from '../../pictures/marks/mark.tsx'
import { useFormat } from '../../text/use-format.tsx'

export function OrderList({
  rows,
  chosen,
}: {
  readonly rows: readonly OrderRow[]
  readonly chosen: string | null
}) {
  const { t } = useTranslation()
  const format = useFormat()
  if (rows.length === 0) return <p className="soft">{t('orders.empty')}</p>
  return (
    <VirtualList items={rows} label={t('orders.title')} rowHeight={() => 68} keyOf={({ order }) => order.id}>
      {({ order, kindName, mark, chance, cancelled, dispatched }) => (
        <Link
          from="/orders"
          to="/orders"
          search={({ tries: _, ...was }) => ({ ...was, order: order.id })}
          className="order-row"
          aria-current={order.id === chosen ? 'true' : undefined}
        >
          {mark === null ? <span /> : <Mark mark={mark} size={30} />}
          <span className="order-what">
            <span className="strong">{kindName}</span>
            <span className="soft small">
              {order.id} · {order.buyer || t('orders.own')}
              {dispatched > 0 && ` · ${t('orders.delivered', { number: format.number(dispatched) })}`}
            </span>
          </span>
          <span className="order-number">
            <span className="strong">{format.number(order.number)}</span>
            <span className="soft small">{format.day(order.due)}</span>
          </span>
          {cancelled ? (
            <span className="soft small">{t('orders.cancelled')}</span>
          ) : (
            <Chance chance={chance} asked={order.sure} />
          )}
        </Link>
      )}
    </VirtualList>
  )
}
