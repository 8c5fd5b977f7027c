import digamma from '@stdlib/math-base-special-digamma'
import { requireAbove } from '../bounds.ts'
import { normalRule } from './gauss-hermite.ts'
import { shareOfLogit } from './logit.ts'
import { trigamma } from './trigamma.ts'

/** What fits between two numbers of a Beta: alpha and beta above 0. */
export interface BetaParameters {
  readonly alpha: number
  readonly beta: number
}

/** The Beta with a given mean (between 0 and 1) and variance (below mean · (1 − mean)). */
export function betaOfMoments(mean: number, variance: number): BetaParameters {
  const precision = Math.max((mean * (1 - mean)) / variance - 1, 1e-3)
  return { alpha: mean * precision, beta: (1 - mean) * precision }
}

/**
 * Mean and variance of a share whose logit is normal, by 40-point quadrature.
 *
 * @param mean of the logit
 * @param variance of the logit, 0 or more; above 9 the error grows past 1e-4
 * @returns mean and variance of the share, error below 1e-6 for variances up to 2
 * @example shareMoments(0.85, 0.25).mean // 0.691
 */
export function shareMoments(mean: number, variance: number): { mean: number; variance: number } {
  const { points, weights } = normalRule(40)
  const sd = Math.sqrt(variance)
  let first = 0
  let second = 0
  for (let i = 0; i < points.length; i++) {
    const share = shareOfLogit(mean + sd * points[i]!)
    first += weights[i]! * share
    second += weights[i]! * share * share
  }
  return { mean: first, variance: Math.max(second - first * first, 0) }
}

/**
 * Mean and variance of the logit of a share with a Beta distribution: ψ(α) − ψ(β) and ψ′(α) + ψ′(β).
 *
 * @param alpha above 0
 * @param beta above 0
 * @returns mean and variance on the logit scale, absolute error below 1e-10
 * @throws RangeError for an argument out of range
 * @source Johnson, Kotz & Balakrishnan 1995, Continuous Univariate Distributions 2, ch. 25, from memory
 * @example logitMoments(6, 4) // mean 0.45, variance 0.465
 */
export function logitMoments(alpha: number, beta: number): { mean: number; variance: number } {
  requireAbove('logitMoments', 'alpha', alpha, 0)
  requireAbove('logitMoments', 'beta', beta, 0)
  return { mean: digamma(alpha) - digamma(beta), variance: trigamma(alpha) + trigamma(beta) }
}
