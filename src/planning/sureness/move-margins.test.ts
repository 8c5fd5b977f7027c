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

function planned(sure: number, inWholeTrays = false): number {
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('plum')],
    ways: [],
    orders: [{ kind: 0, number: 10, dueWeek: 20, sure }],
  })
  const margins = { plannedNumber: Float64Array.of(10), plannedDueWeek: Int32Array.of(20) }
  const deliveries = [{ order: 0, kind: 0, week: 20, number: 10, column: 0 }]
  const outcomes = orderChances(season, simulated)
  const state = firstState(margins)
  const keepsNone = () => false
  return moveMargins(
    season,
    orderChains(season),
    state,
    { deliveries },
    simulated,
    outcomes,
    keepsNone,
    inWholeTrays,
  ).margins.plannedNumber[0]!
}

test('of few trees a part of one more or less is planned: those that have just so many lie evenly up to the next, by hand', () => {
  // Seven in ten have the ten, five are asked: two of the seven may lose a part, so 2/7 of a tree fewer.
  expect(planned(0.5)).toBeCloseTo(10 - 2 / 7, 10)
  // Eight are asked: one of the three that have nine is to gain the rest, so a third more, and as much again as the mean
  // (9.7) lies above what eight in ten reach (9 2/3).
  expect(planned(0.8)).toBeCloseTo(10 + (1 / 3) * (9.7 / (9 + 2 / 3)), 10)
  // As sure as asked, nothing is moved.
  expect(planned(0.7)).toBe(10)
})

test('in whole trays a whole tree more is asked, for a part of one may change nothing', () => {
  expect(planned(0.8, true)).toBeCloseTo(10 + 9.7 / 9, 10)
})
