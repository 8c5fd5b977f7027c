import { listed, type Phrase, phrase } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { OrderForecast } from '../plan.ts'
import { poolSaid } from '../reading/pools.ts'
import { courseOf, readySpan } from '../rules/season-draft.ts'
import { laddersOf } from './ladders.ts'
import { moneySaid } from './limits.ts'
import type { Match } from './match-stock.ts'
import { type Planned, weeksSaid } from './planned.ts'
import { whySurer } from './why-surer.ts'

/** A chance this far from what was asked needs no reason. */
const AS_ASKED = 0.015

/** What each order may expect, and how its number is counted back. */
export function orderForecasts(planned: Planned, matches: readonly Match[]): OrderForecast[] {
  const { season, nursery, outcomes, solution } = planned
  const before = nursery.acceptedPlan?.chances ?? {}
  const own: Match[][] = season.orders.map(() => [])
  for (const match of matches) if (match.taker.what === 'order') own[match.taker.order]!.push(match)
  const byKind = grouped(matches, ({ kind }) => kind)
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
      why: whyOf(planned, byKind, own[o]!, o, solution.short[o]!),
      ladders: laddersOf(planned, own[o]!, o),
    }
  })
}

/** Why it is surer or less sure than asked. */
function whyOf(
  planned: Planned,
  byKind: ReadonlyMap<number, readonly Match[]>,
  made: readonly Match[],
  o: number,
  short: number,
): Phrase[] {
  const { season, outcomes, margins, solution } = planned
  const order = season.orders[o]!
  const { chance } = outcomes[o]!
  if (Math.abs(chance - order.sure) <= AS_ASKED) return []
  if (chance < order.sure) {
    const reasons: Phrase[] = []
    if (short > 0.5)
      reasons.push(
        phrase('{short} of the {number} planned for it cannot be made in time: {limit}.', {
          short: Math.round(short),
          number: Math.round(margins.plannedNumber[o]!),
          limit: limitOf(planned, o),
        }),
      )
    const late = solution.deliveries.filter(d => d.order === o && d.week > order.dueWeek)
    if (late.length > 0) {
      const number = late.reduce((sum, d) => sum + d.number, 0)
      const weeks = late.map(({ week }) => week)
      reasons.push(
        phrase('{number} are ready only in {weeks}, after its due week: {limit}.', {
          number: Math.round(number),
          weeks: weeksSaid(season, Math.min(...weeks), Math.max(...weeks)),
          limit: limitOf(planned, o),
        }),
      )
    }
    if (reasons.length === 0 && made.every(({ maker }) => maker.what === 'batch'))
      reasons.push(phrase('It hangs on batches that stand already, and it is too late to begin more.'))
    if (reasons.length === 0)
      reasons.push(phrase('More would not help enough: {limit}.', { limit: limitOf(planned, o) }))
    return reasons
  }
  return whySurer(
    planned,
    order.kinds.flatMap(({ kind }) => byKind.get(kind) ?? []),
    o,
  )
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
function limitOf(planned: Planned, o: number): Phrase {
  const { season, relaxed } = planned
  const kinds = new Set(season.orders[o]!.kinds.map(({ kind }) => kind))
  const ways = season.ways.filter(way => kinds.has(way.kind))
  if (ways.length === 0) return phrase('there is no way to make it here')
  if (!canBeInTime(planned, o)) return phrase('nothing begun now is ready by then')
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
  if (!worst) return phrase('time is what lacks')
  const week =
    worst.week >= 0 ? phrase(' in {weeks}', { weeks: weeksSaid(season, worst.week, worst.week) }) : ''
  switch (worst.rule) {
    case 'space':
      return phrase('the {place} is full{week}', { place: phrase(worst.about), week })
    case 'labour':
      return phrase('hands for {skills} are all taken{week}', {
        skills: listed(worst.about.split(' + ').map(skill => phrase(skill))),
        week,
      })
    case 'licence':
      return phrase('the licence of {kind} is used up', { kind: worst.about })
    default:
      return phrase('{wood}: the mother trees give no more (one more is worth {worth})', {
        wood: poolSaid(season.pools[worst.subject]!),
        worth: moneySaid(-worst.dual),
      })
  }
}
