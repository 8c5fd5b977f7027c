import { expect, test } from 'vitest'
import { createFormat } from './format.ts'
import { measureTyped } from './measure-typed.ts'

test('a measure in a field has the decimal sign of the reader, and is read with either', () => {
  const { was, read, unit } = measureTyped(4.5, 'm', createFormat('es-ES', 'metric'))
  expect([was, unit]).toEqual(['4,5', 'm'])
  expect(read('4,75')).toBe(4.75)
  expect(read('4.75')).toBe(4.75)
  expect(read(' ')).toBeNull()
  expect(read('high')).toBeNaN()
})

// 1 ft = 0.3048 m and 1 US gallon = 3.785411784 l, exactly (NIST SP 811, appendix B).
test('in US units it is typed in feet and gallons and kept in metres and litres; what is not touched keeps its last figure', () => {
  const us = createFormat('en-US', 'us')
  const height = measureTyped(4.5, 'm', us)
  expect([height.was, height.unit]).toEqual(['14.76', 'ft'])
  expect(height.read('14.76')).toBe(4.5)
  expect(height.read('10')).toBeCloseTo(3.048, 8)
  expect(measureTyped(null, 'litres', us).read('3')).toBeCloseTo(11.356235, 6)
})
