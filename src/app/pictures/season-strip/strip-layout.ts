import { dayAfter, mondayOf, weekAfter, weeksBetween } from '../../text/format.ts'
import { linear, type Scale } from '../scale.ts'
import { type Run, windowRuns } from '../window-weeks.ts'

export interface StripStart {
  readonly id: string
  readonly week: string
  readonly number: number
}

export interface StripRow {
  readonly id: string
  readonly starts: readonly StripStart[]
  /** Calendar months (1 to 12) in which it may begin; all of them where nothing limits it. */
  readonly months: readonly number[]
}

export interface PlacedStart {
  readonly id: string
  readonly x: number
  readonly r: number
}

export interface StripLayout {
  readonly x: Scale
  /** The week of the span, from 0, at a place on the drawing; the nearest for a place beside it. */
  readonly weekAt: (x: number) => number
  readonly lane: number
  readonly top: number
  readonly height: number
  readonly isNarrow: boolean
  readonly left: number
  readonly rows: readonly {
    readonly y: number
    readonly windows: readonly Run[]
    readonly starts: readonly PlacedStart[]
  }[]
  readonly months: readonly { readonly x: number; readonly month: number; readonly year: number }[]
}

/** Room for the names before the weeks, and the width under which they stand above their lane. */
export const STRIP_LEFT = 232
export const STRIP_NARROW = 720
const LARGEST = 13
const SMALLEST = 3

/** The first week of each month inside the span, for the axis. */
export const monthMarks = (first: string, weeks: number) =>
  Array.from({ length: weeks }, (_, index) => {
    const monday = mondayOf(weekAfter(first, index))
    const sunday = dayAfter(monday, 6)
    const opens = monday.endsWith('-01') || monday.slice(0, 7) !== sunday.slice(0, 7)
    return opens ? { index, month: Number(sunday.slice(5, 7)) - 1, year: Number(sunday.slice(0, 4)) } : null
  }).filter(mark => mark !== null)

const MONTH_WIDTH = 36

/** Along an axis so long, every which month has room for its name: 1 for each. */
export const monthsNamed = (months: number, length: number): number =>
  Math.ceil((months * MONTH_WIDTH) / length)

/** Starts as discs, as large in area as their number, on lanes that show when each may begin. */
export const layOutStrip = (
  rows: readonly StripRow[],
  first: string,
  weeks: number,
  width: number,
): StripLayout => {
  const isNarrow = width < STRIP_NARROW
  const left = isNarrow ? 0 : STRIP_LEFT
  const lane = isNarrow ? 50 : 30
  const top = 22
  const x = linear(0, weeks, left, width)
  const most = Math.max(1, ...rows.flatMap(row => row.starts.map(({ number }) => number)))
  return {
    x,
    weekAt: place => Math.min(weeks - 1, Math.max(0, Math.floor((weeks * (place - left)) / (width - left)))),
    lane,
    top,
    left,
    isNarrow,
    height: top + rows.length * lane + 4,
    rows: rows.map((row, index) => ({
      y: top + index * lane + (isNarrow ? 34 : lane / 2),
      windows: windowRuns(first, weeks, row.months),
      starts: row.starts.flatMap(({ id, week, number }) => {
        const at = weeksBetween(first, week)
        if (at < 0 || at >= weeks) return []
        return [{ id, x: x(at + 0.5), r: Math.max(SMALLEST, LARGEST * Math.sqrt(number / most)) }]
      }),
    })),
    months: monthMarks(first, weeks).map(({ index, month, year }) => ({ x: x(index), month, year })),
  }
}
