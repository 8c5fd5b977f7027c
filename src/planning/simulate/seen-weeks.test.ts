import fc from 'fast-check'
import { expect, test } from 'vitest'
import { tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { nextOf, seenWeeks, takingWeeks } from './seen-weeks.ts'
import { simulateSeasons } from './simulate-seasons.ts'

test('an order takes from its earliest week to its latest, a graft in its own', () => {
  const dates = { earliestWeek: 3, dueWeek: 4, latestWeek: 6 }
  expect([...takingWeeks(10, [dates], [8, 12])]).toEqual([0, 0, 0, 1, 1, 1, 1, 0, 1, 0])
  expect([...takingWeeks(4, [{ earliestWeek: -9, dueWeek: -2, latestWeek: 1 }], [])]).toEqual([1, 1, 0, 0])
})

test('what was ready so long before that it is past use is told from what is still of use', () => {
  // Taken in week 8 and of use for three weeks: what was ready by week 4 is gone by then, week 5 is the last chance.
  const seen = seenWeeks(takingWeeks(10, [], [8]), 3)
  expect([...seen]).toEqual([0, 0, 0, 0, 1, 1, 0, 0, 1, 0])
  expect([...nextOf(seen)]).toEqual([4, 4, 4, 4, 4, 5, 8, 8, 8, 10, 10])
})

test('what orders get is the same whether every week is looked at or only those in which someone takes', () => {
  const week = fc.integer({ min: 12, max: 50 })
  const order = fc.record({
    kind: fc.constantFrom(1, 2),
    number: fc.integer({ min: 1, max: 150 }),
    dueWeek: week,
    early: fc.integer({ min: 0, max: 12 }),
    late: fc.integer({ min: 0, max: 8 }),
    takesOther: fc.boolean(),
  })
  const start = fc.record({ way: fc.constantFrom(0, 1, 2), week: fc.integer({ min: 0, max: 40 }) })
  const usable = fc.integer({ min: 2, max: 20 })
  const steps = [{ alpha: 12, beta: 4, days: 60, sdLogDays: 0.2, plantSdLogDays: 0.3 }]
  fc.assert(
    fc.property(
      fc.array(order, { minLength: 1, maxLength: 4 }),
      fc.array(start, { minLength: 1, maxLength: 6 }),
      fc.tuple(usable, usable, usable),
      (orders, starts, [ofStock, ofWorked, ofOwn]) => {
        const season = tinySeason({
          weeks: 60,
          kinds: [
            tinyKind('rootstock', { isRootstock: true, usableWeeks: ofStock }),
            tinyKind('worked fig', { usableWeeks: ofWorked }),
            tinyKind('own-rooted fig', { usableWeeks: ofOwn }),
          ],
          ways: [
            { kind: 0, steps },
            {
              kind: 1,
              steps,
              course: { rootstock: { kinds: [0], offset: 0, perPlant: 1, minMm: 0, maxMm: 99 } },
            },
            { kind: 2, steps },
          ],
          orders: orders.map(({ kind, number, dueWeek, early, late, takesOther }) => ({
            kind,
            number,
            dueWeek,
            earliestWeek: dueWeek - early,
            latestWeek: dueWeek + late,
            kinds: [kind, ...(takesOther ? [3 - kind] : [])].map(each => ({ kind: each, lessWorth: 0 })),
          })),
        })
        const begun = starts.map(each => ({ ...each, number: 120 }))
        const input = { from: 0, to: 15, seed: 4 }
        const everyWeek = simulateSeasons(season, begun, { ...input, ledger: () => {} })
        expect(simulateSeasons(season, begun, input)).toEqual(everyWeek)
      },
    ),
    { numRuns: 40 },
  )
})
