/**
 * Gives the focus to the first field of a form beside which something is said to be wrong, with what it says ready to be typed
 * over; false where there is none.
 */
export const focusWrong = (form: Element): boolean => {
  const wrong = form.querySelector<HTMLElement>('[aria-invalid="true"]')
  wrong?.focus()
  if (wrong instanceof HTMLInputElement) wrong.select()
  return wrong !== null
}
