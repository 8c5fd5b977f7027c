/**
 * Trigamma function ψ′(x), the variance of the logarithm of a gamma variable.
 * Recurrence ψ′(x) = ψ′(x + 1) + 1/x² up to 12, then the asymptotic series.
 *
 * @param x above 0
 * @returns relative error below 1e-13
 * @source Abramowitz & Stegun 1964, 6.4.6 and 6.4.12
 * @example trigamma(1) // π²/6 = 1.644934
 */
export function trigamma(x: number): number {
  let sum = 0
  let z = x
  for (; z < 12; z++) sum += 1 / (z * z)
  const s = 1 / (z * z)
  return sum + 1 / z + s / 2 + (s / z) * (1 / 6 - s * (1 / 30 - s * (1 / 42 - s * (1 / 30 - (s * 5) / 66))))
}
