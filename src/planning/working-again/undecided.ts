import { betaQuantile } from '../../science/index.ts'

/** What is expected of those that were undecided at a look. */
export interface StillToTake {
  readonly mean: number
  readonly low: number
  readonly high: number
}

/**
 * How many of the undecided still take.
 *
 * Of all worked, a share p takes, at any time of the step alike; the others never do. So of those undecided when the part
 * f of the step's time is over, p(1 − f) ÷ (p(1 − f) + 1 − p) still take, with the spread between batches of p.
 * @param share the Beta of the step
 * @param partOver part of the step's usual time that is over, 0 to 1 or more
 * @returns plants; nine cases of ten lie from low to high
 * @source Bayes' rule; the even spread over the step is our choice, no source
 * @example p = 0.8, half of the time over, 40 undecided: 40 · 0.4 ÷ 0.6 = 26.7
 */
export function undecidedThatTake(
  share: { readonly alpha: number; readonly beta: number },
  undecided: number,
  partOver: number,
): StillToTake {
  const left = Math.max(0, 1 - partOver)
  // Of each share p of the batch, what is still to take; rising in p, so the quantiles go through.
  const later = (p: number) => (p >= 1 ? 1 : (p * left) / (p * left + 1 - p))
  const { alpha, beta } = share
  return {
    mean: undecided * later(alpha / (alpha + beta)),
    low: undecided * later(betaQuantile(0.05, alpha, beta)),
    high: undecided * later(betaQuantile(0.95, alpha, beta)),
  }
}
