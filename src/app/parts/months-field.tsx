import { ToggleButton, ToggleButtonGroup } from 'react-aria-components'
import { useFormat } from '../text/use-format.tsx'

const MONTHS = Array.from({ length: 12 }, (_, index) => index + 1)

/** Months of the year, each ticked or not. */
export function MonthsField({
  label,
  months,
  onChange,
}: {
  readonly label: string
  readonly months: readonly number[]
  readonly onChange: (months: readonly number[]) => void
}) {
  const format = useFormat()
  return (
    <ToggleButtonGroup
      className="choices months"
      aria-label={label}
      selectionMode="multiple"
      selectedKeys={months}
      onSelectionChange={keys => onChange([...keys].map(Number).sort((a, b) => a - b))}
    >
      {MONTHS.map(month => (
        <ToggleButton key={month} id={month}>
          {format.month(month - 1)}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  )
}
