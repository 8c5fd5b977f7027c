import { requireBetween, requireWhole } from '../bounds.ts'
import { normalCdf, normalQuantile } from '../distributions/normal.ts'

export interface TwoShareSample {
  /** Plants in each of the two lots, rounded up: without and with correction for whole counts. */
  readonly perLot: number
  readonly perLotCorrected: number
  /** The same before rounding. */
  readonly exact: number
  readonly exactCorrected: number
}

/**
 * How many plants in each of two lots to show a difference between two shares by a two-sided test.
 *   n = [z(1 − α/2) √(2 p̄ q̄) + z(power) √(p1 q1 + p2 q2)]² / (p1 − p2)²,
 * corrected for whole counts: n/4 · [1 + √(1 + 4/(n |p1 − p2|))]². With batches that differ among each other more are
 * needed.
 * @param share1 between 0 and 1
 * @param share2 between 0 and 1, not equal to share1
 * @param alpha chance of finding a difference where there is none, such as 0.05
 * @param power chance of finding the difference that there is, such as 0.8
 * @throws RangeError for an argument out of range
 * @source Fleiss, Tytun & Ury 1980, Biometrics 36:343-346
 * @example sampleForTwoShares(0.6, 0.8, 0.05, 0.8).perLot // 82
 */
export function sampleForTwoShares(
  share1: number,
  share2: number,
  alpha: number,
  power: number,
): TwoShareSample {
  requireBetween('sampleForTwoShares', 'share1', share1, 0, 1)
  requireBetween('sampleForTwoShares', 'share2', share2, 0, 1)
  requireBetween('sampleForTwoShares', 'alpha', alpha, 0, 1)
  requireBetween('sampleForTwoShares', 'power', power, alpha, 1)
  const difference = Math.abs(share1 - share2)
  if (difference === 0)
    throw new RangeError(`sampleForTwoShares: share2 must differ from share1, got ${share2}`)
  const mean = (share1 + share2) / 2
  const exact =
    ((normalQuantile(1 - alpha / 2) * Math.sqrt(2 * mean * (1 - mean)) +
      normalQuantile(power) * Math.sqrt(share1 * (1 - share1) + share2 * (1 - share2))) /
      difference) **
    2
  const exactCorrected = (exact / 4) * (1 + Math.sqrt(1 + 4 / (exact * difference))) ** 2
  return { perLot: Math.ceil(exact), perLotCorrected: Math.ceil(exactCorrected), exact, exactCorrected }
}

/**
 * The chance to find the difference with so many plants in each lot: the inverse of `sampleForTwoShares` without the
 * correction.
 * @throws RangeError for an argument out of range
 * @source as `sampleForTwoShares`
 * @example powerForTwoShares(0.6, 0.8, 0.05, 82) // 0.804
 */
export function powerForTwoShares(share1: number, share2: number, alpha: number, perLot: number): number {
  requireBetween('powerForTwoShares', 'share1', share1, 0, 1)
  requireBetween('powerForTwoShares', 'share2', share2, 0, 1)
  requireBetween('powerForTwoShares', 'alpha', alpha, 0, 1)
  requireWhole('powerForTwoShares', 'perLot', perLot, 1)
  const mean = (share1 + share2) / 2
  return normalCdf(
    (Math.sqrt(perLot) * Math.abs(share1 - share2) -
      normalQuantile(1 - alpha / 2) * Math.sqrt(2 * mean * (1 - mean))) /
      Math.sqrt(share1 * (1 - share1) + share2 * (1 - share2)),
  )
}
