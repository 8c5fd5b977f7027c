import type { OrderForecast } from '../plan.ts'
import { courseOf, readySpan } from '../rules/season-draft.ts'
import { laddersOf } from './ladders.ts'
import { moneySaid } from './limits.ts'
import type { Match } from './match-stock.ts'
import { type Planned, weeksSaid } from './planned.ts'

/** A chance this far from what was asked needs no reason. */
const AS_ASKED = 0.015

/** What each order may expect, and how its number is counted back. */
export function orderForecasts(planned: Planned, matches: readonly Match[]): OrderForecast[] {
  const { season, nursery, outcomes, solution } = planned
  const before = nursery.acceptedPlan?.chances ?? {}
  const own: Match[][] = season.orders.map(() => [])
  const takersOf = season.kinds.map(() => new Set<number>())
  for (const match of matches) {
    const { taker, kind } = match
    if (taker.what !== 'order') continue
    own[taker.order]!.push(match)
    takersOf[kind]!.add(taker.order)
  }
  return season.orders.map((order, o) => {
    const state = nursery.orders.get(order.id)
    const outcome = outcomes[o]!
    return {
      order: order.id,
      wanted: order.number,
      already: state?.dispatched ?? 0,
      asked: order.sure,
      chance: outcome.chance,
      chanceLow: outcome.chanceLow,
      chanceHigh: outcome.chanceHigh,
      chanceBefore: before[order.id] ?? null,
      expectedByDue: outcome.meanByDue,
      lowByDue: outcome.lowByDue,
      highByDue: outcome.highByDue,
      late: outcome.late,
      short: Math.max(0, outcome.short),
      why: whyOf(planned, own[o]!, kind => takersOf[kind]!.size > 1, o, solution.short[o]!),
      ladders: laddersOf(planned, own[o]!, o),
    }
  })
}

/** Why it is surer or less sure than asked. */
function whyOf(
  planned: Planned,
  made: readonly Match[],
  isShared: (kind: number) => boolean,
  o: number,
  short: number,
): string[] {
  const { season, outcomes, margins, solution } = planned
  const order = season.orders[o]!
  const { chance } = outcomes[o]!
  if (Math.abs(chance - order.sure) <= AS_ASKED) return []
  if (chance < order.sure) {
    const reasons: string[] = []
    if (short > 0.5)
      reasons.push(
        `${Math.round(short)} of the ${Math.round(margins.plannedNumber[o]!)} planned for it cannot be made in time: ${limitOf(planned, o)}.`,
      )
    const late = solution.deliveries.filter(d => d.order === o && d.week > order.dueWeek)
    if (late.length > 0) {
      const number = late.reduce((sum, d) => sum + d.number, 0)
      const weeks = late.map(({ week }) => week)
      reasons.push(
        `${Math.round(number)} are ready only in ${weeksSaid(season, Math.min(...weeks), Math.max(...weeks))}, after its due week: ${limitOf(planned, o)}.`,
      )
    }
    if (reasons.length === 0 && made.every(({ maker }) => maker.what === 'batch'))
      reasons.push('It hangs on batches that stand already, and it is too late to begin more.')
    if (reasons.length === 0) reasons.push(`More would not help enough: ${limitOf(planned, o)}.`)
    return reasons
  }
  const fromStock = made.every(({ maker, readyWeek }) => maker.what === 'batch' && readyWeek === 0)
  if (made.length > 0 && fromStock) return ['It is filled from trees that are finished already.']
  const inTrays = made.some(
    ({ maker }) => maker.what === 'start' && season.ways[planned.starts[maker.start]!.way]!.tray > 1,
  )
  return [
    ...(made.some(({ kind }) => isShared(kind))
      ? ['Trees made for other orders of the same kind stand in for it.']
      : []),
    ...(inTrays ? ['Whole trays and the smallest batch make a little more than is asked.'] : []),
  ]
}

/** Whether any start that may still begin has anything ready by the latest week. */
function canBeInTime({ season }: Planned, o: number): boolean {
  const { kinds, latestWeek } = season.orders[o]!
  return season.ways.some(
    (way, w) =>
      kinds.some(({ kind }) => kind === way.kind) &&
      way.open.some(
        (isOpen, week) => isOpen && week + readySpan(courseOf(season, w, week)).from <= latestWeek,
      ),
  )
}

/** The dearest limit in the way of an order's kinds; else time. */
function limitOf(planned: Planned, o: number): string {
  const { season, relaxed } = planned
  const kinds = new Set(season.orders[o]!.kinds.map(({ kind }) => kind))
  const ways = season.ways.filter(way => kinds.has(way.kind))
  if (ways.length === 0) return 'there is no way to make it here'
  if (!canBeInTime(planned, o)) return 'nothing begun now is ready by then'
  const skills = new Set(
    ways.flatMap(way => way.courses.flatMap(({ labour }) => labour.map(({ skill }) => skill))),
  )
  const pools = new Set(
    ways.flatMap(way => way.courses.flatMap(({ material }) => material.map(({ pool }) => pool))),
  )
  const places = new Set(
    ways.flatMap(way => way.courses.flatMap(({ area }) => area.map(({ place }) => place))),
  )
  const worst = relaxed.duals
    .filter(({ rule, subject, about, dual }) => {
      if (dual >= -0.01) return false
      if (rule === 'space') return places.has(subject)
      if (rule === 'labour') return about.split(' + ').some(skill => skills.has(skill as never))
      if (rule === 'motherYear' || rule === 'motherWeek') return pools.has(subject)
      return rule === 'licence' && season.licences[subject]!.kinds.some(kind => kinds.has(kind))
    })
    .sort((a, b) => a.dual - b.dual)[0]
  if (!worst) return 'time is what lacks'
  const week = worst.week >= 0 ? ` in ${weeksSaid(season, worst.week, worst.week)}` : ''
  switch (worst.rule) {
    case 'space':
      return `the ${worst.about} is full${week}`
    case 'labour':
      return `hands for ${worst.about} are all taken${week}`
    case 'licence':
      return `the licence of ${worst.about} is used up`
    default:
      return `${worst.about}: the mother trees give no more (one more is worth ${moneySaid(-worst.dual)})`
  }
}
