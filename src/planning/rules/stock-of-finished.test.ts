import { expect, test } from 'vitest'
import { solved } from '../fixtures/solved.ts'
import { certain, finishedBatch, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'

// Days 28 from the middle of week t: ready in week t + 4, whole and without spread.
const fourWeeks = (share: number) => ({ ...certain(share), days: 28 })

test('one order, one way, fixed survival: the start is the number over the survival, as late as the time allows', async () => {
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('plum', { holdingCostPerWeek: 0.1 })],
    ways: [{ kind: 0, steps: [fourWeeks(0.8), { ...certain(0.5), days: 28 }], costPerPlant: 2 }],
    orders: [{ kind: 0, number: 40, dueWeek: 20, earliestWeek: 20, price: 50 }],
  })
  const { starts, objective, dual } = await solved(season)
  // 40 / (0.8 · 0.5) = 100, eight weeks before week 20; 100 · 2 = 200.
  expect(starts).toHaveLength(1)
  expect(starts[0]).toMatchObject({ way: 0, week: 12 })
  expect(starts[0]!.number).toBeCloseTo(100, 4)
  expect(objective).toBeCloseTo(200, 4)
  // One more tree asks for 2.5 more cuttings of 2 each.
  expect(dual('ordersByTheirDate/order-0')).toBeCloseTo(5, 6)
})

test('where only an early window is open, trees are held until they are wanted and holding is paid', async () => {
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('plum', { holdingCostPerWeek: 0.1 })],
    ways: [{ kind: 0, steps: [fourWeeks(0.5)], openWeeks: [2, 3] }],
    orders: [{ kind: 0, number: 10, dueWeek: 20, earliestWeek: 20, price: 50 }],
  })
  const { starts, objective, dual } = await solved(season)
  // 20 begun in week 3 at 1, ready in week 7, 10 trees held to the end of weeks 7 to 19: 13 weeks at 0.1.
  expect(starts).toMatchObject([{ way: 0, week: 3 }])
  expect(objective).toBeCloseTo(20 + 10 * 13 * 0.1, 4)
  // One more tree: two plants at 1, held for 13 weeks.
  expect(dual('ordersByTheirDate/order-0')).toBeCloseTo(2 + 13 * 0.1, 6)
})

test('a tree past use is not delivered: the order falls short when the only window is too early', async () => {
  const make = (usableWeeks: number) =>
    tinySeason({
      weeks: 30,
      kinds: [tinyKind('plum', { usableWeeks })],
      ways: [{ kind: 0, steps: [fourWeeks(0.5)], openWeeks: [3] }],
      orders: [{ kind: 0, number: 10, dueWeek: 20, earliestWeek: 20, latestWeek: 21, price: 50 }],
    })
  // Ready in week 7, wanted in week 20: 13 weeks later.
  expect((await solved(make(12))).short[0]).toBeCloseTo(10, 6)
  const inTime = await solved(make(13))
  expect(inTime.short[0]).toBeCloseTo(0, 6)
  expect(inTime.objective).toBeCloseTo(20, 4)
})

test('of two ways the cheaper tree wins, not the cheaper cutting', async () => {
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('plum')],
    ways: [
      { kind: 0, steps: [fourWeeks(0.25)], costPerPlant: 1.5 },
      { kind: 0, steps: [fourWeeks(0.8)], costPerPlant: 4 },
    ],
    orders: [{ kind: 0, number: 60, dueWeek: 20, price: 50 }],
  })
  // 1.5 / 0.25 = 6 a tree against 4 / 0.8 = 5 a tree.
  const { starts, objective, dual } = await solved(season)
  expect(starts.every(({ way }) => way === 1)).toBe(true)
  expect(objective).toBeCloseTo(300, 4)
  expect(dual('ordersByTheirDate/order-0')).toBeCloseTo(5, 6)
})

test('buying in fills what making cannot, after its notice and at its price', async () => {
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('plum', { buyIn: { price: 8, weeksNotice: 6, mostPerWeek: 5 } })],
    orders: [{ kind: 0, number: 12, dueWeek: 7, latestWeek: 7, price: 50 }],
  })
  const { bought, short, objective, dual } = await solved(season)
  // Weeks 6 and 7, five each; two trees short at 1.5 · 50.
  expect(bought.map(b => [b.week, Math.round(b.number)])).toEqual([
    [6, 5],
    [7, 5],
  ])
  expect(short[0]).toBeCloseTo(2, 6)
  expect(objective).toBeCloseTo(10 * 8 + 2 * 75, 4)
  expect(dual('ordersByTheirDate/order-0')).toBeCloseTo(75, 6)
})

test('finished trees that stood before this week age out sooner than those made now', async () => {
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('plum', { usableWeeks: 10 })],
    orders: [{ kind: 0, number: 10, dueWeek: 4, earliestWeek: 4, latestWeek: 4, price: 50 }],
    batches: [finishedBatch(10, 7)],
  })
  // 7 of 10 weeks are gone: usable to week 3, wanted in week 4.
  expect((await solved(season)).short[0]).toBeCloseTo(10, 6)
  expect((await solved({ ...season, batches: [finishedBatch(10, 6)] })).short[0]).toBeCloseTo(0, 6)
})

test('nothing goes to an order from a batch on hold', async () => {
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('plum')],
    orders: [{ kind: 0, number: 10, dueWeek: 4, price: 50 }],
    batches: [{ ...finishedBatch(10, 0), onHold: true }],
  })
  expect((await solved(season)).short[0]).toBeCloseTo(10, 6)
})
