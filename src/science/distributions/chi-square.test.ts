import { expect, test } from 'vitest'
import { chiSquareAbove } from './chi-square.ts'

test('the upper tail gives the printed critical values (Abramowitz & Stegun, table 26.8)', () => {
  expect(chiSquareAbove(3.84146, 1)).toBeCloseTo(0.05, 6)
  expect(chiSquareAbove(9.21034, 2)).toBeCloseTo(0.01, 6)
  expect(chiSquareAbove(18.307, 10)).toBeCloseTo(0.05, 5)
  expect(chiSquareAbove(2.70554, 1)).toBeCloseTo(0.1, 6)
})

test('with two degrees of freedom it is exp(−x/2), on both sides of the change of method', () => {
  for (const x of [0.01, 0.5, 3.9, 4.1, 30, 200])
    expect(chiSquareAbove(x, 2) / Math.exp(-x / 2)).toBeCloseTo(1, 11)
  expect(chiSquareAbove(0, 3)).toBe(1)
})
