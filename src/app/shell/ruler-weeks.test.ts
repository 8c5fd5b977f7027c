import { expect, test } from 'vitest'
import type { PlanHead } from '../../api/index.ts'
import { rulerWeeks } from './ruler-weeks.ts'

test('ticks are as long as a week is busy, the busiest the longest; over hours is said', () => {
  const plan = {
    firstWeek: '2026-W48',
    hands: [
      { hours: 10, isOver: false },
      { hours: 40, isOver: true },
      { hours: 25, isOver: false },
    ],
  } as unknown as PlanHead
  const weeks = rulerWeeks('2026-W48', plan)
  expect(weeks).toHaveLength(52)
  expect(weeks.slice(0, 3).map(({ share, isOver }) => [share, isOver])).toEqual([
    [0.25, false],
    [1, true],
    [0.625, false],
  ])
})

test('a plan made weeks ago is read from this week on; without a plan every tick is short', () => {
  const plan = {
    firstWeek: '2026-W47',
    hands: [99, 10].map(hours => ({ hours, isOver: false })),
  } as unknown as PlanHead
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
