import { commonPractice } from '../../figure.ts'
import type { Material } from '../../vocabulary.ts'
import { fromMemory, published } from './published.ts'

/** What a mother plant gives in a year without harm. */
export const motherYieldPerYear = {
  shareOfShootsAsScions: commonPractice(0.1, 0.2, 0.3),
  shareOfCanopyAsAirLayers: commonPractice(0.05, 0.1, 0.2),
  airLayersYoungTree: commonPractice(3, 8, 15, 'tree of 3 to 4 years'),
  airLayersGrownTree: commonPractice(15, 35, 70, 'tree of 6 to 10 years'),
  airLayersOldTree: commonPractice(40, 90, 200, 'large old tree'),
  scionSticksYoungEvergreen: commonPractice(10, 30, 60, 'tree of 3 to 4 years'),
  scionSticksMatureEvergreen: commonPractice(80, 250, 600),
  budsDeciduousHedgeTree: commonPractice(80, 200, 400),
  budsCitrusFirstYear: commonPractice(20, 60, 150, 'increase plant'),
  hazelShootsPerBush: published(10, 20, 30, ['BEYHAN2020'], { rangeBasis: 'from memory' }),
  rootedShootsPerMetreOfStoolBed: fromMemory(
    10,
    35,
    80,
    'from the fourth year; rise to year 4 in QUAMME1990',
  ),
} as const

/** Months of rest after heavy cutting. */
export const restAfterHeavyCuttingMonths = commonPractice(6, 12, 18)

/** Years to build a seed block or budwood of a new rootstock. */
export const yearsToNewRootstock = published(2, 2, 3, ['ALFEREZ2019'])

/** What one grown mother may give in a year, where the nursery does not say it: common practice, no source. */
export function usualYield(material: Material): number {
  switch (material) {
    case 'branches':
      return motherYieldPerYear.airLayersGrownTree.typical
    case 'scion sticks':
      return motherYieldPerYear.scionSticksMatureEvergreen.typical
    case 'seed':
      return 500
    case 'shoots':
      return motherYieldPerYear.rootedShootsPerMetreOfStoolBed.typical
    default:
      return motherYieldPerYear.budsDeciduousHedgeTree.typical
  }
}

const allMonths = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]

/**
 * The months in which material may be taken: those of the starts that it serves, and the one before, for wood is kept.
 * @param starts months of each way, 1 to 12; none where the calendar does not tell
 */
export function monthsOfSupply(starts: readonly (readonly number[])[]): number[] {
  const months = new Set(
    starts.flatMap(at => (at.length === 0 ? allMonths : at.flatMap(one => [one, ((one + 10) % 12) + 1]))),
  )
  return (months.size === 0 ? allMonths : [...months]).sort((a, b) => a - b)
}
