import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { betaQuantile, binomialAtLeast, normalCdf, normalQuantile } from '../../science/index.ts'
import { keyOf } from './key-of.ts'
import { normalScore } from './normal-scores.ts'
import { normalShare } from './normal-share.ts'
import { shareAt, shareCurve } from './share-curve.ts'
import { survivors } from './survivors.ts'

describe('normal scores from a table', () => {
  test('are the quantiles and shares of the normal distribution to the error stated', () => {
    for (let i = 1; i < 2000; i++) expect(normalScore(i / 2000)).toBeCloseTo(normalQuantile(i / 2000), 4)
    for (let z = -3.99; z < 4; z += 0.013) expect(Math.abs(normalShare(z) - normalCdf(z))).toBeLessThan(4e-5)
  })
})

describe('the share of a Beta at a normal score', () => {
  test('is its quantile, within 0.0005 for usual rates and 0.004 for the most skewed', () => {
    for (const [alpha, beta, error] of [
      [12, 8, 5e-4],
      [1, 1, 5e-4],
      [2, 30, 5e-4],
      [400, 100, 5e-4],
      [50, 2, 5e-4],
      [0.5, 0.7, 4e-3],
      [0.3, 4, 4e-3],
    ] as const) {
      const curve = shareCurve(alpha, beta)
      for (let z = -3.9; z <= 3.9; z += 0.3)
        expect(Math.abs(shareAt(curve, 0, z) - betaQuantile(normalCdf(z), alpha, beta))).toBeLessThan(error)
    }
  })

  test('rises with the score, and is the share itself where that is known', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 300, noNaN: true }),
        fc.double({ min: 0.5, max: 300, noNaN: true }),
        (a, b) => {
          const curve = shareCurve(a, b)
          let last = 0
          for (let z = -4; z <= 4; z += 0.1) {
            const share = shareAt(curve, 0, z)
            expect(share).toBeGreaterThanOrEqual(last)
            last = share
          }
        },
      ),
      { numRuns: 60 },
    )
    expect(shareAt(shareCurve(7e8, 3e8), 0, 2)).toBeCloseTo(0.7, 9)
    expect(shareAt(shareCurve(5, 0), 0, -3)).toBe(1)
    expect(shareAt(shareCurve(0, 5), 0, 3)).toBeLessThan(1e-15)
  })
})

describe('survivors at a uniform number', () => {
  test('are the binomial quantile: exact where few are expected or lost, within one plant elsewhere', () => {
    for (const [number, share] of [
      [10, 0.3],
      [200, 0.02],
      [200, 0.98],
      [60, 0.5],
      [500, 0.8],
      [5000, 0.6],
    ] as const)
      for (const uniform of [0.01, 0.1, 0.35, 0.5, 0.8, 0.95, 0.99]) {
        const got = survivors(number, share, uniform)
        // The quantile k: P(X ≤ k) ≥ u > P(X ≤ k − 1).
        let exact = 0
        while (1 - binomialAtLeast(exact + 1, number, share) < uniform) exact++
        const isFew = number * share < 14 || number * (1 - share) < 14
        expect(Math.abs(got - exact)).toBeLessThanOrEqual(isFew ? 0 : 1)
      }
  })

  test('never fewer with more plants begun by a tenth, with a better share, or with more luck', () => {
    const uniform = fc.double({ min: 0.0005, max: 0.9995, noNaN: true })
    const share = fc.double({ min: 0.02, max: 0.98, noNaN: true })
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), share, uniform, (number, p, u) => {
        const got = survivors(number, p, u)
        expect(got).toBeLessThanOrEqual(number)
        expect(survivors(number + Math.max(3, Math.ceil(number / 10)), p, u)).toBeGreaterThanOrEqual(got)
        expect(survivors(number, Math.min(1, p + 0.05), u)).toBeGreaterThanOrEqual(got)
        expect(survivors(number, p, Math.min(0.9999, u + 0.05))).toBeGreaterThanOrEqual(got)
      }),
      { numRuns: 400 },
    )
  })
})

test('keys of names are whole, below 2^53, and differ for names that differ by little', () => {
  const names = Array.from(
    { length: 20_000 },
    (_, i) => `start fig by mist-${i % 200} ${Math.floor(i / 200)}`,
  )
  const keys = names.map(keyOf)
  expect(new Set(keys).size).toBe(names.length)
  for (const key of keys) expect(Number.isSafeInteger(key)).toBe(true)
})
