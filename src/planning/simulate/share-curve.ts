import { normalCdf } from '../../science/index.ts'

/** Numbers that hold one curve. */
export const CURVE_LENGTH = 8
const REACH = 4
const NODES = Float64Array.from(
  { length: CURVE_LENGTH },
  (_, j) => REACH * Math.cos(((2 * j + 1) * Math.PI) / (2 * CURVE_LENGTH)),
)
const SHARES_AT_NODES = NODES.map(normalCdf)
const GRID = 320
/** The density of the logit is followed down to e^−30 of its height. */
const DEPTH = 30
/** With a Beta this sharp the share is known. */
const SHARP = 1e7
const LOGIT_AT_MOST = 45

/**
 * The share of a Beta as a curve over a normal score: logit of the quantile at Φ(z), as a polynomial through eight
 * points within ±4 (Newton's form). A normal score that is partly shared between batches so gives shares that are
 * each exactly Beta and move together in good and bad years.
 *
 * The quantiles come from summing the density on the logit scale, x^α (1−x)^β, by the rule of Simpson.
 * @param alpha above 0, or 0 where nothing survives
 * @returns eight numbers for `shareAt`; shares within 0.002 of the exact quantile (0.0005 for α, β of 1 or more)
 */
export function shareCurve(alpha: number, beta: number): Float64Array {
  const curve = new Float64Array(CURVE_LENGTH)
  if (!(alpha > 0) || !(beta > 0) || alpha + beta > SHARP) {
    const logit = Math.log(Math.max(alpha, 0)) - Math.log(Math.max(beta, 0))
    curve[0] = Math.min(Math.max(logit, -LOGIT_AT_MOST), LOGIT_AT_MOST)
    return curve
  }
  const logits = logitsAtNodes(alpha, beta)
  for (let j = 0; j < CURVE_LENGTH; j++) curve[j] = logits[j]!
  for (let order = 1; order < CURVE_LENGTH; order++)
    for (let j = CURVE_LENGTH - 1; j >= order; j--)
      curve[j] = (curve[j]! - curve[j - 1]!) / (NODES[j]! - NODES[j - order]!)
  return curve
}

/** The share at a normal score, of the curve that begins at `from` in `curves`. */
export function shareAt(curves: Float64Array, from: number, score: number): number {
  const z = score > REACH ? REACH : Math.max(score, -REACH)
  let logit = curves[from + CURVE_LENGTH - 1]!
  for (let j = CURVE_LENGTH - 2; j >= 0; j--) logit = logit * (z - NODES[j]!) + curves[from + j]!
  return 1 / (1 + Math.exp(-logit))
}

function logitsAtNodes(alpha: number, beta: number): number[] {
  const mode = Math.log(alpha / beta)
  const log = (t: number) => alpha * t - (alpha + beta) * softplus(t)
  const top = log(mode)
  const edge = (direction: 1 | -1) => {
    let inside = 0
    let outside = 1 / Math.sqrt(alpha + beta)
    while (top - log(mode + direction * outside) < DEPTH) {
      inside = outside
      outside *= 2
    }
    for (let i = 0; i < 6; i++) {
      const middle = (inside + outside) / 2
      if (top - log(mode + direction * middle) < DEPTH) inside = middle
      else outside = middle
    }
    return mode + direction * outside
  }
  const from = edge(-1)
  const step = (edge(1) - from) / GRID
  const density = Float64Array.from({ length: GRID + 1 }, (_, i) => Math.exp(log(from + i * step) - top))
  const below = new Float64Array(GRID / 2 + 1)
  for (let pair = 0; pair < GRID / 2; pair++) {
    const i = 2 * pair
    below[pair + 1] = below[pair]! + density[i]! + 4 * density[i + 1]! + density[i + 2]!
  }
  const all = below[GRID / 2]!
  return Array.from(SHARES_AT_NODES, share => {
    const wanted = share * all
    let low = 0
    let high = GRID / 2
    while (high - low > 1) {
      const middle = (low + high) >> 1
      if (below[middle]! <= wanted) low = middle
      else high = middle
    }
    // Between two points of the sum: a parabola through the density, followed by halving.
    const [a, b, c] = [density[2 * low]!, density[2 * low + 1]!, density[2 * low + 2]!]
    const rest = wanted - below[low]!
    const sumTo = (x: number) =>
      6 * (a * x + ((-3 * a + 4 * b - c) * (x * x)) / 2 + ((2 * a - 4 * b + 2 * c) * (x * x * x)) / 3)
    let left = 0
    let right = 1
    for (let i = 0; i < 24; i++) {
      const middle = (left + right) / 2
      if (sumTo(middle) <= rest) left = middle
      else right = middle
    }
    return from + 2 * step * (low + left)
  })
}

const softplus = (t: number) => (t > 0 ? t + Math.log1p(Math.exp(-t)) : Math.log1p(Math.exp(t)))
