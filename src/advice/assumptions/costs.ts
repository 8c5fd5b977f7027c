import { commonPractice, type Figure, type TreeForm } from '../../trade/index.ts'
import { fromMemory } from './figures.ts'

const guess = (low: number, typical: number, high: number) =>
  fromMemory(low, typical, high, 'a guess in the nursery’s money: its own price goes first')

/** What a young tree costs where the nursery has no price for it. Only the order is common practice. */
export const usualPrice: Readonly<Record<TreeForm, Figure>> = {
  seedling: guess(4, 8, 14),
  rootstock: guess(2, 4, 8),
  'cutting-grown': guess(7, 13, 22),
  layered: guess(9, 17, 30),
  divided: guess(3, 6, 12),
  worked: guess(12, 22, 40),
  'multi-worked': guess(30, 48, 80),
  reworked: guess(4, 8, 14),
}

/** For each tree, in the nursery's money. */
export const plantingCost = guess(4, 8, 20)
export const stakeCost = guess(3, 6, 12)
/** For one scion worked onto a standing tree, wood and hand. */
export const reworkCost = guess(6, 12, 25)
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
