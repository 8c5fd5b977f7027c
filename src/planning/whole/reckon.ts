import { buildSeasonModel } from '../model/build-season-model.ts'
import type { KeptBasis, Margins, SeasonModel, SeasonSolver, Solution } from '../model/season-model.ts'
import { openSolver } from '../model/solve.ts'
import type { Capacity, CapacityRow } from '../rules/capacity.ts'
import type { Season, SeasonStart } from '../season.ts'
import { besideStarts, standingStarts } from './beside-starts.ts'
import { type WholePlan, wholePlan } from './whole-plan.ts'

/** Whole plants are counted: a start may be this much more or less than what was solved. */
const ROUNDING = 1
/** A place or crew that is over by this share as expected is not over: nobody measures so finely. Our choice. */
const SLACK = 0.02

/** Where the last plan's solves ended: the next one's begin there. */
export interface ReckoningMemory {
  relaxed?: KeptBasis
  whole?: KeptBasis
}

export interface Reckoned extends WholePlan {
  /** The relaxation over these starts and the weeks beside them: what limits the plan is read from its duals. */
  readonly relaxed: Solution
}

/**
 * What comes of given starts: what is held, delivered, late and short, and what it costs. The bound is that of the
 * starts and the weeks beside them alone. Null where the starts do not fit into the nursery.
 */
export async function reckoned(
  season: Season,
  margins: Margins,
  starts: readonly SeasonStart[],
  bought: Solution['bought'],
  memory: ReckoningMemory = {},
): Promise<Reckoned | null> {
  const model = buildSeasonModel(season, margins, besideStarts(season, starts))
  const solver = await openSolver(model)
  try {
    if (memory.relaxed) solver.startFrom(memory.relaxed)
    const relaxed = solver.solve()
    memory.relaxed = solver.basis()
    if (memory.whole) solver.startFrom(memory.whole)
    for (const within of [0, ROUNDING]) {
      const solution = solvedWith(model, solver, starts, bought, within)
      if (!solution) continue
      memory.whole = solver.basis()
      return { relaxed, ...wholePlan(model, solution, relaxed) }
    }
    return await reckonedWithSlack(model, relaxed, starts, bought)
  } finally {
    solver.dispose()
  }
}

/** Room for what was planned beside the seasons of the rest, whose means are not quite those of the model. */
async function reckonedWithSlack(
  model: SeasonModel,
  relaxed: Solution,
  starts: readonly SeasonStart[],
  bought: Solution['bought'],
): Promise<Reckoned | null> {
  const held = { ...model, capacities: model.capacities.map(withSlack) }
  const solver = await openSolver(held)
  try {
    const solution = solvedWith(held, solver, starts, bought, ROUNDING)
    return solution && { relaxed, ...wholePlan(held, solution, relaxed) }
  } finally {
    solver.dispose()
  }
}

const withSlack = (capacity: Capacity): Capacity => {
  const wider = (row: CapacityRow) => ({ ...row, upper: row.upper + SLACK * Math.abs(row.upper) })
  return {
    ...capacity,
    row: (subject, week) => wider(capacity.row(subject, week)),
    broken: (columnValue, tolerance) => capacity.broken(columnValue, tolerance).map(wider),
    all: () => capacity.all().map(wider),
  }
}

/** The same for starts that were planned in the nursery's room and fit but for rounding errors, against a bound that is known. */
export async function reckonedAgainst(
  relaxed: Solution,
  season: Season,
  margins: Margins,
  starts: readonly SeasonStart[],
  bought: Solution['bought'],
  memory?: ReckoningMemory,
): Promise<WholePlan> {
  const model = buildSeasonModel(
    season,
    margins,
    besideStarts(season, [...starts, ...standingStarts(season)]),
  )
  for (const held of [model, { ...model, capacities: [] }])
    for (const within of [0, ROUNDING]) {
      const solver = await openSolver(held)
      try {
        const solution = solvedWith(held, solver, starts, bought, within)
        if (!solution) continue
        if (memory) remember(memory, held, solver)
        return wholePlan(held, solution, relaxed)
      } finally {
        solver.dispose()
      }
    }
  throw new Error('A plan of whole trays contradicts the rules of the season.')
}

/** Where the plan ended, and where its relaxation over the same starts does: what the next plan begins with. */
function remember(memory: ReckoningMemory, model: SeasonModel, solver: SeasonSolver): void {
  memory.whole = solver.basis()
  solver.become(model)
  solver.solve()
  memory.relaxed = solver.basis()
}

function solvedWith(
  { season, wholeStarts, bought: buying }: SeasonModel,
  solver: SeasonSolver,
  starts: readonly SeasonStart[],
  bought: Solution['bought'],
  within = 0,
): Solution | null {
  const numberOf = new Map(starts.map(({ way, week, number }) => [way * season.weeks + week, number]))
  const numbers = Float64Array.from(
    wholeStarts,
    ({ way, week }) => numberOf.get(way * season.weeks + week) ?? 0,
  )
  // What is left of a batch begun in part may be less than the smallest.
  const begun = numbers.map((number, s) => {
    const { smallestBatch, tray } = season.ways[wholeStarts[s]!.way]!
    return Math.min(1, number / Math.max(smallestBatch, tray))
  })
  const fix = (columns: Int32Array, values: Float64Array, less = 0, more = less) =>
    solver.setColumnBounds(
      columns,
      values.map(value => Math.max(0, value - less)),
      values.map(value => (value > 0 ? value + more : value)),
    )
  fix(
    Int32Array.from(wholeStarts, ({ column }) => column),
    numbers,
    within,
  )
  fix(
    Int32Array.from(wholeStarts, ({ begun: column }) => column),
    begun,
    within > 0 ? 1 : 0,
    0,
  )
  const boughtOf = new Map(bought.map(({ kind, week, number }) => [kind * season.weeks + week, number]))
  fix(
    Int32Array.from(buying, ({ column }) => column),
    Float64Array.from(buying, ({ kind, week }) => boughtOf.get(kind * season.weeks + week) ?? 0),
  )
  const solution = solver.solve()
  return solution.outcome === 'optimal' ? solution : null
}
