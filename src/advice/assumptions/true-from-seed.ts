import { knownAs, type Species } from '../../trade/facts/index.ts'
import { commonPractice, type Figure } from '../../trade/index.ts'
import { fromMemory } from './figures.ts'

/** Share of seedlings that bear the named fruit: those from the mother's own tissue, or of a line that breeds true. */
const knownShare: Readonly<Record<string, Figure>> = {
  mango: fromMemory(0.3, 0.6, 0.85, 'polyembryonic kinds only; 0 for the others'),
  lime: fromMemory(0.6, 0.8, 0.95, 'Key lime; Tahiti lime has no seed'),
  jackfruit: fromMemory(0.1, 0.3, 0.5, 'much like the mother, yet no two alike'),
  guava: fromMemory(0.1, 0.3, 0.5, 'about a third outcross; what selfs is loosely alike'),
  passionfruit: fromMemory(0.5, 0.8, 0.95, 'inbred lines; hybrids do not come true'),
  coffee: fromMemory(0.8, 0.92, 0.98, 'arabica; robusta does not come true'),
  lemon: {
    low: 0.33,
    typical: 0.5,
    high: 0.67,
    basis: 'from memory',
    sources: [],
    note: 'about a third to two thirds, as the facts of the fruit say',
  },
}

/** The named fruit from seed. */
export function trueFromSeed(species: Species): Figure {
  const known = knownShare[knownAs(species)]
  if (known !== undefined) return known
  if (species.reproduction.embryony === 'poly')
    return fromMemory(0.7, 0.88, 0.97, 'seedlings of the mother’s own tissue')
  return commonPractice(0, 0, 0, 'no seedling is the named fruit')
}

/** Share of seedlings of which the fruit is worth keeping, where any good one will do. An assumption, no source. */
const keptFew = ['apple', 'pear', 'cherry', 'plum', 'apricot', 'avocado', 'macadamia', 'grape', 'persimmon']
export function worthKeeping(species: Species): Figure {
  const share = keptFew.includes(knownAs(species))
    ? fromMemory(0.03, 0.1, 0.25, 'an assumption: most are too small, late or sour')
    : fromMemory(0.1, 0.3, 0.6, 'an assumption: many can be eaten, few are good')
  const fromMother = trueFromSeed(species)
  if (fromMother.typical > share.typical) return fromMother
  return share
}

/** Share of seedlings that can bear at all, where plants are male or female. */
export const bearingSexShare = (species: Species): number =>
  species.reproduction.dioecious === true ? 0.5 : 1
