import { requireAbove } from '../bounds.ts'
import { drawNormal } from './draw-normal.ts'
import type { SeededRandom } from './seeded-random.ts'

/**
 * A draw from the gamma distribution of scale 1, by rejection from a cubed normal.
 * @param shape above 0
 * @source Marsaglia & Tsang 2000, ACM Transactions on Mathematical Software 26:363-372
 */
export function drawGamma(random: SeededRandom, shape: number): number {
  requireAbove('drawGamma', 'shape', shape, 0)
  return Math.exp(drawLogGamma(random, shape))
}

/**
 * A draw from Beta(alpha, beta): the first of two gammas as a share of both, taken in logarithms so that very small
 * shapes do not run under.
 * @param alpha above 0
 * @param beta above 0
 * @returns 0 to 1
 */
export function drawBeta(random: SeededRandom, alpha: number, beta: number): number {
  requireAbove('drawBeta', 'alpha', alpha, 0)
  requireAbove('drawBeta', 'beta', beta, 0)
  return 1 / (1 + Math.exp(drawLogGamma(random, beta) - drawLogGamma(random, alpha)))
}

function drawLogGamma(random: SeededRandom, shape: number): number {
  // Below 1: a draw of shape + 1 times the power 1/shape of a uniform number.
  const raised = shape < 1
  const d = (raised ? shape + 1 : shape) - 1 / 3
  const c = 1 / Math.sqrt(9 * d)
  for (;;) {
    const normal = drawNormal(random)
    const root = 1 + c * normal
    if (root <= 0) continue
    const v = root * root * root
    const logUniform = Math.log(random.uniform())
    if (logUniform < 0.5 * normal * normal + d - d * v + d * Math.log(v)) {
      const logDraw = Math.log(d * v)
      return raised ? logDraw + Math.log(random.uniform()) / shape : logDraw
    }
  }
}
