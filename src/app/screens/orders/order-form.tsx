import { ComboBox, FieldError, Input, Label, ListBox, ListBoxItem, Popover } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { useNames } from '../../data/use-names.ts'
import { Field } from '../../parts/field.tsx'
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
  const { nursery } = useNames()
  const kinds = nursery?.kinds.filter(({ form }) => form !== 'rootstock') ?? []
  const said = (key: keyof Wrong): string | undefined =>
    wrong[key] ? t(`orders.form.need.${key}`) : undefined
  return (
    <div className="form-grid">
      <ComboBox
        className="field full"
        isInvalid={wrong.kind === true}
        defaultItems={[...kinds]}
        value={draft.kind}
        onChange={key => onChange({ kind: key === null ? null : String(key) })}
        menuTrigger="focus"
      >
        <Label>{t('orders.form.kind')}</Label>
        <Input placeholder={t('orders.form.kindHint')} />
        <FieldError>{said('kind')}</FieldError>
        <Popover className="pop">
          <ListBox<(typeof kinds)[number]> className="menu">
            {kind => (
              <ListBoxItem id={kind.id} textValue={kind.name}>
                {kind.name}
              </ListBoxItem>
            )}
          </ListBox>
        </Popover>
      </ComboBox>
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
