import type { SimulatedSeasons } from './simulate-seasons.ts'

/** Puts the parts of one simulation together, in whatever order they came; they must join without gap. */
export function mergePartials(partials: readonly SimulatedSeasons[]): SimulatedSeasons {
  const parts = [...partials].sort((a, b) => a.from - b.from)
  const first = parts[0]
  if (!first) throw new RangeError('mergePartials: partials must be one or more, got none')
  parts.forEach((part, i) => {
    if (i > 0 && part.from !== parts[i - 1]!.to)
      throw new RangeError(`mergePartials: partials must join, got a gap at season ${parts[i - 1]!.to}`)
  })
  const seasons = parts.reduce((sum, { from, to }) => sum + to - from, 0)
  /** Order by order, of each the seasons of all parts. */
  const byOrder = <A extends Int32Array | Uint8Array>(of: (part: SimulatedSeasons) => A, all: A): A => {
    let at = 0
    for (let o = 0; o < first.orders; o++)
      for (const part of parts) {
        const count = part.to - part.from
        all.set(of(part).subarray(o * count, (o + 1) * count), at)
        at += count
      }
    return all
  }
  const cells = first.orders * seasons
  return {
    ...first,
    to: parts.at(-1)!.to,
    byDue: byOrder(part => part.byDue, new Int32Array(cells)),
    weeksLate: byOrder(part => part.weeksLate, new Uint8Array(cells)),
    late: byOrder(part => part.late, new Int32Array(cells)),
    promisable: Int32Array.from(parts.flatMap(part => [...part.promisable])),
  }
}
