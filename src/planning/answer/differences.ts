import { weekNumber } from '../../science/index.ts'
import { grouped } from '../grouped.ts'
import type { OrderForecast } from '../plan.ts'
import type { SeasonStart } from '../season.ts'
import { type Planned, startId } from './planned.ts'

/** A smaller part of a start than this is no change worth saying. */
const LEAST_PART = 0.05
/** Chances of two plans differ by less than this by the draw of the seasons alone. */
const LEAST_CHANCE = 0.02

/** What a plan is compared with: the plan accepted last or, where none is, the plan shown before. */
export interface Baseline {
  readonly starts: readonly SeasonStart[]
  readonly chances: Readonly<Record<string, number>>
}

export interface StartDifference {
  readonly id: string
  readonly way: number
  readonly week: number
  readonly before: number
  readonly now: number
}

export interface ChanceDifference {
  readonly order: OrderForecast['order']
  readonly before: number
  readonly now: number
}

export function baselineOf({ season, nursery, before, news }: Planned): Baseline | null {
  if (nursery.acceptedPlan) return { starts: season.accepted, chances: nursery.acceptedPlan.chances }
  if (!before) return null
  const wayOf = new Map(
    season.ways.map(({ kind, protocol }, way) => [`${season.kinds[kind]!.id} ${protocol.id}`, way]),
  )
  const begun = new Map<number, number>()
  for (const { body } of news) {
    const way = body.kind === 'batch-started/1' ? wayOf.get(`${body.kindOfTree} ${body.protocol}`) : undefined
    if (way !== undefined && body.kind === 'batch-started/1')
      begun.set(way, (begun.get(way) ?? 0) + body.number)
  }
  const starts = before.starts.flatMap(({ kind, protocol, week, number }): SeasonStart[] => {
    const way = wayOf.get(`${kind} ${protocol}`)
    return way === undefined ? [] : [{ way, week: weekNumber(week) - season.firstWeek, number }]
  })
  return {
    // What was begun since counts against the earliest of its starts.
    starts: starts.flatMap(start => {
      const gone = Math.min(start.number, begun.get(start.way) ?? 0)
      begun.set(start.way, (begun.get(start.way) ?? 0) - gone)
      return start.week >= 0 && start.number > gone ? [{ ...start, number: start.number - gone }] : []
    }),
    chances: Object.fromEntries(before.orders.map(({ order, chance }) => [order, chance])),
  }
}

/** Starts that are begun with other numbers than before, by way. */
export function startDifferences(planned: Planned, baseline: Baseline): Map<number, StartDifference[]> {
  const { season } = planned
  const before = new Map(
    [...grouped(baseline.starts, ({ way, week }) => startId(season, way, week))].map(([id, of]) => [
      id,
      { ...of[0]!, number: of.reduce((sum, { number }) => sum + number, 0) },
    ]),
  )
  const now = new Map(planned.starts.map(start => [start.id, start]))
  const differences: StartDifference[] = []
  for (const id of new Set([...before.keys(), ...now.keys()])) {
    const { way, week } = now.get(id) ?? before.get(id)!
    const was = before.get(id)?.number ?? 0
    const is = now.get(id)?.number ?? 0
    if (Math.abs(is - was) > LEAST_PART * Math.max(1, was))
      differences.push({ id, way, week, before: was, now: is })
  }
  return grouped(
    differences.sort((a, b) => a.week - b.week),
    ({ way }) => way,
  )
}

/** Orders that are surer or less sure than before, the most changed first. */
export function chanceDifferences(
  orders: readonly Pick<OrderForecast, 'order' | 'chance'>[],
  { chances }: Baseline,
): ChanceDifference[] {
  return orders
    .flatMap(({ order, chance }) => {
      const before = chances[order]
      return before === undefined || Math.abs(chance - before) < LEAST_CHANCE
        ? []
        : [{ order, before, now: chance }]
    })
    .sort((a, b) => Math.abs(b.now - b.before) - Math.abs(a.now - a.before))
}
