import type { SeasonOrder } from '../season.ts'
import type { StockLine } from './runs.ts'
import type { Stock } from './stock.ts'

/** `weeksLate` of an order that was never filled. */
export const NEVER = 255

/** What the orders got in one season. */
export interface Delivered {
  /** Delivered by the end of the due week, with what else was on hand for it then. */
  readonly byDue: Int32Array
  /** Weeks after its due week in which an order was filled: 0 on time, `NEVER` not at all. */
  readonly weeksLate: Uint8Array
  readonly number: Int32Array
  readonly late: Int32Array
}

export interface Deliveries extends Delivered {
  clear(): void
  /** Delivers to the orders that are due, by due date and then price, the oldest trees first. */
  deliver(week: number, stock: Stock): void
  /** Trees that may not be kept go to an order that waits for its due week, the next one due first. */
  handOut(line: number, number: number, week: number, stock: Stock): number
  /** An order is late and may still be filled. */
  isOneLate(): boolean
  /** By line, delivered this week. */
  readonly deliveredOfLine: Int32Array
}

/**
 * Trees are kept for the next order due and go out in its due week, so that an early delivery never empties
 * another's share; what could not be kept goes out before. Late trees go out as soon as they are there.
 */
export function noDeliveries(
  orders: readonly SeasonOrder[],
  weeks: number,
  lines: readonly StockLine[],
): Deliveries {
  const count = orders.length
  const wanted = Int32Array.from(orders, order => order.number)
  const linesOf = orders.map(order =>
    order.kinds.flatMap(({ kind }) => lines.flatMap((line, l) => (line.kind === kind ? [l] : []))),
  )
  const inTurn = orders
    .map((_, o) => o)
    .sort((a, b) => orders[a]!.dueWeek - orders[b]!.dueWeek || orders[b]!.price - orders[a]!.price || a - b)
  const dueIn: number[][] = Array.from({ length: weeks }, () => [])
  for (const o of inTurn) {
    const { dueWeek, latestWeek } = orders[o]!
    const week = Math.max(0, dueWeek)
    if (week < weeks && latestWeek >= 0) dueIn[week]!.push(o)
  }
  const waitingFor: number[][] = lines.map((_, l) => inTurn.filter(o => linesOf[o]!.includes(l)))

  const number = new Int32Array(count)
  const late = new Int32Array(count)
  const byDue = new Int32Array(count)
  const weeksLate = new Uint8Array(count)
  const deliveredOfLine = new Int32Array(lines.length)
  let open: number[] = []

  const give = (o: number, week: number, stock: Stock) => {
    const isLate = week > orders[o]!.dueWeek
    for (const line of linesOf[o]!) {
      const rest = wanted[o]! - number[o]!
      if (rest === 0) break
      if (stock.onHand[line] === 0) continue
      const got = stock.takeOldest(line, rest)
      number[o]! += got
      deliveredOfLine[line]! += got
      if (isLate) late[o]! += got
    }
    if (number[o] === wanted[o]) weeksLate[o] = Math.min(Math.max(0, week - orders[o]!.dueWeek), NEVER - 1)
  }

  return {
    byDue,
    weeksLate,
    number,
    late,
    deliveredOfLine,
    isOneLate: () => open.length > 0,
    clear() {
      number.fill(0)
      late.fill(0)
      byDue.fill(0)
      for (let o = 0; o < count; o++) weeksLate[o] = wanted[o] === 0 ? 0 : NEVER
      deliveredOfLine.fill(0)
      open = []
    },
    deliver(week, stock) {
      if (open.length > 0) {
        const still: number[] = []
        for (const o of open) {
          if (week > orders[o]!.latestWeek) continue
          give(o, week, stock)
          if (number[o]! < wanted[o]!) still.push(o)
        }
        open = still
      }
      for (const o of dueIn[week]!) {
        if (orders[o]!.dueWeek >= 0) {
          let there = number[o]!
          for (const line of linesOf[o]!) there += stock.onHand[line]!
          byDue[o] = there
        }
        give(o, week, stock)
        if (number[o]! < wanted[o]!) open.push(o)
      }
    },
    handOut(line, most, week, stock) {
      let rest = most
      for (const o of waitingFor[line]!) {
        if (rest === 0) break
        const { earliestWeek, dueWeek } = orders[o]!
        if (dueWeek <= week || earliestWeek > week || number[o] === wanted[o]) continue
        const got = stock.takeOldest(line, Math.min(rest, wanted[o]! - number[o]!))
        number[o]! += got
        deliveredOfLine[line]! += got
        rest -= got
        if (number[o] === wanted[o]) weeksLate[o] = 0
      }
      return most - rest
    },
  }
}
