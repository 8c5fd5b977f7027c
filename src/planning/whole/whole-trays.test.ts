import { expect, test } from 'vitest'
import { inventedNursery } from '../fixtures/invented-nursery.ts'
import { solved } from '../fixtures/solved.ts'
import { withoutMargins } from '../model/build-season-model.ts'
import { readSeason } from '../reading/read-season.ts'
import { componentsOf } from '../simulate/components.ts'
import { reckoned } from './reckon.ts'
import { wholeTrays } from './whole-trays.ts'

const MONDAY = '2026-01-05'

test('many starts are rounded part by part, and all together fit into the nursery, whose places and hands are full', async () => {
  const size = { kinds: 24, ordersPerKind: 1.5, treesPerOrder: 80, today: MONDAY, seed: 2, room: 0.5 }
  const season = readSeason(inventedNursery(size), MONDAY)
  expect(componentsOf(season).length).toBeGreaterThan(1)
  const margins = withoutMargins(season)
  const relaxed = await solved(season)
  expect(relaxed.starts.length).toBeGreaterThan(40)
  expect(relaxed.duals.some(({ rule }) => rule === 'space' || rule === 'labour')).toBe(true)
  const trays = wholeTrays({ season, relaxed, model: relaxed.model })
  const input = { margins, proveSeconds: 0 }
  const { starts, bought } = await trays.round(input)
  for (const { way, number } of starts) {
    const { tray, smallestBatch } = season.ways[way]!
    expect(number / tray).toBeCloseTo(Math.round(number / tray), 6)
    expect(number).toBeGreaterThanOrEqual(smallestBatch - 1e-6)
  }
  const whole = await reckoned(season, margins, starts, bought)
  expect(whole).not.toBeNull()
  expect(whole!.cost).toBeGreaterThanOrEqual(relaxed.objective - 1e-6)

  // Planned again with one order larger, the other parts keep their trays.
  const [part] = componentsOf(season).filter(kinds => kinds.includes(season.orders[0]!.kinds[0]!.kind))
  const larger = { ...margins, plannedNumber: margins.plannedNumber.map((n, o) => (o === 0 ? 1.5 * n : n)) }
  const again = await trays.round({ ...input, margins: larger })
  const others = (all: typeof starts) => all.filter(({ way }) => !part!.includes(season.ways[way]!.kind))
  expect(others(again.starts)).toEqual(others(starts))
  expect(again.starts).not.toEqual(starts)
  // Planned a third time with each order of the part smaller: the same batches, of fewer trays where that will do.
  const smaller = { ...larger, plannedNumber: larger.plannedNumber.map(number => 0.6 * number) }
  const third = await trays.round({ ...input, margins: smaller })
  const batches = (all: typeof starts) => all.map(({ way, week }) => `${way} ${week}`).sort()
  const sum = (all: typeof starts) => all.reduce((total, { number }) => total + number, 0)
  expect(batches(third.starts)).toEqual(batches(again.starts))
  expect(sum(third.starts)).toBeLessThan(0.8 * sum(again.starts))
})

test('where the relaxation begins nothing, a later round with more trees planned is rounded all the same', async () => {
  const size = { kinds: 3, ordersPerKind: 2, treesPerOrder: 20, today: MONDAY, seed: 2, room: 1 }
  const season = readSeason(inventedNursery(size), MONDAY)
  const margins = withoutMargins(season)
  const { model, ...solution } = await solved(season)
  const trays = wholeTrays({ season, relaxed: { ...solution, starts: [] }, model })
  await trays.round({ margins, proveSeconds: 0 })
  const more = { ...margins, plannedNumber: margins.plannedNumber.map(number => 2 * number) }
  const { starts } = await trays.round({ margins: more, proveSeconds: 1 })
  for (const { way, number } of starts) {
    const trays = number / season.ways[way]!.tray
    expect(trays).toBeCloseTo(Math.round(trays), 6)
  }
})
