import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dayText } from '../../science/index.ts'
import { dayOrderOf, readDay } from './day.ts'
import { readMeasure } from './measure.ts'
import { decimalMarkOf, readNumber, readWhole } from './number.ts'
import { readShare } from './share.ts'
import { readText } from './text.ts'

const today = '2026-11-24'
const value = (reading: { kind: string; value?: unknown }) =>
  reading.kind === 'value' ? reading.value : reading.kind

describe('numbers', () => {
  test.each([
    ['1.234,5', 'comma', 1234.5],
    ['1,234.5', 'point', 1234.5],
    ['1 234,5', 'comma', 1234.5],
    ['1\u00a0234,5', 'comma', 1234.5],
    ["1'234.50", 'point', 1234.5],
    ['12,34,567.8', 'point', 1234567.8],
    ['0,125', 'comma', 0.125],
    ['12.5', 'comma', 12.5],
    ['−3,5 °C', 'comma', -3.5],
    ['ca. 40 m²', 'point', 40],
    ['€ 12,50', 'comma', 12.5],
    ['(12)', 'point', -12],
  ] as const)('%s with decimal %s is %d', (text, mark, expected) => {
    expect(value(readNumber(text, mark))).toBeCloseTo(expected, 9)
  })

  test('a mark before three digits is the column’s decimal mark, or parts thousands', () => {
    expect(value(readNumber('1,250', 'comma'))).toBe(1.25)
    expect(value(readNumber('1,250', 'point'))).toBe(1250)
  })

  test('plants come whole: a mark before three digits parts thousands in any column', () => {
    expect(value(readWhole('1.250', 'point'))).toBe(1250)
    expect(value(readWhole('1,250', 'comma'))).toBe(1250)
    expect(value(readWhole('1.250,00', 'comma'))).toBe(1250)
    expect(value(readWhole('120 Stk.', 'comma'))).toBe(120)
    expect(value(readWhole('120,5', 'comma'))).toBe('wrong')
  })

  test('two numbers, words and failed formulas are no number; blanks are none at all', () => {
    for (const text of ['100-120', '100 bis 120', 'many', '#REF!', '1.2.3,4,5'])
      expect(readNumber(text, 'comma').kind, text).toBe('wrong')
    for (const text of ['', ' ', 'NA', 'n/a', '-', null, undefined])
      expect(readNumber(text, 'comma').kind).toBe('blank')
  })

  test('the decimal mark of a column is told by the cells that leave no doubt', () => {
    expect(decimalMarkOf(['1.250', '3,5'])).toBe('comma')
    expect(decimalMarkOf(['1,250', '3.5'])).toBe('point')
    expect(decimalMarkOf(['1.250.000'])).toBe('comma')
    expect(decimalMarkOf(['1,250', '12'])).toBeNull()
  })
})

describe('days', () => {
  test.each([
    ['2027-03-01', '2027-03-01'],
    ['2027-03-01T00:00:00Z', '2027-03-01'],
    ['2027/3/1', '2027-03-01'],
    ['20270301', '2027-03-01'],
    ['1.3.27', '2027-03-01'],
    ['01.03.2027 07:40', '2027-03-01'],
    ['1 March 2027', '2027-03-01'],
    ['March 1st, 2027', '2027-03-01'],
    ['01-MAR-27', '2027-03-01'],
    ['1. März 2027', '2027-03-01'],
    ['1er mars 2027', '2027-03-01'],
    ['1 de marzo de 2027', '2027-03-01'],
    ['Mon 1 Mar 2027', '2027-03-01'],
    ['Mo, 1.3.2027', '2027-03-01'],
    [46_447, '2027-03-01'],
    ['46447', '2027-03-01'],
    ['25/12/2026', '2026-12-25'],
    ['12/25/2026', '2026-12-25'],
    ['3.5.98', '1998-05-03'],
  ])('%s is %s, whatever the order', (cell, expected) => {
    expect(value(readDay(cell, null, today))).toBe(expected)
  })

  test('a whole week, month or year is its first day, and that is noted', () => {
    for (const [text, expected] of [
      ['2027-W10', '2027-03-08'],
      ['KW 10/2027', '2027-03-08'],
      ['March 2027', '2027-03-01'],
      ['3/2027', '2027-03-01'],
      ['2009', '2009-01-01'],
    ] as const) {
      const reading = readDay(text, null, today)
      expect(value(reading), text).toBe(expected)
      expect(reading, text).toHaveProperty('noted')
    }
  })

  test('a day that is not in the calendar is wrong, and so is one whose order is not known', () => {
    for (const text of ['31.2.2027', '2027-02-29', '0.5.2027', 'soon', '3/4/2027', '12'])
      expect(readDay(text, null, today).kind, text).toBe('wrong')
  })

  test('the order of a column is told by the cells that leave no doubt', () => {
    expect(dayOrderOf(['3/4/27', '25/4/27'])).toBe('day first')
    expect(dayOrderOf(['3/4/27', '4/25/27'])).toBe('month first')
    expect(dayOrderOf(['3/4/27', '5/6/27'])).toBe('unclear')
    expect(dayOrderOf(['25/4/27', '4/25/27'])).toBe('mixed')
    expect(dayOrderOf(['3/3/27', '2027-04-25', '3.4.27'])).toBeNull()
  })

  test('any day written in any way reads back as itself', () => {
    const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']
    fc.assert(
      fc.property(fc.integer({ min: 14_610, max: 29_219 }), number => {
        const day = dayText(number)
        const [year, month, date] = day.split('-') as [string, string, string]
        const [m, d] = [Number(month), Number(date)]
        for (const text of [
          day,
          `${d}.${m}.${year}`,
          `${date}.${month}.${year.slice(2)}`,
          `${d} ${months[m - 1]} ${year}`,
          `${months[m - 1]} ${d}, ${year}`,
          `${d}-${months[m - 1]}-${year.slice(2)}`,
          `${year}${month}${date}`,
          String(number + 25_569),
        ])
          expect(value(readDay(text, null, today)), text).toBe(day)
        for (const mark of ['/', '-', ' ']) {
          expect(value(readDay(`${d}${mark}${m}${mark}${year}`, 'day first', today))).toBe(day)
          expect(value(readDay(`${m}${mark}${d}${mark}${year}`, 'month first', today))).toBe(day)
        }
      }),
    )
  })
})

test('a share is said as 0.9, 0,9, 90 or 90 %, and nothing above a hundred', () => {
  for (const [cell, mark] of [
    ['90%', 'point'],
    ['90 %', 'comma'],
    ['0.9', 'point'],
    ['0,9', 'comma'],
    [0.9, 'comma'],
    [90, 'point'],
  ] as const)
    expect(value(readShare(cell, mark))).toBeCloseTo(0.9, 12)
  expect(readShare('140', 'point').kind).toBe('wrong')
})

test('a measure is in the unit that the cell or its header names', () => {
  // Exact by definition: NIST Special Publication 811 (2008), appendix B.
  expect(value(readMeasure('1,076.39', 'squareMetres', 'Area (sq ft)', 'point'))).toBeCloseTo(100, 3)
  expect(value(readMeasure('100 m²', 'squareMetres', 'Area (sq ft)', 'point'))).toBe(100)
  expect(value(readMeasure('50 °F', 'celsius', 'Coldest night', 'point'))).toBeCloseTo(10, 12)
  expect(value(readMeasure('0,5 ha', 'squareMetres', 'Fläche', 'comma'))).toBe(5000)
})

test('text loses doubled blanks, line breaks and the marks around the whole of it, and no letter of a name', () => {
  for (const [cell, expected] of [
    ['  Brown \n Turkey ', 'Brown Turkey'],
    ['“00”', '00'],
    ["Fig 'Brown Turkey'", "Fig 'Brown Turkey'"],
    ['Red “Heart” Plum', 'Red “Heart” Plum'],
    ['Sárga Kajszi® ×', 'Sárga Kajszi® ×'],
    [7, '7'],
  ] as const)
    expect(value(readText(cell))).toBe(expected)
})
