import fc from 'fast-check'
import { Temporal } from 'temporal-polyfill'
import { describe, expect, test } from 'vitest'
import { dateOf, dayNumber, dayOfYear, daysInMonth, dayText, isDay } from './day-number.ts'
import { isoWeek, weekNumber, weekOfDay, weekStart, weekText } from './week.ts'

const anyDay = fc.integer({ min: dayNumber('1600-01-01'), max: dayNumber('2500-12-31') })

describe('days', () => {
  test('every day from 1890 to 2110 agrees with a reference calendar in text, weekday, day and week of the year', () => {
    let day = Temporal.PlainDate.from('1890-01-01')
    const last = dayNumber('2110-12-31')
    for (let number = dayNumber('1890-01-01'); number <= last; number += 1) {
      const text = dayText(number)
      if (text !== day.toString()) throw new Error(`${text} is not ${day.toString()}`)
      const { year, week, weekday } = isoWeek(number)
      if (week !== day.weekOfYear || year !== day.yearOfWeek || weekday !== day.dayOfWeek)
        throw new Error(`${text} is not in week ${year}-${week}-${weekday}`)
      if (dayOfYear(number) !== day.dayOfYear) throw new Error(`${text} is not day ${dayOfYear(number)}`)
      day = day.add({ days: 1 })
    }
  })

  test('text and number are each other’s inverse', () => {
    fc.assert(fc.property(anyDay, day => dayNumber(dayText(day)) === day))
    expect(dayText(0)).toBe('1970-01-01')
    expect(dayNumber('2026-05-04')).toBe(20577)
    expect([dayText(dayNumber('0000-01-01')), dayText(dayNumber('9999-12-31'))]).toEqual([
      '0000-01-01',
      '9999-12-31',
    ])
  })

  test('a month has its days, 29 in a leap February', () => {
    expect([2023, 2024, 1900, 2000].map(year => daysInMonth(year, 2))).toEqual([28, 29, 28, 29])
    expect(dateOf(dayNumber('2024-02-29'))).toEqual({ year: 2024, month: 2, date: 29 })
  })

  test.each([
    '2026-02-29',
    '2026-13-01',
    '2026-00-10',
    '2026-04-31',
    '26-04-01',
    '2026-4-1',
    '',
    '2026-04-01T00:00',
  ])('"%s" is not a day', text => {
    expect(isDay(text)).toBe(false)
    expect(() => dayNumber(text)).toThrow(/dayNumber: day must be a day of the calendar/)
  })

  test('what is a day is a day for both', () => {
    fc.assert(fc.property(anyDay, day => isDay(dayText(day))))
  })
})

describe('weeks', () => {
  test('are counted through from the Monday of 1969-12-29', () => {
    expect(weekOfDay(dayNumber('1969-12-29'))).toBe(0)
    expect(weekOfDay(dayNumber('1970-01-04'))).toBe(0)
    expect(weekOfDay(dayNumber('1969-12-28'))).toBe(-1)
    expect(weekText(0)).toBe('1970-W01')
  })

  test('begin on Monday and hold seven days', () => {
    fc.assert(
      fc.property(anyDay, day => {
        const start = weekStart(weekOfDay(day))
        expect(isoWeek(start).weekday).toBe(1)
        expect(day - start).toBeGreaterThanOrEqual(0)
        expect(day - start).toBeLessThan(7)
      }),
    )
  })

  test('text and number are each other’s inverse', () => {
    fc.assert(
      fc.property(anyDay, day => {
        const week = weekOfDay(day)
        expect(weekNumber(weekText(week))).toBe(week)
      }),
    )
  })

  test('a 53rd week in a year of 52 is refused', () => {
    expect(weekNumber('2026-W53') - weekNumber('2026-W01')).toBe(52)
    expect(() => weekNumber('2025-W53')).toThrow(
      'weekNumber: text must be a week such as 2026-W19, got 2025-W53',
    )
  })
})
