import { commonPractice } from '../../figure.ts'
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
