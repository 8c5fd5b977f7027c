import { decidedBetween, type LookedAtBatch } from './looks.ts'

/** Shares of all worked that had taken, and that were dead, by a day on which somebody looked. */
export interface DecidedBy {
  readonly day: number
  readonly taken: number
  readonly dead: number
}

/**
 * How taking and dying went, with no shape assumed: the most likely shares by each day on which any batch was looked
 * at, when each plant is only known to have decided between two looks, or not yet.
 *
 * Turnbull's self-consistent estimate for two outcomes: each plant is spread over the days (and outcomes) it may
 * have had in proportion to the present estimate, until nothing moves by more than 1e-10.
 *
 * @returns one entry for each day of a look, ascending; taken and dead rise and together stay at or below 1
 * @source Turnbull 1976, J. R. Stat. Soc. B 38:290-295; checked against R's survfit (outside checks)
 * @example takeByLooks([{ entered: 50, looks: [{ day: 14, taken: 20, dead: 2 }, { day: 28, taken: 38, dead: 9 }]
 *   }])[1].taken // 0.76
 */
export function takeByLooks(batches: readonly LookedAtBatch[]): readonly DecidedBy[] {
  const seen = decidedBetween(batches)
  const days = [...new Set(batches.flatMap(({ looks }) => looks.map(({ day }) => day)))]
    .filter(day => day > 0)
    .sort((a, b) => a - b)
  const count = days.length
  if (count === 0) return []
  const place = new Map(days.map((day, i) => [day, i]))
  // Cells: taken by day i, dead by day i, and (last) not decided by the last look of all.
  const cells = 2 * count + 1
  const spans = seen.map(({ after, to, outcome, number }) => {
    const first = after === 0 ? 0 : place.get(after)! + 1
    const last = outcome === 'undecided' ? count - 1 : place.get(to)!
    const list: number[] = []
    for (let i = first; i <= last; i++) {
      if (outcome !== 'dead') list.push(i)
      if (outcome !== 'taken') list.push(count + i)
    }
    if (outcome === 'undecided') list.push(2 * count)
    return { list, number }
  })
  const all = spans.reduce((sum, { number }) => sum + number, 0)
  const used = new Set(spans.flatMap(({ list }) => list))
  let shares = Array.from({ length: cells }, (_, cell) => (used.has(cell) ? 1 / used.size : 0))
  for (let round = 0; round < 20_000 && all > 0; round++) {
    const next = new Array<number>(cells).fill(0)
    for (const { list, number } of spans) {
      let within = 0
      for (const cell of list) within += shares[cell]!
      for (const cell of list) next[cell]! += (number * shares[cell]!) / within / all
    }
    const moved = next.reduce((most, share, cell) => Math.max(most, Math.abs(share - shares[cell]!)), 0)
    shares = next
    if (moved < 1e-10) break
  }
  let taken = 0
  let dead = 0
  return days.map((day, i) => {
    taken += shares[i]!
    dead += shares[count + i]!
    return { day, taken, dead }
  })
}
