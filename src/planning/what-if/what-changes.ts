import { weekNumber } from '../../science/index.ts'
import { inEnglish } from '../../trade/index.ts'
import { type ChosenStart, startId, weekName } from '../answer/planned.ts'
import type { Margins, Solution } from '../model/season-model.ts'
import type { Limit } from '../plan.ts'
import type { Season, SeasonStart } from '../season.ts'
import type { OrderChance } from '../simulate/outcome.ts'
import type { WhatIf } from './what-if-answer.ts'

/** A chance within this of what it was has not changed: half a point. */
const SAME_CHANCE = 0.005
/** A relaxed start that changes by less, in plants and as a part, has not changed. */
const SAME_PLANTS = 0.5
const SAME_SHARE = 0.01

/**
 * Kinds of which the relaxation begins, buys or leaves short something else.
 * @param isByWeek look at every week; of a model solved anew weeks that cost the same may stand for each other
 */
export function kindsMoved(
  season: Season,
  before: Solution,
  after: Solution,
  isByWeek: boolean,
): Set<number> {
  const moved = new Set<number>()
  const compare = (kindOf: (key: number) => number, was: Map<number, number>, is: Map<number, number>) => {
    for (const key of new Set([...was.keys(), ...is.keys()])) {
      const [a, b] = [was.get(key) ?? 0, is.get(key) ?? 0]
      if (Math.abs(a - b) > SAME_PLANTS + SAME_SHARE * Math.max(a, b)) moved.add(kindOf(key))
    }
  }
  const summed = (
    items: readonly { readonly of: number; readonly week: number; readonly number: number }[],
  ) => {
    const sums = new Map<number, number>()
    for (const { of, week, number } of items) {
      const key = of * MOST_WEEKS + (isByWeek ? week : 0)
      sums.set(key, (sums.get(key) ?? 0) + number)
    }
    return sums
  }
  const begun = ({ starts }: Solution) => summed(starts.map(start => ({ ...start, of: start.way })))
  compare(key => season.ways[Math.floor(key / MOST_WEEKS)]!.kind, begun(before), begun(after))
  const bought = (of: Solution) => summed(of.bought.map(each => ({ ...each, of: each.kind })))
  compare(key => Math.floor(key / MOST_WEEKS), bought(before), bought(after))
  const short = ({ short: all }: Solution) => new Map([...all].map((number, o) => [o, number]))
  compare(o => season.orders[o]!.kinds[0]!.kind, short(before), short(after))
  return moved
}
/** More weeks than any season has. */
const MOST_WEEKS = 1000

/** Orders that are asked for otherwise: another number, other dates, kinds, worth or sureness. */
export function ordersMoved(before: Season, after: Season): Set<number> {
  const was = new Map(before.orders.map(order => [order.id, JSON.stringify(order)]))
  return new Set(after.orders.flatMap((order, o) => (was.get(order.id) === JSON.stringify(order) ? [] : [o])))
}

/** Kinds of which a way has another course. */
export function kindsOfOtherRates(before: Season, after: Season): Set<number> {
  const ratesOf = ({ ways }: Season) =>
    ways.map(({ courses }) =>
      JSON.stringify(courses.map(({ steps }) => steps.map(({ alpha, beta }) => [alpha, beta]))),
    )
  const [was, is] = [ratesOf(before), ratesOf(after)]
  return new Set(after.ways.flatMap(({ kind }, way) => (was[way] === is[way] ? [] : [kind])))
}

/** The margins of some orders, of the others those of before. */
export const marginsOfSome = (
  before: Margins,
  after: Margins,
  isMoved: (order: number) => boolean,
): Margins => ({
  plannedNumber: before.plannedNumber.map((number, o) => (isMoved(o) ? after.plannedNumber[o]! : number)),
  plannedDueWeek: before.plannedDueWeek.map((week, o) => (isMoved(o) ? after.plannedDueWeek[o]! : week)),
})

export const chancesMoved = (
  { orders }: Season,
  before: ReadonlyMap<string, number>,
  after: readonly OrderChance[],
): WhatIf['orders'] =>
  orders.flatMap(({ id, sure }, o) => {
    const was = before.get(id) ?? 0
    const { chance } = after[o]!
    return Math.abs(chance - was) > SAME_CHANCE
      ? [{ order: id, asked: sure, before: was, after: chance }]
      : []
  })

/** Of like weeks it is chance which of them carries the worth: within a quarter of a year it is one limit. */
const NEAR_WEEKS = 13

/** Limits that have no other of the same rule and subject near them. */
export function limitsMoved(before: readonly Limit[], after: readonly Limit[]): WhatIf['limits'] {
  const isNear = (a: Limit, b: Limit) => weekNumber(a.from) - weekNumber(b.to) <= NEAR_WEEKS
  const isIn = (limits: readonly Limit[], limit: Limit) =>
    limits.some(
      other =>
        other.rule === limit.rule &&
        inEnglish(other.subject) === inEnglish(limit.subject) &&
        isNear(other, limit) &&
        isNear(limit, other),
    )
  return {
    gone: before.filter(limit => !isIn(after, limit)),
    added: after.filter(limit => !isIn(before, limit)),
  }
}

export function startsMoved(
  season: Season,
  before: readonly SeasonStart[],
  after: readonly ChosenStart[],
): WhatIf['starts'] {
  const was = new Map(before.map(start => [startId(season, start.way, start.week), start]))
  const is = new Map(after.map(start => [start.id, start]))
  return [...new Set([...was.keys(), ...is.keys()])]
    .flatMap(id => {
      const numbers = { before: Math.round(was.get(id)?.number ?? 0), after: is.get(id)?.number ?? 0 }
      if (numbers.before === numbers.after) return []
      const { way, week } = is.get(id) ?? was.get(id)!
      const { kind, protocol } = season.ways[way]!
      return [
        {
          start: id,
          kind: season.kinds[kind]!.id,
          protocol: protocol.id,
          week: weekName(season, week),
          ...numbers,
        },
      ]
    })
    .sort((a, b) => (a.week < b.week ? -1 : a.week > b.week ? 1 : 0))
}
