import { useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import { look } from '../../data/queries.ts'
import { useNames } from '../../data/use-names.tsx'
import { Asked } from '../../parts/asked.tsx'
import './orders.css'
import { ManyOrders } from './many-orders.tsx'
import { OneOrder } from './one-order.tsx'

/** Orders go in here: one by hand, or many pasted. */
export function NewOrdersScreen() {
  const { t } = useTranslation()
  const orders = useQuery(look.orders())
  const { nursery } = useNames()
  const isNothingGrown = nursery?.kinds.every(({ form }) => form === 'rootstock')
  return (
    <div className="stack">
      <div className="page-head">
        <div>
          <h1>{t('orders.form.title')}</h1>
          <p className="soft">{t('orders.form.says')}</p>
        </div>
        <Link to="/orders" className="plain">
          {t('orders.back')}
        </Link>
      </div>
      <Asked query={orders} what={t('orders.title')}>
        {rows => {
          if (isNothingGrown)
            return (
              <div className="sheet stack">
                <p>{t('orders.form.nothingGrown')}</p>
                <p>
                  <Link to="/nursery" className="deed">
                    {t('orders.form.sayGrown')}
                  </Link>
                </p>
              </div>
            )
          const ids = rows.map(({ order }) => order.id)
          return (
            <>
              <OneOrder ids={ids} />
              <ManyOrders ids={ids} />
            </>
          )
        }}
      </Asked>
    </div>
  )
}
