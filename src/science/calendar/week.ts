import { dayNumber, dayText } from './day-number.ts'

/**
 * Weeks run from Monday to Sunday and are counted through: week 0 begins on Monday 1969-12-29, the first week of 1970.
 */

/**
 * The week in which a day falls.
 * @param day day number, as from `dayNumber`
 * @example weekOfDay(dayNumber('2026-05-04')) // 2940
 */
export const weekOfDay = (day: number): number => Math.floor((day + 3) / 7)

/**
 * Day number of a week's Monday.
 * @example dayText(weekStart(2940)) // '2026-05-04'
 */
export const weekStart = (week: number): number => 7 * week - 3

/**
 * Year, week and weekday of a day as the standard counts them: week 1 is the week with the year's first Thursday,
 * weekday 1 is Monday.
 * @source ISO 8601-1:2019, week date
 * @example isoWeek(dayNumber('2027-01-03')) // { year: 2026, week: 53, weekday: 7 }
 */
export function isoWeek(day: number): { year: number; week: number; weekday: number } {
  const monday = weekStart(weekOfDay(day))
  const year = Number(dayText(monday + 3).slice(0, 4))
  return { year, week: weekOfDay(day) - firstWeek(year) + 1, weekday: day - monday + 1 }
}

/**
 * A counted week as the standard writes it.
 * @example weekText(2940) // '2026-W19'
 */
export function weekText(week: number): string {
  const { year, week: ofYear } = isoWeek(weekStart(week))
  return `${String(year).padStart(4, '0')}-W${String(ofYear).padStart(2, '0')}`
}

/**
 * The counted week of a text such as '2026-W19', the inverse of `weekText`.
 * @throws RangeError for an argument out of range
 * @example weekNumber('2026-W19') // 2940
 */
export function weekNumber(text: string): number {
  const parts = /^(\d{4})-W(\d{2})$/.exec(text)
  const year = Number(parts?.[1])
  const week = Number(parts?.[2])
  if (!parts || week < 1 || week > weeksInYear(year))
    throw new RangeError(`weekNumber: text must be a week such as 2026-W19, got ${text}`)
  return firstWeek(year) + week - 1
}

/**
 * 52 or 53.
 * @example weeksInYear(2026) // 53
 */
export const weeksInYear = (year: number): number => firstWeek(year + 1) - firstWeek(year)

/** The week that holds 4 January. */
const firstWeek = (year: number) => weekOfDay(dayNumber(`${String(year).padStart(4, '0')}-01-04`))
