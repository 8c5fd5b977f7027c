import { expect, test } from 'vitest'
import { solved } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'

test('a protected cultivar: no more are begun in a year than the licence allows, over all kinds and ways', async () => {
  const steps = [{ ...certain(0.5), days: 28 }]
  const season = tinySeason({
    weeks: 80,
    kinds: [tinyKind('small'), tinyKind('large')],
    ways: [
      { kind: 0, steps, openWeeks: [5, 60] },
      { kind: 1, steps, openWeeks: [5] },
    ],
    orders: [
      { kind: 0, number: 50, dueWeek: 20, price: 10 },
      { kind: 1, number: 50, dueWeek: 20, price: 40 },
      { kind: 0, number: 50, dueWeek: 70, price: 10 },
    ],
    more: {
      licences: [
        {
          name: 'Anna',
          kinds: [0, 1],
          perYear: [
            { fromWeek: 0, toWeek: 40, most: 140 },
            { fromWeek: 41, toWeek: 79, most: 140 },
          ],
        },
      ],
    },
  })
  const { short, objective, dual } = await solved(season)
  // 140 begun this year make 70 trees: all 50 large, 20 small; next year is another licence.
  expect([...short].map(Math.round)).toEqual([30, 0, 0])
  // 140 and 100 begun at 1, and 30 short at 1.5 · 10.
  expect(objective).toBeCloseTo(240 + 30 * 15, 4)
  // One more begun saves half a small tree at 15, less its cost of 1.
  expect(dual('licence/Anna/0')).toBeCloseTo(-6.5, 5)
  expect(dual('licence/Anna/41')).toBeCloseTo(0, 6)
})
