import { useTranslation } from 'react-i18next'
import { Field } from './field.tsx'

/** A figure as it is typed. */
export interface SpreadTyped {
  readonly low: string
  readonly typical: string
  readonly high: string
}

/** The three numbers of a figure. */
export function SpreadFields({
  unit,
  typed,
  onType,
}: {
  readonly unit: string
  readonly typed: SpreadTyped
  readonly onType: (typed: SpreadTyped) => void
}) {
  const { t } = useTranslation()
  return (
    <div className="form-grid">
      {(['low', 'typical', 'high'] as const).map(end => (
        <Field
          key={end}
          label={[t(`common.spread.${end}`), unit].filter(Boolean).join(', ')}
          inputMode="decimal"
          value={typed[end]}
          onChange={said => onType({ ...typed, [end]: said })}
        />
      ))}
    </div>
  )
}
