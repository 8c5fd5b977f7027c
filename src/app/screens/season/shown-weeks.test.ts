import { expect, test } from 'vitest'
import { loadInWeeks, shownWeeks } from './shown-weeks.ts'

test('loads show the weeks of the strip: week by week what the plan says of it, and nothing before or after the plan', () => {
  const plan = { firstWeek: '2026-W50', weeks: 6 }
  const load = { expected: [1, 2, 3, 4, 5, 6], badYear: [2, 3, 4, 5, 6, 7], capacity: [9, 9, 8, 8, 7, 7] }
  expect(shownWeeks(plan, undefined, '104')).toEqual({ first: '2026-W50', weeks: 6 })
  expect(shownWeeks(plan, '2027-W01', '13')).toEqual({ first: '2027-W01', weeks: 13 })
  // 2026 has a week 53: the first week of 2027 is the fifth from week 50 on (ISO 8601).
  expect(loadInWeeks(load, plan.firstWeek, { first: '2027-W01', weeks: 3 })).toEqual({
    expected: [5, 6, 0],
    badYear: [6, 7, 0],
    capacity: [7, 7, 0],
  })
})
