import { Order } from '../record/index.ts'
import { dateOf, dayNumber, dayText, type SeededRandom } from '../science/index.ts'
import { type Protocol, windowMonths } from '../trade/index.ts'
import { buyers } from './fruits.ts'
import type { Finishing } from './history.ts'
import type { Grown, NurseryList } from './nursery-list.ts'

const OPEN_ORDERS = 120
/** The last order is due about a year and three quarters from now. */
const LAST_DUE_DAYS = 650

const typicalDays = (protocol: Protocol): number =>
  protocol.steps.reduce((sum, step) => sum + step.days.typical, 0)

/** The first day on or after `from` on which the protocol may begin. */
const nextOpening = (protocol: Protocol, from: number): number => {
  const months = windowMonths(protocol.window, 'north')
  for (let day = from; day < from + 366; day++) if (months.includes(dateOf(day).month)) return day
  return from
}

/** The earliest day by which a start made from now on is finished with time to spare. */
const earliestFromNew = (item: Grown, today: number): number =>
  Math.min(
    ...item.protocols.map(
      protocol => nextOpening(protocol, today + 14) + Math.round(typicalDays(protocol) * 1.3) + 28,
    ),
  )

/**
 * Open orders: about half can be filled from what stands, the rest ask for what must still be started. A few ask for
 * more, or sooner, than can be had: that is what orders do.
 */
export const drawOrders = (
  list: NurseryList,
  finishing: readonly Finishing[],
  random: SeededRandom,
  today: string,
): { order: Order; placed: string }[] => {
  const now = dayNumber(today)
  const lines: { item: Grown; due: number; number: number }[] = []
  for (const [nth, item] of list.trees.entries()) {
    const luck = random.stream(nth)
    let soon = 0
    for (const stock of finishing) {
      if (stock.kind !== item.kind.id) continue
      const number = Math.floor(stock.left * 0.68)
      if (number < 12) continue
      const parts = number > 60 ? 2 : 1
      for (let part = 0; part < parts; part++) {
        const due = Math.max(now + 10, stock.day + 42) + Math.floor(luck.uniform() * 35)
        if (due > stock.day + stock.usableDays || due > now + LAST_DUE_DAYS) continue
        lines.push({ item, due, number: Math.max(5, Math.floor(number / parts)) })
      }
      soon += number
    }
    const later = Math.max(10, Math.round(item.yearly * 1.35 - soon * 0.5))
    const from = earliestFromNew(item, now)
    if (from < now + LAST_DUE_DAYS - 20) {
      const parts = later > 120 ? 2 : 1
      for (let part = 0; part < parts; part++)
        lines.push({
          item,
          due: from + Math.floor(luck.uniform() * (now + LAST_DUE_DAYS - from)),
          number: Math.round((later / parts) * (0.5 + 0.5 * luck.uniform())),
        })
    }
  }
  const luck = random.stream(10_000)
  const chosen = lines
    .sort((a, b) => b.number - a.number)
    .slice(0, OPEN_ORDERS)
    .sort((a, b) => a.due - b.due)
  return chosen.map(({ item, due, number }, nth) => {
    const placed = Math.max(now - 200, Math.min(now - 3, due - 260 - Math.floor(luck.uniform() * 120)))
    const wait = 14 + Math.floor(luck.uniform() * 60)
    return {
      placed: dayText(placed),
      order: Order.parse({
        id: `O-${String(nth + 1).padStart(3, '0')}`,
        buyer: buyers[Math.floor(luck.uniform() * buyers.length)],
        kind: item.kind.id,
        number: Math.max(5, Math.round(number / 5) * 5),
        earliest: dayText(Math.max(now, due - 42)),
        due: dayText(due),
        latest: dayText(due + wait),
        sure: [0.8, 0.9, 0.9, 0.95][Math.floor(luck.uniform() * 4)],
        price: null,
        placed: dayText(placed),
      }),
    }
  })
}
