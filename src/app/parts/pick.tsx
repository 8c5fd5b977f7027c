import { useId } from 'react'

/** One of a few: the device's own list, which every hand and reader knows. */
export function Pick<K extends string>({
  label,
  value,
  options,
  onPick,
  isLabelHidden = false,
}: {
  readonly label: string
  readonly value: K
  readonly options: readonly { readonly id: K; readonly name: string }[]
  readonly onPick: (id: K) => void
  readonly isLabelHidden?: boolean
}) {
  const id = useId()
  return (
    <div className="field">
      <label htmlFor={id} className={isLabelHidden ? 'unseen' : undefined}>
        {label}
      </label>
      <select id={id} value={value} onChange={event => onPick(event.target.value as K)}>
        {options.map(option => (
          <option key={option.id} value={option.id}>
            {option.name}
          </option>
        ))}
      </select>
    </div>
  )
}
