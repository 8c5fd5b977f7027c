import { requireWhole, requireWithin } from '../bounds.ts'
import type { SeededRandom } from './seeded-random.ts'
import { stirlingRest } from './stirling-rest.ts'

/** Fewer expected than this: counting up the probabilities is quicker than rejection (measured). */
const FEW = 10

/**
 * How many of `number` plants survive when each does so with chance `share`: an exact draw from Binomial(n, p).
 * Few expected: inversion, one uniform number. Many: rejection from a transformed uniform number with squeeze,
 * in a time that does not grow with n.
 *
 * @param number whole, 0 to 1e9
 * @param share 0 to 1
 * @throws RangeError for an argument out of range
 * @source Hörmann 1993, Journal of Statistical Computation and Simulation 46:101-110 (algorithm BTRS)
 * @example drawBinomial(seededRandom(1), 100, 0.6) // 60
 */
export function drawBinomial(random: SeededRandom, number: number, share: number): number {
  requireWhole('drawBinomial', 'number', number, 0, 1e9)
  requireWithin('drawBinomial', 'share', share, 0, 1)
  if (share > 0.5) return number - drawOfRarer(random, number, 1 - share)
  return drawOfRarer(random, number, share)
}

function drawOfRarer(random: SeededRandom, n: number, p: number): number {
  if (n === 0 || p === 0) return 0
  return n * p < FEW ? byInversion(random, n, p) : byRejection(random, n, p)
}

function byInversion(random: SeededRandom, n: number, p: number): number {
  const odds = p / (1 - p)
  let left = random.uniform()
  let chance = Math.exp(n * Math.log1p(-p))
  let k = 0
  while (left > chance && k < n) {
    left -= chance
    k++
    chance *= (odds * (n - k + 1)) / k
  }
  return k
}

function byRejection(random: SeededRandom, n: number, p: number): number {
  const odds = p / (1 - p)
  const spread = Math.sqrt(n * p * (1 - p))
  const b = 1.15 + 2.53 * spread
  const a = -0.0873 + 0.0248 * b + 0.01 * p
  const c = n * p + 0.5
  const quick = 0.92 - 4.2 / b
  const alpha = (2.83 + 5.1 / b) * spread
  const mode = Math.floor((n + 1) * p)
  for (;;) {
    const u = random.uniform() - 0.5
    const v = random.uniform()
    const side = 0.5 - Math.abs(u)
    const k = Math.floor(((2 * a) / side + b) * u + c)
    if (side >= 0.07 && v <= quick) return k
    if (k < 0 || k > n) continue
    const logHeight = Math.log((v * alpha) / (a / (side * side) + b))
    const logRatio =
      (mode + 0.5) * Math.log((mode + 1) / (odds * (n - mode + 1))) +
      stirlingRest(mode) +
      stirlingRest(n - mode) +
      (n + 1) * Math.log((n - mode + 1) / (n - k + 1)) +
      (k + 0.5) * Math.log((odds * (n - k + 1)) / (k + 1)) -
      stirlingRest(k) -
      stirlingRest(n - k)
    if (logHeight <= logRatio) return k
  }
}
