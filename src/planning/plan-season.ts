import type { Entry, Nursery } from '../record/index.ts'
import { seededRandom } from '../science/index.ts'
import { type Planned, weekName } from './answer/planned.ts'
import { readAnswer } from './answer/read-answer.ts'
import { buildSeasonModel, withoutMargins } from './model/build-season-model.ts'
import type { SeasonSolver, Solution } from './model/season-model.ts'
import { openSolver } from './model/solve.ts'
import type { Outcome, Plan, Progress } from './plan.ts'
import { type PlanMemory, rememberedMargins, rememberMargins } from './plan-memory.ts'
import { readSeason } from './reading/read-season.ts'
import type { Season, SeasonStart } from './season.ts'
import { orderOutcomes, simulatedLoads } from './simulate/outcome.ts'
import { byComponent } from './simulate/simulate-by-component.ts'
import type { SimulatedSeasons, SimulationInput } from './simulate/simulate-seasons.ts'
import { surePlan } from './sureness/sure-plan.ts'
import { withCover } from './sureness/with-cover.ts'

export interface PlanWish {
  /** The nursery's own date. */
  readonly today: string
  /** The last entry that the nursery knows of. */
  readonly throughSeq: number
  /** Seasons simulated for the chances that are shown. */
  readonly seasons: number
  readonly seed: number
  /** The plan made before, if there was one: its margins are a good place to begin. */
  readonly previous?: Plan | null
  /** Entries since the plan that this one is compared with: the reasons for what changes. */
  readonly news?: readonly Entry[]
  /** Seconds for bettering the rounded plan; 2 unless told. */
  readonly proveSeconds?: number
  /** Spread starts over more weeks where that lowers what must be begun: fewer plants, more batches. */
  readonly isSpread?: boolean
}

export interface PlanJobHooks {
  readonly onProgress?: (progress: Progress) => void
  /** Asked often; once true, the best plan so far is the answer. */
  readonly isStopped?: () => boolean
  /** Runs seasons elsewhere, say shared out to threads; the answer must be that of `simulateSeasons`. */
  readonly simulate?: (
    season: Season,
    starts: readonly SeasonStart[],
    input: SimulationInput,
  ) => Promise<SimulatedSeasons>
  /** Kept from plan to plan by a process that plans more than once: it then begins where the last one ended. */
  readonly memory?: PlanMemory
}

/**
 * The season plan of a nursery: read, relaxed, made as sure as each order asks, rounded to whole trays, simulated
 * once more, and said in words. Long; run it in a thread of its own.
 */
export async function planSeason(nursery: Nursery, wish: PlanWish, hooks: PlanJobHooks = {}): Promise<Plan> {
  const { isStopped = () => false } = hooks
  const tell = (stage: Progress['stage'], share: number, says: string) =>
    hooks.onProgress?.({ stage, share, says })

  tell('reading', 0, 'Reading the nursery.')
  const season = readSeason(nursery, wish.today)
  if (season.orders.length === 0) return nothingToPlan(season, wish, 'No order is open.')

  tell('relaxation', 0.05, `Weighing ${season.ways.length} ways over ${season.weeks} weeks.`)
  const covered = withCover(season)
  const model = buildSeasonModel(covered, withoutMargins(covered))
  const solver = await openSolver(model)
  try {
    const { margins, relaxed, whole, starts, simulated } = await surePlan({
      season,
      covered,
      solver,
      seasons: wish.seasons,
      seed: wish.seed,
      proveSeconds: wish.proveSeconds ?? 2,
      isSpread: wish.isSpread ?? false,
      isStopped,
      ...(hooks.memory && { margins: rememberedMargins(season, hooks.memory) }),
      simulate: byComponent(season, wish.seed, hooks.memory?.simulated, hooks.simulate),
      tell: (stage, round, worst) =>
        tell(
          stage,
          stage === 'margins' ? Math.min(0.7, 0.2 + 0.07 * round) : 0.7 + 0.07 * round,
          `Round ${round}: the order furthest from its wish is ${Math.round(100 * worst)} points off.`,
        ),
    })

    if (hooks.memory) rememberMargins(season, margins, hooks.memory)
    tell('answer', 0.95, 'Saying it in words.')
    const planned: Planned = {
      nursery,
      season,
      margins,
      model: whole.model,
      solution: whole.solution,
      relaxed,
      outcomes: orderOutcomes(season, simulated),
      loads: simulatedLoads(season, simulated),
      starts,
      today: wish.today,
      before: wish.previous ?? null,
      news: wish.news ?? [],
    }
    const answer = readAnswer(planned)
    return {
      ...heading(season, wish),
      outcome: outcomeOf(season, whole.solution, whole.gapShare, isStopped()),
      cost: rounded(whole.cost),
      gapShare: whole.gapShare,
      seasonsSimulated: wish.seasons,
      ...answer,
      moved: movedOf(solver, planned),
    }
  } finally {
    solver.dispose()
  }
}

const rounded = (cost: number) => Math.round(cost * 100) / 100

const heading = (season: Season, wish: PlanWish) => ({
  id: planId(wish),
  madeOn: wish.today,
  throughSeq: wish.throughSeq,
  firstWeek: weekName(season, 0),
  weeks: season.weeks,
})

/** The same nursery, day and seed give the same plan, and the same name. */
const planId = ({ today, throughSeq, seed }: PlanWish) =>
  `plan-${today}-${throughSeq}-${Math.floor(seededRandom(seed).uniform() * 1e9).toString(36)}`

function outcomeOf(season: Season, { short }: Solution, gapShare: number, stopped: boolean): Outcome {
  if (stopped) return { kind: 'stopped early', gapShare }
  const orders = season.orders.filter((_, o) => short[o]! >= 1).map(({ id }) => id)
  return orders.length > 0 ? { kind: 'short', orders } : { kind: 'filled' }
}

function nothingToPlan(season: Season, wish: PlanWish, why: string): Plan {
  return {
    ...heading(season, wish),
    outcome: { kind: 'nothing to plan', why },
    cost: 0,
    costParts: {},
    gapShare: 0,
    seasonsSimulated: 0,
    starts: [],
    orders: [],
    loads: [],
    limits: [],
    plantings: [],
    changes: [],
    moved: { starts: 0, saved: 0 },
    tasks: [],
    assumed: [...season.assumed],
  }
}

/** Accepted starts that are begun with fewer than accepted, and what the plan would cost more if they had to stay. */
function movedOf(solver: SeasonSolver, { relaxed, starts, season }: Planned): Plan['moved'] {
  const numberOf = new Map(starts.map(({ way, week, number }) => [way * season.weeks + week, number]))
  const moved = season.accepted.filter(
    ({ way, week, number }) => (numberOf.get(way * season.weeks + week) ?? 0) < number / 2,
  )
  if (moved.length === 0) return { starts: 0, saved: 0 }
  const columns = solver.model.lessThanAccepted
  const free = Float64Array.from(columns, () => Number.POSITIVE_INFINITY)
  const none = new Float64Array(columns.length)
  const indices = Int32Array.from(columns, ({ column }) => column)
  solver.setColumnBounds(indices, none, none)
  const fixed = solver.solve()
  solver.setColumnBounds(indices, none, free)
  const moving = columns.reduce(
    (sum, { column }) => sum + relaxed.columnValue[column]! * solver.model.columns.cost[column]!,
    0,
  )
  const saved = fixed.outcome === 'optimal' ? fixed.objective - (relaxed.objective - moving) : 0
  return { starts: moved.length, saved: rounded(Math.max(0, saved)) }
}
