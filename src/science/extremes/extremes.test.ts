import fc from 'fast-check'
import { expect, test } from 'vitest'
import { seededRandom } from '../random/seeded-random.ts'
import { extremeValueCdf, extremeValueQuantile } from './extreme-value.ts'
import { fitByLikelihood } from './fit-extreme-value.ts'
import { fitByLMoments } from './l-moments.ts'

const distributions = fc.record({
  location: fc.double({ min: -30, max: 30, noNaN: true }),
  scale: fc.double({ min: 0.5, max: 6, noNaN: true }),
  shape: fc.double({ min: -0.4, max: 0.3, noNaN: true }),
})
const shares = fc.double({ min: 0.001, max: 0.999, noNaN: true })

test('a level and its chance are each the inverse of the other, at any shape', () => {
  fc.assert(
    fc.property(distributions, shares, (of, share) => {
      expect(extremeValueCdf(extremeValueQuantile(share, of), of)).toBeCloseTo(share, 6)
    }),
  )
})

test('a long record gives back the distribution that it was drawn from, by either fit', () => {
  const random = seededRandom(5)
  const of = { location: 7, scale: 3, shape: -0.2 }
  const record = Array.from({ length: 4000 }, () =>
    extremeValueQuantile(Math.min(0.99999, Math.max(1e-5, random.uniform())), of),
  )
  for (const fit of [fitByLMoments(record), fitByLikelihood(record)!]) {
    expect(Math.abs(fit.location - 7)).toBeLessThan(0.2)
    expect(Math.abs(fit.scale - 3)).toBeLessThan(0.15)
    expect(Math.abs(fit.shape + 0.2)).toBeLessThan(0.04)
  }
})

test('turning a record into other units turns its fit into them', () => {
  const record = [3.1, 4.4, 2.2, 8.1, 5.5, 6.2, 4.9, 7.7, 3.3, 5.1, 9.4, 4.2]
  const fit = fitByLMoments(record)
  const other = fitByLMoments(record.map(value => 1.8 * value + 32))
  expect(other.location).toBeCloseTo(1.8 * fit.location + 32, 8)
  expect(other.scale).toBeCloseTo(1.8 * fit.scale, 8)
  expect(other.shape).toBeCloseTo(fit.shape, 8)
})

test('a record too short or without spread is refused by name', () => {
  expect(() => fitByLMoments([1, 2])).toThrow('lMoments: values must be 3 or more, got 2')
  expect(() => fitByLMoments([4, 4, 4])).toThrow('lMoments: values must not all be equal, got 4')
})
