import { type ReactNode, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { deviceDay } from '../../data/today.ts'
import { useNames } from '../../data/use-names.tsx'
import { Field } from '../../parts/field.tsx'
import { ListAsked } from '../../parts/list-asked.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { areDays, areOver, type Days } from './days.ts'

/** Days on which something is not to be had, as often as it is so; what is over lies folded. */
export function DaysAsked<D extends Days>({
  label,
  says,
  add,
  rows,
  next,
  onChange,
  children,
}: {
  readonly label: string
  readonly says: string
  readonly add: string
  readonly rows: readonly D[]
  readonly next: D
  readonly onChange: (rows: readonly D[]) => void
  /** What else is asked of them. */
  readonly children?: (row: D, change: (part: Partial<D>) => void) => ReactNode
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const { nursery } = useNames()
  const [over] = useState(() => rows.filter(row => areOver(row, nursery?.today ?? deviceDay())).length)
  return (
    <ListAsked
      label={label}
      says={says}
      rows={rows}
      over={over}
      overSays={left => t('nursery.days.over', { count: left, shown: format.number(left) })}
      add={add}
      next={() => next}
      called={row => (areDays(row) ? `${label}, ${format.fullDays(row.from, row.to)}` : label)}
      onChange={onChange}
    >
      {(row, change) => (
        <>
          <div className="form-grid">
            {(['from', 'to'] as const).map(end => (
              <Field
                key={end}
                type="date"
                label={t(`nursery.days.${end}`)}
                value={row[end]}
                onChange={day => change({ [end]: day } as Partial<D>)}
              />
            ))}
          </div>
          {children?.(row, change)}
        </>
      )}
    </ListAsked>
  )
}
