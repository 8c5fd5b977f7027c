import type { Figure } from '../../trade/index.ts'
import { fromMemory } from './figures.ts'

/** Whether a fruit needs another plant to bear. What the facts of the fruit say in words, as one of four. */
export type PartnerNeed = 'none' | 'helps' | 'needed' | 'male needed'

const needed = [
  'macadamia',
  'feijoa',
  'olive',
  'dragon_fruit',
  'cacao',
  'apple',
  'pear',
  'cherry',
  'walnut',
  'pecan',
  'hazelnut',
]
const helps = [
  'avocado',
  'lychee',
  'guava',
  'carambola',
  'sapodilla',
  'white_sapote',
  'loquat',
  'pomegranate',
  'passionfruit',
  'cherimoya_atemoya',
  'plum',
  'apricot',
  'blueberry',
]

export const partnerNeed = (species: string): PartnerNeed =>
  species === 'kiwifruit'
    ? 'male needed'
    : needed.includes(species)
      ? 'needed'
      : helps.includes(species)
        ? 'helps'
        : 'none'

/** Share of the full crop without a partner near. */
const shareAlone: Readonly<Record<PartnerNeed, Figure>> = {
  none: fromMemory(1, 1, 1),
  helps: fromMemory(0.5, 0.8, 1),
  needed: fromMemory(0, 0.15, 0.5),
  'male needed': fromMemory(0, 0, 0.02),
}

export const cropAlone = (need: PartnerNeed): Figure => shareAlone[need]

/** One partner serves so many trees. Eight for kiwifruit is in its facts; the rest is common practice. */
export const TREES_TO_A_PARTNER = 8
