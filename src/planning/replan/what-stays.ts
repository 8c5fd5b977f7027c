import type { Season } from '../season.ts'
import type { OrderChance } from '../simulate/outcome.ts'
import { CLOSE_ENOUGH } from '../sureness/move-margins.ts'
import type { ShownPlan } from './shown-plan.ts'

/** Orders that have become surer by more than this are planned anew: there may be trees to save. Our choice. */
const SURER_BY = 0.03

/** An order is served as it was shown: hardly less sure than asked, or than it was, and not much surer. */
export function isSteady(
  season: Season,
  { chance: before }: ShownPlan,
  outcome: OrderChance,
  o: number,
): boolean {
  const { sure } = season.orders[o]!
  return (
    outcome.chance >= Math.min(sure, before[o]!) - CLOSE_ENOUGH &&
    outcome.chance <= Math.max(sure, before[o]!) + SURER_BY
  )
}

/**
 * The kinds that are planned anew: all that touch an order which is no longer served as it was shown, or which is new or
 * gone. What touches none of these stays as people have seen it.
 * @param components kinds that can touch each other, as lists
 * @param isSteadyOrder by order
 */
export function kindsToPlan(
  season: Season,
  components: readonly (readonly number[])[],
  { kindsOfGoneOrders }: ShownPlan,
  isSteadyOrder: readonly boolean[],
): Set<number> {
  const unsteady = new Set(kindsOfGoneOrders)
  season.orders.forEach(({ kinds }, o) => {
    if (!isSteadyOrder[o]) unsteady.add(kinds[0]!.kind)
  })
  return new Set(components.filter(kinds => kinds.some(kind => unsteady.has(kind))).flat())
}
