import { requireAbove } from '../bounds.ts'
import { drawNormal } from './draw-normal.ts'
import type { SeededRandom } from './seeded-random.ts'

/**
 * A draw from the gamma distribution of scale 1, by rejection from a cubed normal.
 * @param shape above 0
 * @throws RangeError for an argument out of range
 * @source Marsaglia & Tsang 2000, ACM Transactions on Mathematical Software 26:363-372
 * @example drawGamma(seededRandom(1), 3) // 2.617
 */
export function drawGamma(random: SeededRandom, shape: number): number {
  requireAbove('drawGamma', 'shape', shape, 0)
  return shape < 1 ? Math.exp(drawLogGamma(random, shape)) : drawOfOneOrMore(random, shape)
}

/**
 * A draw from Beta(alpha, beta): the first of two gammas as a share of both; below 1 in logarithms, so that very small
 * shapes do not run under.
 * @param alpha above 0
 * @param beta above 0
 * @returns 0 to 1
 * @throws RangeError for an argument out of range
 * @source as `drawGamma`; a Beta as the share of two gammas
 * @example drawBeta(seededRandom(1), 8, 2) // 0.7744
 */
export function drawBeta(random: SeededRandom, alpha: number, beta: number): number {
  requireAbove('drawBeta', 'alpha', alpha, 0)
  requireAbove('drawBeta', 'beta', beta, 0)
  if (alpha < 1 || beta < 1)
    return 1 / (1 + Math.exp(drawLogGamma(random, beta) - drawLogGamma(random, alpha)))
  const lives = drawOfOneOrMore(random, alpha)
  return lives / (lives + drawOfOneOrMore(random, beta))
}

function drawOfOneOrMore(random: SeededRandom, shape: number): number {
  const d = shape - 1 / 3
  const c = 1 / Math.sqrt(9 * d)
  for (;;) {
    const normal = drawNormal(random)
    const root = 1 + c * normal
    if (root <= 0) continue
    const v = root * root * root
    const square = normal * normal
    const uniform = random.uniform()
    if (uniform < 1 - 0.0331 * square * square) return d * v
    if (Math.log(uniform) < 0.5 * square + d * (1 - v + Math.log(v))) return d * v
  }
}

/** Below 1: a draw of shape + 1 times the power 1/shape of a uniform number. */
function drawLogGamma(random: SeededRandom, shape: number): number {
  if (shape >= 1) return Math.log(drawOfOneOrMore(random, shape))
  return Math.log(drawOfOneOrMore(random, shape + 1)) + Math.log(random.uniform()) / shape
}
