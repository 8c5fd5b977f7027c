import { expect, test } from 'vitest'
import { inventedNursery } from '../fixtures/invented-nursery.ts'
import { readSeason } from '../reading/read-season.ts'
import { firstMargins } from '../sureness/first-margins.ts'
import { buildSeasonModel } from './build-season-model.ts'
import { drafting } from './drafting.ts'
import { basisFor, keptBasis } from './kept-basis.ts'
import { openSolver } from './solve.ts'

const MONDAY = '2026-01-05'
const usual = { lower: 0, basic: 1 }

const modelOf = (...names: readonly string[]) => {
  const draft = drafting()
  for (const name of names) draft.column({ name, part: 'x', cost: 1 })
  for (const about of names) draft.row({ rule: 'r', subject: 0, about, week: 3, upper: 1 })
  return draft.finished()
}

test('what both models name keeps its status; what is new is at its lower bound, a new row does not bind', () => {
  const kept = keptBasis(
    modelOf('fig', 'plum', 'pear'),
    [],
    { colStatus: Int32Array.of(1, 0, 2), rowStatus: Int32Array.of(2, 1, 0) },
    usual,
  )
  expect(basisFor(modelOf('pear', 'quince', 'fig'), [], kept, usual)).toEqual({
    colStatus: Int32Array.of(2, 0, 1),
    rowStatus: Int32Array.of(0, 1, 2),
  })
})

test('started from the basis of another season, the optimum is that of a start from nothing', async () => {
  // With half the room that a rough count asks, several weeks of places and hands are full.
  const size = { kinds: 16, ordersPerKind: 1, treesPerOrder: 100, today: MONDAY, seed: 3, room: 0.5 }
  const season = readSeason(inventedNursery(size), MONDAY)
  const first = await openSolver(buildSeasonModel(season, firstMargins(season)))
  first.solve()
  expect(first.addedRows().length).toBeGreaterThan(0)
  const kept = first.basis()
  first.dispose()
  // Other numbers, one order gone, and what takes is another share: the matrix is another.
  const other = {
    ...season,
    orders: season.orders.slice(1).map(order => ({ ...order, number: Math.round(1.1 * order.number) })),
    ways: season.ways.map(way => ({
      ...way,
      courses: way.courses.map(course => ({ ...course, ready: course.ready.map(share => 0.95 * share) })),
    })),
  }
  const model = buildSeasonModel(other, firstMargins(other))
  const [cold, warm] = [await openSolver(model), await openSolver(model)]
  try {
    warm.startFrom(kept)
    expect(warm.addedRows().length).toBeGreaterThan(0)
    const [fromNothing, fromOther] = [cold.solve(), warm.solve()]
    expect(fromOther.outcome).toBe('optimal')
    expect(Math.abs(fromOther.objective / fromNothing.objective - 1)).toBeLessThan(1e-9)
    // And again under other bounds.
    const columns = Int32Array.from(model.starts.slice(0, 40), ({ column }) => column)
    for (const solver of [cold, warm])
      solver.setColumnBounds(columns, new Float64Array(40), new Float64Array(40))
    expect(Math.abs(warm.solve().objective / cold.solve().objective - 1)).toBeLessThan(1e-9)
  } finally {
    cold.dispose()
    warm.dispose()
  }
})
