import { daysInMonth, dayText, weekNumber, weekStart } from '../../science/index.ts'
import { cellText, type RawCell } from '../table/table.ts'
import { monthByName } from '../words/month-names.ts'
import { isFormulaError, saysNothing } from './blank.ts'
import { blank, type CellReading, means, wrong } from './read-cell.ts'

export type DayOrder = 'day first' | 'month first'

/** Days of the spreadsheet's own count fall between these in any nursery's life: 1954 and 2119. */
const SERIALS = { from: 20_000, to: 80_000 }
/** Day 1 was 1900-01-01, and a 29 February 1900 was counted that never was. */
const SERIAL_ZERO_DAYS_BEFORE_1970 = 25_569
/** A year of two digits lies at most so far ahead. */
const YEARS_AHEAD = 30

const clock = /[T\s]+\d{1,2}:\d{2}(:\d{2}(\.\d+)?)?\s*(am|pm|Z|[+-]\d{2}:?\d{2})?$/iu
const weekday = /^(\p{L}{2,10})[.,]*\s+(?=\d)/u
const threeNumbers = /^(\d{1,4})\s*([./\-\s])\s*(\d{1,2})\s*[./\-\s]\s*(\d{1,4})\.?$/u

interface Parts {
  readonly year: number
  readonly month: number
  readonly date: number
}

const inYear = (text: string, thisYear: number): number => {
  const year = Number(text)
  if (text.length > 2) return year
  const near = Math.floor(thisYear / 100) * 100 + year
  return near > thisYear + YEARS_AHEAD ? near - 100 : near
}

const dayOf = ({ year, month, date }: Parts): string | null => {
  if (month < 1 || month > 12 || year < 1800 || year > 2200 || date < 1 || date > daysInMonth(year, month))
    return null
  return `${year}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`
}

/** A word before the number that is no month is the day of the week. */
const bare = (cell: RawCell): string =>
  cellText(cell)
    .replace(clock, '')
    .replace(weekday, (all, word: string) =>
      monthByName(word) === undefined && !/^k?w$/i.test(word) ? '' : all,
    )
    .trim()

/** Two numbers before a year, parted by strokes or hyphens: which is the month is a matter of country. */
const unsure = (text: string): readonly [number, number, string] | null => {
  const found = threeNumbers.exec(text)
  if (found === null || found[1]!.length > 2 || found[2] === '.') return null
  return found[4]!.length === 4 || found[4]!.length <= 2
    ? [Number(found[1]), Number(found[3]), found[4]!]
    : null
}

/** What a column of days shows of its order: beyond doubt, contradicting itself, or (null) nothing that matters. */
export type OrderShown = DayOrder | 'unclear' | 'mixed' | null

/** @example dayOrderOf(['3/4/27', '25/4/27']) // 'day first' */
export function dayOrderOf(cells: Iterable<RawCell>): OrderShown {
  let dayFirst = false
  let monthFirst = false
  let either = false
  for (const cell of cells) {
    if (typeof cell !== 'string') continue
    const numbers = unsure(bare(cell))
    if (numbers === null) continue
    const [a, b] = numbers
    if (a > 12 && b <= 12) dayFirst = true
    else if (b > 12 && a <= 12) monthFirst = true
    else if (a !== b) either = true
  }
  if (dayFirst && monthFirst) return 'mixed'
  if (dayFirst) return 'day first'
  if (monthFirst) return 'month first'
  return either ? 'unclear' : null
}

/** Whether a cell means another day when read the other way round. */
export const isUnclearDay = (cell: RawCell): boolean => {
  const numbers = typeof cell === 'string' ? unsure(bare(cell)) : null
  return numbers !== null && numbers[0] <= 12 && numbers[1] <= 12 && numbers[0] !== numbers[1]
}

/**
 * A day, however it is written: ISO, with points (day first everywhere), with strokes or hyphens (by `order`), with the
 * month's name, as the spreadsheet's own count, as a week, month or year alone (its first day, which is noted).
 * @param order null while it is not known: then a cell that depends on it is wrong
 */
export function readDay(
  cell: RawCell | undefined,
  order: DayOrder | null,
  today: string,
): CellReading<string> {
  if (saysNothing(cell) || cell === undefined || cell === null) return blank
  if (isFormulaError(cell)) return wrong('the formula in this cell failed')
  const thisYear = Number(today.slice(0, 4))
  const text = bare(cell)
  const said = (parts: Parts, noted?: string): CellReading<string> => {
    const day = dayOf(parts)
    return day === null ? wrong('there is no such day') : means(day, noted)
  }
  if (/^\d+(\.\d+)?$/.test(text)) {
    const number = Number(text)
    if (/^(19|20|21)\d{6}$/.test(text))
      return said({
        year: Number(text.slice(0, 4)),
        month: Number(text.slice(4, 6)),
        date: Number(text.slice(6)),
      })
    if (number >= 1800 && number <= 2200 && Number.isInteger(number))
      return means(`${number}-01-01`, 'only a year is said: its first day was taken')
    if (number >= SERIALS.from && number <= SERIALS.to)
      return means(dayText(Math.floor(number) - SERIAL_ZERO_DAYS_BEFORE_1970))
    return wrong('it is not a day')
  }

  const numbers = threeNumbers.exec(text)
  if (numbers !== null) {
    const [, a = '', mark = '', b = '', c = ''] = numbers
    if (a.length >= 3) return said({ year: Number(a), month: Number(b), date: Number(c) })
    const year = inYear(c, thisYear)
    if (mark === '.') return said({ year, month: Number(b), date: Number(a) })
    const [first, second] = [Number(a), Number(b)]
    const isDayFirst =
      first > 12 ? true : second > 12 ? false : first === second ? true : order === 'day first'
    if (first <= 12 && second <= 12 && first !== second && order === null)
      return wrong('it is not known whether the day or the month comes first')
    return said({ year, month: isDayFirst ? second : first, date: isDayFirst ? first : second })
  }

  const week =
    /^(\d{4})[-\s]*(?:W|KW)\s*(\d{1,2})$/iu.exec(text) ?? /^(?:W|KW)\s*(\d{1,2})[\s/-]+(\d{4})$/iu.exec(text)
  if (week !== null) {
    const [year, number] = week[1]!.length === 4 ? [week[1]!, week[2]!] : [week[2]!, week[1]!]
    try {
      return means(
        dayText(weekStart(weekNumber(`${year}-W${number.padStart(2, '0')}`))),
        'a week is said: its Monday was taken',
      )
    } catch {
      return wrong('there is no such week')
    }
  }

  const words = text.replace(/(\d)(st|nd|rd|th|er|º|°)(?=[\s.,]|$)/giu, '$1').split(/[\s.,/-]+/u)
  const said3 = words.filter(word => word !== '' && !/^(de|del|of|d|den|der|the)$/iu.test(word))
  const monthAt = said3.findIndex(word => monthByName(word) !== undefined)
  if (monthAt >= 0) {
    const month = monthByName(said3[monthAt]!)!
    const rest = said3.filter((_, at) => at !== monthAt)
    if (rest.length === 2 && rest.every(word => /^\d{1,4}$/.test(word))) {
      const yearFirst = rest[0]!.length === 4
      const [date, year] = yearFirst ? [rest[1]!, rest[0]!] : [rest[0]!, rest[1]!]
      return said({ year: inYear(year, thisYear), month, date: Number(date) })
    }
    if (rest.length === 1 && /^(\d{2}|\d{4})$/.test(rest[0]!))
      return said(
        { year: inYear(rest[0]!, thisYear), month, date: 1 },
        'only a month is said: its first day was taken',
      )
  }

  const month = /^(\d{1,2})[./-](\d{4})$/.exec(text) ?? /^(\d{4})[./-](\d{1,2})$/.exec(text)
  if (month !== null) {
    const [year, number] = month[1]!.length === 4 ? [month[1]!, month[2]!] : [month[2]!, month[1]!]
    return said(
      { year: Number(year), month: Number(number), date: 1 },
      'only a month is said: its first day was taken',
    )
  }
  return wrong('it is not a day')
}
