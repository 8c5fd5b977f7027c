import type { SeasonOrder, SeasonPrices } from '../season.ts'
import type { SeasonRule } from './season-draft.ts'

/**
 * Each order is filled inside its dates, or late, or not at all, at a price.
 *   Σ deliver(o, p, w) + short(o) = planned number(o)       w: from the earliest to the latest week
 * Late costs a share of the price once, and again for each week; short costs the value lost.
 * The planned number stands on the right-hand side: it is the order's number and its margin.
 * Said as: "Order {order}: one more tree costs {worth}."
 */
export const ordersByTheirDate: SeasonRule = draft => {
  const { season, model } = draft
  season.orders.forEach((order, o) => {
    const planned = draft.margins.plannedNumber[o]!
    const row = model.row({
      rule: 'ordersByTheirDate',
      subject: o,
      about: order.id,
      week: -1,
      lower: planned,
      upper: planned,
    })
    const short = model.column({
      name: `short/${order.id}`,
      part: 'shortage',
      cost: order.price * season.prices.shortShare,
    })
    model.put(row, short, 1)
    draft.orderRow[o] = row
    draft.shortColumn[o] = short
  })
  for (const { order, week, column } of draft.deliveries) {
    model.put(draft.orderRow[order]!, column, 1)
    const due = draft.margins.plannedDueWeek[order]!
    model.addCost(column, costOfLate(season.orders[order]!, season.prices, due, week))
  }
}

/**
 * What a tree delivered in a week after the planned due week costs.
 * @example price 10, missedShare 0.5, latePerWeekShare 0.05, two weeks late: 10 · (0.5 + 2 · 0.05) = 6
 */
export const costOfLate = (order: SeasonOrder, prices: SeasonPrices, due: number, week: number): number =>
  week <= due ? 0 : order.price * (prices.missedShare + prices.latePerWeekShare * (week - due))
