const NOT_PLAIN = /[^\0-\x7f]/

/** Text as it is compared in a search: without accents, in small letters. */
export const folded = (text: string): string =>
  (NOT_PLAIN.test(text) ? text.normalize('NFD').replace(/\p{M}/gu, '') : text).toLowerCase()

/** Whether a text has every one of the words that are looked for. */
export const answering = (said: string): ((text: string) => boolean) => {
  const words = folded(said).split(/\s+/).filter(Boolean)
  if (words.length === 0) return () => true
  return text => {
    const within = folded(text)
    return words.every(word => within.includes(word))
  }
}
