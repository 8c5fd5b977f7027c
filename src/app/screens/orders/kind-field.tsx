import { ComboBox, FieldError, Input, Label, ListBox, ListBoxItem, Popover } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { useNames } from '../../data/use-names.tsx'

/** One of the kinds that are sold, found by typing. */
export function KindField({
  value,
  wrong,
  onPick,
  className = 'field',
}: {
  readonly value: string | null
  readonly wrong?: string | undefined
  readonly onPick: (kind: string | null) => void
  readonly className?: string
}) {
  const { t } = useTranslation()
  const { nursery } = useNames()
  const kinds = nursery?.kinds.filter(({ form }) => form !== 'rootstock') ?? []
  return (
    <ComboBox
      className={className}
      isInvalid={wrong !== undefined}
      defaultItems={[...kinds]}
      value={value}
      onChange={key => onPick(key === null ? null : String(key))}
      menuTrigger="focus"
    >
      <Label>{t('orders.form.kind')}</Label>
      <Input placeholder={t('orders.form.kindHint')} />
      <FieldError>{wrong}</FieldError>
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
  )
}
