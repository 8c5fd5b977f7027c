import type { Entry, Nursery } from '../record/index.ts'
import { type Phrase, phrase } from '../trade/index.ts'
import { type Planned, weekName } from './answer/planned.ts'
import { readAnswer } from './answer/read-answer.ts'
import { withoutNoise } from './answer/without-noise.ts'
import type { Margins, Solution } from './model/season-model.ts'
import type { Outcome, Plan, Progress } from './plan.ts'
import type { PlanMemory } from './plan-memory.ts'
import { readSeason } from './reading/read-season.ts'
import { planAnew } from './replan/plan-anew.ts'
import { type MadePlan, replan } from './replan/replan.ts'
import { restsOn } from './replan/rests-on.ts'
import { type ShownPlan, shownPlan } from './replan/shown-plan.ts'
import type { Season } from './season.ts'
import { keyOf } from './simulate/key-of.ts'
import { orderOutcomes } from './simulate/outcome.ts'
import { noneKept, runHereWith } from './simulate/part-runs.ts'
import { type Line, runsSharedWith } from './simulate/shared-runs.ts'
import { movedStarts } from './sureness/saved-by-moving.ts'

export interface PlanWish {
  /** The nursery's own date. */
  readonly today: string
  /** The last entry that the nursery knows of. */
  readonly throughSeq: number
  /** Seasons simulated for the chances that are shown. */
  readonly seasons: number
  readonly seed: number
  /** The plan made before, if there was one: what of it still serves its orders stays as people have seen it. */
  readonly previous?: Plan | null
  /** Entries since the plan that this one is compared with: the reasons for what changes. */
  readonly news?: readonly Entry[]
  /** Seconds for bettering the rounded plan; 1 unless told. */
  readonly proveSeconds?: number
}

export interface PlanJobHooks {
  readonly onProgress?: (progress: Progress) => void
  /** Asked often; once true, the best plan so far is the answer. */
  readonly isStopped?: () => boolean
  /** Threads that take a part of the seasons, where they are many; told by `takeRuns`. */
  readonly lines?: () => readonly Line[]
  /** Kept from plan to plan by a process that plans more than once: it then begins where the last one ended. */
  readonly memory?: PlanMemory
}

/**
 * The season plan of a nursery: read, relaxed, made as sure as each order asks, rounded to whole trays, simulated
 * once more in fresh seasons, and said in words. Long; run it in a thread of its own.
 */
export async function planSeason(nursery: Nursery, wish: PlanWish, hooks: PlanJobHooks = {}): Promise<Plan> {
  const { isStopped = () => false } = hooks
  let done = 0
  /** Never back, though a season of few orders goes through its rounds twice. */
  const tell = (stage: Progress['stage'], share: number, says: Phrase) => {
    done = Math.max(done, share)
    hooks.onProgress?.({ stage, share: done, says })
  }

  tell('reading', 0, phrase('Reading the nursery.'))
  const season = readSeason(nursery, wish.today)
  if (season.orders.length === 0) return nothingToPlan(season, wish, phrase('No order is open.'))

  const { previous } = wish
  const isShown = previous?.outcome.kind === 'filled' || previous?.outcome.kind === 'short'
  const shown = isShown ? shownPlan(nursery, season, previous) : null
  const standing: Season = shown ? { ...season, shown: shown.starts } : season
  const job: Job = {
    season: standing,
    shown,
    wish,
    hooks,
    isStopped,
    tell: (stage, round, worst) =>
      tell(
        stage,
        stage === 'margins' ? Math.min(0.7, 0.2 + 0.07 * round) : Math.min(0.94, 0.7 + 0.04 * round),
        phrase('Round {round}: the order furthest from its wish is {points} points off.', {
          round,
          points: Math.round(100 * worst),
        }),
      ),
  }
  tell(
    'relaxation',
    0.05,
    phrase('Weighing {ways} ways over {weeks} weeks.', { ways: season.ways.length, weeks: season.weeks }),
  )
  const isSameNursery = previous?.restsOn === restsOn(nursery)
  const made =
    (isSameNursery && (await planAgain(job))) ||
    (await planAnew({
      season: standing,
      margins: shown?.margins,
      seasons: wish.seasons,
      seed: wish.seed,
      proveSeconds: wish.proveSeconds ?? 1,
      isStopped,
      tell: job.tell,
      memory: hooks.memory?.simulated,
      reckoning: hooks.memory?.reckoned,
      open: runnerOf(hooks),
    }))

  tell('answer', 0.95, phrase('Saying it in words.'))
  const planned: Planned = {
    nursery,
    season,
    margins: made.margins,
    model: made.whole.model,
    solution: made.whole.solution,
    relaxed: made.relaxed,
    outcomes: orderOutcomes(season, made.fresh),
    loads: made.loads,
    starts: made.starts,
    today: wish.today,
    before: wish.previous ?? null,
    news: wish.news ?? [],
  }
  const cost = rounded(made.whole.cost)
  const gapShare = withoutNoise(made.whole.gapShare)
  const outcome = outcomeOf(season, made.whole.solution, gapShare, isStopped())
  return {
    // As it is told: beyond that, numbers of the solver differ by what it began from.
    ...heading(season, wish, [
      outcome,
      cost,
      made.starts.map(({ way, week, number }) => [way, week, number]),
    ]),
    outcome,
    cost,
    gapShare,
    seasonsSimulated: made.fresh.to - made.fresh.from,
    ...readAnswer(planned),
    bought: made.whole.solution.bought.map(({ kind, week, number }) => ({
      kind: season.kinds[kind]!.id,
      week: weekName(season, week),
      number,
    })),
    plannedWith: plannedWith(season, made.margins),
    restsOn: restsOn(nursery),
    moved: { starts: movedStarts(season, made.starts), saved: rounded(made.saved) },
  }
}

interface Job {
  readonly season: Season
  readonly shown: ShownPlan | null
  readonly wish: PlanWish
  readonly hooks: PlanJobHooks
  readonly isStopped: () => boolean
  readonly tell: (stage: 'margins' | 'whole numbers', round: number, worst: number) => void
}

/** From the plan that was shown, as far as it still holds. */
const planAgain = ({ season, shown, wish, hooks, isStopped, tell }: Job): Promise<MadePlan | null> | null =>
  shown &&
  replan({
    season,
    shown,
    seasons: wish.seasons,
    seed: wish.seed,
    isStopped,
    tell,
    ...(hooks.memory && { memory: hooks.memory.simulated, reckoning: hooks.memory.reckoned }),
    open: runnerOf(hooks),
  })

const runnerOf = ({ lines, memory }: PlanJobHooks) => {
  const kept = memory?.parts ?? noneKept()
  return lines ? runsSharedWith(lines, kept) : runHereWith(kept)
}

const plannedWith = (season: Season, { plannedNumber, plannedDueWeek }: Margins): Plan['plannedWith'] =>
  Object.fromEntries(
    season.orders.map(({ id, dueWeek }, o) => [
      id,
      { number: plannedNumber[o]!, weeksEarly: dueWeek - plannedDueWeek[o]! },
    ]),
  )

const rounded = (cost: number) => Math.round(cost * 100) / 100

const heading = (season: Season, wish: PlanWish, planned: unknown = null) => ({
  id: planId(wish, planned),
  madeOn: wish.today,
  throughSeq: wish.throughSeq,
  firstWeek: weekName(season, 0),
  weeks: season.weeks,
})

/** The same nursery, day and seed give the same plan, and the same name; a plan that was stopped early has another. */
const planId = ({ today, throughSeq, seed }: PlanWish, planned: unknown) =>
  `plan-${today}-${throughSeq}-${keyOf(JSON.stringify([seed, planned])).toString(36)}`

function outcomeOf(season: Season, { short }: Solution, gapShare: number, stopped: boolean): Outcome {
  if (stopped) return { kind: 'stopped early', gapShare }
  const orders = season.orders.filter((_, o) => short[o]! >= 1).map(({ id }) => id)
  return orders.length > 0 ? { kind: 'short', orders } : { kind: 'filled' }
}

function nothingToPlan(season: Season, wish: PlanWish, why: Phrase): Plan {
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
    bought: [],
    overtime: [],
    extraArea: [],
    plannedWith: {},
    restsOn: 0,
    changes: [],
    moved: { starts: 0, saved: 0 },
    tasks: [],
    assumed: [...season.assumed],
  }
}
