import { useTranslation } from 'react-i18next'
import type { Order } from '../../../record/index.ts'
import { Field } from '../../parts/field.tsx'
import { NumberAsked } from '../../parts/number-asked.tsx'
import { SaidSlider } from '../../parts/said-slider.tsx'
import { SupposedToKeep } from '../../parts/supposed-answer.tsx'
import { useTried } from '../../parts/use-tried.ts'
import { dayAfter, daysBetween } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import { asOrdered, type OrderTried, triedAs, triedIn } from './order-tried.ts'

const SUREST = 99
const LEAST_SURE = 50

/** An order tried surer or less sure, larger or smaller, or due on another day; its other dates move with that. */
export function OrderWhatIf({ order, onClose }: { readonly order: Order; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const format = useFormat()
  const [said, put] = useTried(triedAs(asOrdered(order)))
  const tried = triedIn(said, order)
  const { number, percent, due } = tried
  const set = (to: Partial<OrderTried>) => put(triedAs({ ...tried, ...to }))
  const later = due === '' ? 0 : daysBetween(order.due, due)
  const isSame = triedAs({ ...tried, due: due || order.due }) === triedAs(asOrdered(order))
  return (
    <section className="sheet stack suppose-order">
      <h3>{t('suppose.order.title')}</h3>
      <div className="suppose-asked">
        <SaidSlider
          label={t('suppose.order.sure')}
          said={format.share(percent / 100)}
          from={LEAST_SURE}
          to={SUREST}
          value={percent}
          onChange={percent => set({ percent })}
        />
        <NumberAsked
          label={t('suppose.order.number')}
          value={number}
          least={1}
          isWhole
          onSay={said => said !== null && set({ number: said })}
        />
        <Field label={t('suppose.order.due')} type="date" value={due} onChange={due => set({ due })} />
      </div>
      {!isSame && (
        <SupposedToKeep
          supposed={{
            kind: 'order-changed/1',
            order: {
              ...order,
              number,
              sure: percent / 100,
              earliest: dayAfter(order.earliest, later),
              due: dayAfter(order.due, later),
              latest: dayAfter(order.latest, later),
            },
            why: '',
          }}
          what={order.id}
          onKept={onClose}
        />
      )}
    </section>
  )
}
