import { describe, expect, test } from 'vitest'
import { windowNow, windowRuns, windowSpans } from './window-weeks.ts'

describe('the weeks of a window', () => {
  test('a week belongs to the month of its Thursday', () => {
    // 2026-W14 is 30 March to 5 April, its Thursday 2 April.
    expect(windowRuns('2026-W13', 3, [4])).toEqual([{ from: 1, to: 3 }])
  })

  test('a window over the new year is one run, two separate ones are two', () => {
    expect(windowRuns('2026-W49', 10, [12, 1])).toEqual([{ from: 0, to: 9 }])
    expect(windowRuns('2026-W01', 52, [3, 9])).toHaveLength(2)
  })

  test('a window without months leaves every week to its condition', () => {
    expect(windowRuns('2026-W01', 52, [])).toEqual([{ from: 0, to: 52 }])
  })
})

/** By a calendar of 2026: Thursdays on 26 November, 3 December, 31 December; 1 January 2027 is a Friday. */
describe('a window in the week of today', () => {
  test('a week whose Thursday is in the next month is open from its Monday, though that day is of the month before', () => {
    // Monday 30 November, Thursday 3 December.
    expect(windowNow([12], '2026-11-30')).toMatchObject({ isOpen: true })
    expect(windowNow([11], '2026-11-30')).toMatchObject({ isOpen: false })
    expect(windowNow([12], '2026-11-29')).toEqual({ isOpen: false, opens: '2026-11-30', weeks: 1 })
  })

  test('the last week is that of the last Thursday: December ends on Sunday 3 January', () => {
    expect(windowNow([12], '2026-12-02')).toEqual({ isOpen: true, closes: '2027-01-03', weeks: 4 })
    expect(windowNow([12], '2027-01-01')).toEqual({ isOpen: true, closes: '2027-01-03', weeks: 0 })
  })

  test('twelve months never close, and no months leave it to the condition', () => {
    const whole = { isOpen: true, closes: null }
    expect(windowNow([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], '2026-11-25')).toEqual(whole)
    expect(windowNow([], '2026-11-25')).toEqual(whole)
  })
})

describe('the weeks of a window in a year', () => {
  test('from the Monday of the first to the Sunday of the last week', () => {
    // March: Thursdays on 5 and 26 March.
    expect(windowSpans([3], '2026-11-25')).toEqual([{ from: '2026-03-02', to: '2026-03-29' }])
  })

  test('a run over the new year is whole, told once', () => {
    // December, January: Thursdays on 3 December 2026 and 28 January 2027.
    expect(windowSpans([1, 12], '2026-11-25')).toEqual([{ from: '2026-11-30', to: '2027-01-31' }])
  })

  test('the whole year is its weeks, of which 2026 has 53', () => {
    expect(windowSpans([], '2026-11-25')).toEqual([{ from: '2025-12-29', to: '2027-01-03' }])
  })
})
