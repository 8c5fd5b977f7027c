import { describe, expect, test } from 'vitest'
import { everyWeek } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import type { MotherPool, Season } from '../season.ts'
import { startsWithWood } from './wood.ts'

/** Cuttings, one for each plant; a hundred a year, in two years. */
const begun = (
  pool: Partial<MotherPool>,
  starts: readonly { week: number; number: number }[],
  planted?: Season['planted'],
) => {
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
    ...(planted && { more: { planted } }),
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

describe('young mothers that the plan plants give what they give at their age', () => {
  const young = { costEach: 20, perSeasonByAge: [10, 25, 60] }
  const starts = [
    { week: 5, number: 1000 },
    { week: 60, number: 1000 },
  ]
  const tree = (week: number, number: number) => ({ pool: 0, week, number })

  test('nothing in a season that begins before they have stood a year, then more each year', () => {
    // The second season begins in week 52: a year after those of week 0, and not a year after those of week 1.
    expect(begun({ young }, starts, [])).toEqual([100, 100])
    expect(begun({ young }, starts, [tree(0, 3)])).toEqual([100, 100 + 3 * 25])
    expect(begun({ young }, starts, [tree(1, 3)])).toEqual([100, 100 + 3 * 10])
    expect(begun({ young }, starts, [{ ...tree(0, 3), pool: 1 }])).toEqual([100, 100])
  })

  test('in the weeks of those that stand, and in their proportion where a week has its own most', () => {
    // Of 100 in a year, 20 a week: three young ones with 75 more add 15 to each week.
    const perWeek = everyWeek(104, week => (week % 52 < 20 ? 20 : 0))
    const week60 = [{ week: 60, number: 1000 }]
    expect(begun({ young, perWeek }, week60, [tree(0, 3)])).toEqual([35])
    expect(begun({ young, perWeek }, [{ week: 80, number: 1000 }], [tree(0, 3)])).toEqual([0])
  })
})
