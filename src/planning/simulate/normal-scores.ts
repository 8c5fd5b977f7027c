import { normalQuantile } from '../../science/index.ts'

const CELLS = 4096
/** Nearer to 0 or 1 than this share the curve is too steep for straight lines. */
const TAIL = 1 / 64
const table = Float64Array.from({ length: CELLS + 1 }, (_, i) =>
  i === 0 || i === CELLS ? 0 : normalQuantile(i / CELLS),
)

/**
 * The normal score of a uniform number: the z below which that share of a standard normal lies.
 * One uniform number for one score, so more luck is always more; by straight lines from a table, which is four times
 * as quick as the exact quantile.
 * @returns error below 2e-5
 */
export function normalScore(uniform: number): number {
  if (uniform < TAIL || uniform > 1 - TAIL) return normalQuantile(uniform)
  const at = uniform * CELLS
  const cell = at | 0
  const low = table[cell]!
  return low + (at - cell) * (table[cell + 1]! - low)
}
