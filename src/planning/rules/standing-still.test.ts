import { expect, test } from 'vitest'
import { solved } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'

/** An accepted start of 100 in week 5; week 8 would save ten weeks' holding each week, by so much a tree. */
const season = (worthOfMoving: number, holdingCostPerWeek: number) =>
  tinySeason({
    weeks: 30,
    kinds: [tinyKind('fig', { holdingCostPerWeek })],
    ways: [{ kind: 0, steps: [{ ...certain(1), days: 28 }], openWeeks: [5, 8] }],
    orders: [{ kind: 0, number: 100, dueWeek: 12, earliestWeek: 12, price: 20 }],
    more: { accepted: [{ way: 0, week: 5, number: 100 }], worthOfMoving },
  })

const standing = `standingStill/${season(40, 0.1).ways[0]!.name}/5`

test('an accepted start stays where it is while moving it saves less than a move is worth', async () => {
  // Three weeks of holding 100 trees at 0.1 is 30.
  const stays = await solved(season(40, 0.1))
  expect(stays.starts).toMatchObject([{ week: 5 }])
  expect(stays.objective).toBeCloseTo(100 + 30, 4)
  // To let one of them go saves its 0.3 of holding; to be held to one more that nobody needs costs the 0.4 of not beginning it.
  const held = stays.dual(standing)
  expect(held).toBeGreaterThanOrEqual(0.3 - 1e-6)
  expect(held).toBeLessThanOrEqual(0.4 + 1e-6)
})

test('it moves when moving saves more, and the move is counted', async () => {
  const moves = await solved(season(20, 0.1))
  expect(moves.starts).toMatchObject([{ week: 8 }])
  expect(moves.objective).toBeCloseTo(100 + 20, 4)
  // One more accepted would be one more moved: 20 for the start, 0.2 for a plant of it.
  expect(moves.dual(standing)).toBeCloseTo(0.2, 6)
})

test('a start enlarged is not a start moved', async () => {
  const doubled = season(40, 0.1)
  const { objective, dual } = await solved({
    ...doubled,
    orders: doubled.orders.map(order => ({ ...order, number: 200 })),
  })
  // 100 stay in week 5 with their holding, 100 more are begun in week 8.
  expect(objective).toBeCloseTo(200 + 30, 4)
  // One more held to week 5 costs its holding; one more tree is begun in week 8 and costs 1.
  expect(dual(standing)).toBeCloseTo(0.3, 6)
  expect(dual('ordersByTheirDate/order-0')).toBeCloseTo(1, 6)
})
