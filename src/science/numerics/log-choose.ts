import gammaln from '@stdlib/math-base-special-gammaln'

/** Natural logarithm of the number of ways to choose k of n. */
export const logChoose = (n: number, k: number): number =>
  gammaln(n + 1) - gammaln(k + 1) - gammaln(n - k + 1)
