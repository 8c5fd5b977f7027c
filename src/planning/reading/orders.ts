import type { Nursery } from '../../record/index.ts'
import { type KindId, type Phrase, phrase } from '../../trade/index.ts'
import type { SeasonOrder } from '../season.ts'
import type { Weeks } from './weeks.ts'

/** What is still to be delivered, by week. */
export function readOrders(
  nursery: Nursery,
  weeks: Weeks,
  kindIndex: ReadonlyMap<KindId, number>,
  assumed: Phrase[],
): SeasonOrder[] {
  const orders: SeasonOrder[] = []
  for (const { order, cancelled, dispatched } of nursery.orders.values()) {
    const number = order.number - dispatched
    if (cancelled || number <= 0) continue
    const accepted = [{ kind: order.kind, lessWorth: 0 }, ...order.instead].flatMap(({ kind, lessWorth }) => {
      const index = kindIndex.get(kind)
      return index === undefined ? [] : [{ kind: index, lessWorth }]
    })
    if (accepted.length === 0) {
      assumed.push(
        phrase('Order {order} is left out: the kind {kind} is not registered.', {
          order: order.id,
          kind: order.kind,
        }),
      )
      continue
    }
    const due = weeks.endingBy(order.due)
    const latest = Math.max(due, weeks.endingBy(order.latest))
    if (latest < 0) {
      assumed.push(
        phrase('Order {order} is left out: its latest day, {latest}, has passed.', {
          order: order.id,
          latest: { day: order.latest },
        }),
      )
      continue
    }
    if (due < 0)
      assumed.push(
        phrase('Order {order} was due on {due}: it is planned for as soon as can be.', {
          order: order.id,
          due: { day: order.due },
        }),
      )
    const kind = nursery.kinds.get(order.kind)
    orders.push({
      id: order.id,
      kinds: accepted,
      number,
      earliestWeek: Math.min(Math.max(0, weeks.of(order.earliest)), Math.max(0, due)),
      dueWeek: Math.max(0, due),
      latestWeek: latest,
      sure: order.sure,
      price: order.price ?? kind?.price ?? 0,
    })
  }
  return orders
}
