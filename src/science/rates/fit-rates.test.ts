import { expect, test } from 'vitest'
import { betaQuantile } from '../distributions/beta.ts'
import { drawBinomial } from '../random/draw-binomial.ts'
import { drawNormal } from '../random/draw-normal.ts'
import { seededRandom } from '../random/seeded-random.ts'
import { fitRates, type RateObservation } from './fit-rates.ts'
import { levelDifference, levelEstimates, spreads } from './levels.ts'
import { predictShare } from './predict-share.ts'

/** An invented nursery with known truth: kinds, grafters and years that differ, and batches that differ for no reason. */
function inventedHistory(seed: number, batches: number) {
  const random = seededRandom(seed)
  const effects = (count: number, sd: number) => Array.from({ length: count }, () => sd * drawNormal(random))
  const kinds = effects(6, 0.7)
  const grafters = effects(5, 0.35)
  const years = effects(6, 0.3)
  const batch = (year: number): RateObservation & { readonly truth: number } => {
    const kind = Math.floor(6 * random.uniform())
    const grafter = Math.floor(5 * random.uniform())
    const logit = 0.9 + kinds[kind]! + grafters[grafter]! + years[year]! + 0.5 * drawNormal(random)
    const truth = 1 / (1 + Math.exp(-logit))
    const entered = 20 + Math.floor(180 * random.uniform())
    const context = { kind: `kind ${kind}`, grafter: `grafter ${grafter}`, year: `year ${year}` }
    return { truth, entered, survived: drawBinomial(random, entered, truth), context }
  }
  const past = Array.from({ length: batches }, () => batch(Math.floor(5 * random.uniform())))
  return { past, next: Array.from({ length: 20 }, () => batch(5)) }
}

const factors = ['kind', 'grafter', 'year']

test('predictions for the batches of a year not yet seen hold what they say', () => {
  let inside = 0
  let all = 0
  for (let seed = 0; seed < 60; seed++) {
    const { past, next } = inventedHistory(seed, 40)
    const model = fitRates({ observations: past, factors })
    for (const { context, truth } of next) {
      const { alpha, beta } = predictShare(model, context)
      if (truth >= betaQuantile(0.1, alpha, beta) && truth <= betaQuantile(0.9, alpha, beta)) inside++
      all++
    }
  }
  // The 20 batches of one year share its luck: about 60 to 200 independent ones, standard error 0.04.
  expect(inside / all).toBeGreaterThan(0.72)
  expect(inside / all).toBeLessThan(0.9)
})

test('a new grafter and a year to come widen the prediction; a known one narrows it', () => {
  const model = fitRates({ observations: inventedHistory(4, 120).past, factors })
  const known = predictShare(model, { kind: 'kind 1', grafter: 'grafter 2', year: 'year 3' })
  const nextYear = predictShare(model, { kind: 'kind 1', grafter: 'grafter 2', year: 'year 9' })
  const anybody = predictShare(model, { kind: 'kind 1' })
  expect(nextYear.high - nextYear.low).toBeGreaterThan(known.high - known.low)
  expect(anybody.high - anybody.low).toBeGreaterThan(nextYear.high - nextYear.low)
  expect(Object.keys(anybody.logit.parts.open).sort()).toEqual(['grafter', 'year'])
  expect(known.worthBatches).toBeGreaterThan(anybody.worthBatches)
})

test('a grafter with one perfect batch is told close to the average, with a wide interval', () => {
  const { past } = inventedHistory(7, 100)
  const lucky: RateObservation = {
    entered: 10,
    survived: 10,
    context: { kind: 'kind 1', grafter: 'new hand', year: 'year 1' },
  }
  const model = fitRates({ observations: [...past, lucky], factors })
  const estimates = levelEstimates(model, 'grafter')
  const hand = estimates.find(({ level }) => level === 'new hand')!
  expect(hand.share).toBeLessThan(0.9)
  expect(hand.batches).toBe(1)
  const others = estimates.filter(({ level }) => level !== 'new hand')
  for (const other of others) expect(hand.standardError).toBeGreaterThan(other.standardError)
  const gap = levelDifference(model, 'grafter', 'new hand', others[0]!.level)
  expect(gap.oddsRatioLow).toBeLessThan(1)
})

test('a fact alone gives its own mean; ten batches against it outweigh a fact worth two', () => {
  const facts = [{ context: { kind: 'plum cuttings' }, alpha: 6, beta: 4, worthBatches: 2 }]
  const alone = predictShare(fitRates({ observations: [], factors: ['kind'], facts }), {
    kind: 'plum cuttings',
  })
  expect(alone.mean).toBeGreaterThan(0.52)
  expect(alone.mean).toBeLessThan(0.66)
  const observations = Array.from({ length: 10 }, (_, i) => ({
    entered: 100,
    survived: 25 + (i % 5),
    context: { kind: 'plum cuttings' },
  }))
  const learnt = predictShare(fitRates({ observations, factors: ['kind'], facts }), { kind: 'plum cuttings' })
  expect(learnt.mean).toBeLessThan(0.35)
  expect(learnt.mean).toBeGreaterThan(0.26)
})

test('the order in which counts are entered does not matter', () => {
  const { past } = inventedHistory(11, 60)
  const context = past[0]!.context
  const one = predictShare(fitRates({ observations: past, factors }), context)
  const other = predictShare(fitRates({ observations: past.toReversed(), factors }), context)
  expect(other.mean).toBeCloseTo(one.mean, 5)
  expect(other.low).toBeCloseTo(one.low, 4)
})

test('a hundred per cent cell is not predicted as certain', () => {
  const observations = [
    { entered: 30, survived: 30, context: { kind: 'a' } },
    { entered: 30, survived: 22, context: { kind: 'b' } },
    { entered: 30, survived: 20, context: { kind: 'c' } },
  ]
  const predicted = predictShare(fitRates({ observations, factors: ['kind'] }), { kind: 'a' })
  expect(predicted.mean).toBeGreaterThan(0.8)
  expect(predicted.mean).toBeLessThan(0.98)
  expect(predicted.low).toBeLessThan(0.9)
})

test('the spreads come widest first and include the one between batches', () => {
  const list = spreads(fitRates({ observations: inventedHistory(2, 200).past, factors }))
  expect(list.map(({ factor }) => factor).sort()).toEqual(['batch', 'grafter', 'kind', 'year'])
  for (let i = 1; i < list.length; i++) expect(list[i]!.sdLogit).toBeLessThanOrEqual(list[i - 1]!.sdLogit)
})

test('what cannot be counted is refused by name', () => {
  expect(() => fitRates({ observations: [], factors: [] })).toThrow(
    'fitRates: observations and facts must not both be empty',
  )
  expect(() => fitRates({ observations: [{ entered: 5, survived: 6, context: {} }], factors: [] })).toThrow(
    'fitRates: survived must be a whole number of 0 to 5, got 6',
  )
  const model = fitRates({ observations: [{ entered: 5, survived: 4, context: {} }], factors: [] })
  expect(() => levelEstimates(model, 'bench')).toThrow('factor must be one that the model has, got bench')
})
