import type { Nursery } from '../../record/index.ts'
import { dayNumber, weekNumber, weekOfDay } from '../../science/index.ts'
import { wayName } from '../../trade/index.ts'
import { nameOfPlanted } from '../answer/plantings.ts'
import type { Margins, Solution } from '../model/season-model.ts'
import type { Plan } from '../plan.ts'
import type { Planted, Season, SeasonStart } from '../season.ts'
import { firstMargins } from '../sureness/first-margins.ts'

/** A plan made before, read in the weeks of this season: what of it is still to come. */
export interface ShownPlan {
  readonly starts: readonly SeasonStart[]
  readonly bought: Solution['bought']
  /** Young mother trees that it plants from now on. */
  readonly planted: readonly Planted[]
  readonly margins: Margins
  /** By order, the chance that was shown; NaN where it was not known. */
  readonly chance: Float64Array
  /** Kinds begun for orders that are no longer open. */
  readonly kindsOfGoneOrders: ReadonlySet<number>
}

export function shownPlan(nursery: Nursery, season: Season, plan: Plan): ShownPlan {
  const wayOf = new Map(season.ways.map(({ name }, way) => [name, way]))
  const kindOf = new Map(season.kinds.map(({ id }, kind) => [id, kind]))
  const isOpen = new Set(season.orders.map(({ id }) => id))
  const begun = begunSince(nursery, plan.madeOn)
  const starts: SeasonStart[] = []
  const kindsOfGoneOrders = new Set<number>()
  const isSet = new Set(nursery.startSets.map(({ entry }) => entry))
  const replaced = new Set(nursery.startSets.map(({ insteadOf }) => insteadOf))
  for (const { id, kind, protocol, week: weekText, number, orders, set } of plan.starts) {
    // One that stood because it was set goes when that is taken back; one goes where another was set in its place.
    if ((set !== null && !isSet.has(set.entry)) || replaced.has(id)) continue
    const name = wayName(kind, protocol)
    const way = wayOf.get(name)
    const week = weekNumber(weekText) - season.firstWeek
    const left = number - (begun.get(`${name} ${season.firstWeek + week}`) ?? 0)
    if (way === undefined || week < 0 || week >= season.weeks || left <= 0) continue
    if (!season.ways[way]!.open[week] || nursery.tasksDone.has(`${id}/start`)) continue
    starts.push({ way, week, number: left })
    if (orders.some(({ order }) => !isOpen.has(order))) kindsOfGoneOrders.add(season.ways[way]!.kind)
  }
  const bought = plan.bought.flatMap(({ kind: id, week: weekText, number }) => {
    const kind = kindOf.get(id)
    const week = weekNumber(weekText) - season.firstWeek
    const { buyIn } = season.kinds[kind ?? -1] ?? { buyIn: null }
    return kind !== undefined && buyIn && week >= buyIn.weeksNotice ? [{ kind, week, number }] : []
  })
  const forecasts = new Map(plan.orders.map(forecast => [forecast.order, forecast]))
  return {
    starts,
    bought,
    planted: plan.plantings.flatMap(({ name, material, week: weekText, number }) => {
      const pool = season.pools.findIndex(of => of.material === material && nameOfPlanted(of) === name)
      const week = weekNumber(weekText) - season.firstWeek
      return pool >= 0 && week >= 0 ? [{ pool, week, number }] : []
    }),
    margins: marginsOf(season, plan),
    chance: Float64Array.from(season.orders, ({ id }) => forecasts.get(id)?.chance ?? Number.NaN),
    kindsOfGoneOrders,
  }
}

/** Orders that are as sure as before begin with the margin that they ended with, by their number. */
function marginsOf(season: Season, plan: Plan): Margins {
  const forecasts = new Map(plan.orders.map(forecast => [forecast.order, forecast]))
  const known = season.orders.map(({ id, sure }) => {
    const forecast = forecasts.get(id)
    const plannedWith = plan.plannedWith[id]
    return forecast && plannedWith && forecast.asked === sure && forecast.wanted > 0
      ? { share: plannedWith.number / forecast.wanted, weeksEarly: plannedWith.weeksEarly }
      : undefined
  })
  const margins = firstMargins(season, order => known[order] !== undefined)
  known.forEach((with_, o) => {
    if (!with_) return
    const { number, dueWeek } = season.orders[o]!
    margins.plannedNumber[o] = with_.share * number
    margins.plannedDueWeek[o] = Math.max(0, dueWeek - with_.weeksEarly)
  })
  return margins
}

/** Plants of batches begun since the week of a day, by way and week. */
function begunSince(nursery: Nursery, day: string): Map<string, number> {
  const begun = new Map<string, number>()
  const first = weekOfDay(dayNumber(day))
  for (const { kind, protocol, splitFrom, startedOn, number } of nursery.batches.values()) {
    const week = weekOfDay(dayNumber(startedOn))
    if (splitFrom !== null || week < first) continue
    const name = `${wayName(kind, protocol)} ${week}`
    begun.set(name, (begun.get(name) ?? 0) + number)
  }
  return begun
}
