import { expect, test } from 'vitest'
import { everyWeek, tinyPerson, tinyPlace } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { buildSeasonModel, withoutMargins } from '../model/build-season-model.ts'
import type { Margins } from '../model/season-model.ts'
import { openSolver } from '../model/solve.ts'
import type { Season } from '../season.ts'
import { wholePlan } from '../whole/whole-plan.ts'
import { costParts } from './costs.ts'
import { chosenStarts } from './planned.ts'

async function costed(season: Season, margins: Margins = withoutMargins(season)) {
  const model = buildSeasonModel(season, margins)
  const solver = await openSolver(model)
  try {
    const solution = solver.solve()
    const starts = chosenStarts(season, solution.starts)
    return { ...wholePlan(model, solution, solution), parts: costParts({ season, model, solution, starts }) }
  } finally {
    solver.dispose()
  }
}
const inAll = (parts: Record<string, number>) => Object.values(parts).reduce((sum, part) => sum + part, 0)

/** Ten pears begun in week 3 are ready in week 4; they cost 1 each and 0.1 a week once they are finished. */
const pears = (more: Partial<Season> = {}) =>
  tinySeason({
    weeks: 20,
    kinds: [tinyKind('pear', { holdingCostPerWeek: 0.1 })],
    ways: [{ kind: 0, steps: [{ ...certain(1), days: 7 }], openWeeks: [3] }],
    orders: [{ kind: 0, number: 10, earliestWeek: 8, dueWeek: 12, price: 10 }],
    more,
  })

test('what is finished before anybody may take it costs its keep until then: ten pears for four weeks', async () => {
  const { parts, cost } = await costed(pears())
  expect(parts).toEqual({ material: 10, holding: 4 })
  expect(cost).toBeCloseTo(14, 6)
})

test('a tree that comes after the week for which it was planned, and before it is due, is not late, and costs nothing', async () => {
  const season = pears()
  // Planned for week 6, taken in week 8 at the earliest: weighed at 10 · (0.1 + 2 · 0.05) each, and paid by nobody.
  const { parts, cost, solution, gapShare } = await costed(season, {
    plannedNumber: Float64Array.of(10),
    plannedDueWeek: Int32Array.of(6),
  })
  expect(solution.objective).toBeCloseTo(14 + 10 * 2, 6)
  expect(parts).toEqual({ material: 10, holding: 4 })
  expect(cost).toBeCloseTo(14, 6)
  expect(gapShare).toBeCloseTo(0, 9)
})

test('the parts add up to the cost: hands, overtime, area, what is bought in, late and never delivered', async () => {
  // 30 pears at 2 minutes: 40 minutes are there and 10 more may be worked, so that 25 are begun. They take 0.1 m² each for
  // the week of their growing. Three more are bought in, one a week from week 4 on, and two are lacking.
  const { parts, cost, solution } = await costed({
    ...pears(),
    kinds: [
      tinyKind('pear', {
        holdingCostPerWeek: 0.1,
        buyIn: { price: 5, weeksNotice: 10, mostPerWeek: 1 },
        standsAt: { place: 0, squareMetres: 0.01 },
      }),
    ],
    places: [tinyPlace('mist bed', everyWeek(20, 3), { pricePerSquareMetreWeek: 2 })],
    people: [tinyPerson('Ada', ['grafting'], everyWeek(20, 40), everyWeek(20, 10))],
    prices: { minute: 0.5, overtimeMinute: 0.75, missedShare: 0.1, latePerWeekShare: 0.05, shortShare: 1.5 },
    ways: pears().ways.map(way => ({
      ...way,
      courses: way.courses.map(course => ({
        ...course,
        labour: [{ skill: 'grafting' as const, perPlant: Float64Array.of(2), perBatch: Float64Array.of(0) }],
        area: [{ place: 0, squareMetres: Float64Array.of(0.1) }],
      })),
    })),
    orders: [{ ...pears().orders[0]!, number: 30, latestWeek: 13 }],
  })
  // Bought in weeks 10, 11, 12 and, late, 13: four; one lacks.
  expect(parts).toEqual({
    material: 25,
    labour: 25 * 2 * 0.5,
    overtime: 10 * 0.25,
    // A week under glass, then four weeks of 0.01 m² until they may go.
    area: 25 * 0.1 * 2 + 25 * 4 * 0.01 * 2,
    holding: 25 * 4 * 0.1,
    'buying in': 20,
    lateness: 1.5,
    shortage: 15,
  })
  expect(cost).toBeCloseTo(solution.objective, 6)
  expect(inAll(parts)).toBeCloseTo(cost, 6)
})
