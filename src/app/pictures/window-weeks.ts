import {
  dateOf,
  dayNumber,
  dayText,
  weekNumber,
  weekOfDay,
  weekStart,
  weeksInYear,
} from '../../science/index.ts'

/** Weeks counted from a first one, `to` past the last. */
export interface Run {
  readonly from: number
  readonly to: number
}

/** Whole weeks, by their first and last day. */
export interface Span {
  readonly from: string
  readonly to: string
}

const runsFrom = (first: number, weeks: number, months: readonly number[]): readonly Run[] => {
  const runs: { from: number; to: number }[] = []
  for (let index = 0; index < weeks; index++) {
    const { month } = dateOf(weekStart(first + index) + 3)
    if (months.length > 0 && !months.includes(month)) continue
    const last = runs.at(-1)
    if (last !== undefined && last.to === index) last.to = index + 1
    else runs.push({ from: index, to: index + 1 })
  }
  return runs
}

/**
 * Runs of weeks, from `first` on, in which a window of months is open, as the plan has it: a week belongs to the month
 * of its Thursday, and a window that names no months leaves every week to its condition.
 */
export const windowRuns = (first: string, weeks: number, months: readonly number[]): readonly Run[] =>
  runsFrom(weekNumber(first), weeks, months)

/** Longer than any year, so that the next opening is seen. */
const WEEKS_SEEN = 54

/** How a window stands in the week of a day. */
export type WindowNow =
  | { readonly isOpen: true; readonly closes: null }
  /** `closes` is the last day of its last week, that many weeks after this one. */
  | { readonly isOpen: true; readonly closes: string; readonly weeks: number }
  /** `opens` is the Monday of its first week, that many weeks after this one. */
  | { readonly isOpen: false; readonly opens: string; readonly weeks: number }

export const windowNow = (months: readonly number[], today: string): WindowNow => {
  const first = weekOfDay(dayNumber(today))
  const [run] = runsFrom(first, WEEKS_SEEN, months)
  // Every month has a Thursday, so that a window opens within the year.
  const { from, to } = run!
  if (from > 0) return { isOpen: false, opens: dayText(weekStart(first + from)), weeks: from }
  if (to === WEEKS_SEEN) return { isOpen: true, closes: null }
  return { isOpen: true, closes: dayText(weekStart(first + to) - 1), weeks: to - 1 }
}

/** The weeks of a window that begin in the year of a day, each run whole: one over the new year ends in the next. */
export const windowSpans = (months: readonly number[], today: string): readonly Span[] => {
  const { year } = dateOf(weekStart(weekOfDay(dayNumber(today))) + 3)
  const first = weekNumber(`${String(year).padStart(4, '0')}-W01`)
  const weeks = weeksInYear(year)
  const runs = runsFrom(first, weeks + WEEKS_SEEN, months).filter(({ from }) => from < weeks)
  const isOverNewYear = runs.length > 1 && runs.at(-1)!.to > weeks
  return runs
    .filter(({ from }) => from > 0 || !isOverNewYear)
    .map(({ from, to }) => ({
      from: dayText(weekStart(first + from)),
      to: dayText(weekStart(first + (from === 0 ? Math.min(to, weeks) : to)) - 1),
    }))
}
