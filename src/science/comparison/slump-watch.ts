import gammaln from '@stdlib/math-base-special-gammaln'
import { requireAbove, requireBetween, requireWhole } from '../bounds.ts'
import { logitOfShare, shareOfLogit } from '../numerics/logit.ts'

export interface WatchedBatch {
  readonly entered: number
  readonly survived: number
  /** What was expected of the batch before it was counted (see `predictShare`). */
  readonly alpha: number
  readonly beta: number
}

export interface SlumpWatch {
  /** Chance that a slump is on now, were one to begin once in `batchesBetweenSlumps`. */
  readonly chance: number
  /** The Shiryaev–Roberts statistic; the alarm sounds at `batchesBetweenFalseAlarms`. */
  readonly statistic: number
  readonly alarm: boolean
  /** The batch (counted from 0) with which the slump most likely began, and how far down: odds times this. */
  readonly since: number
  readonly oddsRatio: number
}

export interface SlumpOptions {
  /** With nothing wrong, an alarm comes on average no more often than once in so many batches. */
  readonly batchesBetweenFalseAlarms?: number
  readonly batchesBetweenSlumps?: number
}

/** Slumps looked for: odds of survival times 0.7, 0.5, 0.35 or 0.2, each as likely as the others. Our choice. */
const SLUMPS = [0.7, 0.5, 0.35, 0.2] as const

/**
 * Early warning that rates have fallen below what was expected: after each batch, how much more likely the counts of
 * the last batches are under a slump than without one. Batches vary anyway, so both sides are beta-binomial.
 *
 * The statistic R ← (1 + R)·(chance under slump / chance as expected), averaged over the slumps looked for, grows by
 * one a batch on average while nothing is wrong; so an alarm at R ≥ A comes at most once in A batches on average,
 * whatever the batches' sizes. The chance is Shiryaev's posterior for a slump beginning at a constant rate.
 *
 * @param batches in the order in which they were counted
 * @returns one entry for each batch
 * @throws RangeError for an argument out of range
 * @source Shiryaev 1963, Theory Probab. Appl. 8:22-46; Roberts 1966, Technometrics 8:411-430; from memory; false-alarm
 *   rate checked by simulation
 * @example watchForSlump([{ entered: 50, survived: 20, alpha: 16, beta: 4 }])[0].chance // 0.3718
 */
export function watchForSlump(
  batches: readonly WatchedBatch[],
  options: SlumpOptions = {},
): readonly SlumpWatch[] {
  const between = options.batchesBetweenFalseAlarms ?? 200
  const slumpEvery = options.batchesBetweenSlumps ?? 100
  requireAbove('watchForSlump', 'batchesBetweenFalseAlarms', between, 1)
  requireAbove('watchForSlump', 'batchesBetweenSlumps', slumpEvery, 1)
  const rate = 1 / slumpEvery
  const tails: Tail[] = SLUMPS.map(() => ({ sum: 0, since: 0 }))
  const statistics = SLUMPS.map(() => 0)
  const odds = SLUMPS.map(() => 0)
  return batches.map((batch, now) => {
    requireWhole('watchForSlump', 'entered', batch.entered, 0)
    requireWhole('watchForSlump', 'survived', batch.survived, 0, batch.entered)
    requireBetween('watchForSlump', 'alpha', batch.alpha, 0, Number.POSITIVE_INFINITY)
    requireBetween('watchForSlump', 'beta', batch.beta, 0, Number.POSITIVE_INFINITY)
    const ratios = SLUMPS.map(slump => logLikelihoodRatio(batch, slump))
    SLUMPS.forEach((_, s) => {
      const ratio = Math.exp(ratios[s]!)
      tails[s] = longer(tails[s]!, ratios[s]!, now)
      statistics[s] = Math.min((1 + statistics[s]!) * ratio, 1e300)
      odds[s] = Math.min(((odds[s]! + rate) / (1 - rate)) * ratio, 1e300)
    })
    const statistic = statistics.reduce((sum, value) => sum + value, 0) / SLUMPS.length
    const oddsNow = odds.reduce((sum, value) => sum + value, 0) / SLUMPS.length
    const { since, oddsRatio } = mostLikelyStart(tails)
    return { chance: oddsNow / (1 + oddsNow), statistic, alarm: statistic >= between, since, oddsRatio }
  })
}

/** log of P(count | slump) / P(count | as expected): the mean moves, the spread between batches stays. */
function logLikelihoodRatio({ entered, survived, alpha, beta }: WatchedBatch, slump: number): number {
  const precision = alpha + beta
  const mean = shareOfLogit(logitOfShare(alpha / precision) + Math.log(slump))
  const log = (a: number, b: number) =>
    gammaln(a + survived) - gammaln(a) + gammaln(b + entered - survived) - gammaln(b)
  return log(mean * precision, (1 - mean) * precision) - log(alpha, beta)
}

/** Of the runs that end with the last batch the one that speaks most for a slump: its log likelihood ratio and first batch. */
interface Tail {
  readonly sum: number
  readonly since: number
}

/** With one batch more: it goes on with what speaks for a slump, and else begins there. */
const longer = ({ sum, since }: Tail, ratio: number, now: number): Tail =>
  sum > 0 ? { sum: sum + ratio, since } : { sum: ratio, since: now }

function mostLikelyStart(tails: readonly Tail[]): { since: number; oddsRatio: number } {
  let best = 0
  tails.forEach(({ sum }, s) => {
    if (sum > tails[best]!.sum) best = s
  })
  return { since: tails[best]!.since, oddsRatio: SLUMPS[best]! }
}
