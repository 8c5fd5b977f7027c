/** Gives the focus to the next of these after a place on the page, or else to the one before it; false where there is none. */
export const focusNext = (after: Element, selector: string): boolean => {
  const others = [...document.querySelectorAll<HTMLElement>(selector)].filter(one => !after.contains(one))
  const isLater = (one: Element) =>
    (after.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0
  const next = others.find(isLater) ?? others.at(-1)
  next?.focus()
  return next !== undefined
}
