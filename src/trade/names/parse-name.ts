import type { PlantName } from './plant-name.ts'

/** What is not as the codes write it, though it can be read. */
export type NameFault =
  | 'double quotation marks'
  | 'cv. instead of quotation marks'
  | 'cultivar without quotation marks'
  | 'cultivar begins with a small letter'
  | 'letter x instead of the hybrid sign'
  | 'species begins with a capital'
  | 'genus begins with a small letter'
  | 'species abbreviated'
  | 'two names in one'
  | 'hybrid formula does not name the genus again'
  | 'graft-chimaera with a species epithet'

export type NameReading =
  | { readonly kind: 'name'; readonly name: PlantName; readonly faults: readonly NameFault[] }
  | { readonly kind: 'no name'; readonly text: string }

const rankByWord: ReadonlyMap<string, 'subsp.' | 'var.' | 'f.'> = new Map([
  ['subsp.', 'subsp.'],
  ['subsp', 'subsp.'],
  ['ssp.', 'subsp.'],
  ['ssp', 'subsp.'],
  ['var.', 'var.'],
  ['var', 'var.'],
  ['f.', 'f.'],
  ['forma', 'f.'],
] as const)
const openByWord: ReadonlyMap<string, 'sp.' | 'spp.'> = new Map([
  ['sp.', 'sp.'],
  ['sp', 'sp.'],
  ['spec.', 'sp.'],
  ['spec', 'sp.'],
  ['species', 'sp.'],
  ['spp.', 'spp.'],
  ['spp', 'spp.'],
] as const)
const doubtByWord: ReadonlyMap<string, 'cf.' | 'aff.'> = new Map([
  ['cf.', 'cf.'],
  ['cf', 'cf.'],
  ['?', 'cf.'],
  ['aff.', 'aff.'],
  ['aff', 'aff.'],
] as const)

/** Said of the plant, and no part of its name. */
const remarkWords: ReadonlySet<string> = new Set(['agg.', 'agg', 'aggregate', 'Aggregat'])

const isCapital = (word: string) => /^[\p{Lu}\d]/u.test(word)
const isEpithet = (word: string) => /^\p{Ll}[\p{Ll}-]+$/u.test(word)
const isAbbreviation = (word: string) => /^\p{Ll}+\.$/u.test(word)
const isCross = (word: string) => word === '×' || word === 'x' || word === 'X'

/** Straight marks for curved ones, one blank for any run of blanks. */
const evened = (text: string): string =>
  text
    .replace(/[‘’‚‛`´′]/g, "'")
    .replace(/[“”„‟«»″]/g, '"')
    .replace(/''/g, '"')
    .replace(/\s+/g, ' ')
    .trim()

const quoted = /(^|[\s.])(["'])(.+)\2(?=$|[\s,;)])/u

/**
 * Reads a name as people write it: x or × for a hybrid, curved or straight quotation marks or none, cf., sp., ssp.
 * What is not as the codes have it is told as a fault and read all the same. Whether such a plant exists is not asked.
 */
export function parseName(text: string): NameReading {
  const even = evened(text)
  const faults = new Set<NameFault>()
  const marks = quoted.exec(even)
  if (marks?.[2] === '"') faults.add('double quotation marks')
  const before = marks === null ? even : even.slice(0, marks.index + (marks[1] ?? '').length).trim()
  const remarks = marks === null ? [] : [even.slice(marks.index + marks[0].length).trim()]
  let cultivar = marks?.[3]?.trim() ?? null

  const words = before
    .replace(/×\s*(?=\S)/gu, '× ')
    .replace(/^\+\s*/u, '+ ')
    .split(' ')
    .filter(word => word !== '')
  let genusSign: PlantName['genusSign'] = ''
  const first = words[0] ?? ''
  if (first === '+') genusSign = '+'
  else if (isCross(first)) genusSign = '×'
  if (genusSign !== '') words.shift()
  if (genusSign === '×' && first !== '×') faults.add('letter x instead of the hybrid sign')

  const genusWord = words.shift() ?? ''
  const [genusPart = '', ...genusTail] = genusWord.split('-')
  if (!/^\p{L}(\p{Ll}+|\p{Lu}{2,})$/u.test(genusPart) && !/^\p{Lu}\.$/u.test(genusPart))
    return { kind: 'no name', text }
  if (!isCapital(genusPart)) faults.add('genus begins with a small letter')
  const genus = genusPart.charAt(0).toUpperCase() + genusPart.slice(1).toLowerCase()
  if (genusTail.length > 0) remarks.unshift(genusTail.join('-'))

  let species: string | null = null
  let isHybrid = false
  let infraspecific: PlantName['infraspecific'] = null
  let crossedWith: string | null = null
  let doubt: PlantName['doubt'] = null
  let open: PlantName['open'] = null

  /** All that is left is the cultivar, written without marks. */
  const takeUnmarked = (rest: readonly string[], fault: NameFault) => {
    faults.add(fault)
    if (cultivar === null && rest.length > 0) cultivar = rest.join(' ')
  }

  for (let at = 0; at < words.length; at++) {
    const word = words[at]!
    const next = words[at + 1]
    const rank = rankByWord.get(word)
    const doubted = doubtByWord.get(word)
    const opened = openByWord.get(word)
    if (doubted !== undefined) doubt = { sign: doubted, of: species === null ? 'species' : 'cultivar' }
    else if (remarkWords.has(word)) remarks.unshift(word)
    else if (opened !== undefined) open = opened
    else if (isCross(word) && next !== undefined) {
      if (word !== '×') faults.add('letter x instead of the hybrid sign')
      if (species === null && (isEpithet(next) || isAbbreviation(next))) isHybrid = true
      else {
        crossedWith = words.slice(at + 1).join(' ')
        if (!isCapital(next)) faults.add('hybrid formula does not name the genus again')
        break
      }
    } else if (rank !== undefined) {
      if (next !== undefined && isEpithet(next)) {
        infraspecific = { rank, epithet: next }
        at++
      }
    } else if (word === 'cv.' || word === 'cv') {
      takeUnmarked(words.slice(at + 1), 'cv. instead of quotation marks')
      break
    } else if (species === null && isEpithet(word)) species = word
    else if (species === null && isAbbreviation(word)) {
      faults.add('species abbreviated')
      remarks.unshift(word)
    } else if (isCapital(word) && cultivar === null) {
      takeUnmarked(words.slice(at), 'cultivar without quotation marks')
      break
    } else if (isCapital(word) && species === null) {
      faults.add('species begins with a capital')
      species = word.toLowerCase()
    } else remarks.unshift(word)
  }

  if (cultivar !== null && !isCapital(cultivar)) faults.add('cultivar begins with a small letter')
  isHybrid &&= species !== null
  if (cultivar?.includes(' / ')) faults.add('two names in one')
  if (genusSign === '+' && species !== null) faults.add('graft-chimaera with a species epithet')
  const remark = remarks.filter(part => part !== '').join(' ')
  return {
    kind: 'name',
    name: { genus, genusSign, species, isHybrid, infraspecific, crossedWith, cultivar, doubt, open, remark },
    faults: [...faults],
  }
}
