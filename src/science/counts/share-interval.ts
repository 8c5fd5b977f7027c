import { requireBetween, requireWhole } from '../bounds.ts'
import { betaQuantile } from '../distributions/beta.ts'
import { normalQuantile } from '../distributions/normal.ts'

/** A range for a share: lower and upper limit, 0 to 1. */
export type Interval = readonly [lower: number, upper: number]

/**
 * Range of the true share after `survived` of `entered`, exact: in the long run it holds the truth at least as often as
 * it says (Clopper–Pearson); wider than needed.
 * @param survived whole, 0 to entered
 * @param entered whole, 1 or more
 * @param confidence between 0 and 1
 * @throws RangeError for an argument out of range
 * @source Clopper & Pearson 1934, Biometrika 26:404-413
 * @example exactInterval(15, 148, 0.95) // [0.0578, 0.1617]
 */
export function exactInterval(survived: number, entered: number, confidence: number): Interval {
  requireCounts('exactInterval', survived, entered, confidence)
  const tail = (1 - confidence) / 2
  return [
    survived === 0 ? 0 : betaQuantile(tail, survived, entered - survived + 1),
    survived === entered ? 1 : betaQuantile(1 - tail, survived + 1, entered - survived),
  ]
}

/**
 * The exact limit on one side: with `confidence` the true share is not above `upper`, or not below `lower`.
 * None dead of 20: up to 13.9 % could be dying.
 * @source Clopper & Pearson 1934, Biometrika 26:404-413
 * @example exactOneSided(0, 20, 0.95).upper // 0.1391
 */
export function exactOneSided(
  survived: number,
  entered: number,
  confidence: number,
): { lower: number; upper: number } {
  const [lower, upper] = exactInterval(survived, entered, 2 * confidence - 1)
  return { lower, upper }
}

/**
 * Range of the true share by the score test (Wilson): right on average, good for small numbers too, never outside
 * 0 to 1. The one to show when one has to be chosen.
 * @throws RangeError for an argument out of range
 * @source Wilson 1927, J. American Statistical Association 22:209-212; Newcombe 1998, Statistics in Medicine 17:857-872
 * @example wilsonInterval(81, 263, 0.95) // [0.2553, 0.3662]
 */
export function wilsonInterval(survived: number, entered: number, confidence: number): Interval {
  requireCounts('wilsonInterval', survived, entered, confidence)
  const z = normalQuantile(0.5 + confidence / 2)
  const share = survived / entered
  const middle = survived + (z * z) / 2
  const half = z * Math.sqrt(entered * share * (1 - share) + (z * z) / 4)
  const all = entered + z * z
  return [survived === 0 ? 0 : (middle - half) / all, survived === entered ? 1 : (middle + half) / all]
}

/**
 * Wilson's range with correction for whole counts: nearly as cautious as the exact one.
 * @source Newcombe 1998, Statistics in Medicine 17:857-872 (method 4)
 * @example wilsonCorrectedInterval(0, 20, 0.95) // [0, 0.2005]
 */
export function wilsonCorrectedInterval(survived: number, entered: number, confidence: number): Interval {
  requireCounts('wilsonCorrectedInterval', survived, entered, confidence)
  const z = normalQuantile(0.5 + confidence / 2)
  const p = survived / entered
  const q = 1 - p
  const all = 2 * (entered + z * z)
  const middle = 2 * survived + z * z
  return [
    survived === 0
      ? 0
      : Math.max(0, (middle - 1 - z * Math.sqrt(z * z - 2 - 1 / entered + 4 * p * (entered * q + 1))) / all),
    survived === entered
      ? 1
      : Math.min(1, (middle + 1 + z * Math.sqrt(z * z + 2 - 1 / entered + 4 * p * (entered * q - 1))) / all),
  ]
}

/**
 * Range that holds the middle of what is believed after the counts, beginning from Jeffreys' Beta(1/2, 1/2).
 * The lower limit is 0 when none survived, the upper 1 when all did.
 * @throws RangeError for an argument out of range
 * @source Brown, Cai & DasGupta 2001, Statistical Science 16:101-133
 * @example jeffreysInterval(1, 20, 0.95) // [0.0054, 0.2108]
 */
export function jeffreysInterval(survived: number, entered: number, confidence: number): Interval {
  requireCounts('jeffreysInterval', survived, entered, confidence)
  const tail = (1 - confidence) / 2
  const alpha = survived + 0.5
  const beta = entered - survived + 0.5
  return [
    survived === 0 ? 0 : betaQuantile(tail, alpha, beta),
    survived === entered ? 1 : betaQuantile(1 - tail, alpha, beta),
  ]
}

/**
 * The plain range about (survived + z²/2) / (entered + z²); it may reach outside 0 to 1.
 * @source Agresti & Coull 1998, The American Statistician 52:119-126
 * @example agrestiCoullInterval(1, 20, 0.95) // [-0.0091, 0.2541]
 */
export function agrestiCoullInterval(survived: number, entered: number, confidence: number): Interval {
  requireCounts('agrestiCoullInterval', survived, entered, confidence)
  const z = normalQuantile(0.5 + confidence / 2)
  const all = entered + z * z
  const share = (survived + (z * z) / 2) / all
  const half = z * Math.sqrt((share * (1 - share)) / all)
  return [share - half, share + half]
}

function requireCounts(place: string, survived: number, entered: number, confidence: number): void {
  requireWhole(place, 'entered', entered, 1)
  requireWhole(place, 'survived', survived, 0, entered)
  requireBetween(place, 'confidence', confidence, 0, 1)
}
