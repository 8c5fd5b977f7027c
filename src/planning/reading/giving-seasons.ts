import { type MotherState, seasonYear } from '../../record/index.ts'
import { dayText } from '../../science/index.ts'
import type { Material } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { Weeks } from './weeks.ts'

/** A stretch of weeks that is one season of giving, and the months that the seasons of its time of year cover. */
export interface GivingSeason {
  readonly months: readonly number[]
  readonly fromWeek: number
  readonly toWeek: number
}

const ALL_YEAR = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]

/** A supply of no months gives all year. */
export const givesInMonth = (months: readonly number[], month: number): boolean =>
  months.length === 0 || months.includes(month)

/** From the first month in which is given to the last, those between them too; over the turn of the year where it is. */
function spanOf(months: readonly number[]): readonly number[] {
  if (months.length === 0) return ALL_YEAR
  const sorted = [...months].sort((a, b) => a - b)
  const runsOver = sorted[0] === 1 && sorted.at(-1) === 12 && sorted.length < 12
  let first = runsOver ? 12 : sorted[0]!
  while (runsOver && sorted.includes(first - 1)) first--
  const last = runsOver ? Math.max(...sorted.filter(month => month < first)) : sorted.at(-1)!
  return ALL_YEAR.filter(month =>
    runsOver ? month >= first || month <= last : month >= first && month <= last,
  )
}

/** Times of the year in which is given, none over another: spans that share a month are one. */
function timesOfYear(spans: readonly (readonly number[])[]): number[][] {
  let times: Set<number>[] = []
  for (const span of spans) {
    const shared = times.filter(time => span.some(month => time.has(month)))
    times = [
      ...times.filter(time => !shared.includes(time)),
      new Set([...shared.flatMap(time => [...time]), ...span]),
    ]
  }
  return times.map(time => [...time].sort((a, b) => a - b))
}

/**
 * The seasons in which mothers give a material: calendar years, or seasons over the turn of the year; where they give in
 * two times of the year that are apart, the seasons of each.
 */
export function givingSeasons(weeks: Weeks) {
  const thursdays = Array.from({ length: weeks.count }, (_, week) => dayText(weeks.monday(week) + 3))
  const known = new Map<string, readonly GivingSeason[]>()
  return (mothers: readonly MotherState[], material: Material): readonly GivingSeason[] => {
    const spans = mothers.flatMap(({ mother }) =>
      mother.gives.filter(supply => supply.material === material).map(({ months }) => spanOf(months)),
    )
    const times = timesOfYear(spans)
    const name = times.map(months => months.join()).join(' ')
    const before = known.get(name)
    if (before) return before
    const seasons = times.flatMap(months => {
      // One time of the year alone has all weeks for itself.
      const own = [...thursdays.keys()].filter(
        week => times.length === 1 || months.includes(weeks.month(week)),
      )
      const years = grouped(own, week => seasonYear(months, thursdays[week]!))
      return [...years.values()].map(ofYear => ({ months, fromWeek: ofYear[0]!, toWeek: ofYear.at(-1)! }))
    })
    known.set(name, seasons)
    return seasons
  }
}
