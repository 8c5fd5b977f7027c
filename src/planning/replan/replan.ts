import { chosenStarts } from '../answer/planned.ts'
import { plantedTrees } from '../answer/plantings.ts'
import { buildSeasonModel, withoutMargins } from '../model/build-season-model.ts'
import type { Margins, Solution } from '../model/season-model.ts'
import { openSolver } from '../model/solve.ts'
import type { Season, SeasonStart } from '../season.ts'
import { componentsOf } from '../simulate/components.ts'
import { orderChances, type SimulatedLoads, simulatedLoads } from '../simulate/outcome.ts'
import type { OpenRunner } from '../simulate/part-runs.ts'
import {
  byComponent,
  type SeasonsByComponent,
  type SimulationMemory,
} from '../simulate/simulate-by-component.ts'
import type { SimulatedSeasons } from '../simulate/simulate-seasons.ts'
import { addLoads } from '../simulate/sum-loads.ts'
import { withPlanted } from '../simulate/wood.ts'
import { CLOSE_ENOUGH } from '../sureness/move-margins.ts'
import { savedByMoving } from '../sureness/saved-by-moving.ts'
import { relaxedSurely, type SurePlan } from '../sureness/sure-plan.ts'
import { withCover } from '../sureness/with-cover.ts'
import { type ReckoningMemory, reckoned } from '../whole/reckon.ts'
import { besideTheRest, expectedToTake, partOfSeason } from './part-of-season.ts'
import type { ShownPlan } from './shown-plan.ts'
import { isSteady, kindsToPlan } from './what-stays.ts'

export interface ReplanInput {
  readonly season: Season
  readonly shown: ShownPlan
  readonly seasons: number
  readonly seed: number
  /** What falls short for lack of room stays so, and what stays does not give way. */
  readonly mayFallShort?: boolean
  readonly memory?: SimulationMemory
  readonly reckoning?: ReckoningMemory | undefined
  readonly open?: OpenRunner
  readonly isStopped?: () => boolean
  readonly tell?: (stage: 'margins' | 'whole numbers', round: number, worst: number) => void
}

export type MadePlan = Pick<SurePlan, 'margins' | 'relaxed' | 'whole' | 'starts'> & {
  /** What came of it in seasons on which it was not settled: what is shown is counted in these. */
  readonly fresh: SimulatedSeasons
  readonly loads: SimulatedLoads
  /** What moving accepted starts saved. */
  readonly saved: number
}

/** Where more than this part of the orders is to be planned anew, all is. */
const MOST_ANEW = 0.5
/** What the parts of a season share: where one lacks it, another may have to give way. */
const SHARED = ['space', 'labour', 'licence']

/**
 * What was shown stays where it still serves its orders; only kinds that touch an order which it no longer serves are
 * planned anew, in the room that the rest leaves. It rests on the shown plan alone, so the same plan gives the same again.
 * Null where all is to be planned anew: too much is unsteady, what stays no longer fits into the nursery, or what is planned
 * anew falls short for lack of room, which what stays may have to give.
 */
export async function replan(input: ReplanInput): Promise<MadePlan | null> {
  const { season, shown, seasons, seed, memory, open, reckoning, mayFallShort, ...job } = input
  const inSeason = byComponent(season, seed, memory, open)
  const simulated = (of: Season) => (of === season ? inSeason : byComponent(of, seed, memory, open))
  const before = await simulated(withPlanted(season, shown.planted)).runFresh(
    shown.starts,
    shown.bought,
    seasons,
  )
  const isSteadyOrder = orderChances(season, before).map((outcome, o) => isSteady(season, shown, outcome, o))
  const anew = kindsToPlan(season, componentsOf(season), shown, isSteadyOrder)
  const part = partOfSeason(season, kind => anew.has(kind))
  if (part.orders.length > MOST_ANEW * season.orders.length) return null

  const isAnew = (kind: number) => anew.has(kind)
  const isRest = (kind: number) => !anew.has(kind)
  const rest = {
    starts: shown.starts.filter(({ way }) => isRest(season.ways[way]!.kind)),
    bought: shown.bought.filter(({ kind }) => isRest(kind)),
  }
  const loads = await inSeason.loads(rest.starts, rest.bought, seasons, isRest)
  const margins = {
    plannedNumber: Float64Array.from(shown.margins.plannedNumber),
    plannedDueWeek: Int32Array.from(shown.margins.plannedDueWeek),
  }
  let own: OwnPlan = { starts: [], bought: [], saved: 0 }
  if (part.orders.length > 0) {
    const orders = season.orders.flatMap(({ kinds }, o) => (anew.has(kinds[0]!.kind) ? [o] : []))
    const taken = expectedToTake(simulatedLoads(season, loads))
    const sure = await planned(besideTheRest(part, taken, rest.starts), {
      ...job,
      seasons,
      seed,
      simulated: simulated(part),
      withAllRoom: part,
      keepsSurplus: o => isSteadyOrder[orders[o]!]!,
      margins: {
        plannedNumber: Float64Array.from(orders, o => margins.plannedNumber[o]!),
        plannedDueWeek: Int32Array.from(orders, o => margins.plannedDueWeek[o]!),
      },
    })
    if (sure.isCramped && !mayFallShort) return null
    orders.forEach((o, own) => {
      margins.plannedNumber[o] = sure.margins.plannedNumber[own]!
      margins.plannedDueWeek[o] = sure.margins.plannedDueWeek[own]!
    })
    own = sure
  }
  const starts = [...rest.starts, ...own.starts]
  const bought = [...rest.bought, ...own.bought]
  addLoads(loads, await inSeason.loads(own.starts, own.bought, seasons, isAnew))
  const { shown: _, ...unshown } = season
  const whole = await reckoned(withCover(unshown), margins, starts, bought, reckoning)
  if (!whole) return null
  return {
    margins,
    relaxed: whole.relaxed,
    whole,
    starts: chosenStarts(season, starts),
    fresh: await simulated(withPlanted(season, plantedTrees(whole.solution))).runFresh(
      starts,
      bought,
      seasons,
    ),
    loads: simulatedLoads(season, loads),
    saved: own.saved,
  }
}

interface OwnPlan {
  readonly starts: readonly SeasonStart[]
  readonly bought: Solution['bought']
  readonly saved: number
}

async function planned(
  part: Season,
  input: Pick<ReplanInput, 'seasons' | 'seed' | 'isStopped' | 'tell'> & {
    readonly margins: Margins
    readonly simulated: SeasonsByComponent
    readonly keepsSurplus: (order: number) => boolean
    /** The same part, as if the nursery were its own. */
    readonly withAllRoom: Season
  },
): Promise<OwnPlan & { readonly margins: Margins; readonly isCramped: boolean }> {
  const covered = withCover(part)
  const solver = await openSolver(buildSeasonModel(covered, withoutMargins(covered)))
  try {
    const { margins, starts, whole, relaxed, simulated } = await (
      await relaxedSurely({ ...input, season: part, covered, solver })
    ).inTrays(0)
    const isShort = orderChances(part, simulated).some(
      ({ chance }, o) => !input.keepsSurplus(o) && chance < part.orders[o]!.sure - CLOSE_ENOUGH,
    )
    const isFull = relaxed.duals.some(({ rule, dual }) => SHARED.includes(rule) && dual < 0)
    const isCramped = isShort && isFull && (await wouldRoomHelp(input.withAllRoom, margins, relaxed))
    return {
      margins,
      starts,
      bought: whole.solution.bought,
      saved: savedByMoving(solver, relaxed, starts),
      isCramped,
    }
  } finally {
    solver.dispose()
  }
}

/** Whether more trees would be there in time if what stays gave way: where time alone lacks, it would not help. */
async function wouldRoomHelp(part: Season, margins: Margins, cramped: Solution): Promise<boolean> {
  const solver = await openSolver(buildSeasonModel(withCover(part), margins))
  try {
    return lacking(solver.solve(), margins) < lacking(cramped, margins) - 1
  } finally {
    solver.dispose()
  }
}

/** Trees planned that are late or never delivered. */
const lacking = ({ short, deliveries }: Solution, { plannedDueWeek }: Margins): number =>
  deliveries
    .filter(({ order, week }) => week > plannedDueWeek[order]!)
    .reduce(
      (sum, { number }) => sum + number,
      short.reduce((sum, number) => sum + number, 0),
    )
