import type { StockLine } from './runs.ts'

/** How many trees of some kinds could be promised more, week by week, season by season. */
export interface Promisable {
  note(line: number, week: number, onHand: number, outgrown: number): void
  /** Adds, by watched kind and week, what may leave in that week so that nobody later goes without. */
  endSeason(row: number): void
}

/**
 * What is on hand at the end of a week, all deliveries made, may be promised as far as it is not needed later:
 *   promisable(w) = min over v ≥ w of onHand(v) + outgrown(w … v)
 * Trees that would be outgrown by the end of v are in nobody's way.
 */
export function promisable(
  watched: readonly number[],
  lines: readonly StockLine[],
  weeks: number,
  into: Int32Array,
): Promisable {
  const onHand = new Int32Array(watched.length * weeks)
  const outgrown = new Int32Array(watched.length * weeks)
  const rowOf = lines.map(line => watched.indexOf(line.kind))
  return {
    note(line, week, number, gone) {
      const row = rowOf[line]!
      if (row < 0) return
      onHand[row * weeks + week]! += number
      outgrown[row * weeks + week]! += gone
    },
    endSeason(season) {
      for (let row = 0; row < watched.length; row++) {
        let least = Number.POSITIVE_INFINITY
        for (let week = weeks - 1; week >= 0; week--) {
          const at = row * weeks + week
          least = Math.min(onHand[at]!, least) + outgrown[at]!
          into[season * onHand.length + at]! += least
        }
      }
      onHand.fill(0)
      outgrown.fill(0)
    },
  }
}
