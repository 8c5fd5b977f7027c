import { celsiusFromFahrenheit } from '../../trade/index.ts'
import { type DayOrder, dayOrderOf, readDay } from '../cells/day.ts'
import { decimalMarkOf, readNumber } from '../cells/number.ts'
import { readDelimited } from '../table/delimited.ts'
import { decodeText } from '../table/encoding.ts'
import { columnsOf, type WeatherColumns } from './weather-columns.ts'

/** The coldest and warmest of each day as a weather file has them, with what was taken for granted in reading. */
export type WeatherRead =
  | {
      readonly kind: 'read'
      readonly days: readonly {
        readonly day: string
        readonly minCelsius: number
        readonly maxCelsius: number
      }[]
      readonly noted: readonly string[]
    }
  | { readonly kind: 'refused'; readonly what: string; readonly mend: string }

/** Air of this earth; beyond it a number stands for "not measured". */
const COLDEST_CELSIUS = -75
const WARMEST_CELSIUS = 57
/** No place has warmest days as these on average unless they are written in another unit. */
const NEVER_CELSIUS = 50
const NEVER_FAHRENHEIT = 130

const refused = (what: string, mend: string): WeatherRead => ({ kind: 'refused', what, mend })

type Row = readonly string[]

/** The median of what is there. */
const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0

/**
 * Daily minima and maxima by date: with commas, semicolons or tabs, decimal points or commas, dates either way or in
 * three columns, °C, °F or tenths of °C, with lines of explanation before the header.
 */
export function readWeather(bytes: Uint8Array, today: string): WeatherRead {
  const { rows } = readDelimited(decodeText(bytes).text)
  const found = columnsOf(rows)
  if (found === null)
    return refused(
      'No columns of dates and of lowest and highest temperatures are found.',
      'Give the file a first line such as date,tmin,tmax and a line for each day.',
    )
  const body = rows.slice(found.firstRow)
  const noted: string[] = []
  const order = orderOf(body, found)
  if (order === 'unclear')
    return refused(
      'It cannot be told whether the day or the month comes first in the dates.',
      'Write the dates as 2026-05-04, or bring a whole year.',
    )
  const read = daysOf(body, found, order, today)
  if (read.length === 0)
    return refused(
      'No line has a date with a lowest and a highest temperature.',
      'Look whether the columns are those of dates and temperatures.',
    )
  const change = unitOf(read, found.header, noted)
  const days = new Map<string, { day: string; minCelsius: number; maxCelsius: number }>()
  let odd = 0
  for (const { day, min, max } of read) {
    const [a, b] = [change(min), change(max)]
    const fits = (value: number) => value >= COLDEST_CELSIUS && value <= WARMEST_CELSIUS
    if (!fits(a) || !fits(b) || a > b) odd += 1
    else days.set(day, { day, minCelsius: a, maxCelsius: b })
  }
  const without = body.filter(row => row.some(cell => cell.trim() !== '')).length - read.length
  if (without + odd > 0)
    noted.push(`${without + odd} lines without a day and two temperatures that make sense were left out`)
  if (read.length - odd > days.size)
    noted.push(`${read.length - odd - days.size} days stand in it twice: the last counts`)
  return { kind: 'read', days: [...days.values()].sort((x, y) => (x.day < y.day ? -1 : 1)), noted }
}

function orderOf(body: readonly Row[], { date }: WeatherColumns): DayOrder | null | 'unclear' {
  if (date.kind === 'parts') return null
  const shown = dayOrderOf(body.map(row => row[date.column] ?? null))
  if (shown === 'unclear' || shown === 'mixed') return 'unclear'
  return shown
}

function daysOf(
  body: readonly Row[],
  { date, min, max }: WeatherColumns,
  order: DayOrder | null,
  today: string,
): { day: string; min: number; max: number }[] {
  const mark = decimalMarkOf(body.flatMap(row => [row[min] ?? null, row[max] ?? null])) ?? 'point'
  return body.flatMap(row => {
    const cell =
      date.kind === 'one'
        ? row[date.column]?.replace(/[T ]\d{1,2}:\d{2}.*$/, '')
        : [date.year, date.month, date.day].map(column => row[column]?.trim().padStart(2, '0')).join('-')
    const day = readDay(cell, order, today)
    const [low, high] = [readNumber(row[min], mark), readNumber(row[max], mark)]
    return day.kind === 'value' && low.kind === 'value' && high.kind === 'value'
      ? [{ day: day.value, min: low.value, max: high.value }]
      : []
  })
}

/** How a number of the file becomes degrees Celsius: by what the header says, else by what no place on earth has. */
function unitOf(
  read: readonly { readonly min: number; readonly max: number }[],
  header: string,
  noted: string[],
): (value: number) => number {
  const usual = middle(read.map(({ max }) => max))
  const tenths = /0[.,]1\s*(°|deg|grad|celsius|c\b)|tenths/i.test(header) || usual > NEVER_FAHRENHEIT
  if (tenths) {
    noted.push('temperatures were taken as tenths of a degree Celsius')
    return value => value / 10
  }
  const said = /(°|deg(rees)?\.?|\()\s*f\b|fahrenheit|_f\b/i.test(header)
  if (said || (usual > NEVER_CELSIUS && !/(°|\()\s*c\b|celsius/i.test(header))) {
    noted.push('temperatures were taken as degrees Fahrenheit')
    return celsiusFromFahrenheit
  }
  return value => value
}
