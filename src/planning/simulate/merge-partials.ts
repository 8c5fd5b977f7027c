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
  const whole = <A extends Int32Array | Uint8Array | Float32Array>(
    of: (part: SimulatedSeasons) => A,
    make: (length: number) => A,
  ): A => {
    const all = make(parts.reduce((sum, part) => sum + of(part).length, 0))
    let at = 0
    for (const part of parts) {
      all.set(of(part), at)
      at += of(part).length
    }
    return all
  }
  const ints = (of: (part: SimulatedSeasons) => Int32Array) => whole(of, length => new Int32Array(length))
  const floats = (of: (part: SimulatedSeasons) => Float32Array) =>
    whole(of, length => new Float32Array(length))
  return {
    ...first,
    to: parts.at(-1)!.to,
    byDue: ints(part => part.byDue),
    weeksLate: whole(
      part => part.weeksLate,
      length => new Uint8Array(length),
    ),
    late: ints(part => part.late),
    delivered: ints(part => part.delivered),
    squareMetres: floats(part => part.squareMetres),
    minutes: floats(part => part.minutes),
    promisable: ints(part => part.promisable),
  }
}
