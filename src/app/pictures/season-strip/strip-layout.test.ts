import { expect, test } from 'vitest'
import { layOutStrip, monthMarks } from './strip-layout.ts'

test('a month is marked at the week in which its first day falls', () => {
  expect(monthMarks('2026-W18', 6).map(({ index, month }) => [index, month])).toEqual([
    [0, 4],
    [5, 5],
  ])
})

test('a disc is as large in area as its number, and stands in the middle of its week', () => {
  const start = (id: string, week: string, number: number) => ({ id, week, number })
  const row = {
    id: 'fig',
    months: [3],
    starts: [start('a', '2026-W11', 400), start('b', '2026-W12', 100), start('past', '2026-W01', 9)],
  }
  const { rows, x, weekAt } = layOutStrip([row], '2026-W10', 20, 1200)
  const [a, b] = rows[0]!.starts
  expect(rows[0]!.starts).toHaveLength(2)
  expect(a!.x).toBe(x(1.5))
  expect(a!.r / b!.r).toBeCloseTo(2)
  // A disc that is dropped lands in the week under it, and never beside the span.
  expect([weekAt(a!.x), weekAt(x(7.9)), weekAt(-50), weekAt(5000)]).toEqual([1, 7, 0, 19])
})
