export const pageHeading = (): HTMLElement | null => document.querySelector('#page h1')

/** Its parts stand apart, as they do for the eye. */
const read = (element: Element | null): string =>
  [...(element?.childNodes ?? [])]
    .map(part => part.textContent ?? '')
    .join(' ')
    .replace(/\s+/g, ' ')
    .trim()

/** What the page is about, the narrowest first: its own heading, and before it that of what is chosen on it. */
export const pageNames = (): readonly string[] =>
  [document.querySelector('#page [data-names-page]'), pageHeading()].map(read).filter(Boolean)
