import { normalCdf } from '../../science/index.ts'
import type { Climate } from './climate.ts'

/** Hours of a month within 0 to 7.2 °C, hourly temperature being spread about the mean of the month. */
const CHILL_FROM = 0
const CHILL_TO = 7.2
const HOURS_IN_MONTH = 730.5
/** Standard deviation of the hours of a month about its mean: day and night, and weather. From memory. */
const HOURLY_SPREAD = 4.5

/** Share of the hours of a month with this mean that are colder than a limit. */
const below = (limit: number, mean: number): number => normalCdf((limit - mean) / HOURLY_SPREAD)

/** Yearly chill hours (0 to 7.2 °C) where every month is so many degrees warmer or colder than usual. */
export const chillHoursOf = (climate: Pick<Climate, 'monthMeansCelsius'>, warmer: number): number =>
  climate.monthMeansCelsius.reduce(
    (sum, mean) => sum + HOURS_IN_MONTH * (below(CHILL_TO, mean + warmer) - below(CHILL_FROM, mean + warmer)),
    0,
  )

const FROM = -12
const TO = 12
const STEP = 0.5

/** The same as a function made ready once, for many years: straight lines between half degrees. */
export function chillByWarmth(climate: Climate): (warmer: number) => number {
  const known: number[] = []
  for (let at = FROM; at <= TO; at += STEP) known.push(chillHoursOf(climate, at))
  return warmer => {
    const place = (Math.min(TO, Math.max(FROM, warmer)) - FROM) / STEP
    const low = Math.min(known.length - 2, Math.floor(place))
    return known[low]! + (place - low) * (known[low + 1]! - known[low]!)
  }
}

export const warmestMonthOf = (climate: Climate): number => Math.max(...climate.monthMeansCelsius)
export const coldestMonthOf = (climate: Climate): number => Math.min(...climate.monthMeansCelsius)
