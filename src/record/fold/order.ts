import type { EntryId, OrderId } from '../../trade/index.ts'
import type { Entry } from '../entry.ts'
import { type Query, raise } from '../query.ts'
import type { OrderState } from '../state.ts'

/** Folds an order: its last wording, whether it still stands, and what went out for it. */
export function foldOrder(
  id: OrderId,
  entries: readonly Entry[],
): { order: OrderState | null; queries: Query[] } {
  const queries: Query[] = []
  const about = { order: id }
  let order: OrderState['order'] | null = null
  for (const { body } of entries) {
    if (body.kind === 'order-placed/1' || body.kind === 'order-changed/1') order = body.order
  }
  let cancelled = false
  let dispatched = 0
  const sentBy: EntryId[] = []
  for (const { id: entry, body } of entries) {
    if (!order) {
      queries.push(raise(entry, 'unknown-order', about, { order: id, says: body.kind }))
      continue
    }
    if (body.kind === 'order-placed/1') cancelled = false
    else if (body.kind === 'order-cancelled/1') cancelled = true
    else if (body.kind === 'returned/1') {
      dispatched -= body.number
      sentBy.push(entry)
    } else if (body.kind === 'dispatched/1') {
      dispatched += body.number
      sentBy.push(entry)
      if (cancelled) queries.push(raise(entry, 'order-cancelled', about, { order: id, number: body.number }))
      if (dispatched > order.number) {
        queries.push(raise(entry, 'order-overfilled', about, { order: id, number: order.number, dispatched }))
      }
    }
  }
  return { order: order && { order, cancelled, dispatched, sentBy, entries: [] }, queries }
}
