import { expect, test } from 'vitest'
import { byGlpk } from '../fixtures/by-glpk.ts'
import { inventedNursery } from '../fixtures/invented-nursery.ts'
import { lotSizing } from '../fixtures/lot-sizing.ts'
import { readSeason } from '../reading/read-season.ts'
import { firstMargins } from '../sureness/first-margins.ts'
import { withCover } from '../sureness/with-cover.ts'
import { buildSeasonModel, withoutMargins } from './build-season-model.ts'
import { toMps } from './mps.ts'
import { openSolver } from './solve.ts'

const MONDAY = '2026-01-05'

test.each([
  { kinds: 6, seed: 1, room: 2 },
  { kinds: 10, seed: 2, room: 0.6 },
])('the same model through GLPK costs the same to a millionth: $kinds kinds, room $room', async size => {
  const nursery = inventedNursery({ ...size, ordersPerKind: 1, treesPerOrder: 80, today: MONDAY })
  const season = withCover(readSeason(nursery, MONDAY))
  const model = buildSeasonModel(season, firstMargins(season))
  const solver = await openSolver(model)
  try {
    const { objective } = solver.solve()
    const second = await byGlpk(toMps(model, { capacities: solver.addedRows() }))
    expect(Math.abs(second.objective - objective)).toBeLessThan(1e-6 * Math.abs(objective))
  } finally {
    solver.dispose()
  }
})

test('lot sizing in whole numbers through GLPK: the optimum published by Wagner and Whitin, 864', async () => {
  // Management Science 5 (1958), the example of twelve months; the figures are those of whole-numbers.test.ts.
  const setup = [85, 102, 102, 101, 98, 114, 105, 86, 119, 110, 98, 114]
  const season = lotSizing({
    demand: [69, 29, 36, 61, 61, 26, 34, 67, 45, 67, 79, 56],
    setup: period => setup[period]!,
    holding: 1,
  })
  const every = new Set(
    season.ways.flatMap((_, way) =>
      Array.from({ length: season.weeks }, (__, week) => way * season.weeks + week),
    ),
  )
  const model = buildSeasonModel(season, withoutMargins(season), every)
  expect((await byGlpk(toMps(model, { isWhole: true }))).objective).toBeCloseTo(864, 4)
})
