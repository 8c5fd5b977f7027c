import { expect, test } from 'vitest'
import { drawNormal } from '../random/draw-normal.ts'
import { seededRandom } from '../random/seeded-random.ts'
import { caliperAt, fitCaliper, shareInsideCaliper } from './caliper.ts'

const expectedRate = { mean: 0.5, sd: 0.2 }

test('one sample is carried forward by the expected rate, less surely the farther', () => {
  const growth = fitCaliper({ samples: [{ degreeDays: 600, meanMm: 5, sdMm: 1, number: 40 }], expectedRate })
  expect(caliperAt(growth, 600).meanMm).toBeCloseTo(5, 10)
  expect(caliperAt(growth, 1000).meanMm).toBeCloseTo(7, 10)
  expect(caliperAt(growth, 1000).standardErrorMm).toBeGreaterThan(caliperAt(growth, 700).standardErrorMm)
  // 0.2 mm per 100 over 400 degree-days, beside the sample's own error.
  expect(caliperAt(growth, 1000).standardErrorMm).toBeGreaterThan(0.8)
})

test('three samples on a line give the line, whatever was expected', () => {
  const samples = [400, 800, 1200].map(degreeDays => ({
    degreeDays,
    meanMm: 1 + degreeDays / 125,
    sdMm: 0.15 * (1 + degreeDays / 125),
    number: 60,
  }))
  const growth = fitCaliper({ samples, expectedRate: { mean: 0.1, sd: 0.5 } })
  expect(growth.rate).toBeCloseTo(0.8, 1)
  expect(growth.coefficientOfVariation).toBeCloseTo(0.15, 2)
  expect(caliperAt(growth, 1000).meanMm).toBeCloseTo(9, 1)
})

test('a batch of mean 8 and spread 1.6 mm has Φ(1.25) − Φ(−1.25) = 0.789 between 6 and 10, by the normal table', () => {
  const growth = {
    rate: 0,
    rateStandardError: 0,
    coefficientOfVariation: 0.2,
    centre: 0,
    meanMm: 8,
    meanVariance: 0,
  }
  expect(shareInsideCaliper(growth, 500, 6, 10).share).toBeCloseTo(0.7887, 4)
  expect(shareInsideCaliper(growth, 500, 0, Number.POSITIVE_INFINITY).share).toBeCloseTo(1, 6)
})

test('the share inside rises as stems grow into the range and falls as they grow out of it', () => {
  const growth = fitCaliper({
    samples: [{ degreeDays: 500, meanMm: 4, sdMm: 0.8, number: 50 }],
    expectedRate,
  })
  const shares = [500, 900, 1300, 2500].map(at => shareInsideCaliper(growth, at, 6, 9).share)
  expect(shares[1]!).toBeGreaterThan(shares[0]!)
  expect(shares[2]!).toBeGreaterThan(shares[1]!)
  expect(shares[3]!).toBeLessThan(shares[2]!)
})

test('the share inside next month lies inside its limits nine times in ten', () => {
  const random = seededRandom(14)
  let inside = 0
  for (let batch = 0; batch < 300; batch++) {
    const rate = 0.5 + 0.2 * drawNormal(random)
    const stems = Array.from({ length: 200 }, () => 1 + 0.2 * drawNormal(random))
    const line = (degreeDays: number) => 2 + (rate * degreeDays) / 100
    const sample = (degreeDays: number) => {
      const list = Array.from({ length: 30 }, () => line(degreeDays) * (1 + 0.2 * drawNormal(random)))
      const meanMm = list.reduce((sum, x) => sum + x, 0) / 30
      const sdMm = Math.sqrt(list.reduce((sum, x) => sum + (x - meanMm) ** 2, 0) / 29)
      return { degreeDays, meanMm, sdMm, number: 30 }
    }
    const growth = fitCaliper({ samples: [sample(500), sample(800)], expectedRate })
    const told = shareInsideCaliper(growth, 1100, 6, 9)
    const truth = stems.filter(stem => stem * line(1100) >= 6 && stem * line(1100) <= 9).length / 200
    if (truth >= told.low - 0.04 && truth <= told.high + 0.04) inside++
  }
  // 300 batches: standard error 0.017; 200 stems add chance of 0.035 of their own.
  expect(inside / 300).toBeGreaterThan(0.85)
})

test('a missing sample is named', () => {
  expect(() => fitCaliper({ samples: [], expectedRate })).toThrow('fitCaliper: samples must not be empty')
})
