import erfc from '@stdlib/math-base-special-erfc'
import erfcinv from '@stdlib/math-base-special-erfcinv'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { betaCdf, betaQuantile, binomialAtLeast } from './beta.ts'
import { betaFromLowTypicalHigh } from './beta-from-low-typical-high.ts'
import { binomialList } from './binomial-list.ts'
import { normalCdf, normalQuantile } from './normal.ts'
import { chancesOfSum } from './sums-of-lists.ts'

describe('normal distribution', () => {
  test('agrees with a reference error function to 12 digits', () => {
    for (let z = -30; z <= 8; z += 0.037) {
      const reference = 0.5 * erfc(-z / Math.SQRT2)
      expect(Math.abs(normalCdf(z) / reference - 1)).toBeLessThan(2e-12)
    }
  })

  test('its quantile agrees with a reference inverse and with itself', () => {
    for (const share of [1e-300, 1e-20, 1e-9, 0.001, 0.02425, 0.074, 0.2, 0.5, 0.8, 0.925, 0.999999]) {
      const reference = -Math.SQRT2 * erfcinv(2 * share)
      expect(Math.abs(normalQuantile(share) - reference)).toBeLessThan(2e-13 * (1 + Math.abs(reference)))
      expect(normalCdf(normalQuantile(share)) / share).toBeCloseTo(1, 11)
    }
  })
})

describe('binomial and Beta', () => {
  test('at least k of n is the sum of the chances from k on', () => {
    const list = binomialList(40, { shares: [0.37], weights: [1] })
    for (let least = 0; least <= 40; least++)
      expect(
        list.chances.slice(Math.max(0, least - list.first)).reduce((sum, chance) => sum + chance, 0),
      ).toBeCloseTo(binomialAtLeast(least, 40, 0.37), 12)
  })

  test('the quantile is the inverse', () => {
    for (const [alpha, beta] of [
      [0.5, 0.5],
      [8, 2],
      [400, 35],
    ] as const)
      for (const share of [0.001, 0.3, 0.5, 0.99])
        expect(betaCdf(betaQuantile(share, alpha, beta), alpha, beta)).toBeCloseTo(share, 9)
  })

  test('the sum of two kinds of batches has the chances of their direct sum', () => {
    const one = binomialList(5, { shares: [0.3, 0.8], weights: [0.4, 0.6] })
    const other = binomialList(6, { shares: [0.5], weights: [1] })
    const direct = new Float64Array(17)
    const at = ({ first, chances }: typeof one, number: number) => chances[number - first] ?? 0
    for (let a = 0; a <= 5; a++)
      for (let b = 0; b <= 5; b++)
        for (let c = 0; c <= 6; c++) direct[a + b + c]! += at(one, a) * at(one, b) * at(other, c)
    const sum = chancesOfSum({ one, times: 2, other, otherTimes: 1 })
    direct.forEach((chance, number) => {
      expect(Math.abs(at(sum, number) - chance)).toBeLessThan(1e-14)
    })
  })
})

describe('a Beta from low, typical and high', () => {
  test('has the typical value as its median and nine of ten cases from low to high', () => {
    fc.assert(
      fc.property(
        fc.tuple(
          fc.double({ min: 0.02, max: 0.98, noNaN: true }),
          fc.double({ min: 0.02, max: 0.98, noNaN: true }),
          fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        ),
        figures => {
          const [low, typical, high] = figures.sort((a, b) => a - b) as [number, number, number]
          fc.pre(high - low > 0.01)
          const { alpha, beta } = betaFromLowTypicalHigh(low, typical, high)
          expect(betaCdf(typical, alpha, beta)).toBeCloseTo(0.5, 8)
          const held = betaCdf(high, alpha, beta) - betaCdf(low, alpha, beta)
          // Only a range with its typical value hard by one end may stay out of reach.
          if (alpha + beta > 1.0001 && alpha + beta < 999_999) expect(held).toBeCloseTo(0.9, 8)
          else expect(Math.min(typical - low, high - typical) / (high - low)).toBeLessThan(0.2)
        },
      ),
      { numRuns: 60 },
    )
  })

  test('mirrored figures give the mirrored Beta', () => {
    const one = betaFromLowTypicalHigh(0.5, 0.7, 0.85)
    const other = betaFromLowTypicalHigh(0.15, 0.3, 0.5)
    expect(one.alpha).toBeCloseTo(other.beta, 6)
    expect(one.beta).toBeCloseTo(other.alpha, 6)
  })

  test('a narrower range gives a sharper Beta, and no range at all the sharpest', () => {
    const precision = (low: number, high: number) => {
      const { alpha, beta } = betaFromLowTypicalHigh(low, 0.6, high)
      return alpha + beta
    }
    expect(precision(0.55, 0.65)).toBeGreaterThan(precision(0.4, 0.8))
    expect(precision(0.6, 0.6)).toBeCloseTo(1e6, 0)
  })

  test('figures that touch 0 or 1 give a Beta', () => {
    for (const [low, typical, high] of [
      [0, 0, 0.1],
      [0.9, 1, 1],
      [0, 0.5, 1],
      [0, 0, 0],
      [1, 1, 1],
    ] as const) {
      const { alpha, beta } = betaFromLowTypicalHigh(low, typical, high)
      expect(alpha).toBeGreaterThan(0)
      expect(beta).toBeGreaterThan(0)
    }
  })

  test('figures out of order are refused', () => {
    expect(() => betaFromLowTypicalHigh(0.5, 0.4, 0.8)).toThrow(
      'betaFromLowTypicalHigh: typical must be 0.5 to 0.8, got 0.4',
    )
  })
})
