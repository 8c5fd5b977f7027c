import { describe, expect, test } from 'vitest'
import { createFormat, dayAfter, daysBetween, mondayOf, weekAfter, weekOf, weeksBetween } from './format.ts'

describe('days and weeks as text', () => {
  // ISO 8601-1:2019: week 1 holds the first Thursday; 2026 has 53 weeks.
  test('a week belongs to the year of its Thursday', () => {
    expect(weekOf('2027-01-03')).toBe('2026-W53')
    expect(weekOf('2026-01-01')).toBe('2026-W01')
    expect(mondayOf('2026-W19')).toBe('2026-05-04')
    expect(mondayOf('2026-W01')).toBe('2025-12-29')
  })

  test('weeks and days are added across the end of a year', () => {
    expect(weekAfter('2026-W52', 2)).toBe('2027-W01')
    expect(weeksBetween('2026-W50', '2027-W02')).toBe(5)
    expect(dayAfter('2026-12-30', 3)).toBe('2027-01-02')
    expect(daysBetween('2026-03-27', '2026-03-30')).toBe(3)
  })
})

describe('as the reader writes it', () => {
  test('decimals, thousands and per cent follow the locale', () => {
    const german = createFormat('de-DE', 'metric')
    expect(german.number(12_345)).toBe('12.345')
    expect(german.area(3.14)).toBe('3,1 m²')
    expect(createFormat('en-GB', 'metric').share(0.92)).toBe('92%')
  })

  test('a chance of 1,999 seasons of 2,000 is not told as certain, nor one of 1 as none', () => {
    const { chance } = createFormat('en-GB', 'metric')
    expect([0, 1 / 2000, 0.824, 1999 / 2000, 1].map(chance)).toEqual(['0%', '1%', '82%', '99%', '100%'])
  })

  test('weeks are numbers where ISO weeks are used and dates where they are not', () => {
    expect(createFormat('de-DE', 'metric').week('2026-W12')).toBe('12')
    expect(createFormat('en-US', 'us').week('2026-W12')).toBe('Mar 16')
  })

  test('10 square metres are 107.6 square feet (1 ft = 0.3048 m)', () => {
    expect(createFormat('en-US', 'us').areaNumber(10)).toBeCloseTo(107.639, 3)
    expect(createFormat('en-US', 'us').length(8)).toBe('26.2 ft')
  })

  test('months are said in runs, over the turn of the year too', () => {
    const format = createFormat('en-GB', 'metric')
    expect(format.months([7, 8, 2, 3])).toBe('Feb\u2009–\u2009Mar and Jul\u2009–\u2009Aug')
    expect(format.months([11, 12, 1, 5])).toBe('May and Nov\u2009–\u2009Jan')
  })

  test('working time is rounded to what a person would say', () => {
    const format = createFormat('en-GB', 'metric')
    expect(format.hours(7)).toBe('5 min')
    expect(format.hours(131)).toBe('2 h 15')
    expect(format.hours(120)).toBe('2 h')
    expect(format.hours(1)).toBe('5 min')
  })
})
