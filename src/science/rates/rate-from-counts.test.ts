import fc from 'fast-check'
import { expect, test } from 'vitest'
import { rateFromCounts } from './rate-from-counts.ts'

const mean = ({ alpha, beta }: { alpha: number; beta: number }) => alpha / (alpha + beta)
const variance = ({ alpha, beta }: { alpha: number; beta: number }) =>
  (alpha * beta) / ((alpha + beta) ** 2 * (alpha + beta + 1))

test('without counts the next batch is what the prior says', () => {
  expect(rateFromCounts({ prior: { alpha: 12, beta: 8 }, counts: [] })).toEqual({ alpha: 12, beta: 8 })
  expect(rateFromCounts({ prior: { alpha: 12, beta: 8 }, counts: [{ entered: 0, survived: 0 }] })).toEqual({
    alpha: 12,
    beta: 8,
  })
})

test('one good batch lifts the mean part of the way; a thousand plants of one batch do not settle it', () => {
  const one = mean(rateFromCounts({ prior: { alpha: 12, beta: 8 }, counts: [{ entered: 50, survived: 45 }] }))
  const big = mean(
    rateFromCounts({ prior: { alpha: 12, beta: 8 }, counts: [{ entered: 1000, survived: 900 }] }),
  )
  expect(one).toBeGreaterThan(0.63)
  expect(big).toBeGreaterThan(one)
  expect(big).toBeLessThan(0.75)
})

test('many batches with the same spread end at their mean and their spread, whatever the prior', () => {
  const counts = Array.from({ length: 300 }, (_, i) => ({ entered: 200, survived: 120 + ((i * 37) % 61) }))
  const fitted = rateFromCounts({ prior: { alpha: 2, beta: 6 }, counts })
  expect(mean(fitted)).toBeCloseTo(0.75, 2)
  // Uniform over 0.6 to 0.9 has variance 0.0075, of which binomial chance takes 0.75 · 0.25 / 200.
  expect(variance(fitted)).toBeGreaterThan(0.004)
  expect(variance(fitted)).toBeLessThan(0.011)
})

test('the expected share lies between what was believed and what was counted', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 300 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.integer({ min: 1, max: 40 }),
      fc.integer({ min: 1, max: 40 }),
      (entered, at, alpha, beta) => {
        const survived = Math.floor(at * (entered + 0.999))
        const learnt = mean(rateFromCounts({ prior: { alpha, beta }, counts: [{ entered, survived }] }))
        const believed = alpha / (alpha + beta)
        const counted = survived / entered
        return learnt >= Math.min(believed, counted) - 0.002 && learnt <= Math.max(believed, counted) + 0.002
      },
    ),
    { numRuns: 60 },
  )
})

test('a wrong argument is named with its bound and value', () => {
  expect(() => rateFromCounts({ prior: { alpha: 0, beta: 1 }, counts: [] })).toThrow(
    'rateFromCounts: prior.alpha must be above 0, got 0',
  )
  expect(() =>
    rateFromCounts({ prior: { alpha: 1, beta: 1 }, counts: [{ entered: 3, survived: 4 }] }),
  ).toThrow('rateFromCounts: survived must be a whole number of 0 to 3, got 4')
})
