import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { weekNumber } from '../science/index.ts'
import { isOpen, monthsAtLatitude, Window, weeksOpen } from './window.ts'

const spring = Window.parse({
  condition: 'bark slips',
  northMonths: [4, 5],
  southMonths: [10, 11],
  basis: 'common practice',
})

describe('a window', () => {
  test('is open on the days of its months, at its own end of the earth', () => {
    expect(isOpen(spring, 'north', '2026-04-01')).toBe(true)
    expect(isOpen(spring, 'north', '2026-03-31')).toBe(false)
    expect(isOpen(spring, 'north', '2026-05-31')).toBe(true)
    expect(isOpen(spring, 'south', '2026-04-01')).toBe(false)
    expect(isOpen(spring, 'south', 10)).toBe(true)
  })

  test('opens with the week whose Thursday lies in it', () => {
    // 2026-04-02 is the Thursday of week 14, 2026-05-28 that of week 22, 2026-06-04 that of week 23.
    const open = weeksOpen(spring, 'north', weekNumber('2026-W13'), 11)
    expect([...open]).toEqual([0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0])
  })

  test('that names no months is always open to the calendar', () => {
    const any = { ...spring, northMonths: [] }
    expect([...weeksOpen(any, 'north', weekNumber('2026-W01'), 53)]).toEqual(Array(53).fill(1))
    expect(isOpen(any, 'north', '2026-12-24')).toBe(true)
  })

  test('has no known months near the equator', () => {
    expect(monthsAtLatitude(spring, 1)).toEqual({ months: [], areKnown: false })
    expect(monthsAtLatitude(spring, 48)).toEqual({ months: [4, 5], areKnown: true })
    expect(monthsAtLatitude(spring, -34)).toEqual({ months: [10, 11], areKnown: true })
  })

  test('is open in a week or not as it is on the Thursday, in any year', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5000 }), week => {
        const [open] = weeksOpen(spring, 'north', week, 1)
        const thursday = new Date(Date.UTC(1970, 0, 1 + 7 * week)).toISOString().slice(0, 10)
        expect(open === 1).toBe(isOpen(spring, 'north', thursday))
      }),
    )
  })
})
