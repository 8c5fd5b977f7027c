/** Text as it is compared in a search: without accents, in small letters. */
export const folded = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()
