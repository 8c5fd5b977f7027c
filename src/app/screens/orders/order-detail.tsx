import { useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { OrderRow } from '../../../api/index.ts'
import { look } from '../../data/queries.ts'
import { say } from '../../data/say.ts'
import { useNames } from '../../data/use-names.tsx'
import { Behind } from '../../parts/behind.tsx'
import { useDone } from '../../parts/done.tsx'
import { useOpened } from '../../parts/use-opened.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'
import { ChangeOrder } from './change-order.tsx'
import { OrderLadders } from './order-ladders.tsx'
import { OrderWhatIf } from './order-what-if.tsx'

/** One order: how sure it is and why, and the count-back that fills it. */
export function OrderDetail({ row }: { readonly row: OrderRow }) {
  const { t } = useTranslation()
  const format = useFormat()
  const tell = useTell()
  const names = useNames()
  const [opened, open] = useOpened()
  const trying = opened === 'try'
  const done = useDone()
  const { order, kindName, chanceAtAcceptance } = row
  const planned = useQuery(look.orderPlanned(order.id))
  const forecast = planned.data ?? undefined

  const cancel = async () => {
    const said = await say([{ kind: 'order-cancelled/1', order: order.id, why: '' }])
    done.tell(t('orders.cancelled_done', { order: order.id }), said)
  }

  return (
    <div className="stack">
      <Link
        from="/orders"
        to="/orders"
        search={({ order: _, open: __, tries: ___, ...was }) => was}
        className="quiet orders-back"
      >
        {t('orders.back')}
      </Link>
      <header className="sheet stack order-head">
        <div className="page-head">
          <div>
            <h2 data-names-page>
              {format.number(order.number)} {kindName}
            </h2>
            <p>
              {order.id} · {order.buyer || t('orders.own')} ·{' '}
              <b>{t('orders.due', { day: format.fullDay(order.due) })}</b>
              {row.cancelled && <span className="tag warn"> {t('orders.cancelled')}</span>}
            </p>
            <p className="soft small">
              {t('orders.dates', { earliest: format.day(order.earliest), latest: format.day(order.latest) })}
              {order.instead.length > 0 &&
                ` ${t('orders.instead', { kinds: format.list(order.instead.map(({ kind }) => names.kind(kind))) })}`}
              {order.note !== '' && ` ${order.note}`}
            </p>
            <p className="row">
              <Behind name="said" says={t('orders.said')} entries={row.entries} />
              {row.sentBy.length > 0 && (
                <Behind
                  name="sent"
                  says={t('orders.sent', { count: row.dispatched, shown: format.number(row.dispatched) })}
                  entries={row.sentBy}
                />
              )}
            </p>
          </div>
        </div>
        {forecast !== undefined && (
          <div className="order-says">
            <p className="strong">
              {t('orders.chanceSays', {
                of: format.number(100 * forecast.chance),
                low: format.number(100 * forecast.chanceLow),
                high: format.number(100 * forecast.chanceHigh),
                asked: format.share(order.sure),
              })}
            </p>
            <p>
              {t('orders.expected', {
                middle: format.number(forecast.expectedByDue),
                range: format.range(Math.round(forecast.lowByDue), Math.round(forecast.highByDue)),
                wanted: format.number(forecast.wanted),
              })}{' '}
              {forecast.already > 0 &&
                t('orders.already', { count: forecast.already, shown: format.number(forecast.already) })}{' '}
              {forecast.late >= 1 && t('orders.late', { number: format.number(forecast.late) })}{' '}
              {forecast.short >= 1 && t('orders.short', { number: format.number(forecast.short) })}
            </p>
            {chanceAtAcceptance !== null && Math.abs(chanceAtAcceptance - forecast.chance) >= 0.01 && (
              <p>{t('orders.chanceBefore', { before: format.chance(chanceAtAcceptance) })}</p>
            )}
            {forecast.why.map(sentence => (
              <p key={tell(sentence)}>{tell(sentence)}</p>
            ))}
          </div>
        )}
        {!row.cancelled && (
          <div className="row">
            <Button className="plain" onPress={() => open('change')}>
              {t('orders.change')}
            </Button>
            {forecast !== undefined && (
              <Button className="plain" aria-expanded={trying} onPress={() => open(trying ? null : 'try')}>
                {t(trying ? 'suppose.close' : 'suppose.open')}
              </Button>
            )}
            <Button className="quiet" onPress={() => void cancel()}>
              {t('orders.cancel')}
            </Button>
          </div>
        )}
      </header>
      {trying && <OrderWhatIf key={order.id} order={order} onClose={() => open(null)} />}
      <OrderLadders planned={planned} />
      <ChangeOrder order={order} isOpen={opened === 'change'} onClose={() => open(null)} />
    </div>
  )
}
