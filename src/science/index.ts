/** The room of numbers: probability, rates, time and climate. Numbers in, numbers out. */

export {
  dateOf,
  dayNumber,
  dayOfYear,
  daysInMonth,
  dayText,
  isDay,
  isLeapYear,
} from './calendar/day-number.ts'
export { isoWeek, weekNumber, weekOfDay, weekStart, weeksInYear, weekText } from './calendar/week.ts'
export { betaCdf, betaQuantile, binomialAtLeast } from './distributions/beta.ts'
export { betaFromLowTypicalHigh } from './distributions/beta-from-low-typical-high.ts'
export { normalCdf, normalQuantile } from './distributions/normal.ts'
export {
  type CheapestStart,
  type CheapestStartInput,
  cheapestStart,
} from './number-to-start/cheapest-start.ts'
export {
  type ChanceInput,
  chanceOfAtLeast,
  type Needed,
  type NeededInput,
  needed,
  spreadOfStart,
} from './number-to-start/needed.ts'
export type { CourseInput, Spread } from './number-to-start/outcome.ts'
export type { Rate } from './number-to-start/rate.ts'
export { casesOf, type Fixture, type FixtureCase, sourceOf } from './outside-checks/fixture.ts'
export {
  type CheckValue,
  type OutsideCheck,
  outsideCheck,
  type Tolerance,
} from './outside-checks/outside-check.ts'
export { drawBinomial } from './random/draw-binomial.ts'
export { drawBeta, drawGamma } from './random/draw-gamma.ts'
export { drawNormal } from './random/draw-normal.ts'
export { drawPoisson } from './random/draw-poisson.ts'
export { type SeededRandom, seededRandom } from './random/seeded-random.ts'
export {
  type FitRatesInput,
  fitRates,
  type RateContext,
  type RateFact,
  type RateFactor,
  type RateModel,
  type RateObservation,
} from './rates/fit-rates.ts'
export {
  type FactorSpread,
  type LevelDifference,
  type LevelEstimate,
  levelDifference,
  levelEstimates,
  spreads,
} from './rates/levels.ts'
export { type LogisticFit, type LogisticInput, logisticRegression } from './rates/logistic.ts'
export { type PredictedShare, predictShare } from './rates/predict-share.ts'
export {
  type BetaShare,
  type RateCount,
  type RateFromCountsInput,
  rateFromCounts,
} from './rates/rate-from-counts.ts'
