import { expect, test } from 'vitest'
import { byGlpk } from '../fixtures/by-glpk.ts'
import { bench, MONDAY, order, smallNursery } from '../fixtures/small-nursery.ts'
import { buildSeasonModel } from '../model/build-season-model.ts'
import { loadSolver } from '../model/open-model.ts'
import { openSolver } from '../model/solve.ts'
import { planSeason } from '../plan-season.ts'
import { readSeason } from '../reading/read-season.ts'
import { withCover } from '../sureness/with-cover.ts'
import { planAsMps } from './plan-as-mps.ts'

test('the model behind a plan, read back from its file, has the same minimum by our solver and by GLPK, full bed and all', async () => {
  const nursery = smallNursery(bench('mist bed', 1), order('figs', 'fig', 130, '2026-12-31'))
  const plan = await planSeason(nursery, {
    today: MONDAY,
    throughSeq: 1,
    seasons: 200,
    seed: 1,
    proveSeconds: 0,
  })
  const { number, weeksEarly } = Object.values(plan.plannedWith)[0]!
  const season = withCover(readSeason(nursery, MONDAY))
  const solver = await openSolver(
    buildSeasonModel(season, {
      plannedNumber: Float64Array.of(number),
      plannedDueWeek: Int32Array.of(season.orders[0]!.dueWeek - weeksEarly),
    }),
  )
  const { objective } = solver.solve()
  expect(solver.addedRows().length).toBeGreaterThan(0)
  solver.dispose()

  const mps = planAsMps(nursery, plan)
  const highs = await loadSolver()
  const read = highs.createModel({ format: 'mps', data: mps })
  try {
    read.options.set({ output_flag: false })
    read.run()
    expect(Math.abs(read.getObjectiveValue() - objective)).toBeLessThan(1e-6 * objective)
  } finally {
    read.dispose()
  }
  expect(Math.abs((await byGlpk(mps)).objective - objective)).toBeLessThan(1e-6 * objective)
  expect(mps).toMatch(/^\* R\d+ = space\/mist bed\/\d+$/m)
})
