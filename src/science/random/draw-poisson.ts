import { requireWithin } from '../bounds.ts'
import type { SeededRandom } from './seeded-random.ts'
import { stirlingRest } from './stirling-rest.ts'

const FEW = 10

/**
 * An exact draw from the Poisson distribution: inversion below a mean of 10, transformed rejection above.
 * @param mean 0 to 1e9
 * @throws RangeError for an argument out of range
 * @source Hörmann 1993, Insurance: Mathematics and Economics 12:39-45 (algorithm PTRS)
 * @example drawPoisson(seededRandom(1), 4) // 4
 */
export function drawPoisson(random: SeededRandom, mean: number): number {
  requireWithin('drawPoisson', 'mean', mean, 0, 1e9)
  return mean < FEW ? byInversion(random, mean) : byRejection(random, mean)
}

function byInversion(random: SeededRandom, mean: number): number {
  let left = random.uniform()
  let chance = Math.exp(-mean)
  let k = 0
  // Beyond 200 the chance at a mean below 10 is under 1e-170: what is left there is rounding.
  while (left > chance && k < 200) {
    left -= chance
    k++
    chance *= mean / k
  }
  return k
}

function byRejection(random: SeededRandom, mean: number): number {
  const b = 0.931 + 2.53 * Math.sqrt(mean)
  const a = -0.059 + 0.02483 * b
  const inverseAlpha = 1.1239 + 1.1328 / (b - 3.4)
  const quick = 0.9277 - 3.6224 / (b - 2)
  for (;;) {
    const u = random.uniform() - 0.5
    const v = random.uniform()
    const side = 0.5 - Math.abs(u)
    const k = Math.floor(((2 * a) / side + b) * u + mean + 0.43)
    if (side >= 0.07 && v <= quick) return k
    if (k < 0 || (side < 0.013 && v > side)) continue
    const logHeight = Math.log((v * inverseAlpha) / (a / (side * side) + b))
    const logChance =
      k * Math.log(mean / (k + 1)) + (k + 1 - mean) - 0.5 * Math.log(2 * Math.PI * (k + 1)) - stirlingRest(k)
    if (logHeight <= logChance) return k
  }
}
