import { expect, test } from 'vitest'
import { tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { orderChances } from '../simulate/outcome.ts'
import type { SimulatedSeasons } from '../simulate/simulate-seasons.ts'
import { firstState, moveMargins } from './move-margins.ts'
import { orderChains } from './order-chains.ts'

/** Ten trees by week 20; of ten seasons three had nine of them, seven had ten. */
const simulated: SimulatedSeasons = {
  from: 0,
  to: 10,
  orders: 1,
  weeks: 30,
  byDue: Int32Array.of(9, 9, 9, 10, 10, 10, 10, 10, 10, 10),
  weeksLate: Uint8Array.of(255, 255, 255, 0, 0, 0, 0, 0, 0, 0),
  late: new Int32Array(10),
  watched: [],
  promisable: new Int32Array(0),
}

function planned(sure: number): number {
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('plum')],
    ways: [],
    orders: [{ kind: 0, number: 10, dueWeek: 20, sure }],
  })
  const margins = { plannedNumber: Float64Array.of(10), plannedDueWeek: Int32Array.of(20) }
  const deliveries = [{ order: 0, kind: 0, week: 20, number: 10, column: 0 }]
  const outcomes = orderChances(season, simulated)
  return moveMargins(season, orderChains(season), firstState(margins), { deliveries }, simulated, outcomes)
    .margins.plannedNumber[0]!
}

test('of few trees a part of one less is planned: those that have just so many lie evenly up to the next, by hand', () => {
  // Seven in ten have the ten, five are asked: two of the seven may lose a part, so 2/7 of a tree fewer.
  expect(planned(0.5)).toBeCloseTo(10 - 2 / 7, 10)
  // As sure as asked, nothing is moved.
  expect(planned(0.7)).toBe(10)
  // Eight are asked, who have nine: a whole tree more, and as much again as the mean (9.7) lies above the nine.
  expect(planned(0.8)).toBeCloseTo(10 + 9.7 / 9, 10)
})
