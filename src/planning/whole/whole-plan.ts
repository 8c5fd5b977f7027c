import type { SeasonModel, Solution } from '../model/season-model.ts'
import { costOfLate } from '../rules/orders-by-their-date.ts'

/** A plan in whole trays, with what it costs. */
export interface WholePlan {
  readonly model: SeasonModel
  readonly solution: Solution
  readonly cost: number
  /** No plan in whole trays costs less than this, what is weighed for earliness counted in. */
  readonly bound: number
  /** (cost − bound) ÷ cost, both with what is weighed for earliness. */
  readonly gapShare: number
}

/** What a plan costs, without what was only weighed, and how far it may be from the cheapest. */
export function wholePlan(model: SeasonModel, solution: Solution, relaxed: Solution): WholePlan {
  const { season, wholeStarts, lessThanSet, columns } = model
  const batches = wholeStarts.reduce((sum, { begun }) => sum + solution.columnValue[begun]!, 0)
  const fewer = lessThanSet.reduce((sum, less) => sum + solution.columnValue[less]! * columns.cost[less]!, 0)
  const weighed = solution.objective - batches * (season.prices.batch ?? 0) - fewer
  const bound = Math.min(weighed, relaxed.objective)
  return {
    model,
    solution,
    cost: weighed - weighedForEarliness(model, solution),
    bound,
    gapShare: weighed > 0 ? (weighed - bound) / weighed : 0,
  }
}

/** A tree that comes after the week for which it was planned, and not after its due week, costs nobody anything. */
const weighedForEarliness = ({ season, margins }: SeasonModel, { deliveries }: Solution): number =>
  deliveries.reduce((sum, { order: o, week, number }) => {
    const order = season.orders[o]!
    const planned = costOfLate(order, season.prices, margins.plannedDueWeek[o]!, week)
    return sum + number * (planned - costOfLate(order, season.prices, order.dueWeek, week))
  }, 0)
