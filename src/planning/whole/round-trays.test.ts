import { expect, test } from 'vitest'
import { solved } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { withoutMargins } from '../model/build-season-model.ts'
import { roundTrays } from './round-trays.ts'

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
