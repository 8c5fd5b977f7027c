/** The door of planning: orders to starts to forecast to work. */
export { planAsMps } from './answer/plan-as-mps.ts'
export { type FullBench, fullBenches } from './attention/full-benches.ts'
export { type FullPlace, fullPlaces, WEEKS_WARNED } from './attention/full-places.ts'
export { type LateBatch, lateBatches } from './attention/late-batches.ts'
export { type PoorTake, poorTakes } from './attention/poor-takes.ts'
export { type Slump, type SlumpOf, slumps } from './attention/slumps.ts'
export { type StaleLot, staleLots } from './attention/stale-lots.ts'
export { type BenchFill, benchFill, type Stand } from './forecast/bench-fill.ts'
export { expectedBand } from './forecast/expected-band.ts'
export type { HowFar } from './how-far.ts'
export {
  Change,
  Limit,
  Load,
  OrderForecast,
  Outcome,
  PlaceOverflow,
  Plan,
  PlannedStart,
  Planting,
  type Progress,
  RateUsed,
  Rung,
  Task,
  WeekText,
} from './plan.ts'
export { type PlanMemory, planMemory } from './plan-memory.ts'
export { type PlanJobHooks, type PlanWish, planSeason } from './plan-season.ts'
export {
  type CouldBePromised,
  couldBePromised,
  type PromiseAsked,
} from './promise/could-be-promised.ts'
export type { PlanBeside } from './promise/starts-of-plan.ts'
export { latestSet, type RateBook } from './rates/rate-book.ts'
export { readRateBook } from './rates/read-rate-book.ts'
export type { Season, SeasonStart } from './season.ts'
export { type Line, takeRuns } from './simulate/shared-runs.ts'
export { type SimulatedSeasons, type SimulationInput, simulateSeasons } from './simulate/simulate-seasons.ts'
export { type MoveAsked, type StartMoved, startMoved } from './what-if/start-moved.ts'
export { Supposed } from './what-if/supposed.ts'
export { type WhatIfMemory, whatIf, whatIfMemory } from './what-if/what-if.ts'
export { WhatIf } from './what-if/what-if-answer.ts'
export { type WorkAgain, workAgain } from './working-again/work-again.ts'
