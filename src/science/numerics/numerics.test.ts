import fc from 'fast-check'
import { expect, test } from 'vitest'
import { normalRule } from './gauss-hermite.ts'
import { betaOfMoments, shareMoments } from './logistic-normal.ts'
import { minimise, withSlope } from './quasi-newton.ts'
import { choleskyFactor, invertPositiveDefinite, solveWithFactor } from './small-cholesky.ts'
import { factorise, inverseOnPattern, solveInPlace, symbolicFactor } from './sparse-cholesky.ts'
import { trigamma } from './trigamma.ts'

/** A random sparse positive definite matrix, in full and by its pattern. */
const matrices = fc
  .tuple(
    fc.integer({ min: 1, max: 14 }),
    fc.array(fc.tuple(fc.nat(13), fc.nat(13), fc.double({ min: -1, max: 1, noNaN: true })), {
      maxLength: 40,
    }),
  )
  .map(([size, entries]) => {
    const full = new Float64Array(size * size)
    for (const [i, j, value] of entries) {
      if (i >= size || j >= size || i === j) continue
      full[i * size + j] = value
      full[j * size + i] = value
    }
    for (let i = 0; i < size; i++) full[i * size + i] = size + 1
    const rowStart = [0]
    const columns: number[] = []
    const values: number[] = []
    for (let i = 0; i < size; i++) {
      for (let j = 0; j <= i; j++)
        if (i === j || full[i * size + j] !== 0) {
          columns.push(j)
          values.push(full[i * size + j]!)
        }
      rowStart.push(columns.length)
    }
    const pattern = { size, rowStart: Int32Array.from(rowStart), columns: Int32Array.from(columns) }
    return { size, full, pattern, values: Float64Array.from(values) }
  })

test('the sparse factor gives the determinant, the solution and the inverse of the dense one', () => {
  fc.assert(
    fc.property(matrices, ({ size, full, pattern, values }) => {
      const factor = symbolicFactor(pattern)
      const logDeterminant = factorise(factor, values)
      const dense = choleskyFactor(full, size)!
      let expected = 0
      for (let i = 0; i < size; i++) expected += 2 * Math.log(dense[i * size + i]!)
      expect(logDeterminant).toBeCloseTo(expected, 9)
      const side = Float64Array.from({ length: size }, (_, i) => i - 2)
      const wanted = solveWithFactor(dense, size, Float64Array.from(side))
      solveInPlace(factor, side).forEach((x, i) => {
        expect(x).toBeCloseTo(wanted[i]!, 9)
      })
      const inverse = inverseOnPattern(factor)
      const whole = invertPositiveDefinite(full, size)!
      for (let j = 0; j < size; j++)
        for (let place = factor.columnStart[j]!; place < factor.columnStart[j + 1]!; place++)
          expect(inverse[place]!).toBeCloseTo(whole[factor.rows[place]! * size + j]!, 9)
    }),
  )
})

test('a matrix that is not positive definite is told apart', () => {
  const factor = symbolicFactor({
    size: 2,
    rowStart: Int32Array.of(0, 1, 3),
    columns: Int32Array.of(0, 0, 1),
  })
  expect(factorise(factor, Float64Array.of(1, 2, 1))).toBeNaN()
  expect(factorise(factor, Float64Array.of(2, 1, 2))).toBeCloseTo(Math.log(3), 12)
})

test('quadrature of n points is exact for the moments of the normal up to 2n − 1: 1, 3, 15, 105, 945', () => {
  for (const count of [5, 6, 25, 64]) {
    const { points, weights } = normalRule(count)
    const moment = (power: number) => points.reduce((sum, x, i) => sum + weights[i]! * x ** power, 0)
    expect(moment(2)).toBeCloseTo(1, 10)
    expect(moment(4)).toBeCloseTo(3, 10)
    expect(moment(6)).toBeCloseTo(15, 9)
    expect(moment(8)).toBeCloseTo(105, 8)
    expect(moment(7)).toBeCloseTo(0, 8)
  }
})

test('trigamma gives π²/6 at 1, π²/2 at a half, and its recurrence', () => {
  expect(trigamma(1)).toBeCloseTo(Math.PI ** 2 / 6, 12)
  expect(trigamma(0.5)).toBeCloseTo(Math.PI ** 2 / 2, 11)
  for (const x of [0.3, 4, 17.5]) expect(trigamma(x) - trigamma(x + 1)).toBeCloseTo(1 / x ** 2, 11)
})

test('the valley of Rosenbrock is followed to its end', () => {
  const valley = withSlope(([x, y]) => (1 - x!) ** 2 + 100 * (y! - x! * x!) ** 2)
  const { at, converged } = minimise(valley, Float64Array.of(-1.2, 1), {
    scale: Float64Array.of(0.1, 0.1),
    fallBelow: 1e-14,
  })
  expect(converged).toBe(true)
  expect(at[0]!).toBeCloseTo(1, 4)
  expect(at[1]!).toBeCloseTo(1, 4)
})

test('a share with a normal logit has a mean nearer to a half than its middle, and a Beta with its moments', () => {
  const { mean, variance } = shareMoments(0.85, 0.25)
  expect(mean).toBeLessThan(1 / (1 + Math.exp(-0.85)))
  const { alpha, beta } = betaOfMoments(mean, variance)
  expect(alpha / (alpha + beta)).toBeCloseTo(mean, 12)
  expect((alpha * beta) / ((alpha + beta) ** 2 * (alpha + beta + 1))).toBeCloseTo(variance, 12)
  expect(shareMoments(1.2, 0).mean).toBeCloseTo(1 / (1 + Math.exp(-1.2)), 12)
})
