import * as z from 'zod'
import { dateOf, dayNumber, weekStart } from '../science/index.ts'
import { Basis } from './figure.ts'

const Month = z.number().int().min(1).max(12)

/**
 * When a protocol may begin. The condition of plant or weather comes first; the months are only its local
 * default, and a nursery corrects them. Months are calendar months at a northern (or southern) site.
 */
export const Window = z
  .object({
    condition: z.string(),
    northMonths: z.array(Month).readonly(),
    southMonths: z.array(Month).readonly(),
    basis: Basis,
    sources: z.array(z.string()).readonly().default([]),
    note: z.string().optional(),
  })
  .readonly()
export type Window = z.infer<typeof Window>

export type Hemisphere = 'north' | 'south'

export const windowMonths = (window: Window, hemisphere: Hemisphere): readonly number[] =>
  hemisphere === 'north' ? window.northMonths : window.southMonths

/** A window that names no months leaves all to the condition. */
const isOpenIn = (months: readonly number[], month: number): boolean =>
  months.length === 0 || months.includes(month)

/**
 * Whether the calendar lets a protocol begin. The plant's condition is looked at on the day.
 * @param on a month, 1 to 12, or a day such as '2026-05-04'
 */
export const isOpen = (window: Window, hemisphere: Hemisphere, on: number | string): boolean =>
  isOpenIn(windowMonths(window, hemisphere), typeof on === 'number' ? on : dateOf(dayNumber(on)).month)

/**
 * Which of a run of weeks are open: 1 or 0 for each. A week belongs to the month of its Thursday, as it does to
 * its year.
 * @param firstWeek counted from the week of 1970-W01, as in `weekNumber`
 */
export function weeksOpen(
  window: Window,
  hemisphere: Hemisphere,
  firstWeek: number,
  weeks: number,
): Uint8Array {
  const months = windowMonths(window, hemisphere)
  return Uint8Array.from({ length: weeks }, (_, week) =>
    isOpenIn(months, dateOf(weekStart(firstWeek + week) + 3).month) ? 1 : 0,
  )
}

/** Within so many degrees of the equator rain and flush rule, and months from elsewhere do not hold. Common practice. */
const EQUATORIAL_DEGREES = 10

/**
 * The months of a window at a place. Near the equator they are not known: neither ours nor ours plus six, so
 * none are named, and the condition (rains, flush, ripe fruit) decides until the nursery sets its own.
 */
export const monthsAtLatitude = (
  window: Window,
  latitudeDegrees: number,
): { readonly months: readonly number[]; readonly areKnown: boolean } =>
  Math.abs(latitudeDegrees) < EQUATORIAL_DEGREES
    ? { months: [], areKnown: false }
    : { months: windowMonths(window, latitudeDegrees < 0 ? 'south' : 'north'), areKnown: true }
