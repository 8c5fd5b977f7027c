import type { SeasonSolver, Solution } from '../model/season-model.ts'
import type { Season } from '../season.ts'
import { type Settled, type SettleInput, settleMargins } from './settle-margins.ts'
import { spreadStarts } from './spread-starts.ts'

/** Each start is spread over two weeks or more, then over three, as long as that makes the plan cheaper. */
const PARTS = [1 / 2, 1 / 3]
/** A kind of which so much more is short or late when spread is not spread so far. */
const HURT_BY = 0.5

export interface SpreadInput extends Omit<SettleInput<Solution>, 'solve'> {
  readonly solver: SeasonSolver
  readonly seasonsBySpreadRound: readonly number[]
}

export interface SettledSpread extends Settled<Solution> {
  /** Most that may be begun by a way in a week, `way · weeks + week`; a start that is not named has no bound. */
  readonly most: ReadonlyMap<number, number>
}

/**
 * Settles margins, then spreads the starts and settles again: two batches with luck of their own vary less than one, so
 * that an order needs fewer plants for the same chance. Kinds that have no other weeks, or only dear ones, stay as they
 * are; a spreading that does not make the whole plan cheaper is given up. The solver keeps the bounds of the best.
 */
export async function settleSpread(input: SpreadInput): Promise<SettledSpread> {
  const { season, solver } = input
  const { model } = solver
  const solve = (margins: Settled<Solution>['margins']) => {
    solver.withMargins(margins)
    return solver.solve()
  }
  const first = await settleMargins<Solution>({ ...input, solve })
  let best = first
  let parts = season.kinds.map(() => 1)
  let most: ReadonlyMap<number, number> = new Map()
  const bound = (by: readonly number[]) => {
    most = spreadStarts(season, first.plan, by)
    solver.setColumnBounds(
      Int32Array.from(model.starts, ({ column }) => column),
      new Float64Array(model.starts.length),
      Float64Array.from(
        model.starts,
        ({ way, week }) => most.get(way * season.weeks + week) ?? Number.POSITIVE_INFINITY,
      ),
    )
  }
  for (const part of PARTS) {
    if (input.isStopped?.()) break
    let tried = parts.map(before => (before < 1 || part === PARTS[0] ? part : before))
    bound(tried)
    const hurt = hurtKinds(season, best.plan, solve(best.margins))
    tried = tried.map((of, kind) => (hurt.has(kind) ? parts[kind]! : of))
    if (tried.every((of, kind) => of === parts[kind])) {
      bound(parts)
      break
    }
    bound(tried)
    const { margins } = best
    const spread = await settleMargins<Solution>({
      ...input,
      margins,
      solve,
      seasonsByRound: input.seasonsBySpreadRound,
    })
    if (spread.plan.objective >= best.plan.objective) {
      bound(parts)
      break
    }
    best = spread
    parts = tried
  }
  return { ...best, most }
}

/** Kinds of which the spread plan delivers less in time, and the rootstocks under them. */
function hurtKinds(season: Season, before: Solution, after: Solution): Set<number> {
  const inTime = ({ deliveries }: Solution) => {
    const by = new Float64Array(season.kinds.length)
    for (const { order, kind, week, number } of deliveries)
      if (week <= season.orders[order]!.dueWeek) by[kind]! += number
    return by
  }
  const [was, is] = [inTime(before), inTime(after)]
  const hurt = new Set<number>()
  season.kinds.forEach((_, kind) => {
    if (was[kind]! - is[kind]! > HURT_BY) hurt.add(kind)
  })
  for (const way of season.ways)
    if (hurt.has(way.kind))
      for (const { rootstock } of way.courses) for (const kind of rootstock?.kinds ?? []) hurt.add(kind)
  return hurt
}
