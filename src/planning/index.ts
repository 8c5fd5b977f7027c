/** The door of planning: orders to starts to forecast to work. */
export { type BenchFill, benchFill, type Stand } from './forecast/bench-fill.ts'
export { expectedBand } from './forecast/expected-band.ts'
export {
  Change,
  Limit,
  Load,
  OrderForecast,
  Outcome,
  PlaceOverflow,
  Plan,
  PlannedStart,
  type Progress,
  RateUsed,
  Rung,
  Task,
  WeekText,
} from './plan.ts'
export { type PlanJobHooks, type PlanWish, planSeason } from './plan-season.ts'
export type { RateBook } from './rates/rate-book.ts'
export { readRateBook } from './rates/read-rate-book.ts'
