import type { Nursery } from '../../record/index.ts'
import { type Phrase, phrase } from '../../trade/index.ts'
import { weighedParts } from '../answer/costs.ts'
import { limitsOf } from '../answer/limits.ts'
import { buildSeasonModel } from '../model/build-season-model.ts'
import type { SeasonSolver, Solution } from '../model/season-model.ts'
import { openSolver } from '../model/solve.ts'
import type { Plan } from '../plan.ts'
import { readSeason } from '../reading/read-season.ts'
import { planJoined } from '../replan/plan-anew.ts'
import { replan } from '../replan/replan.ts'
import { type ShownPlan, shownPlan } from '../replan/shown-plan.ts'
import type { Season } from '../season.ts'
import { orderChances } from '../simulate/outcome.ts'
import { byComponent, type SimulationMemory } from '../simulate/simulate-by-component.ts'
import { withPlanted } from '../simulate/wood.ts'
import { withCover } from '../sureness/with-cover.ts'
import { nurseryWith, type Supposed } from './supposed.ts'
import {
  chancesMoved,
  kindsMoved,
  kindsOfOtherRates,
  limitsMoved,
  marginsOfSome,
  ordersMoved,
  startsMoved,
} from './what-changes.ts'
import type { WhatIf } from './what-if-answer.ts'

export interface WhatIfAsked {
  readonly nursery: Nursery
  readonly plan: Plan
  readonly supposed: Supposed
  readonly today: string
  readonly seasons: number
  readonly seed: number
}

export interface WhatIfHooks {
  readonly memory?: WhatIfMemory
  readonly onProgress?: (share: number, says: Phrase) => void
  /** Asked often; once true, there is no answer. */
  readonly isStopped?: () => boolean
}

/** The plan as it is, solved and simulated: kept from question to question, so that only what is supposed is worked out. */
export interface WhatIfMemory {
  /** What was simulated for plans, as it goes on: read, and never written. */
  readonly planned: SimulationMemory
  simulated: SimulationMemory
  base: Base | null
}

interface Base {
  readonly nursery: Nursery
  readonly plan: string
  readonly today: string
  readonly season: Season
  readonly shown: ShownPlan
  readonly solver: SeasonSolver
  readonly relaxed: Solution
  readonly weighed: number
  readonly chances: ReadonlyMap<string, number>
}

export const whatIfMemory = (planned: SimulationMemory = new Map()): WhatIfMemory => ({
  planned,
  simulated: new Map(),
  base: null,
})

/**
 * What would change if one bench, person, order or rate were otherwise. What it saves is read off the relaxation: solved
 * again from its last basis where only capacities, numbers or sureness are others, built anew where rates or dates are. The
 * starts that it would move are planned anew in whole trays, as a plan would, all others stay as shown, and the chances are
 * those of the same simulated seasons. Null when it was stopped, or the order is not known.
 */
export async function whatIf(asked: WhatIfAsked, hooks: WhatIfHooks = {}): Promise<WhatIf | null> {
  const { plan, supposed, today, seasons, seed } = asked
  const { memory = whatIfMemory(), onProgress, isStopped = () => false } = hooks
  const nursery = nurseryWith(asked.nursery, supposed, today)
  if (nursery === null) return null

  onProgress?.(0, phrase('Reading the plan as it is.'))
  const base = await baseOf(asked, memory)
  if (isStopped()) return null
  onProgress?.(0.3, phrase('Weighing what would be otherwise.'))
  const season = readSeason(nursery, today)
  const shown = shownPlan(nursery, season, plan)
  const model = buildSeasonModel(withCover(season), shown.margins)
  const isWarm = base.solver.become(model)
  const solver = isWarm ? base.solver : await openSolver(model)
  if (!isWarm) solver.startFrom(base.solver.basis())
  try {
    const first = solver.solve(isStopped)
    if (isStopped()) return null
    const orders = ordersMoved(base.season, season)
    const rates = kindsOfOtherRates(base.season, season)
    const moved = new Set([
      ...kindsMoved(season, base.relaxed, first, isWarm),
      ...[...orders].map(o => season.orders[o]!.kinds[0]!.kind),
      ...rates,
    ])
    onProgress?.(0.5, phrase('Planning what it moves.'))
    const input = {
      season: { ...season, shown: shown.starts },
      seasons,
      seed,
      memory: memory.simulated,
      isStopped,
      tell: (_: string, round: number, worst: number) =>
        onProgress?.(
          Math.min(0.95, 0.5 + 0.05 * round),
          phrase('Round {round}: the order furthest from its wish is {points} points off.', {
            round,
            points: Math.round(100 * worst),
          }),
        ),
    }
    const made =
      (await replan({
        ...input,
        // Those that would give way in the relaxation are planned anew with it.
        mayFallShort: true,
        shown: {
          ...shown,
          chance: shown.chance.map((chance, o) => (orders.has(o) ? Number.NaN : chance)),
          kindsOfGoneOrders: new Set([...shown.kindsOfGoneOrders, ...moved]),
        },
      })) ?? (await planJoined({ ...input, margins: shown.margins, proveSeconds: 0 }))
    if (isStopped()) return null

    const isOther = (o: number) =>
      orders.has(o) || season.orders[o]!.kinds.some(({ kind }) => rates.has(kind))
    solver.withMargins(marginsOfSome(shown.margins, made.margins, isOther))
    const relaxed = solver.solve()
    return {
      saves: base.relaxed.objective - relaxed.objective,
      weighsLess: base.weighed - weighedIn(season, solver, relaxed),
      orders: chancesMoved(season, base.chances, orderChances(season, made.fresh)),
      limits: limitsMoved(limitsOf(base), limitsOf({ season, relaxed })),
      starts: startsMoved(season, shown.starts, made.starts),
    }
  } finally {
    if (!isWarm) solver.dispose()
  }
}

async function baseOf(
  { nursery, plan, today, seasons, seed }: WhatIfAsked,
  memory: WhatIfMemory,
): Promise<Base> {
  const known = memory.base
  if (known?.nursery === nursery && known.plan === plan.id && known.today === today) return known
  known?.solver.dispose()
  memory.base = null
  memory.simulated = new Map(memory.planned)
  const season = readSeason(nursery, today)
  const shown = shownPlan(nursery, season, plan)
  const solver = await openSolver(buildSeasonModel(withCover(season), shown.margins))
  const relaxed = solver.solve()
  const { runFresh } = byComponent(withPlanted(season, shown.planted), seed, memory.simulated)
  const simulated = await runFresh(shown.starts, shown.bought, seasons)
  const chances = new Map(
    orderChances(season, simulated).map(({ chance }, o) => [season.orders[o]!.id as string, chance]),
  )
  const weighed = weighedIn(season, solver, relaxed)
  memory.base = { nursery, plan: plan.id, today, season, shown, solver, relaxed, weighed, chances }
  return memory.base
}

const weighedIn = (season: Season, { model }: SeasonSolver, solution: Solution): number =>
  Object.values(weighedParts({ season, model, solution })).reduce((sum, cost) => sum + cost, 0)
