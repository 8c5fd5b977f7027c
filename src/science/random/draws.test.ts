import gammaln from '@stdlib/math-base-special-gammaln'
import { describe, expect, test } from 'vitest'
import { betaCdf } from '../distributions/beta.ts'
import { normalCdf } from '../distributions/normal.ts'
import { drawBinomial } from './draw-binomial.ts'
import { drawBeta, drawGamma } from './draw-gamma.ts'
import { drawNormal } from './draw-normal.ts'
import { drawPoisson } from './draw-poisson.ts'
import { type SeededRandom, seededRandom } from './seeded-random.ts'

const DRAWS = 200_000

/**
 * Chi-square of counted draws against exact chances, numbers joined until each class expects 20; as the standard
 * score of its distribution (Wilson & Hilferty 1931), which passes 4.4 once in 200,000 seeds.
 */
function chiSquareScore(
  draw: (random: SeededRandom) => number,
  chance: (k: number) => number,
  from: number,
  to: number,
) {
  const random = seededRandom(20260504)
  const counts = new Map<number, number>()
  for (let i = 0; i < DRAWS; i++) {
    const k = draw(random)
    counts.set(k, (counts.get(k) ?? 0) + 1)
  }
  let square = 0
  let classes = 0
  let expected = 0
  let counted = 0
  let left = DRAWS
  let leftCounted = DRAWS
  for (let k = from; k <= to; k++) {
    expected += DRAWS * chance(k)
    counted += counts.get(k) ?? 0
    if (expected >= 20 && left - expected >= 20) {
      square += (counted - expected) ** 2 / expected
      classes++
      left -= expected
      leftCounted -= counted
      expected = 0
      counted = 0
    }
  }
  square += (leftCounted - left) ** 2 / left
  const freedom = classes
  return (Math.cbrt(square / freedom) - (1 - 2 / (9 * freedom))) / Math.sqrt(2 / (9 * freedom))
}

/** Largest gap between the draws and a distribution, times √n: above 2.3 once in 20,000 seeds (Kolmogorov). */
function kolmogorovGap(draw: (random: SeededRandom) => number, below: (x: number) => number, draws: number) {
  const random = seededRandom(7)
  const sorted = Float64Array.from({ length: draws }, () => draw(random)).sort()
  let gap = 0
  sorted.forEach((x, i) => {
    const share = below(x)
    gap = Math.max(gap, Math.abs(share - i / draws), Math.abs(share - (i + 1) / draws))
  })
  return gap * Math.sqrt(draws)
}

const logBinomial = (n: number, p: number, k: number) =>
  gammaln(n + 1) - gammaln(k + 1) - gammaln(n - k + 1) + k * Math.log(p) + (n - k) * Math.log1p(-p)

describe('draws follow their exact distribution', () => {
  test.each([
    [1, 0.3],
    [20, 0.3],
    [40, 0.97],
    [100, 0.4],
    [25, 0.5],
    [1000, 0.011],
    [500, 0.8],
    [30_000, 0.62],
  ])('binomial: %d plants, share %d', (n, p) => {
    const draw = (random: SeededRandom) => drawBinomial(random, n, p)
    expect(Math.abs(chiSquareScore(draw, k => Math.exp(logBinomial(n, p, k)), 0, n))).toBeLessThan(4.4)
  })

  test.each([0.3, 4, 9.99, 10, 37.5, 2500])('Poisson: mean %d', mean => {
    const chance = (k: number) => Math.exp(k * Math.log(mean) - mean - gammaln(k + 1))
    const draw = (random: SeededRandom) => drawPoisson(random, mean)
    expect(
      Math.abs(chiSquareScore(draw, chance, 0, Math.ceil(mean + 12 * Math.sqrt(mean) + 12))),
    ).toBeLessThan(4.4)
  })

  test.each([
    [80, 20],
    [0.5, 0.5],
    [1, 3],
    [0.2, 7],
    [2000, 0.9],
  ])('Beta(%d, %d)', (alpha, beta) => {
    expect(
      kolmogorovGap(
        random => drawBeta(random, alpha, beta),
        x => betaCdf(x, alpha, beta),
        20_000,
      ),
    ).toBeLessThan(2.3)
  })

  test('normal', () => {
    expect(kolmogorovGap(drawNormal, normalCdf, 100_000)).toBeLessThan(2.3)
  })

  test('gamma of shape 1 is exponential, and of shape 1/2 half a squared normal', () => {
    expect(
      kolmogorovGap(
        random => drawGamma(random, 1),
        x => 1 - Math.exp(-x),
        100_000,
      ),
    ).toBeLessThan(2.3)
    expect(
      kolmogorovGap(
        random => drawGamma(random, 0.5),
        x => 2 * normalCdf(Math.sqrt(2 * x)) - 1,
        100_000,
      ),
    ).toBeLessThan(2.3)
  })

  test('uniform numbers fill 1,000 boxes evenly', () => {
    const draw = (random: SeededRandom) => Math.floor(1000 * random.uniform())
    expect(Math.abs(chiSquareScore(draw, () => 0.001, 0, 999))).toBeLessThan(4.4)
  })

  test('first numbers of neighbouring streams fill 1,000 boxes evenly', () => {
    const streams = seededRandom(3)
    let key = 0
    const draw = () => Math.floor(1000 * streams.stream(key++).uniform())
    expect(Math.abs(chiSquareScore(draw, () => 0.001, 0, 999))).toBeLessThan(4.4)
  })

  test('a stream and the next, or the stream of the next seed, are not correlated', () => {
    const pairs = 50_000
    let neighbours = 0
    let seeds = 0
    for (let key = 0; key < pairs; key++) {
      const one = seededRandom(1).stream(key).uniform() - 0.5
      neighbours +=
        one *
        (seededRandom(1)
          .stream(key + 1)
          .uniform() -
          0.5)
      seeds += one * (seededRandom(2).stream(key).uniform() - 0.5)
    }
    // Each product has variance 1/144: five standard errors.
    expect(Math.abs(neighbours / pairs)).toBeLessThan((5 / 12) * Math.sqrt(1 / pairs))
    expect(Math.abs(seeds / pairs)).toBeLessThan((5 / 12) * Math.sqrt(1 / pairs))
  })
})

describe('a seed gives the same numbers again', () => {
  test('the stream of a key does not depend on what was drawn before', () => {
    const used = seededRandom(42)
    for (let i = 0; i < 100; i++) drawBinomial(used, 1000, 0.3)
    expect(used.stream(5).uniform()).toBe(seededRandom(42).stream(5).uniform())
  })

  test('different seeds and different orders of keys give different numbers', () => {
    const numbers = [
      seededRandom(1).uniform(),
      seededRandom(2).uniform(),
      seededRandom(2 ** 40 + 1).uniform(),
      seededRandom(1).stream(2).stream(3).uniform(),
      seededRandom(1).stream(3).stream(2).uniform(),
      seededRandom(1)
        .stream(2 ** 40 + 3)
        .uniform(),
      seededRandom(1).stream(3).uniform(),
    ]
    expect(new Set(numbers).size).toBe(numbers.length)
  })

  test('draws at the ends are certain', () => {
    const random = seededRandom(1)
    expect([drawBinomial(random, 0, 0.5), drawBinomial(random, 9, 0), drawBinomial(random, 9, 1)]).toEqual([
      0, 0, 9,
    ])
    expect(drawPoisson(random, 0)).toBe(0)
  })

  test('a share outside 0 to 1 is refused with its name, bound and value', () => {
    expect(() => drawBinomial(seededRandom(1), 10, 1.2)).toThrow(
      'drawBinomial: share must be 0 to 1, got 1.2',
    )
  })
})
