import { describe, expect, test } from 'vitest'
import { layOutStrip, monthMarks, windowRuns } from './strip-layout.ts'

describe('the weeks of a window', () => {
  test('a week belongs to the month of its Thursday', () => {
    // 2026-W14 is 30 March to 5 April, its Thursday 2 April.
    expect(windowRuns('2026-W13', 3, [4])).toEqual([{ from: 1, to: 3 }])
  })

  test('a window over the new year is one run, two separate ones are two', () => {
    expect(windowRuns('2026-W49', 10, [12, 1])).toEqual([{ from: 0, to: 9 }])
    expect(windowRuns('2026-W01', 52, [3, 9])).toHaveLength(2)
    expect(windowRuns('2026-W01', 52, [])).toEqual([])
  })
})

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
