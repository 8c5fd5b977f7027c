import { requireBetween, requireWhole } from '../bounds.ts'
import { quantile } from '../distributions/normal.ts'
import { type CourseInput, type Outcome, outcomeOf, type Spread } from './outcome.ts'

export interface NeededInput extends CourseInput {
  /** Plants wanted at the end. */
  readonly wanted: number
  /** How sure to be of getting them, between 0 and 1. */
  readonly sure: number
}

export interface Needed {
  readonly start: number
  /** Chance of at least `wanted` from `start`, and from one plant fewer. */
  readonly chance: number
  readonly chanceOneFewer: number
  readonly spread: Spread
}

/** A chance this near to `sure` has reached it: an exact tie is not lost to rounding. */
const TIE = 1e-10
const MOST = 1e9

/**
 * How many plants to start so that at least `wanted` come through all steps with the chance `sure`: the smallest
 * start with P(out ≥ wanted) ≥ sure.
 *
 * The rates are those of one batch: a known share, or a Beta over batches. Given the rates each plant lives or dies by
 * itself (binomial); the rates of different steps are independent unless `yearShare` says otherwise; splitting
 * over `batches` with their own rates lowers the need.
 *
 * @param input wanted 0 to 1e8, sure between 0 and 1, shares 0 to 1, alpha and beta above 0, yearShare 0 to 1
 * @returns plants; chances with absolute error below 1e-8 up to 100,000 plants
 * @throws RangeError when no start up to 1e9 reaches the chance, as with a known share of 0
 * @source beta-binomial: Skellam 1948, J. Royal Statistical Society B 10:257-261; method in `chanceOfCourse`
 * @example needed({ wanted: 100, sure: 0.9, steps: [{ kind: 'uncertain', alpha: 8, beta: 2 }] }).start // 159
 */
export function needed(input: NeededInput): Needed {
  const { wanted, sure } = input
  requireWhole('needed', 'wanted', wanted, 0, 1e8)
  requireBetween('needed', 'sure', sure, 0, 1)
  const outcome = outcomeOf('needed', input, wanted)
  const { start, chance, chanceOneFewer } = smallestStart(outcome, wanted, sure)
  return { start, chance, chanceOneFewer, spread: outcome.spread(start) }
}

export interface ChanceInput extends CourseInput {
  readonly wanted: number
  readonly start: number
}

/**
 * Chance that at least `wanted` of `start` plants come through all steps.
 * @throws RangeError for an argument out of range
 * @source as `needed`
 * @example chanceOfAtLeast({ wanted: 100, start: 159, steps: [{ kind: 'uncertain', alpha: 8, beta: 2 }] }) // 0.9007
 */
export function chanceOfAtLeast(input: ChanceInput): number {
  requireWhole('chanceOfAtLeast', 'wanted', input.wanted, 0)
  requireWhole('chanceOfAtLeast', 'start', input.start, 0, MOST)
  return outcomeOf('chanceOfAtLeast', input, input.start).chance(input.wanted, input.start)
}

/**
 * What comes out of a start: mean, standard deviation and the numbers below which 10, 50 and 90 of 100 cases stay.
 * @throws RangeError for an argument out of range
 * @source as `needed`; moments of a beta-binomial chain
 * @example spreadOfStart({ start: 143, steps: [{ kind: 'uncertain', alpha: 8, beta: 2 }] }).mean // 114.4
 */
export function spreadOfStart(input: CourseInput & { readonly start: number }): Spread {
  requireWhole('spreadOfStart', 'start', input.start, 0, MOST)
  return outcomeOf('spreadOfStart', input, input.start).spread(input.start)
}

/**
 * The search. The chance rises with the start, so that two ends close in on the place where it passes `sure`; normal
 * scores are nearly straight in the logarithm of the start, so that a straight line through the last two aims well.
 */
export function smallestStart(
  outcome: Pick<Outcome, 'meanShare' | 'chance'>,
  wanted: number,
  sure: number,
): { start: number; chance: number; chanceOneFewer: number } {
  if (wanted === 0) return { start: 0, chance: 1, chanceOneFewer: 0 }
  const goal = quantile(sure)
  let low = wanted - 1
  let atLow = 0
  let high = Number.POSITIVE_INFINITY
  let atHigh = 1
  let next = Math.max(wanted, Math.ceil(wanted / Math.max(outcome.meanShare, 1e-9)))
  let before: { logStart: number; score: number } | null = null
  for (let round = 0; high - low > 1; round++) {
    if (next > MOST)
      throw new RangeError(`needed: sure must be reachable with at most ${MOST} plants started, got ${sure}`)
    const chance = outcome.chance(wanted, next)
    if (chance >= sure - TIE) {
      high = next
      atHigh = chance
    } else {
      low = next
      atLow = chance
    }
    const logStart = Math.log(next)
    const score = quantile(Math.min(Math.max(chance, 1e-15), 1 - 1e-15))
    const rise = before ? (score - before.score) / (logStart - before.logStart) : Number.NaN
    before = { logStart, score }
    const halfWay = high < Number.POSITIVE_INFINITY ? (low + high) / 2 : 2 * low + 1
    let aim = rise > 0 ? Math.exp(logStart + (goal - score) / rise) : next * (score < goal ? 1.1 : 0.95)
    if (round % 4 === 3 || !Number.isFinite(aim)) aim = halfWay
    // An aim at where it stands goes one plant on, so that the two ends meet from both sides.
    aim = Math.round(aim)
    if (aim === next) aim += score < goal ? 1 : -1
    next = Math.min(Math.max(aim, low + 1), high < Number.POSITIVE_INFINITY ? high - 1 : 10 * low + 10)
  }
  return { start: high, chance: atHigh, chanceOneFewer: atLow }
}
