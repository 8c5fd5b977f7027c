import { ToggleButton, ToggleButtonGroup } from 'react-aria-components'

/** A row of choices of which exactly one holds. */
export function Choices<K extends string>({
  label,
  value,
  options,
  onPick,
}: {
  readonly label: string
  readonly value: K
  readonly options: readonly { readonly id: K; readonly name: string }[]
  readonly onPick: (id: K) => void
}) {
  return (
    <ToggleButtonGroup
      className="choices"
      aria-label={label}
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[value]}
      onSelectionChange={keys => {
        for (const key of keys) onPick(key as K)
      }}
    >
      {options.map(({ id, name }) => (
        <ToggleButton key={id} id={id}>
          {name}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  )
}
