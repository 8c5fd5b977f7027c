/** Why a new cultivar epithet would not be accepted. */
export type EpithetFault =
  | 'longer than 30 characters'
  | 'a sign that is not allowed'
  | 'a single letter or only a number'
  | 'a word that is not allowed'
  | 'praises the plant'
  | 'more than two exclamation marks'
  | 'begins with a small letter'

const bannedWords =
  /\b(cultivar|form|grex|group|hybrid|maintenance|mixture|selection|series|sport|strain|improved|transformed)s?\b/i
const praise = /\b(best|finest|greatest|most|perfect|superior)\b/i

/**
 * Faults of an epithet chosen for a new cultivar. Old epithets keep their letters and digits.
 * Only open exaggeration is seen: whether a name misleads is for the registrar to judge.
 * @source International Code of Nomenclature for Cultivated Plants, 9th ed. 2016, rules for epithets, as summarised
 *   for registrants
 * @example epithetFaults('Half Pint') // []
 */
export function epithetFaults(epithet: string): EpithetFault[] {
  const counted = epithet.replace(/\s/g, '')
  const faults: [EpithetFault, boolean][] = [
    ['longer than 30 characters', [...counted].length > 30],
    ['a sign that is not allowed', /[^\p{L}\p{M}0-9\s',!.\-/\\]/u.test(epithet)],
    ['a single letter or only a number', /^(\p{L}|\d*)$/u.test(counted)],
    ['a word that is not allowed', bannedWords.test(epithet)],
    ['praises the plant', praise.test(epithet)],
    ['more than two exclamation marks', epithet.split('!').length > 3],
    ['begins with a small letter', /^\p{Ll}/u.test(epithet)],
  ]
  return faults.flatMap(([fault, isSo]) => (isSo ? [fault] : []))
}
