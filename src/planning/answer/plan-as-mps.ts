import type { Nursery } from '../../record/index.ts'
import { buildSeasonModel } from '../model/build-season-model.ts'
import { toMps } from '../model/mps.ts'
import type { Plan } from '../plan.ts'
import { readSeason } from '../reading/read-season.ts'
import { shownPlan } from '../replan/shown-plan.ts'
import { withCover } from '../sureness/with-cover.ts'

/**
 * The linear model behind a plan, with the margins that it ended with and every row of place, hands and wood, in free MPS for
 * any other solver. Its minimum is the bound that the plan's gap is measured against, in plants and not in trays.
 */
export function planAsMps(nursery: Nursery, plan: Plan): string {
  const season = readSeason(nursery, plan.madeOn)
  const model = buildSeasonModel(withCover(season), shownPlan(nursery, season, plan).margins)
  return toMps(model, { capacities: model.capacities.flatMap(capacity => capacity.all()) })
}
