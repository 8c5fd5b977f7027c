import { expect, test } from 'vitest'
import type { ShownPlan } from '../../api/index.ts'
import { rulerWeeks } from './ruler-weeks.ts'

const skill = (expected: number[], capacity: number[]) => ({ what: 'skill', expected, capacity })

test('ticks are as long as a week is busy, the busiest the longest; over hours is said', () => {
  const plan = {
    firstWeek: '2026-W48',
    loads: [skill([10, 30, 20], [40, 40, 40]), skill([0, 10, 5], [8, 8, 8])],
  } as unknown as ShownPlan
  const weeks = rulerWeeks('2026-W48', plan)
  expect(weeks).toHaveLength(52)
  expect(weeks.slice(0, 3).map(({ share, isOver }) => [share, isOver])).toEqual([
    [0.25, false],
    [1, true],
    [0.625, false],
  ])
})

test('a plan made weeks ago is read from this week on; without a plan every tick is short', () => {
  const plan = { firstWeek: '2026-W47', loads: [skill([99, 10], [40, 40])] } as unknown as ShownPlan
  expect(rulerWeeks('2026-W48', plan)[0]).toMatchObject({ share: 1, isOver: false })
  expect(rulerWeeks('2026-W48', null).every(({ share }) => share === 0)).toBe(true)
})

test('the week in which a month begins is marked', () => {
  expect(
    rulerWeeks('2026-W48', null)
      .slice(0, 3)
      .map(({ opensMonth }) => opensMonth),
  ).toEqual([false, true, false])
})
