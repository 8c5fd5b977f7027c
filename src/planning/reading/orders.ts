import type { Nursery } from '../../record/index.ts'
import type { KindId } from '../../trade/index.ts'
import type { SeasonOrder } from '../season.ts'
import type { Weeks } from './weeks.ts'

/** What is still to be delivered, by week. */
export function readOrders(
  nursery: Nursery,
  weeks: Weeks,
  kindIndex: ReadonlyMap<KindId, number>,
  assumed: string[],
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
      assumed.push(`Order ${order.id} is left out: the kind ${order.kind} is not registered.`)
      continue
    }
    const due = weeks.endingBy(order.due)
    const latest = Math.max(due, weeks.endingBy(order.latest))
    if (latest < 0) {
      assumed.push(`Order ${order.id} is left out: its latest day, ${order.latest}, has passed.`)
      continue
    }
    if (due < 0)
      assumed.push(`Order ${order.id} was due on ${order.due}: it is planned for as soon as can be.`)
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
