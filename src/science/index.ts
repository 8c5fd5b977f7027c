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
export { chillPortions, growingDegreeHours, isChillHour, utahUnits } from './climate/chill.ts'
export {
  averageClippedDegreeDays,
  averageDegreeDays,
  type DegreeDayMethod,
  degreeDays,
} from './climate/degree-days.ts'
export {
  clearSkyRadiationMJ,
  type DayOfWeather,
  evaporationFromTemperatureMm,
  netLongwaveMJ,
  netRadiationMJ,
  netSolarMJ,
  type Radiation,
  referenceEvaporationMm,
  soilHeatOfMonthMJ,
  solarRadiationFromRangeMJ,
  solarRadiationMJ,
  windAtTwoMetres,
} from './climate/evaporation.ts'
export {
  extraterrestrialHourMJ,
  type HourOfSun,
  type HourOfWeather,
  netLongwaveHourMJ,
  referenceEvaporationHourMm,
} from './climate/hourly-evaporation.ts'
export { dayLengthHours, extraterrestrialRadiationMJ } from './climate/sun.ts'
export {
  CIVIL_TWILIGHT,
  daylightHours,
  SUN_ON_HORIZON,
  type SunTimes,
  sunTimes,
} from './climate/sun-times.ts'
export {
  airPressureKPa,
  dewPointCelsius,
  saturationVapourPressureKPa,
  vapourPressureDeficitKPa,
  vapourPressureFromHumidityKPa,
  vapourPressureFromWetBulbKPa,
} from './climate/vapour-pressure.ts'
export { type ExactStrata, exactStrata } from './comparison/exact-strata.ts'
export { type Finding, type FindingKind, findingInWords, findingOf } from './comparison/finding.ts'
export {
  correlationWithin,
  type Funnel,
  type FunnelAllowance,
  type FunnelGroup,
  type FunnelLimits,
  type FunnelStanding,
  funnel,
  funnelLimits,
  type GroupedBatch,
  groupDifference,
} from './comparison/funnel.ts'
export { type Counted, type Heterogeneity, heterogeneity } from './comparison/heterogeneity.ts'
export { type IntraclassCorrelation, intraclassCorrelation } from './comparison/intraclass-correlation.ts'
export {
  type SlumpOptions,
  type SlumpWatch,
  type WatchedBatch,
  watchForSlump,
} from './comparison/slump-watch.ts'
export {
  analyseTrial,
  type TrialAnalysis,
  type TrialComparison,
  type TrialPlot,
} from './comparison/trial-analysis.ts'
export {
  type AllocatedPlot,
  allocatePlots,
  type TrialBench,
  type TrialSize,
  type TrialSizeInput,
  trialSize,
} from './comparison/trial-plan.ts'
export {
  type CommonOddsRatio,
  commonOddsRatio,
  noThreeWay,
  type SameOddsRatio,
  type Stratum,
  sameOddsRatio,
  type TwoGroups,
  twoGroups,
} from './comparison/two-groups.ts'
export { chiSquareTest } from './counts/chi-square-test.ts'
export { type ControlChart, controlChart } from './counts/control-chart.ts'
export { differenceInterval } from './counts/difference-interval.ts'
export { type ExactTest, exactTest, oddsRatioInterval } from './counts/exact-test.ts'
export { powerForTwoShares, sampleForTwoShares, type TwoShareSample } from './counts/sample-size.ts'
export {
  exactInterval,
  exactOneSided,
  type Interval,
  jeffreysInterval,
  wilsonInterval,
} from './counts/share-interval.ts'
export type { TwoCounts } from './counts/two-counts.ts'
export { betaCdf, betaQuantile, binomialAtLeast } from './distributions/beta.ts'
export { betaFromLowTypicalHigh } from './distributions/beta-from-low-typical-high.ts'
export { chiSquareAbove } from './distributions/chi-square.ts'
export { normalCdf, normalQuantile } from './distributions/normal.ts'
export {
  type ExtremeValue,
  extremeValueCdf,
  extremeValueQuantile,
} from './extremes/extreme-value.ts'
export { type ExtremeValueFit, fitByLikelihood } from './extremes/fit-extreme-value.ts'
export { fitByLMoments, type LMoments, lMoments } from './extremes/l-moments.ts'
export { bearingShare } from './growth/bearing-curve.ts'
export {
  type CaliperAt,
  type CaliperGrowth,
  type CaliperInput,
  type CaliperSample,
  caliperAt,
  fitCaliper,
  type ShareInside,
  shareInsideCaliper,
} from './growth/caliper.ts'
export {
  annuityFactor,
  equivalentYearlyValue,
  netPresentValue,
  paybackYear,
} from './money/present-value.ts'
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
export { logitMoments } from './numerics/logistic-normal.ts'
export { casesOf, type Fixture, type FixtureCase, sourceOf } from './outside-checks/fixture.ts'
export {
  type CheckValue,
  type OutsideCheck,
  outsideCheck,
  type Tolerance,
} from './outside-checks/outside-check.ts'
export { cheapestAssignment } from './pairing/assignment.ts'
export { type CaliperPair, pairByCaliper } from './pairing/caliper-pairs.ts'
export { drawBinomial } from './random/draw-binomial.ts'
export { drawBeta, drawGamma } from './random/draw-gamma.ts'
export { drawNormal } from './random/draw-normal.ts'
export { drawPoisson } from './random/draw-poisson.ts'
export { type SeededRandom, seededRandom } from './random/seeded-random.ts'
export { type BatchSpreadFit, fitBatchSpread } from './rates/batch-spread.ts'
export { type BetaBinomialFit, fitBetaBinomial } from './rates/beta-binomial.ts'
export {
  type FitRatesInput,
  fitRates,
  type RateContext,
  type RateFact,
  type RateFactor,
  type RateModel,
  type RateObservation,
} from './rates/fit-rates.ts'
export type { SpreadBelief } from './rates/laplace.ts'
export {
  type FactorSpread,
  type LevelDifference,
  type LevelEstimate,
  levelDifference,
  levelEstimates,
  logitInContext,
  spreads,
} from './rates/levels.ts'
export { type LogisticFit, type LogisticInput, logisticRegression } from './rates/logistic.ts'
export { type PredictedShare, predictShare } from './rates/predict-share.ts'
export { fitRootCounts, type RootCountsFit, type RootCountsInput } from './rates/root-counts.ts'
export {
  chanceToAccept,
  type LotSample,
  mostFaulty,
  plantsToInspect,
  plantsToInspectOfMany,
} from './sampling/inspection.ts'
export { differenceAllowed, type ReplicatesJudged, replicatesAgree } from './sampling/seed-test.ts'
export { plantsToCatchVariant, seedlingsFor, seedToSow } from './sampling/seedlings.ts'
export { type HazardRatio, hazardRatio } from './time/hazard-ratio.ts'
export {
  type IntervalScale,
  kaplanMeier,
  type LossesAt,
  type SurvivalPoint,
  timeOfLoss,
} from './time/kaplan-meier.ts'
export { type LogRank, logRank } from './time/log-rank.ts'
export type { Look, LookedAtBatch } from './time/looks.ts'
export {
  type DurationBelief,
  type DurationModel,
  type DurationObservation,
  durationQuantile,
  fitStepDuration,
  predictDuration,
} from './time/step-duration.ts'
export { type StillToTake, type StillToTakeInput, stillToTake } from './time/still-to-take.ts'
export { type DecidedBy, takeByLooks } from './time/take-by-looks.ts'
export {
  chanceStillTakes,
  fitTakeCurve,
  happenedBy,
  type LogNormalTime,
  type TakeCurve,
  timeFromLowHigh,
} from './time/take-curve.ts'
