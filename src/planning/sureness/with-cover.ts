import { normalQuantile } from '../../science/index.ts'
import { BATCH_MINUTES } from '../reading/batch-minutes.ts'
import type { Course, Season } from '../season.ts'

/** Rootstocks are planned so that they suffice in this share of years; what then lacks is met by the orders' margins. */
const ROOTSTOCKS_SURE = 0.85
/** A kind of rootstock is taken to come from so many batches. */
const ROOTSTOCK_BATCHES = 2
/** Trees may be set aside for an order so many weeks before it is due, though it goes out later. */
export const SET_ASIDE_WEEKS = 4

/**
 * The season as the model plans it: each graft reckons with more than one rootstock, because batches of rootstocks vary
 * too, and trees may be set aside for an order before its earliest week, so that they can be planned in good time; and
 * a batch less is worth something.
 * The simulator runs through the season itself.
 */
export function withCover(season: Season): Season {
  const covers = season.kinds.map((_, kind) => rootstockCover(season, kind))
  const covered = new Map<Course, Course>()
  return {
    ...season,
    prices: { ...season.prices, batch: BATCH_MINUTES * season.prices.minute },
    ways: season.ways.map(way => ({
      ...way,
      courses: way.courses.map(course => {
        const { rootstock } = course
        if (!rootstock) return course
        const known = covered.get(course)
        if (known) return known
        const cover = Math.max(0, ...rootstock.kinds.map(kind => covers[kind]!))
        const made = { ...course, rootstock: { ...rootstock, perPlant: rootstock.perPlant * (1 + cover) } }
        covered.set(course, made)
        return made
      }),
    })),
    orders: season.orders.map(order => ({
      ...order,
      earliestWeek: Math.min(order.earliestWeek, Math.max(0, order.dueWeek - SET_ASIDE_WEEKS)),
    })),
  }
}

/** Part by which the rootstocks of a kind may fall short of what is expected, in all but few years. */
function rootstockCover(season: Season, kind: number): number {
  let least = Number.POSITIVE_INFINITY
  for (const way of season.ways) {
    if (way.kind !== kind) continue
    for (const { steps } of way.courses) {
      // Squared variation of the product of the shares: Π(1 + cv²) − 1.
      const square = steps.reduce(
        (product, { alpha, beta }) => product * (1 + beta / (alpha * (alpha + beta + 1))),
        1,
      )
      least = Math.min(least, square - 1)
    }
  }
  if (!Number.isFinite(least)) return 0
  const lack = normalQuantile(ROOTSTOCKS_SURE) * Math.sqrt(least / ROOTSTOCK_BATCHES)
  return 1 / Math.max(0.5, 1 - lack) - 1
}
