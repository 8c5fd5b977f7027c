import { knownAs, type Species } from '../../trade/facts/index.ts'
import { commonPractice, type Figure, type MethodId, type TreeForm } from '../../trade/index.ts'
import { fromMemory } from './figures.ts'
import { type FruitGroup, groupOf } from './fruit-group.ts'

const guess = (low: number, typical: number, high: number) =>
  fromMemory(low, typical, high, 'a guess in the nursery’s money: its own price goes first')

/** What a young tree costs where the nursery has no price for it. Only the order is common practice. */
const usualPrice: Readonly<Record<TreeForm, Figure>> = {
  seedling: guess(4, 8, 14),
  rootstock: guess(2, 4, 8),
  'cutting-grown': guess(7, 13, 22),
  layered: guess(9, 17, 30),
  divided: guess(5, 12, 20),
  worked: guess(12, 22, 40),
  'multi-worked': guess(30, 48, 80),
  reworked: guess(4, 8, 14),
}

/** For each tree, in the nursery's money. */
export const plantingCost = guess(4, 8, 20)
export const stakeCost = guess(3, 6, 12)
/** For one scion worked onto a standing tree, wood and hand. */
export const reworkCost = guess(3, 8, 20)
/** Pruning, feeding, water and protection of a square metre of canopy for a year, in full growth. */
export const carePerSquareMetre = guess(0.2, 0.5, 1.2)
export const careLeastPerTree = guess(0.5, 1.5, 4)

/** Share of young trees that fail in their first year and are planted again. Common practice, no source. */
export const firstYearLoss: Readonly<Record<TreeForm, Figure>> = {
  seedling: commonPractice(0.03, 0.08, 0.2),
  rootstock: commonPractice(0.03, 0.08, 0.2),
  'cutting-grown': commonPractice(0.02, 0.06, 0.15),
  layered: commonPractice(0.03, 0.1, 0.25, 'few roots at first'),
  divided: commonPractice(0.02, 0.06, 0.15),
  worked: commonPractice(0.02, 0.05, 0.12),
  'multi-worked': commonPractice(0.03, 0.08, 0.2, 'a weak union may fail'),
  reworked: commonPractice(0.03, 0.08, 0.2),
}

/** Small plants cost less than trees. From memory. */
const sizeShare: Partial<Readonly<Record<FruitGroup, number>>> = {
  vine: 0.45,
  'berry bush': 0.5,
  bean: 0.2,
  cactus: 0.5,
  'giant herb': 0.5,
}

/** A way that is seldom done, or that mostly fails, costs more. Common practice; by how much, our choice. */
const SELDOM = 1.4

/** The usual price of one young tree of a fruit, by form and by how it is made. */
export function usualPriceOf(species: Species, form: TreeForm, method: MethodId): number {
  const made = species.ways.find(way => way.method === method)
  const isHard = made?.importance === 'minor' || (made !== undefined && made.success.typical < 0.4)
  return usualPrice[form].typical * (sizeShare[groupOf(knownAs(species))] ?? 1) * (isHard ? SELDOM : 1)
}

/**
 * Many trees cost less each, to buy and to plant: about a quarter less for ten, half for three hundred. Common
 * practice; the curve is our choice.
 */
export const quantityShare = (trees: number): number => Math.max(0.4, trees ** -0.12)
