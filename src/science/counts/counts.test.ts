import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { binomialList } from '../distributions/binomial-list.ts'
import { differenceInterval } from './difference-interval.ts'
import { exactTest, oddsRatioInterval } from './exact-test.ts'
import { powerForTwoShares, sampleForTwoShares } from './sample-size.ts'
import { exactInterval, jeffreysInterval, wilsonCorrectedInterval, wilsonInterval } from './share-interval.ts'

const counts = fc
  .integer({ min: 1, max: 400 })
  .chain(entered => fc.tuple(fc.integer({ min: 0, max: entered }), fc.constant(entered)))

describe('ranges of a share', () => {
  test('hold the share seen, stay within 0 to 1 and grow with confidence', () => {
    fc.assert(
      fc.property(counts, ([survived, entered]) => {
        for (const interval of [exactInterval, wilsonInterval, wilsonCorrectedInterval, jeffreysInterval]) {
          const [lower, upper] = interval(survived, entered, 0.9)
          const [wider, widest] = interval(survived, entered, 0.99)
          expect(lower).toBeLessThanOrEqual(survived / entered + 1e-12)
          expect(upper).toBeGreaterThanOrEqual(survived / entered - 1e-12)
          expect(wider).toBeLessThanOrEqual(lower + 1e-12)
          expect(widest).toBeGreaterThanOrEqual(upper - 1e-12)
          expect(wider).toBeGreaterThanOrEqual(0)
          expect(widest).toBeLessThanOrEqual(1)
        }
      }),
    )
  })

  test('the exact range holds the truth at least as often as it says, the score range about as often', () => {
    let exactSum = 0
    let scoreSum = 0
    const shares = Array.from({ length: 99 }, (_, i) => (i + 1) / 100)
    for (const share of shares) {
      const { first, chances } = binomialList(30, { shares: [share], weights: [1] })
      let exact = 0
      let score = 0
      chances.forEach((chance, i) => {
        const survived = first + i
        const [low, high] = exactInterval(survived, 30, 0.95)
        if (low <= share && share <= high) exact += chance
        const [lower, upper] = wilsonInterval(survived, 30, 0.95)
        if (lower <= share && share <= upper) score += chance
      })
      expect(exact).toBeGreaterThanOrEqual(0.95 - 1e-9)
      exactSum += exact
      scoreSum += score
    }
    expect(scoreSum / shares.length).toBeGreaterThan(0.94)
    expect(scoreSum / shares.length).toBeLessThan(0.965)
    expect(exactSum).toBeGreaterThan(scoreSum)
  })
})

describe('two shares', () => {
  test('with the lots exchanged the difference turns its sign and the odds their side', () => {
    fc.assert(
      fc.property(counts, counts, ([survived1, entered1], [survived2, entered2]) => {
        const there = { survived1, entered1, survived2, entered2 }
        const back = { survived1: survived2, entered1: entered2, survived2: survived1, entered2: entered1 }
        const [low, high] = differenceInterval(there, 0.95)
        const [backLow, backHigh] = differenceInterval(back, 0.95)
        expect(low).toBeCloseTo(-backHigh, 10)
        expect(high).toBeCloseTo(-backLow, 10)
        const test = exactTest(there)
        expect(exactTest(back).pTwoSided).toBeCloseTo(test.pTwoSided, 9)
        expect(exactTest(back).pGreater).toBeCloseTo(test.pLess, 9)
      }),
      { numRuns: 40 },
    )
  })

  test('the exact range of the odds ratio leaves out 1 just when a one-sided test is under 2.5 %', () => {
    fc.assert(
      fc.property(counts, counts, ([survived1, entered1], [survived2, entered2]) => {
        const there = { survived1, entered1, survived2, entered2 }
        const { pGreater, pLess } = exactTest(there)
        const smaller = Math.min(pGreater, pLess)
        fc.pre(Math.abs(smaller - 0.025) > 1e-6)
        const [low, high] = oddsRatioInterval(there, 0.95)
        expect(low > 1 || high < 1).toBe(smaller < 0.025)
      }),
      { numRuns: 40 },
    )
  })

  test('the sample that is asked for has the power that was asked for, and one fewer has not', () => {
    const { perLot } = sampleForTwoShares(0.6, 0.8, 0.05, 0.8)
    expect(powerForTwoShares(0.6, 0.8, 0.05, perLot)).toBeGreaterThanOrEqual(0.8)
    expect(powerForTwoShares(0.6, 0.8, 0.05, perLot - 1)).toBeLessThan(0.8)
  })

  test('a smaller difference, less risk or more power need more plants', () => {
    const n = (share: number, alpha: number, power: number) =>
      sampleForTwoShares(0.5, share, alpha, power).perLot
    expect(n(0.6, 0.05, 0.8)).toBeGreaterThan(n(0.7, 0.05, 0.8))
    expect(n(0.7, 0.01, 0.8)).toBeGreaterThan(n(0.7, 0.05, 0.8))
    expect(n(0.7, 0.05, 0.9)).toBeGreaterThan(n(0.7, 0.05, 0.8))
  })
})
