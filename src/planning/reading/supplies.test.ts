import { expect, test } from 'vitest'
import { kind, MONDAY, mother, order, smallNursery } from '../fixtures/small-nursery.ts'
import { solved } from '../fixtures/solved.ts'
import { readSeason } from './read-season.ts'

/** Quinces from cuttings in March, April and May, of one mother who gives some in March and some in May. */
const quince = (march: object, may: object) =>
  smallNursery(
    kind('quince', { ways: [{ protocol: 'cutting' }] }),
    mother('quince tree', 'quince', [
      { material: 'cuttings', months: [3], ...march },
      { material: 'cuttings', months: [5], ...may },
    ]),
    order('early', 'quince', 300, '2026-08-16'),
    order('late', 'quince', 300, '2026-12-20'),
  )

/** What is begun in each calendar month of this year, by the Thursday of its week. */
const begunByMonth = async (nursery: ReturnType<typeof quince>) => {
  const season = readSeason(nursery, MONDAY)
  const { starts } = await solved(season)
  const byMonth = new Map<number, number>()
  // Week 0 has Thursday 8 January.
  const monthOf = (week: number) => new Date(Date.UTC(2026, 0, 8 + 7 * week)).getUTCMonth() + 1
  for (const { week, number } of starts)
    if (number > 1e-6) byMonth.set(monthOf(week), (byMonth.get(monthOf(week)) ?? 0) + number)
  return [...byMonth].sort(([a], [b]) => a - b).map(([month, number]) => [month, Math.round(number)])
}

test('two supplies of one material give each in its own months, and no more than its own number', async () => {
  // 126 days from cutting to tree: of what is cut in May nothing is ready by mid-August. 0.72 of 60 and of 200 stay short.
  expect(await begunByMonth(quince({ perYear: 60 }, { perYear: 200 }))).toEqual([
    [3, 60],
    [5, 200],
  ])
  // At most ten a week: four weeks of March have their Thursday in it.
  expect(await begunByMonth(quince({ perYear: 60, perWeek: 10 }, { perYear: 30 }))).toEqual([
    [3, 40],
    [5, 30],
  ])
})

test('what a mother gave of one supply is not taken from the other', () => {
  const taken = {
    on: '2026-03-10',
    body: {
      kind: 'material-collected/1',
      mother: 'quince tree',
      material: 'cuttings',
      number: 45,
      lot: 'Q1',
      stored: '',
      goodUntil: '2026-03-11',
    },
  } as never
  const nursery = smallNursery(
    kind('quince', { ways: [{ protocol: 'cutting' }] }),
    mother('quince tree', 'quince', [
      { material: 'cuttings', months: [3], perYear: 60 },
      { material: 'cuttings', months: [5], perYear: 200 },
    ]),
    taken,
  )
  const pool = readSeason(nursery, '2026-03-16').pools.find(({ name }) => name.startsWith('quince'))!
  const bySpan = pool.perYear.map(({ fromWeek, most }) => [fromWeek, most] as const).sort(([a], [b]) => a - b)
  // From 16 March on: what is left of this March, this May (its first Thursday is in week 7), March and May of next year.
  expect(bySpan.slice(0, 4).map(([, most]) => most)).toEqual([15, 200, 60, 200])
  expect(bySpan.slice(0, 2).map(([fromWeek]) => fromWeek)).toEqual([0, 7])
})
