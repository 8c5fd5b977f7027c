import { dayNumber, dayText, weekNumber, weekOfDay, weekStart, weekText } from '../../science/index.ts'
import { monthArcs } from '../pictures/year-wheel/wheel-layout.ts'
import { measuresInWords } from './measures-in-words.ts'
import { type Shown, shownUnit, type Units } from './shown-unit.ts'

/** Numbers, days and measures as the reader writes them. Pure: the locale and the units come in. */

const SQUARE_FEET_PER_SQUARE_METRE = 10.763910416709722 // 1 ft = 0.3048 m exactly (NIST SP 811, appendix B)
const FEET_PER_METRE = 1 / 0.3048
const DAY_MS = 86_400_000
const same = (words: string): string => words

/** The instant at which a day begins in UTC, in which all days are written. */
const instant = (day: string): number => dayNumber(day) * DAY_MS

export const mondayOf = (week: string): string => dayText(weekStart(weekNumber(week)))

export const dayAfter = (day: string, days: number): string => dayText(dayNumber(day) + days)

export const daysBetween = (from: string, to: string): number => dayNumber(to) - dayNumber(from)

/** ISO week of a day, `2026-W19`. */
export const weekOf = (day: string): string => weekText(weekOfDay(dayNumber(day)))

export const weekAfter = (week: string, weeks: number): string => weekText(weekNumber(week) + weeks)

export const weeksBetween = (from: string, to: string): number => weekNumber(to) - weekNumber(from)

/** Places where people count weeks by ISO 8601: their calendars begin on Monday and want four days in week 1. */
const countsWeeks = (locale: string): boolean => {
  const info = new Intl.Locale(locale) as Intl.Locale & {
    getWeekInfo?: () => { firstDay: number; minimalDays?: number }
    weekInfo?: { firstDay: number; minimalDays?: number }
  }
  const week = info.getWeekInfo?.() ?? info.weekInfo
  return week?.firstDay === 1
}

/** A formatter takes a phone milliseconds to make, and a page needs few of them. */
const whenAsked = <T>(make: () => T): (() => T) => {
  let made: T | undefined
  return () => {
    made ??= make()
    return made
  }
}

/** @param term a unit's words, as in "kg a m²", in the language of the locale */
export const createFormat = (locale: string, units: Units, term: (words: string) => string = same) => {
  const number = (options: Intl.NumberFormatOptions) =>
    whenAsked(() => new Intl.NumberFormat(locale, { maximumFractionDigits: 0, ...options }))
  const date = (options: Intl.DateTimeFormatOptions) =>
    whenAsked(() => new Intl.DateTimeFormat(locale, { ...options, timeZone: 'UTC' }))
  const whole = number({})
  const tenth = number({ maximumFractionDigits: 1 })
  const hundredth = number({ maximumFractionDigits: 2 })
  const fixedTenth = number({ minimumFractionDigits: 1, maximumFractionDigits: 1 })
  const ungrouped = whenAsked(
    () => new Intl.NumberFormat(locale, { useGrouping: false, maximumSignificantDigits: 12 }),
  )
  const percent = number({ style: 'percent' })
  const shortDay = date({ day: 'numeric', month: 'short' })
  const fullDay = date({ day: 'numeric', month: 'long', year: 'numeric' })
  const weekday = date({ weekday: 'long' })
  const shortWeekday = date({ weekday: 'short', day: 'numeric', month: 'short' })
  const month = date({ month: 'short' })
  const clock = whenAsked(() => new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' }))
  const narrowMonth = date({ month: 'narrow' })
  const monthYear = date({ month: 'short', year: 'numeric' })
  const list = whenAsked(() => new Intl.ListFormat(locale, { type: 'conjunction' }))
  const monthName = (index: number) => month().format(Date.UTC(2026, index, 15))
  const monthSpan = (from: number, to: number) =>
    to < 12
      ? month().formatRange(Date.UTC(2026, from, 15), Date.UTC(2026, to, 15))
      : `${monthName(from)}\u2009–\u2009${monthName(to % 12)}`
  const isoWeeks = countsWeeks(locale)
  const plainArea = (squareMetres: number) =>
    units === 'us' ? squareMetres * SQUARE_FEET_PER_SQUARE_METRE : squareMetres
  const areaUnit = units === 'us' ? 'ft²' : 'm²'
  const amount = (value: number) => (Math.abs(value) < 10 ? tenth() : whole()).format(value)

  const shownUnits = new Map<string, Shown>()
  /** One for each unit, so that it can be told whether a unit changed. */
  const shown = (unit: string): Shown => {
    const plain = shownUnit(unit, units)
    const inWords = shownUnits.get(unit) ?? { ...plain, unit: term(plain.unit) }
    shownUnits.set(unit, inWords)
    return inWords
  }

  return {
    locale,
    units,
    number: (value: number) => whole().format(value),
    /** As one types it: every figure, nothing between the thousands. */
    typed: (value: number) => ungrouped().format(value),
    /** Of measures and money; what is counted has no decimals. */
    decimal: (value: number) => hundredth().format(value),
    /** One decimal where it is small. */
    amount,
    /** A measure of the facts as the reader has it, with its unit. */
    measure: (value: number, unit: string) => {
      const { to, unit: inWords } = shown(unit)
      return `${amount(to(value))} ${inWords}`.trim()
    },
    shown,
    /** A sentence of the facts, its measures as the reader has them. */
    sentence: (text: string) => measuresInWords(text, units),
    share: (share: number) => percent().format(share),
    /** A chance: what is nearly certain, or hardly possible, is not rounded to certain or impossible. */
    chance: (chance: number) =>
      percent().format(chance > 0 && chance < 1 ? Math.min(0.99, Math.max(0.01, chance)) : chance),
    shareRange: (low: number, high: number) => percent().formatRange(low, high),
    range: (low: number, high: number) => whole().formatRange(low, high),
    day: (day: string) => shortDay().format(instant(day)),
    /** An instant, by this device's clock. */
    moment: (at: number) => clock().format(at),
    fullDay: (day: string) => fullDay().format(instant(day)),
    fullDays: (from: string, to: string) => fullDay().formatRange(instant(from), instant(to)),
    weekday: (day: string) => weekday().format(instant(day)),
    weekdayAndDay: (day: string) => shortWeekday().format(instant(day)),
    month: monthName,
    /** Months from 1 to 12 in runs: "Feb to Apr and Sept", over the turn of the year too. */
    months: (months: readonly number[]) =>
      list().format(
        monthArcs(months).map(({ from, to }) =>
          to - from === 1 ? monthName(from) : monthSpan(from, to - 1),
        ),
      ),
    narrowMonth: (index: number) => narrowMonth().format(Date.UTC(2026, index, 15)),
    monthYear: (day: string) => monthYear().format(instant(day)),
    /** From one day to another. */
    days: (from: string, to: string) => shortDay().formatRange(instant(from), instant(to)),
    /** The number of an ISO week where people use it; the Monday's date elsewhere. */
    week: (week: string) =>
      isoWeeks ? whole().format(Number(week.slice(6))) : shortDay().format(instant(mondayOf(week))),
    weekByNumber: isoWeeks,
    weekDays: (week: string) =>
      shortDay().formatRange(instant(mondayOf(week)), instant(mondayOf(week)) + 6 * DAY_MS),
    area: (squareMetres: number) => {
      const value = plainArea(squareMetres)
      return `${(value < 10 ? fixedTenth() : value < 100 ? tenth() : whole()).format(value)} ${areaUnit}`
    },
    areaNumber: plainArea,
    areaUnit,
    length: (metres: number) =>
      units === 'us' ? `${tenth().format(metres * FEET_PER_METRE)} ft` : `${fixedTenth().format(metres)} m`,
    hours: (minutes: number) => {
      const rounded = minutes < 90 ? Math.round(minutes / 5) * 5 : Math.round(minutes / 15) * 15
      const hours = Math.floor(rounded / 60)
      const rest = rounded - hours * 60
      if (hours === 0) return `${whole().format(Math.max(rest, minutes > 0 ? 5 : 0))} min`
      return rest === 0 ? `${whole().format(hours)} h` : `${whole().format(hours)} h ${whole().format(rest)}`
    },
    money: (value: number) => whole().format(value),
    list: (words: readonly string[]) => list().format(words),
  }
}
export type Format = ReturnType<typeof createFormat>
