import { makeDemoEntries } from '../src/demo/index.ts'
import type { Entry } from '../src/record/index.ts'

/** The invented nursery with its first few orders only, so that a plan of its season is made in seconds. */
export const nurseryWithFewOrders = (today: string, orders: number): Entry[] => {
  let placed = 0
  return makeDemoEntries({ seed: 1, today }).filter(
    ({ body }) => body.kind !== 'order-placed/1' || ++placed <= orders,
  )
}
