import { weekNumber } from '../../science/index.ts'
import type { Plan } from '../plan.ts'
import type { Season, SeasonStart } from '../season.ts'

export interface PlannedSupply {
  readonly starts: readonly SeasonStart[]
  readonly bought: readonly { readonly kind: number; readonly week: number; readonly number: number }[]
}

/** What a plan still means to begin, and the rootstocks that it buys in, in the terms of today's season. */
export function supplyOfPlan(season: Season, plan: Pick<Plan, 'starts'>): PlannedSupply {
  const starts: SeasonStart[] = []
  const bought: { kind: number; week: number; number: number }[] = []
  for (const start of plan.starts) {
    const week = weekNumber(start.week) - season.firstWeek
    const way = season.ways.findIndex(
      ({ kind, protocol }) => protocol.id === start.protocol && season.kinds[kind]!.id === start.kind,
    )
    if (week < 0 || week >= season.weeks || way < 0) continue
    starts.push({ way, week, number: start.number })
    for (const { kind, batch, start: from, number } of start.rootstocks) {
      const index = season.kinds.findIndex(({ id }) => id === kind)
      const { rootstock } = season.ways[way]!.courses[season.ways[way]!.courseOfWeek[week]!]!
      const useWeek = week + Math.max(0, rootstock?.offset ?? 0)
      if (batch === null && from === null && index >= 0 && useWeek < season.weeks)
        bought.push({ kind: index, week: useWeek, number })
    }
  }
  return { starts, bought }
}
