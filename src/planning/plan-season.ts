import type { Nursery } from '../record/index.ts'
import { seededRandom } from '../science/index.ts'
import { chosenStarts, type Planned, weekName } from './answer/planned.ts'
import { readAnswer } from './answer/read-answer.ts'
import { buildSeasonModel, withoutMargins } from './model/build-season-model.ts'
import type { SeasonSolver, Solution } from './model/season-model.ts'
import { openSolver } from './model/solve.ts'
import type { Outcome, Plan, Progress } from './plan.ts'
import { readSeason } from './reading/read-season.ts'
import type { Season } from './season.ts'
import { orderOutcomes, simulatedLoads } from './simulate/outcome.ts'
import { simulateSeasons } from './simulate/simulate-seasons.ts'
import { firstMargins } from './sureness/first-margins.ts'
import { settleMargins } from './sureness/settle-margins.ts'
import { wholeTrays } from './whole/whole-trays.ts'

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
  /** Seconds for bettering the rounded plan; 2 unless told. */
  readonly proveSeconds?: number
}

export interface PlanJobHooks {
  readonly onProgress?: (progress: Progress) => void
  /** Asked often; once true, the best plan so far is the answer. */
  readonly isStopped?: () => boolean
}

/** Margins are settled with fewer seasons first. */
const ROUNDS = [0.125, 0.25, 0.5, 1, 1, 1]

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
  const model = buildSeasonModel(season, withoutMargins(season))
  const solver = await openSolver(model)
  try {
    const simulate = (starts: Solution['starts'], bought: Solution['bought'], seasons: number) =>
      simulateSeasons(season, starts, { from: 0, to: seasons, seed: wish.seed, bought })
    const settled = await settleMargins({
      season,
      margins: firstMargins(season),
      solve: margins => {
        solver.withMargins(margins)
        return solver.solve(isStopped)
      },
      simulate,
      seasonsByRound: ROUNDS.map(share => Math.max(100, Math.round(share * wish.seasons))),
      isStopped,
      tell: (round, worst) =>
        tell(
          'margins',
          0.3 + 0.08 * round,
          `Round ${round}: the order furthest from its wish is ${Math.round(100 * worst)} points off.`,
        ),
    })

    tell('whole numbers', 0.75, 'Rounding to whole trays and sensible batches.')
    const whole = await wholeTrays({
      season,
      margins: settled.margins,
      relaxed: settled.plan,
      proveSeconds: wish.proveSeconds ?? 2,
      isStopped,
    })
    const starts = chosenStarts(season, whole.solution)

    tell('simulation', 0.85, `Running the plan through ${wish.seasons} seasons.`)
    const simulated = simulate(starts, whole.solution.bought, wish.seasons)

    tell('answer', 0.95, 'Saying it in words.')
    const planned: Planned = {
      nursery,
      season,
      margins: settled.margins,
      model: whole.model,
      solution: whole.solution,
      relaxed: settled.plan,
      outcomes: orderOutcomes(season, simulated),
      loads: simulatedLoads(season, simulated),
      starts,
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
