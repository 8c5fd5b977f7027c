/** The door of advice: which tree for this buyer, and which way for the nursery. */
export type {
  Against,
  Answer,
  Assumption,
  Beaten,
  Caution,
  Spread,
  WayAnswer,
  WishId,
  YearlySpread,
} from './answer.ts'
export { WISHES } from './answer.ts'
export type { PartnerNeed } from './assumptions/partner.ts'
export { type Rootstock, rootstocksOf } from './assumptions/rootstock.ts'
export { type Taken, type TakenKey, taken } from './assumptions/taken.ts'
export { type TreeFigures, treeFigures } from './assumptions/tree-figures.ts'
export { ClimateSaid } from './climate/climate.ts'
export { type ClimateOfDays, climateOfDays } from './climate/from-days.ts'
export { type MonthsAtPlace, monthsAtPlace } from './climate/months-at-place.ts'
export {
  type MakingOfOne,
  makingOfOne,
  type NurseryCosts,
  type WayToMake,
} from './making/cost-of-way.ts'
export { usualWays } from './making/usual-ways.ts'
export { type BreakEven, breakEven, type WayMade, whichWay } from './making/which-way.ts'
export { Amount, AssumptionKey, Ground, Offer, Question } from './question.ts'
export { type TurningInput, type TurningPoint, type TurningStep, turningPoints } from './turning-points.ts'
export type { TreeWay } from './ways.ts'
export { whichTree } from './which-tree.ts'
