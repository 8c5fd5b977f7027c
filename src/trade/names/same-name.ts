const letters: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ı: 'i',
}

/**
 * A name without what people leave out or write differently: accents, capitals, quotation marks, ® and ™, hyphens,
 * the hybrid sign and "notho-". Two names that fold alike are the same name; use it as a key.
 * @source hybrid sign and notho- are passed over when names are compared: International Code of Nomenclature
 *   (Shenzhen Code), art. H.3.3; the rest is common practice
 * @example foldName('Köstliche von Charneux®') // 'kostliche von charneux'
 */
export const foldName = (name: string): string =>
  name
    .toLowerCase()
    // These two would fall apart into letters; ® and the like go with the other signs below.
    .replace(/[™℠]/g, '')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[ßæœøłđðþı]/g, letter => letters[letter] ?? letter)
    .replace(/['"‘’‚‛“”„«»`´]/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .replace(/(?<=^|\s)x\s(?=\p{L})/gu, '')
    .replace(/(?<=^|\s)(notho)+(?=\p{L})/gu, '')
    .trim()

export const sameName = (a: string, b: string): boolean => foldName(a) === foldName(b)
