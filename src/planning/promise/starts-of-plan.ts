import { weekNumber } from '../../science/index.ts'
import type { Plan } from '../plan.ts'
import type { Season, SeasonStart } from '../season.ts'

/** Of a plan, what a start beside it is weighed against. */
export type PlanBeside = Pick<Plan, 'id' | 'starts' | 'bought' | 'loads' | 'firstWeek'>

export interface PlannedSupply {
  readonly starts: readonly SeasonStart[]
  readonly bought: readonly { readonly kind: number; readonly week: number; readonly number: number }[]
}

/** What a plan still means to begin, and what it buys in, in the terms of today's season. */
export function supplyOfPlan(season: Season, plan: Pick<Plan, 'starts' | 'bought'>): PlannedSupply {
  const kindIndex = new Map(season.kinds.map(({ id }, kind) => [id, kind]))
  const wayIndex = new Map(
    season.ways.map(({ kind, protocol }, way) => [`${season.kinds[kind]!.id} ${protocol.id}`, way]),
  )
  const isAhead = (week: number) => week >= 0 && week < season.weeks
  return {
    starts: plan.starts.flatMap(({ kind, protocol, week: name, number }) => {
      const week = weekNumber(name) - season.firstWeek
      const way = wayIndex.get(`${kind} ${protocol}`)
      return way === undefined || !isAhead(week) ? [] : [{ way, week, number }]
    }),
    bought: plan.bought.flatMap(({ kind: id, week: name, number }) => {
      const week = weekNumber(name) - season.firstWeek
      const kind = kindIndex.get(id)
      return kind === undefined || !isAhead(week) ? [] : [{ kind, week, number }]
    }),
  }
}
