import type { SeasonSolver, Solution } from '../model/season-model.ts'

/** A start of fewer plants is none. */
const NONE = 0.5

/** The relaxation, solved so that few large batches are preferred to many small ones. */
export interface JoinedStarts {
  /** Solved with what a batch is worth laid upon its plants. */
  solve(isStopped?: () => boolean): Solution
  /** Solved at true costs: the bound, and the worth of what limits. */
  atTrueCosts(isStopped?: () => boolean): Solution
}

/**
 * A batch has its price whatever its size: its own work, and what a batch less is worth. A relaxation does not see that and
 * spreads what could be one batch over many weeks for next to nothing. So the price is laid upon the plants by the
 * batch's size in the solve before: the smaller a batch was, the dearer its plants are in the next, until its neighbours
 * take it over or it is large enough to stand. A week that was not used counts as if it took the largest batch of its way.
 * @source Kim & Pardalos 1999, Operations Research Letters 24:195-203 (dynamic slope scaling), from memory
 */
export function joinedStarts({ model, ...solver }: SeasonSolver): JoinedStarts {
  const { season, starts, columns } = model
  const batch = season.prices.batch ?? 0
  const indices = Int32Array.from(starts, ({ column }) => column)
  const trueCosts = Float64Array.from(starts, ({ column }) => columns.cost[column]!)
  const price = Float64Array.from(starts, ({ way, week }) => {
    const { courses, courseOfWeek } = season.ways[way]!
    let minutes = 0
    for (const { perBatch } of courses[courseOfWeek[week]!]!.labour)
      for (const each of perBatch) minutes += each
    return batch === 0 ? 0 : batch + minutes * season.prices.minute
  })
  const perPlant = new Float64Array(starts.length)

  const lay = ({ columnValue }: Solution) => {
    const largest = new Float64Array(season.ways.length)
    for (const { way, column } of starts) largest[way] = Math.max(largest[way]!, columnValue[column]!)
    starts.forEach(({ way, column }, s) => {
      const number = columnValue[column]!
      if (number > NONE) perPlant[s] = price[s]! / number
      else if (perPlant[s] === 0 && largest[way]! > NONE) perPlant[s] = price[s]! / largest[way]!
    })
  }

  return {
    solve(isStopped) {
      if (batch === 0) return solver.solve(isStopped)
      solver.setColumnCosts(
        indices,
        trueCosts.map((cost, s) => cost + perPlant[s]!),
      )
      const solution = solver.solve(isStopped)
      if (solution.outcome === 'optimal') lay(solution)
      return solution
    },
    atTrueCosts(isStopped) {
      solver.setColumnCosts(indices, trueCosts)
      return solver.solve(isStopped)
    },
  }
}
