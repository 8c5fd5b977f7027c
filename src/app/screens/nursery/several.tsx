/** Any of a few things, each ticked or not. */
export function Several<K extends string>({
  label,
  options,
  chosen,
  onChoose,
}: {
  readonly label: string
  readonly options: readonly { readonly id: K; readonly name: string }[]
  readonly chosen: readonly K[]
  readonly onChoose: (chosen: readonly K[]) => void
}) {
  return (
    <fieldset className="several">
      <legend>{label}</legend>
      {options.map(({ id, name }) => (
        <label key={id}>
          <input
            type="checkbox"
            checked={chosen.includes(id)}
            onChange={({ target }) =>
              onChoose(
                options.flatMap(one =>
                  (one.id === id ? target.checked : chosen.includes(one.id)) ? [one.id] : [],
                ),
              )
            }
          />
          <span>{name}</span>
        </label>
      ))}
    </fieldset>
  )
}
