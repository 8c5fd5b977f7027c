import { linear, type Scale, ticks } from '../scale.ts'

export interface LoadSeries {
  readonly expected: readonly number[]
  readonly badYear: readonly number[]
  readonly capacity: readonly number[]
  /** What it could carry if it were otherwise. */
  readonly tried?: readonly number[]
}

export interface LoadLayout {
  /** Where the weeks begin; the numbers of the axis stand before it. */
  readonly left: number
  readonly x: Scale
  readonly y: Scale
  readonly height: number
  readonly bars: readonly {
    readonly x: number
    readonly y: number
    readonly width: number
    readonly height: number
    readonly over: number
  }[]
  /** What it can carry, as steps. */
  readonly capacity: string
  readonly badYear: string
  readonly tried: string | null
  /** Where the line stands in the last week that is tried otherwise, or else the last in which it can carry anything. */
  readonly end: number
  /** How much one pixel is. */
  readonly perPixel: number
  readonly numbers: readonly number[]
}

/** Room for the numbers of the axis. */
const PLOT_LEFT = 44
const TOP = 8
const BOTTOM = 20

const steps = (values: readonly number[], x: Scale, y: Scale): string =>
  values.map((value, index) => `${index === 0 ? 'M' : 'L'}${x(index)} ${y(value)}H${x(index + 1)}`).join('')

/** Bars for what is expected, in two parts where it goes over what can be carried. */
export const layOutLoad = (
  { expected, badYear, capacity, tried }: LoadSeries,
  width: number,
  left = PLOT_LEFT,
): LoadLayout => {
  const height = 118
  const most = Math.max(1e-9, ...expected, ...badYear, ...capacity, ...(tried ?? []))
  const numbers = ticks(most, 2)
  const x = linear(0, Math.max(1, expected.length), left, width)
  const y = linear(0, numbers.at(-1)!, height - BOTTOM, TOP)
  const line = tried ?? capacity
  const moved = line.findLastIndex((can, week) => can !== capacity[week])
  const end = moved >= 0 ? moved : capacity.findLastIndex(can => can > 0)
  return {
    left,
    x,
    y,
    height,
    numbers,
    bars: expected.map((value, index) => {
      const can = capacity[index] ?? 0
      const within = Math.min(value, can)
      return {
        x: x(index) + 0.5,
        width: Math.max(0.5, x(index + 1) - x(index) - 1),
        y: y(within),
        height: y(0) - y(within),
        over: y(within) - y(Math.max(value, within)),
      }
    }),
    capacity: steps(capacity, x, y),
    badYear: steps(badYear, x, y),
    tried: tried ? steps(tried, x, y) : null,
    end: y(line[end] ?? 0),
    perPixel: numbers.at(-1)! / (height - BOTTOM - TOP),
  }
}

/** The weeks in which the load is over, or the fullest one: what a sentence says about it. */
export const fullest = ({
  expected,
  capacity,
}: LoadSeries): { readonly index: number; readonly share: number; readonly weeksOver: number } => {
  let index = 0
  let share = 0
  let weeksOver = 0
  expected.forEach((value, at) => {
    const can = capacity[at] ?? 0
    const here = can > 0 ? value / can : value > 0 ? Number.POSITIVE_INFINITY : 0
    if (here > 1 + 1e-6) weeksOver += 1
    if (here > share) {
      share = here
      index = at
    }
  })
  return { index, share, weeksOver }
}
