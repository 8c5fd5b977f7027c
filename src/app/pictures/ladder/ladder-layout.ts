import { linear } from '../scale.ts'

export interface PlacedRung {
  readonly y: number
  readonly width: number
  /** How wide it was before, on the same scale; null where there is no before. */
  readonly was: number | null
  /** The narrowing from this rung to the one below; null at the last. */
  readonly taper: {
    readonly path: string
    readonly middle: number
    readonly end: number
    readonly lost: number
  } | null
}

export interface LadderLayout {
  readonly rungs: readonly PlacedRung[]
  readonly height: number
}

export const LADDER = { left: 1, bar: 30, name: 22, line: 15, gap: 30 } as const
/** Room for a rate beside the narrowing, where there is room at all. */
const NOTE_WIDTH = 260
const ROOMY = 620

/**
 * Rungs from what is started (above) to what is needed (below), each as wide as its number, its name over it.
 * @param before the number that each rung had before, where it had one
 * @param lines in how many lines each name is written
 */
export const layOutLadder = (
  numbers: readonly number[],
  width: number,
  before: readonly (number | null)[] = [],
  lines: readonly number[] = [],
): LadderLayout => {
  const most = Math.max(1, ...numbers, ...before.map(number => number ?? 0))
  const scale = linear(0, most, 0, width - 2 * LADDER.left - (width >= ROOMY ? NOTE_WIDTH : 0))
  const tops: number[] = []
  let end = 0
  for (const index of numbers.keys()) {
    tops.push(end + LADDER.name + ((lines[index] ?? 1) - 1) * LADDER.line)
    end = tops[index]! + LADDER.bar + LADDER.gap
  }
  return {
    height: end - LADDER.gap + 2,
    rungs: numbers.map((number, index) => {
      const y = tops[index]!
      const bar = Math.max(2, scale(number))
      const earlier = before[index] ?? null
      const was = earlier === null ? null : Math.max(2, scale(earlier))
      const below = numbers[index + 1]
      if (below === undefined) return { y, width: bar, was, taper: null }
      const next = Math.max(2, scale(below))
      const [from, to] = [y + LADDER.bar, tops[index + 1]!]
      return {
        y,
        width: bar,
        was,
        taper: {
          path: `M${LADDER.left} ${from}H${LADDER.left + bar}L${LADDER.left + next} ${to}H${LADDER.left}Z`,
          middle: from + LADDER.gap / 2,
          end: LADDER.left + Math.min(bar, next),
          lost: Math.max(0, number - below),
        },
      }
    }),
  }
}
