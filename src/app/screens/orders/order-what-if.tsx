import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { Order } from '../../../record/index.ts'
import { Field } from '../../parts/field.tsx'
import { SaidSlider } from '../../parts/said-slider.tsx'
import { SupposedAnswer } from '../../parts/supposed-answer.tsx'
import { dayAfter, daysBetween } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'

const SUREST = 99
const LEAST_SURE = 50

/** An order tried surer or less sure, larger or smaller, or due on another day; its other dates move with that. */
export function OrderWhatIf({ order, onClose }: { readonly order: Order; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const format = useFormat()
  const [percent, setPercent] = useState(Math.round(100 * order.sure))
  const [surePercent, setSurePercent] = useState(percent)
  const [said, setSaid] = useState(String(order.number))
  const [due, setDue] = useState<string>(order.due)
  const number = Number(said)
  const isNumber = Number.isInteger(number) && number >= 1
  const later = due === '' ? 0 : daysBetween(order.due, due)
  const isSame = surePercent === Math.round(100 * order.sure) && number === order.number && later === 0
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
          onChange={setPercent}
          onLetGo={setSurePercent}
        />
        <Field
          label={t('suppose.order.number')}
          inputMode="numeric"
          value={said}
          wrong={isNumber ? undefined : t('work.needsNumber')}
          onChange={setSaid}
        />
        <Field label={t('suppose.order.due')} type="date" value={due} onChange={setDue} />
      </div>
      {isNumber && !isSame && (
        <SupposedAnswer
          supposed={{
            kind: 'order-changed/1',
            order: {
              ...order,
              number,
              sure: surePercent / 100,
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
