import { decideDeliveries, decideRootstocks, decideStarts } from '../rules/decide.ts'
import { labour } from '../rules/labour.ts'
import { licence } from '../rules/licence.ts'
import { motherSupply } from '../rules/mother-supply.ts'
import { ordersByTheirDate } from '../rules/orders-by-their-date.ts'
import { rootstocksInTime } from '../rules/rootstocks-in-time.ts'
import type { SeasonDraft, SeasonRule } from '../rules/season-draft.ts'
import { setByHand } from '../rules/set-by-hand.ts'
import { space } from '../rules/space.ts'
import { standingStill } from '../rules/standing-still.ts'
import { stockOfFinished } from '../rules/stock-of-finished.ts'
import { takeWeeks } from '../rules/take-weeks.ts'
import { wholeNumbers } from '../rules/whole-numbers.ts'
import type { Season } from '../season.ts'
import { drafting } from './drafting.ts'
import type { Margins, SeasonModel } from './season-model.ts'
import { usefulStarts } from './useful-starts.ts'

const rules: readonly SeasonRule[] = [
  stockOfFinished,
  rootstocksInTime,
  motherSupply,
  space,
  labour,
  ordersByTheirDate,
  licence,
  standingStill,
  setByHand,
  wholeNumbers,
]

/**
 * The season as a linear model. With `whole`, only the given starts (way · weeks + week) may be begun, in whole trays:
 * a small mixed-integer model beside the relaxation.
 */
export function buildSeasonModel(
  season: Season,
  margins: Margins,
  whole: ReadonlySet<number> | null = null,
): SeasonModel {
  const useful = usefulStarts(season)
  if (whole)
    useful.useful.forEach((is, start) => {
      if (is && !whole.has(start)) useful.useful[start] = 0
    })
  const model = drafting()
  const { starts, startColumn } = decideStarts(season, model, useful)
  const rootstockUses = decideRootstocks(season, model, starts)
  const deliveries = decideDeliveries(season, model)
  const usesOf = byKind(season, rootstockUses, use => use.kind)
  const deliveriesOf = byKind(season, deliveries, delivery => delivery.kind)
  const draft: SeasonDraft = {
    season,
    margins,
    model,
    spans: useful.spans,
    largestStart: useful.largestStart,
    isWhole: whole !== null,
    starts,
    startsOf: byKind(season, starts, start => season.ways[start.way]!.kind),
    usesOf,
    deliveriesOf,
    startColumn,
    rootstockUses,
    deliveries,
    orderRow: new Int32Array(season.orders.length),
    shortColumn: new Int32Array(season.orders.length),
    takesOf: season.kinds.map((_, kind) => takeWeeks(season, kind, deliveriesOf[kind]!, usesOf[kind]!)),
    holds: [],
    waits: [],
    capacities: [],
    bought: [],
    planted: [],
    overtime: [],
    extraArea: [],
    lessThanAccepted: [],
    lessThanSet: [],
    wholeStarts: [],
  }
  for (const rule of rules) rule(draft)
  const { spans: _, largestStart: __, model: ___, ...columns } = draft
  return { ...model.finished(), ...columns }
}

function byKind<Item>(season: Season, items: readonly Item[], kindOf: (item: Item) => number): Item[][] {
  const lists: Item[][] = season.kinds.map(() => [])
  for (const item of items) lists[kindOf(item)]!.push(item)
  return lists
}

/** An order planned at exactly its number, by its due week. */
export const withoutMargins = (season: Season): Margins => ({
  plannedNumber: Float64Array.from(season.orders, order => order.number),
  plannedDueWeek: Int32Array.from(season.orders, order => order.dueWeek),
})
