const NOT_PLAIN = /[^\0-\x7f]/

/** Text as it is compared in a search: without accents, in small letters. */
export const folded = (text: string): string =>
  (NOT_PLAIN.test(text) ? text.normalize('NFD').replace(/\p{M}/gu, '') : text).toLowerCase()
