import type { SeasonSolver, Solution } from '../model/season-model.ts'

/**
 * Of plants that stand in a batch of their own, the part that need not be begun as cover, because two batches vary less than
 * one: a batch so large that this is worth more than the batch stands by itself. Our choice; the simulator has the last word.
 */
const COVER_SAVED = 0.15
/** A start of fewer plants is none. */
const NONE = 0.5
/** What a plant begun costs at least, where nothing is entered. */
const LEAST_COST = 0.05
/** Solves in which small batches may give way. */
const SETTLING_SOLVES = 3

/** The relaxation, solved so that few large batches are preferred to many small ones. */
export interface JoinedStarts {
  /** Solved with what a batch is worth laid upon its plants. */
  solve(): Solution
  /** Solved a few times, so that small batches have given way to large ones. */
  settle(): Solution
  /** From here on the solver solves at true costs again: the bound, and the worth of what limits. */
  done(): void
}

/**
 * A batch has its price whatever its size: its own work, and what a batch less is worth. A relaxation does not see that and
 * spreads what could be one batch over many weeks for next to nothing. So the price is laid upon the plants by the
 * batch's size in the solve before: the smaller a batch was, the dearer its plants are in the next, until its neighbours
 * take it over. A batch stands without it once the cover that it saves is worth more; a week that was not used counts as if
 * it took a batch just too small for that.
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
  const large = price.map((each, s) => each / (COVER_SAVED * Math.max(LEAST_COST, trueCosts[s]!)))
  const perPlant = price.map((each, s) => each / Math.max(1, large[s]!))

  const lay = ({ columnValue }: Solution) => {
    starts.forEach(({ column }, s) => {
      const number = columnValue[column]!
      if (number > NONE) perPlant[s] = number >= large[s]! ? 0 : price[s]! / number
    })
  }

  const solve = () => {
    if (batch === 0) return solver.solve()
    solver.setColumnCosts(
      indices,
      trueCosts.map((cost, s) => cost + perPlant[s]!),
    )
    const solution = solver.solve()
    if (solution.outcome === 'optimal') lay(solution)
    return solution
  }

  return {
    solve,
    settle() {
      for (let before = 1; before < SETTLING_SOLVES; before++) solve()
      return solve()
    },
    done: () => solver.setColumnCosts(indices, trueCosts),
  }
}
