import { useQuery } from '@tanstack/react-query'
import { getRouteApi, Link } from '@tanstack/react-router'
import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { look } from '../../data/queries.ts'
import { Asked } from '../../parts/asked.tsx'
import { Choices } from '../../parts/choices.tsx'
import { FindField } from '../../parts/find-field.tsx'
import { Told } from '../../parts/told.tsx'
import { isUnsure } from '../../pictures/chance/unsure.ts'
import { useFormat } from '../../text/use-format.tsx'
import './orders.css'
import { chosenOrders } from './chosen-orders.ts'
import { CouldBePromised } from './could-be-promised.tsx'
import { OrderDetail } from './order-detail.tsx'
import { OrderList } from './order-list.tsx'

const route = getRouteApi('/orders')

/** What is wanted, how sure it is, and how it is to be filled. */
export function OrdersScreen() {
  const { t } = useTranslation()
  const format = useFormat()
  const search = route.useSearch()
  const [find, setFind] = useState(search.find ?? '')
  const navigate = route.useNavigate()
  const orders = useQuery(look.orders())
  const show = search.show ?? 'open'

  return (
    <Asked query={orders} what={t('orders.title')}>
      {rows => {
        const open = chosenOrders(rows, 'open', '')
        const unsure = open.filter(({ chance, order }) => isUnsure(chance, order.sure)).length
        const shown = chosenOrders(rows, show, find)
        const chosen = rows.find(({ order }) => order.id === search.order)
        return (
          <div className={chosen === undefined ? 'orders stack' : 'orders stack has-chosen'}>
            <div className="page-head">
              <div>
                <h1>{t('orders.title')}</h1>
                <p className="soft">
                  {t('orders.says', {
                    count: open.length,
                    shown: format.number(open.length),
                    trees: format.number(open.reduce((sum, { order }) => sum + order.number, 0)),
                    risk: open.every(({ chance }) => chance === null)
                      ? t('orders.riskUnknown')
                      : unsure === 0
                        ? t('orders.riskNone')
                        : t('orders.risk', { count: unsure, shown: format.number(unsure) }),
                  })}
                </p>
              </div>
              <Link to="/orders/new" className="deed">
                {t('orders.new')}
              </Link>
            </div>
            <CouldBePromised />
            <div className="orders-columns">
              <section className="orders-list" aria-label={t('orders.title')}>
                <div className="row">
                  <FindField
                    inAddress={search.find}
                    hint={t('orders.findHint')}
                    onFind={setFind}
                    onRest={find => void navigate({ search: was => ({ ...was, find }), replace: true })}
                  />
                  <Choices
                    label={t('orders.show.label')}
                    value={show}
                    options={(['open', 'risk', 'all'] as const).map(id => ({
                      id,
                      name: t(`orders.show.${id}`),
                    }))}
                    onPick={id => void navigate({ search: was => ({ ...was, show: id }), replace: true })}
                  />
                </div>
                <OrderList rows={shown} chosen={search.order ?? null} />
              </section>
              <Told chosen={search.order ?? null} className="orders-detail">
                {chosen === undefined ? (
                  <p className="soft choose-one">{t('orders.choose')}</p>
                ) : (
                  <OrderDetail key={chosen.order.id} row={chosen} />
                )}
              </Told>
            </div>
          </div>
        )
      }}
    </Asked>
  )
}
