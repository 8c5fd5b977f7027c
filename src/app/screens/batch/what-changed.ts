import type { SeasonPlan } from '../../../api/index.ts'
import type { Change } from '../../../planning/index.ts'
import type { Aftermath } from '../../data/aftermath.ts'

/** A chance is shown in whole points; less than that is no change to anyone. */
const A_POINT = 0.01

export interface ChanceMoved {
  readonly order: string
  readonly before: number
  readonly after: number
  readonly moved: boolean
}

/** What a new plan says after a count: the chances of the orders it touches, how many others moved, and why. */
export const whatChanged = (
  { batch, chances, orders: touched }: Aftermath,
  plan: SeasonPlan,
): {
  readonly orders: readonly ChanceMoved[]
  readonly others: number
  readonly sentences: readonly Change[]
} => {
  const moves = plan.orders.flatMap(({ order, chance }): ChanceMoved[] => {
    const before = chances[order]
    return before === undefined
      ? []
      : [{ order, before, after: chance, moved: Math.round(100 * before) !== Math.round(100 * chance) }]
  })
  const own = new Set<string>([
    ...touched,
    ...plan.orders.filter(({ batches }) => batches.some(one => one === batch)).map(({ order }) => order),
  ])
  const far = moves
    .filter(({ order, before, after }) => !own.has(order) && Math.abs(before - after) >= A_POINT)
    .sort((a, b) => Math.abs(b.after - b.before) - Math.abs(a.after - a.before))
  const named = own.size > 0 ? moves.filter(({ order }) => own.has(order)) : far.slice(0, 3)
  const mine = plan.changes.filter(
    change =>
      change.batch === batch || (change.order !== null && named.some(({ order }) => order === change.order)),
  )
  return {
    orders: named,
    others: own.size > 0 ? far.length : Math.max(0, far.length - named.length),
    sentences: mine.length > 0 ? mine : plan.changes,
  }
}
