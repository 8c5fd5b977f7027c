import { useTranslation } from 'react-i18next'
import { Field } from '../../parts/field.tsx'
import { KindField } from './kind-field.tsx'
import type { OrderDraft, Wrong } from './order-draft.ts'

/** The fields of one order. */
export function OrderForm({
  draft,
  wrong,
  onChange,
}: {
  readonly draft: OrderDraft
  readonly wrong: Wrong
  readonly onChange: (change: Partial<OrderDraft>) => void
}) {
  const { t } = useTranslation()
  const said = (key: keyof Wrong): string | undefined =>
    wrong[key] ? t(`orders.form.need.${key}`) : undefined
  return (
    <div className="form-grid">
      <KindField
        className="field full"
        value={draft.kind}
        wrong={said('kind')}
        onPick={kind => onChange({ kind })}
      />
      <Field
        label={t('orders.form.number')}
        inputMode="numeric"
        value={draft.number}
        wrong={said('number')}
        onChange={number => onChange({ number })}
      />
      <Field
        label={t('orders.form.due')}
        type="date"
        value={draft.due}
        wrong={said('due')}
        onChange={due => onChange({ due })}
      />
      <Field
        label={t('orders.form.buyer')}
        placeholder={t('orders.form.buyerHint')}
        value={draft.buyer}
        onChange={buyer => onChange({ buyer })}
      />
      <Field
        label={t('orders.form.sure')}
        inputMode="numeric"
        value={draft.surePercent}
        wrong={said('sure')}
        onChange={surePercent => onChange({ surePercent })}
      />
      <Field
        label={t('orders.form.earliest')}
        type="date"
        value={draft.earliest}
        onChange={earliest => onChange({ earliest })}
      />
      <Field
        label={t('orders.form.latest')}
        type="date"
        value={draft.latest}
        wrong={said('dates')}
        onChange={latest => onChange({ latest })}
      />
      <Field
        label={t('orders.form.price')}
        placeholder={t('orders.form.priceHint')}
        inputMode="decimal"
        value={draft.price}
        onChange={price => onChange({ price })}
      />
    </div>
  )
}
