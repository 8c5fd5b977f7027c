import { linear, type Scale, ticks } from '../scale.ts'

export interface BandPoint {
  readonly day: number
  readonly low: number
  readonly middle: number
  readonly high: number
}

export interface BandLayout {
  readonly x: Scale
  readonly y: Scale
  readonly height: number
  readonly band: string
  readonly middle: string
  readonly numbers: readonly number[]
  readonly days: readonly number[]
}

const LEFT = 44
const RIGHT = 14
const TOP = 14
const BOTTOM = 26

/** Alive by day: the band that was expected, and room for what was counted. */
export const layOutBand = (
  points: readonly BandPoint[],
  counted: readonly { readonly day: number; readonly alive: number }[],
  width: number,
): BandLayout => {
  const height = width < 480 ? 220 : 270
  const lastDay = Math.max(7, ...points.map(({ day }) => day), ...counted.map(({ day }) => day))
  const most = Math.max(1, ...points.map(({ high }) => high), ...counted.map(({ alive }) => alive))
  const numbers = ticks(most, 4)
  const x = linear(0, lastDay, LEFT, width - RIGHT)
  const y = linear(0, numbers.at(-1)!, height - BOTTOM, TOP)
  const line = (value: (point: BandPoint) => number, ordered: readonly BandPoint[]) =>
    ordered.map(point => `${x(point.day).toFixed(1)} ${y(value(point)).toFixed(1)}`).join('L')
  return {
    x,
    y,
    height,
    numbers,
    days: dayTicks(lastDay, Math.max(2, Math.floor(width / 110))),
    band:
      points.length < 2
        ? ''
        : `M${line(({ high }) => high, points)}L${line(({ low }) => low, [...points].reverse())}Z`,
    middle: points.length < 2 ? '' : `M${line(({ middle }) => middle, points)}`,
  }
}

/** Days of an axis in whole weeks, months or years. */
const dayTicks = (last: number, count: number): readonly number[] => {
  const step = [7, 14, 28, 56, 91, 182, 365, 730].find(days => last / days <= count) ?? 730
  return Array.from({ length: Math.floor(last / step) + 1 }, (_, index) => index * step)
}

export type Standing = 'below' | 'within' | 'above'

/** The band on a day, between its points by straight lines; null where it does not reach. */
export const rangeOn = (points: readonly BandPoint[], day: number) => {
  const after = points.findIndex(point => point.day >= day)
  if (after === -1) return null
  const next = points[after]!
  const before = points[Math.max(0, after - 1)]!
  const share = next.day === before.day ? 1 : (day - before.day) / (next.day - before.day)
  const at = (key: 'low' | 'high') => before[key] + share * (next[key] - before[key])
  return { low: at('low'), high: at('high') }
}

/** Where a count lies against the band on its day. */
export const standingOf = (points: readonly BandPoint[], day: number, alive: number): Standing | null => {
  const range = rangeOn(points, day)
  if (range === null) return null
  return alive < range.low ? 'below' : alive > range.high ? 'above' : 'within'
}
