import { expect, test } from 'vitest'
import { everyWeek } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import type { MotherPool } from '../season.ts'
import { startsWithWood } from './wood.ts'

/** Cuttings, one for each plant; a hundred a year, in two years. */
const begun = (pool: Partial<MotherPool>, starts: readonly { week: number; number: number }[]) => {
  const season = tinySeason({
    weeks: 104,
    kinds: [tinyKind('fig')],
    ways: [
      {
        kind: 0,
        steps: [{ ...certain(0.8), days: 42 }],
        course: { material: [{ pool: 0, offset: 0, perPlant: 1 }] },
      },
    ],
    orders: [],
    pools: [
      {
        cultivar: null,
        rootstockKind: null,
        material: 'cuttings',
        name: 'Fig, cuttings',
        mothers: [],
        perWeek: everyWeek(104, 100),
        perYear: [
          { fromWeek: 0, toWeek: 51, most: 100 },
          { fromWeek: 52, toWeek: 103, most: 100 },
        ],
        stored: [],
        keepsWeeks: 0,
        young: null,
        ...pool,
      },
    ],
  })
  return startsWithWood(
    season,
    starts.map(start => ({ way: 0, ...start })),
  ).map(({ number }) => number)
}

test('no more is begun than there is wood for, the earlier first, a year at a time', () => {
  const starts = [
    { week: 9, number: 80 },
    { week: 5, number: 70 },
    { week: 60, number: 1000 },
  ]
  expect(begun({}, starts)).toEqual([30, 70, 100])
})

test('a stored lot serves as long as it is good', () => {
  const stored = [{ number: 40, untilWeek: 6 }]
  expect(begun({ stored }, [{ week: 6, number: 200 }])).toEqual([140])
  expect(begun({ stored }, [{ week: 7, number: 200 }])).toEqual([100])
})

test('where young mothers may be planted, those that stand bound what is begun until these can give', () => {
  const young = { costEach: 20, perSeasonByAge: [0, 25, 60, 100] }
  const starts = [
    { week: 5, number: 1000 },
    { week: 60, number: 1000 },
  ]
  expect(begun({ young }, starts)).toEqual([100, 1000])
})
