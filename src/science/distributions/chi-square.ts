import gammaln from '@stdlib/math-base-special-gammaln'
import { requireAbove } from '../bounds.ts'

/**
 * Chance that a chi-square variable exceeds x: Q(degrees / 2, x / 2), by series below and continued fraction
 * above x = degrees + 2.
 *
 * @param x 0 or more; below 0 the chance is 1
 * @param degreesOfFreedom above 0
 * @returns relative error below 1e-12
 * @throws RangeError for an argument out of range
 * @source Abramowitz & Stegun 1964, 26.4, 6.5.29 and 6.5.31
 * @example chiSquareAbove(3.841459, 1) // 0.05
 */
export function chiSquareAbove(x: number, degreesOfFreedom: number): number {
  requireAbove('chiSquareAbove', 'degreesOfFreedom', degreesOfFreedom, 0)
  if (!(x > 0)) return 1
  const a = degreesOfFreedom / 2
  const z = x / 2
  const front = Math.exp(a * Math.log(z) - z - gammaln(a))
  if (z < a + 1) {
    let term = 1 / a
    let sum = term
    for (let n = 1; term > sum * 1e-17; n++) {
      term *= z / (a + n)
      sum += term
    }
    return 1 - front * sum
  }
  // Lentz's method for the continued fraction.
  let b = z + 1 - a
  let c = 1e300
  let d = 1 / b
  let h = d
  for (let n = 1; n < 10_000; n++) {
    const an = -n * (n - a)
    b += 2
    d = 1 / (an * d + b)
    c = b + an / c
    const delta = c * d
    h *= delta
    if (Math.abs(delta - 1) < 1e-16) break
  }
  return front * h
}
