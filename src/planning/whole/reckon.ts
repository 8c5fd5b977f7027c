import { buildSeasonModel } from '../model/build-season-model.ts'
import type { Margins, Solution } from '../model/season-model.ts'
import { openSolver } from '../model/solve.ts'
import type { Season, SeasonStart } from '../season.ts'
import { besideStarts, costAndGap, type WholePlan } from './whole-trays.ts'

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
): Promise<Reckoned | null> {
  const model = buildSeasonModel(season, margins, besideStarts(season, starts))
  const solver = await openSolver(model)
  try {
    const relaxed = solver.solve()
    const numberOf = new Map(starts.map(({ way, week, number }) => [way * season.weeks + week, number]))
    const numbers = Float64Array.from(
      model.wholeStarts,
      ({ way, week }) => numberOf.get(way * season.weeks + week) ?? 0,
    )
    // What is left of a batch begun in part may be less than the smallest.
    const begun = numbers.map((number, s) => {
      const { smallestBatch, tray } = season.ways[model.wholeStarts[s]!.way]!
      return Math.min(1, number / Math.max(smallestBatch, tray))
    })
    solver.setColumnBounds(
      Int32Array.from(model.wholeStarts, ({ column }) => column),
      numbers,
      numbers,
    )
    solver.setColumnBounds(
      Int32Array.from(model.wholeStarts, ({ begun: column }) => column),
      begun,
      begun,
    )
    const boughtOf = new Map(bought.map(({ kind, week, number }) => [kind * season.weeks + week, number]))
    const comes = Float64Array.from(
      model.bought,
      ({ kind, week }) => boughtOf.get(kind * season.weeks + week) ?? 0,
    )
    solver.setColumnBounds(
      Int32Array.from(model.bought, ({ column }) => column),
      comes,
      comes,
    )
    const solution = solver.solve()
    if (solution.outcome !== 'optimal') return null
    return { model, relaxed, solution, ...costAndGap(model, solution, relaxed) }
  } finally {
    solver.dispose()
  }
}
