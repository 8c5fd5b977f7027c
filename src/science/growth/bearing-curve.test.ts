import fc from 'fast-check'
import { expect, test } from 'vitest'
import { bearingShare } from './bearing-curve.ts'

const years = fc.double({ min: 0, max: 40, noNaN: true })

test('nothing before the first crop, a tenth then, nine tenths at full bearing, and never less as years go by', () => {
  fc.assert(
    fc.property(years, years, years, (first, rise, age) => {
      const full = first + rise + 0.5
      expect(bearingShare(first, first, full)).toBeCloseTo(0.1, 10)
      expect(bearingShare(full, first, full)).toBeCloseTo(0.9, 10)
      if (age < first) expect(bearingShare(age, first, full)).toBe(0)
      expect(bearingShare(age + 1, first, full)).toBeGreaterThanOrEqual(bearingShare(age, first, full))
      expect(bearingShare(age, first, full)).toBeLessThanOrEqual(1)
    }),
  )
})

test('full bearing before the first crop is refused', () => {
  expect(() => bearingShare(5, 4, 3)).toThrow('bearingShare: fullBearingAge must be 4 to 10000, got 3')
})
