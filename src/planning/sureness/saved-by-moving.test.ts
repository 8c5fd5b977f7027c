import { expect, test } from 'vitest'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { buildSeasonModel, withoutMargins } from '../model/build-season-model.ts'
import { openSolver } from '../model/solve.ts'
import { movedStarts, newStarts, savedByMoving } from './saved-by-moving.ts'

/** A hundred figs accepted in week 5 and wanted in week 12; begun in week 8, none of them is held for three weeks at 0.1. */
async function moved(worthOfMoving: number) {
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('fig', { holdingCostPerWeek: 0.1 })],
    ways: [{ kind: 0, steps: [{ ...certain(1), days: 28 }], openWeeks: [5, 8] }],
    orders: [{ kind: 0, number: 100, dueWeek: 12, earliestWeek: 12, price: 20 }],
    more: { accepted: [{ way: 0, week: 5, number: 100 }], worthOfMoving },
  })
  const solver = await openSolver(buildSeasonModel(season, withoutMargins(season)))
  try {
    const relaxed = solver.solve()
    const saved = savedByMoving(solver, relaxed, relaxed.starts)
    return { starts: movedStarts(season, relaxed.starts), saved, after: solver.solve().objective }
  } finally {
    solver.dispose()
  }
}

test('a start that is moved saves what staying would have cost: three weeks of holding a hundred figs, 30', async () => {
  // A move is worth 20, which is weighed and not paid: the plan costs 100 and 20, and afterwards is solved as before.
  const { starts, saved, after } = await moved(20)
  expect(starts).toBe(1)
  expect(saved).toBeCloseTo(30, 4)
  expect(after).toBeCloseTo(120, 4)
})

test('where a move is worth more than that, none is moved and nothing saved', async () => {
  expect(await moved(40)).toMatchObject({ starts: 0, saved: 0 })
})

test('a start is moved when fewer than half of its plants are begun then', () => {
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('fig')],
    more: { accepted: [{ way: 0, week: 5, number: 100 }] },
  })
  const begun = (number: number) => movedStarts(season, [{ way: 0, week: 5, number }])
  expect([begun(100), begun(50), begun(49)]).toEqual([0, 0, 1])
  expect(movedStarts(season, [{ way: 0, week: 6, number: 100 }])).toBe(1)
})

test('a start is new in a week in which nobody was shown one; of a first plan none is', () => {
  const shown = { shown: [{ way: 0, week: 5, number: 100 }] }
  const season = (more: object) => tinySeason({ weeks: 30, kinds: [tinyKind('fig')], more })
  const starts = [5, 6, 8].map(week => ({ way: 0, week, number: 10 }))
  expect(newStarts(season({}), starts)).toBe(0)
  expect(newStarts(season(shown), starts)).toBe(2)
  expect(newStarts(season({ ...shown, accepted: [{ way: 0, week: 6, number: 9 }] }), starts)).toBe(1)
})
