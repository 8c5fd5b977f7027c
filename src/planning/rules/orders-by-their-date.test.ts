import { expect, test } from 'vitest'
import { solved } from '../fixtures/solved.ts'
import { certain, finishedBatch, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { costOfLate } from './orders-by-their-date.ts'

const steps = [{ ...certain(1), days: 28 }]

test('late costs a share of the price once and again by the week; later than the latest week is short', async () => {
  const late = (openWeek: number) =>
    solved(
      tinySeason({
        weeks: 40,
        kinds: [tinyKind('fig')],
        ways: [{ kind: 0, steps, openWeeks: [openWeek] }],
        orders: [{ kind: 0, number: 10, dueWeek: 12, latestWeek: 15, price: 20 }],
      }),
    )
  // Begun in week 8, ready in week 12: one more tree costs what it takes to begin it.
  const inTime = await late(8)
  expect(inTime.objective).toBeCloseTo(10, 4)
  expect(inTime.dual('ordersByTheirDate/order-0')).toBeCloseTo(1, 6)
  // Three weeks late: 20 · (0.1 + 3 · 0.05) = 5 a tree, and one more costs 6.
  const threeLate = await late(11)
  expect(threeLate.objective).toBeCloseTo(10 + 50, 4)
  expect(threeLate.dual('ordersByTheirDate/order-0')).toBeCloseTo(6, 6)
  // Never delivered, a tree loses 1.5 · 20.
  const tooLate = await late(12)
  expect(tooLate.short[0]).toBeCloseTo(10, 4)
  expect(tooLate.objective).toBeCloseTo(300, 4)
  expect(tooLate.dual('ordersByTheirDate/order-0')).toBeCloseTo(30, 6)
})

test('costOfLate is nothing until the due week', () => {
  const season = tinySeason({
    kinds: [tinyKind('fig')],
    orders: [{ kind: 0, number: 1, dueWeek: 5, price: 10 }],
  })
  const late = (week: number) => costOfLate(season.orders[0]!, season.prices, 5, week)
  expect([late(4), late(5)]).toEqual([0, 0])
  expect(late(6)).toBeCloseTo(1.5, 9)
  expect(late(7)).toBeCloseTo(2, 9)
})

test('of two orders for the same few trees the dearer is filled, and one more tree is worth the other', async () => {
  const { short, objective, dual } = await solved(
    tinySeason({
      weeks: 20,
      kinds: [tinyKind('fig')],
      batches: [finishedBatch(30, 0)],
      orders: [
        { kind: 0, number: 20, dueWeek: 8, price: 10 },
        { kind: 0, number: 20, dueWeek: 8, price: 30 },
      ],
    }),
  )
  expect([...short].map(Math.round)).toEqual([10, 0])
  expect(objective).toBeCloseTo(10 * 15, 4)
  // One more for the dear one is taken from the cheap one, which loses 15.
  expect(dual('ordersByTheirDate/order-0')).toBeCloseTo(15, 5)
  expect(dual('ordersByTheirDate/order-1')).toBeCloseTo(15, 5)
})

test('an accepted kind stands in when the one asked for lacks, at what the buyer values it less', async () => {
  const { deliveries, objective, dual } = await solved(
    tinySeason({
      weeks: 20,
      kinds: [tinyKind('fig in 3 l'), tinyKind('fig in 5 l')],
      batches: [finishedBatch(15, 0), finishedBatch(40, 0, { kind: 1 })],
      orders: [
        {
          kind: 0,
          number: 20,
          dueWeek: 8,
          kinds: [
            { kind: 0, lessWorth: 0 },
            { kind: 1, lessWorth: 2 },
          ],
        },
      ],
    }),
  )
  const given = (kind: number) =>
    deliveries.filter(d => d.kind === kind).reduce((sum, d) => sum + d.number, 0)
  expect(given(0)).toBeCloseTo(15, 4)
  expect(given(1)).toBeCloseTo(5, 4)
  expect(objective).toBeCloseTo(10, 4)
  // One more tree wanted is one more of the kind that is worth 2 less; one more of the kind asked for would save that.
  expect(dual('ordersByTheirDate/order-0')).toBeCloseTo(2, 6)
  expect(dual('stockOfFinished/fig in 3 l/0')).toBeCloseTo(-2, 6)
  expect(dual('stockOfFinished/fig in 5 l/0')).toBeCloseTo(0, 6)
})
