import { normalQuantile } from '../../science/index.ts'
import { DAY_OF_START, daysToReady } from '../rates/days-to-ready.ts'
import { courseOf, survivalOf } from '../rules/season-draft.ts'
import type { Season } from '../season.ts'

/** A tree worked again is counted as ready in the week in which so many of a hundred such batches are. */
const READY_SURELY = 0.8

/** What an order is expected to lack by its due week. */
export interface Lacking {
  readonly order: number
  /** Delivered late, and never, on average. */
  readonly late: number
  readonly short: number
}

export interface WorthWorkingAgain {
  /** How many of the failed to work again, and how many trees come of it on average. */
  readonly number: number
  readonly trees: number
  /** What the trees are worth to the orders that they reach in time, less what working them costs. */
  readonly worth: number
  readonly cost: number
  /** The orders that it can still help, and the last week in which working again helps each. */
  readonly helps: readonly { readonly order: number; readonly lastWeek: number; readonly trees: number }[]
  /** The last week in which it helps any; null when it is too late, or out of season, for all. */
  readonly lastWeek: number | null
}

/**
 * Whether to work failed stocks again now, by the same way: the trees that come of it go to the orders that lack some and
 * are due after they are ready, the first due first. A tree short is worth the order's loss, a late one a week's.
 */
export function worthWorkingAgain(
  season: Season,
  way: number,
  failed: number,
  lacking: readonly Lacking[],
): WorthWorkingAgain {
  const { kind, open, costPerPlant } = season.ways[way]!
  const helps: { order: number; lastWeek: number; trees: number; value: number }[] = []
  for (const { order, late, short } of [...lacking].sort(
    (a, b) => season.orders[a.order]!.dueWeek - season.orders[b.order]!.dueWeek,
  )) {
    const { kinds, dueWeek, price } = season.orders[order]!
    if (late + short < 0.5 || !kinds.some(accepted => accepted.kind === kind)) continue
    let lastWeek = -1
    for (let week = 0; week < season.weeks && week <= dueWeek; week++)
      if (open[week] && week + weeksToReady(season, way, week) <= dueWeek) lastWeek = week
    if (lastWeek < 0) continue
    const { shortShare, latePerWeekShare } = season.prices
    const value = (price * (short * shortShare + late * latePerWeekShare)) / (late + short)
    helps.push({ order, lastWeek, trees: late + short, value })
  }
  const lastWeek = helps.length > 0 ? Math.max(...helps.map(help => help.lastWeek)) : null
  const now = open[0] ? courseOf(season, way, 0) : null
  const survival = now ? survivalOf(now) : 0
  const inTime = now
    ? helps.filter(({ order }) => weeksToReady(season, way, 0) <= season.orders[order]!.dueWeek)
    : []
  const wanted = inTime.reduce((sum, { trees }) => sum + trees, 0)
  const number = survival > 0 ? Math.min(Math.floor(failed), Math.ceil(wanted / survival)) : 0
  let left = number * survival
  let worth = 0
  for (const { trees, value } of inTime) {
    const given = Math.min(left, trees)
    worth += given * value
    left -= given
  }
  const minutes =
    now?.labour.reduce((sum, { perPlant }) => sum + perPlant.reduce((of, each) => of + each, 0), 0) ?? 0
  const cost = number * (costPerPlant + minutes * season.prices.minute)
  return {
    number,
    trees: number * survival,
    worth: worth - cost,
    cost,
    helps: helps.map(({ order, lastWeek: last, trees }) => ({ order, lastWeek: last, trees })),
    lastWeek,
  }
}

function weeksToReady(season: Season, way: number, week: number): number {
  const { meanDays, batchSdLog, plantSdLog } = daysToReady(courseOf(season, way, week).steps)
  if (meanDays === 0) return 0
  const variance = batchSdLog ** 2 + plantSdLog ** 2
  const day =
    DAY_OF_START + meanDays * Math.exp(-variance / 2 + normalQuantile(READY_SURELY) * Math.sqrt(variance))
  return Math.floor(day / 7)
}
