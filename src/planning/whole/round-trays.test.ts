import { describe, expect, test } from 'vitest'
import { solved } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { withoutMargins } from '../model/build-season-model.ts'
import { roundAgain, roundTrays } from './round-trays.ts'

/** 100 trees are due in week 20 and 60 in week 23, ready ten weeks after they are begun; none is lost. */
const seasonHolding = (holdingCostPerWeek: number) =>
  tinySeason({
    weeks: 30,
    kinds: [tinyKind('fig', { holdingCostPerWeek, price: 50 })],
    ways: [{ kind: 0, steps: [{ ...certain(1 - 1e-9), days: 70 }], costPerPlant: 10 }],
    orders: [
      { kind: 0, number: 100, earliestWeek: 20, dueWeek: 20, price: 50 },
      { kind: 0, number: 60, earliestWeek: 23, dueWeek: 23, price: 50 },
    ],
    more: {
      prices: {
        minute: 0,
        overtimeMinute: 1,
        missedShare: 0.1,
        latePerWeekShare: 0.05,
        shortShare: 1.5,
        batch: 30,
      },
    },
  })

const batchesOf = async (holdingCostPerWeek: number) => {
  const season = seasonHolding(holdingCostPerWeek)
  const { starts: seen } = await solved(season)
  expect(seen).toHaveLength(2)
  const { solution } = await roundTrays(season, { margins: withoutMargins(season), seen, proveSeconds: 0 })
  return solution.starts.map(({ number }) => Math.round(number))
}

test('a batch is left out where holding its trees, begun with others, costs less than a batch more', async () => {
  // A batch less is worth 30. To hold 60 trees for three weeks costs 9 at 0.05 a week, and 90 at 0.5.
  expect(await batchesOf(0.05)).toEqual([160])
  expect(await batchesOf(0.5)).toEqual([100, 60])
})

describe('rounded again', () => {
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('fig'), tinyKind('guava')],
    ways: [0, 1].map(kind => ({ kind, steps: [{ ...certain(1 - 1e-9), days: 70 }], tray: 10 })),
    orders: [0, 1].map(kind => ({ kind, number: 50, earliestWeek: 20, dueWeek: 20 })),
  })
  /** Guavas stand in seven trays, of which six would do. */
  const last = {
    starts: [
      { way: 0, week: 10, number: 100 },
      { way: 1, week: 10, number: 70 },
    ],
    bought: [],
    lacking: Float64Array.of(0, 0),
  }
  const numbers = async (isOtherwise: (kind: number) => boolean, planned = [125, 60]) => {
    const margins = { plannedNumber: Float64Array.from(planned), plannedDueWeek: Int32Array.of(20, 20) }
    const made = await roundAgain(season, { margins }, last, isOtherwise)
    return made?.solution.starts.map(({ number }) => Math.round(number))
  }

  test('a kind of which more is planned gets more trays, another keeps those that it has', async () => {
    expect(await numbers(kind => kind === 0)).toEqual([130, 70])
    expect(await numbers(() => true)).toEqual([130, 60])
  })

  test('what a kind that keeps its trays lacks is no reason to weigh other batches, what another lacks is', async () => {
    expect(await numbers(kind => kind === 0, [125, 90])).toEqual([130, 70])
    // No start can be of use beyond four times what is ordered.
    expect(await numbers(kind => kind === 0, [500, 60])).toBeUndefined()
  })
})

test('a small batch comes to a large one that stays, where an order would have no trees in time without it', async () => {
  // 20 trees are due in week 12, and 300 in week 25; both are ready ten weeks after they are begun, in week 2 or 15.
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('fig', { usableWeeks: 8 })],
    ways: [{ kind: 0, steps: [{ ...certain(1 - 1e-9), days: 70 }], openWeeks: [2, 15] }],
    orders: [
      { kind: 0, number: 20, dueWeek: 12 },
      { kind: 0, number: 300, dueWeek: 25 },
    ],
  })
  const { starts: seen } = await solved(season)
  const kept = [{ way: 0, week: 15, number: 300 }]
  const input = { margins: withoutMargins(season), seen, kept, proveSeconds: 0 }
  const { solution } = await roundTrays(season, input)
  expect(solution.starts.map(({ week, number }) => [week, Math.round(number)])).toEqual([
    [2, 20],
    [15, 300],
  ])
})
