import type { Solution } from '../model/season-model.ts'
import { NEGLIGIBLE } from '../model/solve.ts'
import type { Season } from '../season.ts'
import type { ChosenStart } from './planned.ts'

/** Where finished plants come from, by index: a living batch, a planned start, or bought in. */
export type Maker =
  | { readonly what: 'batch'; readonly batch: number }
  | { readonly what: 'start'; readonly start: number }
  | { readonly what: 'bought' }

/** Who takes them: an order, or a start that works them. */
export type Taker =
  | { readonly what: 'order'; readonly order: number }
  | { readonly what: 'start'; readonly start: number }

export interface Match {
  readonly kind: number
  readonly maker: Maker
  readonly taker: Taker
  readonly number: number
  readonly readyWeek: number
  readonly takenWeek: number
}

interface Lot {
  readonly maker: Maker
  readonly week: number
  readonly lastWeek: number
  left: number
}

/** Says whose plants go where: in every week the oldest that are still usable go first. */
export function matchStock(season: Season, solution: Solution, starts: readonly ChosenStart[]): Match[] {
  const lots: Lot[][] = season.kinds.map(() => [])
  const add = (kind: number, maker: Maker, week: number, number: number, agedWeeks = 0) => {
    const lastWeek = week + season.kinds[kind]!.usableWeeks - agedWeeks
    if (number > NEGLIGIBLE) lots[kind]!.push({ maker, week, lastWeek, left: number })
  }
  season.batches.forEach((batch, b) => {
    if (batch.onHold) return
    batch.ready.forEach((number, week) => {
      add(batch.kind, { what: 'batch', batch: b }, week, number, week === 0 ? batch.finishedWeeksAgo : 0)
    })
  })
  starts.forEach(({ way, week, number, course }, s) => {
    course.ready.forEach((share, k) => {
      add(season.ways[way]!.kind, { what: 'start', start: s }, week + k, number * share)
    })
  })
  for (const { kind, week, number } of solution.bought) add(kind, { what: 'bought' }, week, number)

  const startIndex = new Map(starts.map(({ way, week }, s) => [`${way} ${week}`, s]))
  const takings: { kind: number; taker: Taker; week: number; number: number }[] = []
  for (const { order, kind, week, number } of solution.deliveries)
    takings.push({ kind, taker: { what: 'order', order }, week, number })
  for (const { way, week, kind, useWeek, number } of solution.rootstockUses) {
    const start = startIndex.get(`${way} ${week}`)
    if (start !== undefined) takings.push({ kind, taker: { what: 'start', start }, week: useWeek, number })
  }

  const matches: Match[] = []
  for (const kindLots of lots) kindLots.sort((a, b) => a.lastWeek - b.lastWeek || a.week - b.week)
  for (const { kind, taker, week, number } of takings.sort((a, b) => a.week - b.week)) {
    let wanted = number
    for (const lot of lots[kind]!) {
      if (wanted <= NEGLIGIBLE) break
      if (lot.left <= NEGLIGIBLE || lot.week > week || lot.lastWeek < week) continue
      const taken = Math.min(wanted, lot.left)
      lot.left -= taken
      wanted -= taken
      matches.push({ kind, maker: lot.maker, taker, number: taken, readyWeek: lot.week, takenWeek: week })
    }
  }
  return matches
}
