import type { SeasonModel, Solution } from '../model/season-model.ts'

/** A plan in whole trays, with what it costs. */
export interface WholePlan {
  readonly model: SeasonModel
  readonly solution: Solution
  readonly cost: number
  /** No plan in whole trays costs less than this. */
  readonly bound: number
  /** (cost − bound) ÷ cost. */
  readonly gapShare: number
}

/** What a plan costs, without what was only weighed, and how far it may be from the cheapest. */
export function wholePlan(model: SeasonModel, solution: Solution, relaxed: Solution): WholePlan {
  const { season, wholeStarts, lessThanSet, columns } = model
  const batches = wholeStarts.reduce((sum, { begun }) => sum + solution.columnValue[begun]!, 0)
  const fewer = lessThanSet.reduce((sum, less) => sum + solution.columnValue[less]! * columns.cost[less]!, 0)
  const cost = solution.objective - batches * (season.prices.batch ?? 0) - fewer
  const bound = Math.min(cost, relaxed.objective)
  return { model, solution, cost, bound, gapShare: cost > 0 ? (cost - bound) / cost : 0 }
}
