import { requireAbove, requireWhole } from '../bounds.ts'
import { logitMoments } from '../numerics/logistic-normal.ts'
import type { SpreadBelief } from './laplace.ts'
import { fitMixedLogistic, type MixedLogisticFit } from './mixed-logistic.ts'
import { type Precisions, precisionsOf } from './precisions.ts'

/** Names of levels by factor: { kind: 'plum on St Julien', step: 'take', grafter: 'Ana', year: '2026' }. */
export type RateContext = Readonly<Record<string, string | undefined>>

/** One finished count: a batch that went through a step. */
export interface RateObservation {
  readonly entered: number
  readonly survived: number
  /** What is known of it; a factor left out is not known. */
  readonly context: RateContext
  /** What its logit is known to be but for the intercept and effects (an offset); 0 unless told. */
  readonly offsetLogit?: number
  /** Counts with the same batch share its luck; without one, a count is a batch of its own. */
  readonly batch?: string
}

/** What is believed before any count: the next batch's share in a context, as a Beta. */
export interface RateFact {
  readonly context: RateContext
  readonly alpha: number
  readonly beta: number
  readonly offsetLogit?: number
  /** How many batches of one's own it weighs. */
  readonly worthBatches: number
}

export interface FitRatesInput {
  readonly observations: readonly RateObservation[]
  /** Factors whose levels may differ: their spread is learnt, and small levels borrow from the others. */
  readonly factors: readonly string[]
  readonly facts?: readonly RateFact[]
  /** How far levels of a factor are believed to lie apart, and how many levels that belief is worth. */
  readonly spreads?: Readonly<Record<string, SpreadBelief>>
  /** The same of batches. */
  readonly batchSpread?: SpreadBelief
}

/** One factor of a fitted model: its levels and how far they lie apart. */
export interface RateFactor {
  readonly name: string
  readonly levelNumbers: ReadonlyMap<string, number>
  /** Batches and plants counted at each level, in the order of the numbers. */
  readonly batches: Float64Array
  readonly entered: Float64Array
  readonly survived: Float64Array
  /** Standard deviation between levels, on the logit scale. */
  readonly spread: number
  /** What a level not yet seen must be taken to vary by: the square of the spread, its own uncertainty included. */
  readonly varianceOfNew: number
}

export interface RateModel {
  readonly factors: readonly RateFactor[]
  readonly batches: number
  /** Logit of the share where every factor is at its average. */
  readonly intercept: number
  /** Standard deviation of batches about what their context lets expect, on the logit scale. */
  readonly spreadBetweenBatches: number
  readonly varianceOfNewBatch: number
  readonly fit: MixedLogisticFit
  readonly precisions: Precisions
}

/**
 * P(σ > 1.5) = 1 in 20 beforehand for a spread on the logit scale of which nothing is told: the exponential rate that
 * says so. Our choice: between-cultivar and between-month spreads of 0.3 to 1 are usual in trial tables.
 */
const SPREAD_RATE = Math.log(20) / 1.5

/**
 * Learns from finished counts how rates differ by kind, step, cultivar, month, grafter, year …, each level drawn
 * towards the average as far as its own counts are few, and how much batches differ for no known reason.
 *
 *   survived ~ Binomial(entered, p),  logit p = offset + intercept + Σ effect(factor, level) + effect(batch)
 *
 * Effects are normal with a spread for each factor and one for batches. A fact enters as a belief about its
 * context's logit, normal with the mean ψ(α) − ψ(β) of its Beta and the variance (ψ′(α) + ψ′(β)) / worthBatches.
 * For an interaction (kind at step), give it a factor of its own with joined names.
 * A spread has an exponential prior with P(spread > 1.5) = 1 in 20, or, where told, that of so many levels seen.
 *
 * @throws RangeError for counts that are not whole plants, no observation and no fact, or a fit that does not settle
 * @source Breslow & Clayton 1993, J. Am. Stat. Assoc. 88:9-25 (Laplace); agrees with lme4 (see outside checks)
 * @example fitRates({ observations: [{ entered: 40, survived: 36, context: { kind: 'plum' } }, { entered: 40,
 *   survived: 24, context: { kind: 'fig' } }], factors: ['kind'] }).intercept // 1.251
 */
export function fitRates(input: FitRatesInput): RateModel {
  const facts = input.facts ?? []
  for (const { entered, survived } of input.observations) {
    requireWhole('fitRates', 'entered', entered, 0)
    requireWhole('fitRates', 'survived', survived, 0, entered)
  }
  for (const fact of facts) {
    requireAbove('fitRates', 'fact.alpha', fact.alpha, 0)
    requireAbove('fitRates', 'fact.beta', fact.beta, 0)
    requireAbove('fitRates', 'fact.worthBatches', fact.worthBatches, 0)
  }
  const beliefs = [...input.factors.map(name => input.spreads?.[name]), input.batchSpread]
  for (const belief of beliefs) {
    if (belief === undefined) continue
    requireAbove('fitRates', 'spread.sdLogit', belief.sdLogit, 0)
    requireAbove('fitRates', 'spread.worthLevels', belief.worthLevels, 0)
  }
  const observations = input.observations.filter(({ entered }) => entered > 0)
  const rows = observations.length + facts.length
  if (rows === 0) throw new RangeError('fitRates: observations and facts must not both be empty')

  const factorCount = input.factors.length
  const levelNumbers = input.factors.map(() => new Map<string, number>())
  const levels = new Int32Array(rows * factorCount).fill(-1)
  const all = [...observations, ...facts]
  all.forEach(({ context }, r) => {
    input.factors.forEach((name, f) => {
      const level = context[name]
      if (level === undefined) return
      const numbers = levelNumbers[f]!
      const number = numbers.get(level) ?? numbers.size
      numbers.set(level, number)
      levels[r * factorCount + f] = number
    })
  })
  const batchNumbers = new Map<string, number>()
  const batches = new Int32Array(rows).fill(-1)
  let batchCount = 0
  observations.forEach(({ batch }, r) => {
    const known = batch === undefined ? undefined : batchNumbers.get(batch)
    const number = known ?? batchCount++
    if (batch !== undefined) batchNumbers.set(batch, number)
    batches[r] = number
  })
  const fit = fitMixedLogistic(
    {
      entered: Float64Array.from({ length: rows }, (_, r) => observations[r]?.entered ?? 0),
      survived: Float64Array.from({ length: rows }, (_, r) => observations[r]?.survived ?? 0),
      fixed: new Float64Array(rows).fill(1),
      fixedCount: 1,
      levels,
      levelCounts: levelNumbers.map(numbers => numbers.size),
      batches,
      batchCount,
      offsets: Float64Array.from(all, ({ offsetLogit }) => offsetLogit ?? 0),
      beliefLogit: Float64Array.from({ length: rows }, (_, r) => {
        const fact = facts[r - observations.length]
        return fact === undefined ? 0 : logitMoments(fact.alpha, fact.beta).mean
      }),
      beliefPrecision: Float64Array.from({ length: rows }, (_, r) => {
        const fact = facts[r - observations.length]
        return fact === undefined ? 0 : fact.worthBatches / logitMoments(fact.alpha, fact.beta).variance
      }),
    },
    { spreadRate: SPREAD_RATE, beliefs },
  )
  const size = 1 + fit.spreads.length
  const varianceOfNew = (s: number): number => {
    const spread = fit.spreads[s]
    // Without any batch there is only the prior of the spread: mean square of an exponential.
    if (spread === undefined) return beliefs[s] ? beliefs[s].sdLogit ** 2 : 2 / SPREAD_RATE ** 2
    const ofLog = fit.covariance?.[(1 + s) * size + 1 + s] ?? 0.5
    return spread ** 2 * Math.exp(2 * Math.min(ofLog, 0.5))
  }
  const factors = input.factors.map((name, f): RateFactor => {
    const count = levelNumbers[f]!.size
    const tally = {
      batches: new Float64Array(count),
      entered: new Float64Array(count),
      survived: new Float64Array(count),
    }
    observations.forEach(({ entered, survived }, r) => {
      const level = levels[r * factorCount + f]!
      if (level < 0) return
      tally.batches[level]! += 1
      tally.entered[level]! += entered
      tally.survived[level]! += survived
    })
    return {
      name,
      levelNumbers: levelNumbers[f]!,
      ...tally,
      spread: fit.spreads[f] ?? 0,
      varianceOfNew: varianceOfNew(f),
    }
  })
  return {
    factors,
    batches: batchCount,
    intercept: fit.fixed[0]!,
    spreadBetweenBatches: batchCount > 0 ? fit.spreads[factorCount]! : Math.sqrt(varianceOfNew(factorCount)),
    varianceOfNewBatch: varianceOfNew(factorCount),
    fit,
    precisions: precisionsOf(fit),
  }
}
