import { dateOf, dayNumber, weekOfDay, weekStart } from '../../science/index.ts'

/** The weeks of a season: this week is 0. */
export interface Weeks {
  readonly first: number
  readonly count: number
  /** Day number of today. */
  readonly today: number
  /** Day number of a week's Monday. */
  monday(week: number): number
  /** The week in which a day falls; before this week it is negative. */
  of(day: string): number
  /** The last week that ends on or before a day. */
  endingBy(day: string): number
  /** Calendar month and year of a week of the season: that of its Thursday, as the standard counts. */
  month(week: number): number
  year(week: number): number
}

export function seasonWeeks(today: string, count: number): Weeks {
  const first = weekOfDay(dayNumber(today))
  const monday = (week: number) => weekStart(first + week)
  const thursdays = Array.from({ length: count }, (_, week) => dateOf(monday(week) + 3))
  return {
    first,
    count,
    today: dayNumber(today),
    monday,
    of: day => weekOfDay(dayNumber(day)) - first,
    endingBy: day => weekOfDay(dayNumber(day) + 1) - 1 - first,
    month: week => thursdays[week]!.month,
    year: week => thursdays[week]!.year,
  }
}

/** Calendar years as stretches of weeks. */
export function yearsOf(weeks: Weeks): { year: number; fromWeek: number; toWeek: number }[] {
  const years: { year: number; fromWeek: number; toWeek: number }[] = []
  for (let week = 0; week < weeks.count; week++) {
    const year = weeks.year(week)
    const current = years.at(-1)
    if (current?.year === year) current.toWeek = week
    else years.push({ year, fromWeek: week, toWeek: week })
  }
  return years
}

/** Days that the week and a span share. */
export function daysShared(
  weeks: Weeks,
  week: number,
  span: { readonly from: string; readonly to: string },
): number {
  const monday = weeks.monday(week)
  const from = Math.max(monday, dayNumber(span.from))
  const to = Math.min(monday + 6, dayNumber(span.to))
  return Math.max(0, to - from + 1)
}
