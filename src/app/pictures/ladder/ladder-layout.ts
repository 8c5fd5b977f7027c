import { linear } from '../scale.ts'

export interface LadderRung {
  readonly name: string
  readonly number: number
  readonly week: string
}

export interface PlacedRung {
  readonly y: number
  readonly width: number
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
  readonly left: number
  readonly bar: number
  readonly height: number
  /** Names stand over their bars where there is no room beside them. */
  readonly isNarrow: boolean
}

const NAME_WIDTH = 128
const NOTE_WIDTH = 190

/** Rungs from what is started (above) to what is needed (below), each as wide as its number. */
export const layOutLadder = (rungs: readonly LadderRung[], width: number): LadderLayout => {
  const isNarrow = width < 520
  const left = isNarrow ? 1 : NAME_WIDTH
  const bar = 30
  const head = isNarrow ? 20 : 0
  const gap = 34
  const most = Math.max(1, ...rungs.map(({ number }) => number))
  const scale = linear(0, most, 0, width - left - (isNarrow ? 2 : NOTE_WIDTH))
  const pitch = head + bar + gap
  return {
    left,
    bar,
    isNarrow,
    height: rungs.length * pitch - gap + 2,
    rungs: rungs.map(({ number }, index) => {
      const y = index * pitch + head + 1
      const barWidth = Math.max(2, scale(number))
      const below = rungs[index + 1]
      if (below === undefined) return { y, width: barWidth, taper: null }
      const next = Math.max(2, scale(below.number))
      const [from, to] = [y + bar, y + pitch]
      const end = Math.min(barWidth, next)
      return {
        y,
        width: barWidth,
        taper: {
          path: `M${left} ${from}H${left + barWidth}L${left + next} ${to}H${left}Z`,
          middle: (from + to - head) / 2,
          end: left + end,
          lost: Math.max(0, number - below.number),
        },
      }
    }),
  }
}
