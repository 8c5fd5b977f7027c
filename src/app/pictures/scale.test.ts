import fc from 'fast-check'
import { expect, test } from 'vitest'
import { linear, ticks } from './scale.ts'

test('a scale puts the ends of the values at the ends of the drawing', () => {
  const scale = linear(10, 20, 100, 300)
  expect([scale(10), scale(15), scale(20)]).toEqual([100, 200, 300])
  expect(linear(5, 5, 0, 100)(5)).toBe(0)
})

test('ticks are round, begin at nought and reach past the greatest value', () => {
  expect(ticks(226, 4)).toEqual([0, 100, 200, 300])
  expect(ticks(0.3, 3)).toEqual([0, 0.1, 0.2, 0.3])
  expect(ticks(0, 4)).toEqual([0])
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 1e9, noNaN: true }),
      fc.integer({ min: 1, max: 10 }),
      (most, count) => {
        const values = ticks(most, count)
        expect(values[0]).toBe(0)
        expect(values.at(-1)!).toBeGreaterThanOrEqual(most * (1 - 1e-9))
        expect(values.length).toBeLessThanOrEqual(2 * count + 2)
      },
    ),
  )
})
