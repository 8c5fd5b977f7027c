import { expect, test } from 'vitest'
import { solved } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import type { Season } from '../season.ts'

/** A hundred are wanted in week 12; holding makes the latest week, 8, the cheapest to begin in. */
const season = (more: Partial<Season>, room = 1000) =>
  tinySeason({
    weeks: 30,
    kinds: [tinyKind('fig', { holdingCostPerWeek: 0.1 })],
    ways: [
      {
        kind: 0,
        steps: [{ ...certain(1), days: 28 }],
        openWeeks: [5, 8, 20],
        course: { material: [{ pool: 0, offset: 0, perPlant: 1 }] },
      },
    ],
    orders: [{ kind: 0, number: 100, dueWeek: 12, earliestWeek: 12, price: 20 }],
    pools: [
      {
        cultivar: null,
        rootstockKind: null,
        material: 'cuttings',
        name: 'fig cuttings',
        mothers: [],
        perWeek: new Float64Array(30).fill(room),
        perYear: [{ fromWeek: 0, toWeek: 29, most: 1e6 }],
        stored: [],
        keepsWeeks: 0,
        young: null,
      },
    ],
    more,
  })
const begun = ({ starts }: Awaited<ReturnType<typeof solved>>) =>
  starts.map(({ week, number }) => [week, Math.round(number * 1000) / 1000])

test('a start that was set is begun in its week with its number, dearer or not, and the rest where it is cheapest', async () => {
  expect(begun(await solved(season({})))).toEqual([[8, 100]])
  expect(begun(await solved(season({ set: [{ way: 0, week: 5, number: 30 }] })))).toEqual([
    [5, 30],
    [8, 70],
  ])
})

test('it is no more than was set: what lacks is begun in other weeks, or not at all', async () => {
  expect(begun(await solved(season({ set: [{ way: 0, week: 8, number: 60 }] })))).toEqual([
    [5, 40],
    [8, 60],
  ])
})

test('it is begun though too late for any order, as long as the kind is wanted', async () => {
  expect(begun(await solved(season({ set: [{ way: 0, week: 20, number: 7 }] })))).toEqual([
    [8, 100],
    [20, 7],
  ])
})

test('where the wood does not reach, as many are begun as it gives', async () => {
  expect(begun(await solved(season({ set: [{ way: 0, week: 5, number: 80 }] }, 50)))).toEqual([
    [5, 50],
    [8, 50],
  ])
})
