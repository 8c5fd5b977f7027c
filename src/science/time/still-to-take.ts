import { requireAbove, requireWhole, requireWithin } from '../bounds.ts'
import { betaQuantile } from '../distributions/beta.ts'
import { type BetaParameters, betaOfMoments } from '../numerics/logistic-normal.ts'
import { happenedBy, type TakeCurve } from './take-curve.ts'

export interface StillToTakeInput {
  /** The timing of taking and dying (`takesInTheEnd` of the curve is not used: each batch has its own). */
  readonly curve: Pick<TakeCurve, 'toTake' | 'toDie'>
  /** What was expected of this batch's share before it was looked at. */
  readonly expected: BetaParameters
  readonly day: number
  readonly taken: number
  readonly dead: number
  readonly undecided: number
}

export interface StillToTake {
  /** Share of the undecided that still takes: its mean, and the Beta about it. */
  readonly chance: number
  readonly alpha: number
  readonly beta: number
  /** Share of all worked that will have taken in the end, with nine in ten from low to high. */
  readonly endShare: number
  readonly endLow: number
  readonly endHigh: number
}

const POINTS = 1000

/**
 * What is still to come of a batch on the day of a look: the batch's own share π is learnt from what was expected and
 * from the counts so far, π^taken · (1 − π)^dead · (π·S + (1 − π)·R)^undecided with S and R the shares of takers and
 * of the others not yet seen to be so; each undecided plant then takes with π·S / (π·S + (1 − π)·R).
 *
 * @returns Beta for the share of the undecided that take: the number is beta-binomial; integration error below 1e-3
 * @throws RangeError for an argument out of range
 * @source Bayes' rule; the model is ours, after Farewell 1982
 * @example stillToTake({ curve: { toTake: timeFromLowHigh(14, 28), toDie: null }, expected: { alpha: 16, beta: 4
 *   }, day: 21, taken: 30, dead: 0, undecided: 20 }).chance // 0.7148
 */
export function stillToTake(input: StillToTakeInput): StillToTake {
  const { curve, expected, day, taken, dead, undecided } = input
  requireWithin('stillToTake', 'day', day, 0, Number.MAX_VALUE)
  for (const [name, value] of Object.entries({ taken, dead, undecided }))
    requireWhole('stillToTake', name, value, 0)
  requireAbove('stillToTake', 'expected.alpha', expected.alpha, 0)
  requireAbove('stillToTake', 'expected.beta', expected.beta, 0)
  const takersLeft = 1 - happenedBy(curve.toTake, day)
  const othersLeft = 1 - (curve.toDie === null ? 0 : happenedBy(curve.toDie, day))
  const whole = taken + dead + undecided
  let highest = Number.NEGATIVE_INFINITY
  const logs = new Float64Array(POINTS)
  const shares = new Float64Array(POINTS)
  for (let i = 0; i < POINTS; i++) {
    // Even steps in the angle put more points near 0 and 1, where good and bad batches end.
    const share = Math.sin((Math.PI * (i + 0.5)) / (2 * POINTS)) ** 2
    const left = share * takersLeft + (1 - share) * othersLeft
    const log =
      (expected.alpha + taken - 0.5) * Math.log(share) +
      (expected.beta + dead - 0.5) * Math.log1p(-share) +
      (undecided > 0 ? undecided * Math.log(Math.max(left, 1e-300)) : 0)
    shares[i] = share
    logs[i] = log
    highest = Math.max(highest, log)
  }
  let total = 0
  let first = 0
  let second = 0
  let end = 0
  let endSquare = 0
  for (let i = 0; i < POINTS; i++) {
    const weight = Math.exp(logs[i]! - highest)
    const share = shares[i]!
    const takes = share * takersLeft
    const left = takes + (1 - share) * othersLeft
    const still = left > 0 ? takes / left : 0
    total += weight
    first += weight * still
    second += weight * still * still
    const atEnd = whole > 0 ? (taken + undecided * still) / whole : share
    end += weight * atEnd
    // The undecided decide one by one: binomial chance on top.
    endSquare +=
      weight * (atEnd * atEnd + (whole > 0 ? (undecided * still * (1 - still)) / (whole * whole) : 0))
  }
  const chance = first / total
  const bounded = Math.min(Math.max(chance, 1e-6), 1 - 1e-6)
  const { alpha, beta } = betaOfMoments(bounded, Math.max(second / total - chance * chance, 1e-9 * bounded))
  const endShare = end / total
  const endVariance = endSquare / total - endShare * endShare
  const settled = undecided === 0 || endVariance < 1e-12
  const ofEnd = betaOfMoments(Math.min(Math.max(endShare, 1e-6), 1 - 1e-6), Math.max(endVariance, 1e-12))
  return {
    chance,
    alpha,
    beta,
    endShare,
    endLow: settled && whole > 0 ? endShare : betaQuantile(0.05, ofEnd.alpha, ofEnd.beta),
    endHigh: settled && whole > 0 ? endShare : betaQuantile(0.95, ofEnd.alpha, ofEnd.beta),
  }
}
