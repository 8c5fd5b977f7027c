import { dayNumber, dayOfYear, dayText } from '../calendar/day-number.ts'
import { isoWeek, weekNumber, weekStart, weeksInYear, weekText } from '../calendar/week.ts'
import { dayLengthHours } from '../climate/sun.ts'
import { CIVIL_TWILIGHT, daylightHours, sunTimes } from '../climate/sun-times.ts'
import calendar from '../fixtures/calendar.json' with { type: 'json' }
import { checkOf, type Fixture } from './fixture.ts'
import type { OutsideCheck } from './outside-check.ts'

const fixture = calendar as unknown as Fixture

const weekDay = (day: string): string => {
  const { year, week, weekday } = isoWeek(dayNumber(day))
  return `${year}-W${String(week).padStart(2, '0')}-${weekday}`
}

/** Seconds after midnight of '2024-03-20T06:04:01Z'. */
const secondsOf = (time: string): number => {
  const [hours, minutes, seconds] = time.slice(11, 19).split(':').map(Number) as [number, number, number]
  return 3600 * hours + 60 * minutes + seconds
}

/** Days, weeks and day length. */
export const calendarChecks = (): readonly OutsideCheck[] => [
  ...checkOf<{ dates: string[] }, object>(
    fixture,
    'iso-week-published',
    'week and weekday of a day',
    ({ dates }) => ({
      got: { week: dates.map(weekDay) },
      tolerance: 0,
    }),
  ),
  ...checkOf<{ dates: string[] }, object>(
    fixture,
    'iso-week-more',
    'week, weekday and day of the year about the turn of years',
    ({ dates }) => ({
      got: {
        week: dates.map(weekDay),
        dayOfYear: dates.map(day => dayOfYear(dayNumber(day))),
        isoWeekdayMonday1: dates.map(day => isoWeek(dayNumber(day)).weekday),
      },
      tolerance: 0,
    }),
  ),
  ...checkOf<{ from: number; to: number }, object>(
    fixture,
    'years-with-53-weeks',
    'the years that have 53 weeks',
    ({ from, to }) => ({
      got: {
        years: Array.from({ length: to - from + 1 }, (_, i) => from + i).filter(
          year => weeksInYear(year) === 53,
        ),
      },
      tolerance: 0,
    }),
  ),
  ...checkOf<{ weeks: string[] }, object>(
    fixture,
    'week-to-date',
    'the day of a week and weekday',
    ({ weeks }) => ({
      got: {
        date: weeks.map(text => dayText(weekStart(weekNumber(text.slice(0, 8))) + Number(text.slice(9)) - 1)),
      },
      tolerance: 0,
    }),
  ),
  ...checkOf<{ weeks: string[] }, object>(
    fixture,
    'week-to-date',
    'a week written, counted and written again is the same',
    ({ weeks }) => ({ got: weeks.map(text => weekText(weekNumber(text.slice(0, 8)))), tolerance: 0 }),
    () => ['2020-W53', '2021-W01', '2026-W01', '2026-W53', '2024-W09', '2015-W53'],
  ),
  ...checkOf<{ start: string[]; addDays: number[] }, object>(
    fixture,
    'date-arithmetic',
    'so many days after a day',
    ({ start, addDays }) => ({
      got: { date: start.map((day, i) => dayText(dayNumber(day) + addDays[i]!)) },
      tolerance: 0,
    }),
  ),
  ...checkOf<{ from: string; to: string }, object>(
    fixture,
    'days-between-across-dst',
    'a change of the clock does not change the number of days',
    ({ from, to }) => ({ got: { calendarDays: dayNumber(to) - dayNumber(from) }, tolerance: 0 }),
    expected => ({ calendarDays: (expected as { calendarDays: number }).calendarDays }),
  ),
  ...checkOf<{ latitudes: number[]; daysOfYear: number[] }, object>(
    fixture,
    'daylength-fao56',
    'day length by geometry, six latitudes by twelve days',
    ({ latitudes, daysOfYear }) => ({
      got: { hours: latitudes.map(latitude => daysOfYear.map(day => dayLengthHours(latitude, day))) },
      tolerance: 1e-6,
    }),
  ),
  ...checkOf<{ latitude: number; longitude: number; dates: string[] }, object>(
    fixture,
    'sun-lat',
    'sunrise, noon and sunset as seen, and daylight with twilight',
    ({ latitude, longitude, dates }) => {
      const seen = dates.map(day => sunTimes(latitude, longitude, dayNumber(day)))
      return {
        got: {
          sunriseSeconds: seen.map(({ riseMinutes }) => 60 * riseMinutes!),
          sunsetSeconds: seen.map(({ setMinutes }) => 60 * setMinutes!),
          solarNoonSeconds: seen.map(({ noonMinutes }) => 60 * noonMinutes),
          dayLengthHours: seen.map(({ hoursAbove }) => hoursAbove),
          civilDawnToDuskHours: dates.map(
            day => sunTimes(latitude, longitude, dayNumber(day), CIVIL_TWILIGHT).hoursAbove,
          ),
        },
        tolerance: { dayLengthHours: 0.03, civilDawnToDuskHours: 0.03, other: 90 },
      }
    },
    expected =>
      Object.fromEntries(
        Object.entries(expected as Record<string, readonly (string | number)[]>).map(([name, values]) =>
          name.endsWith('UTC')
            ? [name.replace('UTC', 'Seconds'), values.map(time => secondsOf(String(time)))]
            : [name, values],
        ),
      ),
  ),
  ...checkOf<{ latitudes: number[]; daysOfYear: number[]; p: number }, object>(
    fixture,
    'daylength-cbm',
    'day length until the sun is gone, six latitudes by twelve days',
    ({ latitudes, daysOfYear, p }) => ({
      got: { hours: latitudes.map(latitude => daysOfYear.map(day => daylightHours(latitude, day, p))) },
      tolerance: 1e-5,
    }),
  ),
  ...checkOf<{ latitude: number; daysOfYear: number[] }, object>(
    fixture,
    'polar',
    'polar day has 24 hours of sun and polar night none',
    ({ latitude, daysOfYear }) => ({
      got: { faoHours: daysOfYear.map(day => dayLengthHours(latitude, day)) },
      tolerance: 1e-9,
    }),
  ),
]
