import { requireWhole } from '../bounds.ts'

const DAY = /^(\d{4})-(\d{2})-(\d{2})$/
const DAYS_BEFORE_MONTH = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334]

/**
 * 29 February exists in years divisible by 4, but of the full hundreds only in those divisible by 400.
 * @example isLeapYear(2028) // true
 */
export const isLeapYear = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)

/**
 * A day of the calendar as a whole number: days since 1970-01-01 (which is 0), Gregorian calendar throughout.
 * A day is a day, not an instant: no clock, no time zone.
 *
 * @param day text such as '2026-05-04'; year 0000 to 9999
 * @returns whole days; −719528 to 2932896
 * @throws RangeError for an argument out of range
 * @source ISO 8601-1:2019, calendar date in extended format
 * @example dayNumber('2026-05-04') // 20577
 */
export function dayNumber(day: string): number {
  const parts = DAY.exec(day)
  const year = Number(parts?.[1])
  const month = Number(parts?.[2])
  const date = Number(parts?.[3])
  if (!parts || month < 1 || month > 12 || date < 1 || date > daysInMonth(year, month))
    throw new RangeError(`dayNumber: day must be a day of the calendar such as 2026-05-04, got ${day}`)
  return yearStart(year) + DAYS_BEFORE_MONTH[month - 1]! + (month > 2 && isLeapYear(year) ? 1 : 0) + date - 1
}

/**
 * Whether a text is a day of the calendar written like 2026-05-04.
 * @example isDay('2026-02-30') // false
 */
export function isDay(text: string): boolean {
  const parts = DAY.exec(text)
  if (!parts) return false
  const month = Number(parts[2])
  const date = Number(parts[3])
  return month >= 1 && month <= 12 && date >= 1 && date <= daysInMonth(Number(parts[1]), month)
}

/**
 * The day of a day number, the inverse of `dayNumber`.
 * @example dayText(20577) // '2026-05-04'
 */
export function dayText(day: number): string {
  const { year, month, date } = dateOf(day)
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`
}

/**
 * Year, month (1 to 12) and date (1 to 31) of a day number.
 * @throws RangeError for an argument out of range
 * @example dateOf(20577) // { year: 2026, month: 5, date: 4 }
 */
export function dateOf(day: number): { year: number; month: number; date: number } {
  requireWhole('dateOf', 'day', day, FIRST, LAST)
  let year = 1970 + Math.floor(day / 365.2425)
  while (yearStart(year) > day) year--
  while (yearStart(year + 1) <= day) year++
  const inYear = day - yearStart(year)
  const leap = isLeapYear(year) ? 1 : 0
  let month = 12
  while (monthStart(month, leap) > inYear) month--
  return { year, month, date: inYear - monthStart(month, leap) + 1 }
}

/**
 * Day of the year, 1 for 1 January.
 * @source Gregorian calendar, ISO 8601
 * @example dayOfYear(20577) // 124
 */
export const dayOfYear = (day: number): number => day - yearStart(dateOf(day).year) + 1

/**
 * Days of a month, 1 to 12, of a year of the Gregorian calendar: 28 to 31.
 * @example daysInMonth(2028, 2) // 29
 */
export const daysInMonth = (year: number, month: number): number =>
  month === 2
    ? isLeapYear(year)
      ? 29
      : 28
    : month === 4 || month === 6 || month === 9 || month === 11
      ? 30
      : 31

const monthStart = (month: number, leap: number) => DAYS_BEFORE_MONTH[month - 1]! + (month > 2 ? leap : 0)

/** Day number of 1 January. */
function yearStart(year: number): number {
  const before = year - 1
  return 365 * year + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400) - 719527
}

const FIRST = yearStart(0)
const LAST = yearStart(10000) - 1
