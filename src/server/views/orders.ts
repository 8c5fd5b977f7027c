import type { OrderRow } from '../../api/index.ts'
import type { Plan } from '../../planning/index.ts'
import type { Nursery } from '../../record/index.ts'
import { markOfKind } from './marks.ts'

export const orderRows = (nursery: Nursery, plan: Plan | null): OrderRow[] => {
  const forecast = new Map(plan?.orders.map(order => [order.order, order.chance]))
  const accepted = nursery.acceptedPlan?.chances ?? {}
  return [...nursery.orders.values()]
    .map(({ order, cancelled, dispatched, sentBy, entries }) => {
      const kind = nursery.kinds.get(order.kind)
      return {
        order,
        kindName: kind?.name ?? order.kind,
        mark: kind === undefined ? null : markOfKind(nursery, kind),
        dispatched,
        sentBy: [...sentBy],
        entries: [...entries],
        cancelled,
        chance: forecast.get(order.id) ?? null,
        chanceAtAcceptance: accepted[order.id] ?? null,
      }
    })
    .sort((a, b) => a.order.due.localeCompare(b.order.due) || a.order.id.localeCompare(b.order.id))
}
