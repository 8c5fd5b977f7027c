/** One whose list opens with the focus is none: that would lie over what stands below. */
const FIELDS =
  'input:not(:disabled, [type="file"], [role="combobox"]), select:not(:disabled), textarea:not(:disabled), [role="radio"][aria-checked="true"]'

/**
 * A form that opens has the focus on its first field, what it says ready to be typed over, as by Tab. What is to be read before
 * that field stands above it, and is told of the sheet to a reader of screens.
 */
export const focusFirstField = (form: Element, sheet: Element | null): void => {
  const first = form.querySelector<HTMLElement>(FIELDS)
  if (first === null) return
  const before = [...form.querySelectorAll('p')].filter(
    said => (said.compareDocumentPosition(first) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0,
  )
  for (const [at, said] of before.entries()) said.id ||= `${sheet?.getAttribute('aria-labelledby')}-${at}`
  if (before.length > 0) sheet?.setAttribute('aria-describedby', before.map(({ id }) => id).join(' '))
  first.focus()
  if (first instanceof HTMLInputElement && !/range|checkbox|date/.test(first.type)) first.select()
}
