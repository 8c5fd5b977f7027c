import type { ClimateSaid } from './climate.ts'

/** The coldest and warmest of one day, `2026-05-04`. */
export interface WeatherDay {
  readonly day: string
  readonly minCelsius: number
  readonly maxCelsius: number
}

/** What a run of days says of the climate, and how much of it there was. */
export type ClimateOfDays =
  | {
      readonly kind: 'climate'
      readonly said: ClimateSaid
      readonly winters: number
      readonly firstDay: string
      readonly lastDay: string
    }
  /** Not one whole year, or a month of which no day is there. */
  | { readonly kind: 'too short' }

/** A year counts with so many of its days, and a month with so many in all. Our choice. */
const DAYS_OF_YEAR = 330
const DAYS_OF_MONTH = 20
/** A record of this many winters is fitted; fewer give the usual figures. */
const WINTERS_OF_RECORD = 5

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length
const tenth = (value: number): number => Math.round(10 * value) / 10

/**
 * The climate of daily minima and maxima. A day's mean is the middle of the two (the usual practice of weather
 * services); a month's, that of its days over all years. Each cold year runs from the warmest month to the next, so
 * that no winter is cut in two, and gives its coldest night.
 */
export function climateOfDays(days: readonly WeatherDay[]): ClimateOfDays {
  const ofMonth = Array.from({ length: 12 }, (): number[] => [])
  for (const { day, minCelsius, maxCelsius } of days)
    ofMonth[Number(day.slice(5, 7)) - 1]!.push((minCelsius + maxCelsius) / 2)
  if (ofMonth.some(month => month.length < DAYS_OF_MONTH)) return { kind: 'too short' }
  const monthMeansCelsius = ofMonth.map(month => tenth(mean(month)))
  const warmest = monthMeansCelsius.indexOf(Math.max(...monthMeansCelsius)) + 1

  const nights = new Map<number, number[]>()
  for (const { day, minCelsius } of days) {
    const year = Number(day.slice(0, 4)) - (Number(day.slice(5, 7)) < warmest ? 1 : 0)
    nights.set(year, [...(nights.get(year) ?? []), minCelsius])
  }
  const minima = [...nights]
    .filter(([, of]) => of.length >= DAYS_OF_YEAR)
    .sort(([a], [b]) => a - b)
    .map(([, of]) => tenth(Math.min(...of)))
  if (minima.length === 0) return { kind: 'too short' }
  const months = {
    coldestMonthCelsius: Math.min(...monthMeansCelsius),
    warmestMonthCelsius: Math.max(...monthMeansCelsius),
    monthMeansCelsius,
  }
  const sorted = [...minima].sort((a, b) => a - b)
  const half = Math.floor((sorted.length - 1) / 2)
  const said: ClimateSaid =
    minima.length >= WINTERS_OF_RECORD
      ? { kind: 'record', yearlyMinimaCelsius: minima, ...months }
      : {
          kind: 'normals',
          coldestNightCelsius: tenth((sorted[half]! + sorted[sorted.length - 1 - half]!) / 2),
          coldestInTenYearsCelsius: null,
          ...months,
        }
  const ordered = days.map(({ day }) => day).sort()
  return { kind: 'climate', said, winters: minima.length, firstDay: ordered[0]!, lastDay: ordered.at(-1)! }
}
