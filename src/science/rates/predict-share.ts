import { normalQuantile } from '../distributions/normal.ts'
import { betaOfMoments, shareMoments } from '../numerics/logistic-normal.ts'
import { shareOfLogit } from '../numerics/logit.ts'
import type { RateContext, RateModel } from './fit-rates.ts'
import { varianceOfLogit } from './precisions.ts'

export interface PredictedShare {
  readonly alpha: number
  readonly beta: number
  readonly mean: number
  /** Nine of ten future batches lie from low to high. */
  readonly low: number
  readonly high: number
  /** How many batches of exactly this context would tell as much about its average as is known. */
  readonly worthBatches: number
  readonly logit: {
    readonly mean: number
    /** Of the future batch: the sum of the parts. */
    readonly variance: number
    readonly parts: {
      /** Not knowing the average of what has been seen. */
      readonly estimate: number
      /** From batch to batch. */
      readonly batch: number
      /** Factors left open or at a level never seen (next year, a new grafter): what such levels differ by. */
      readonly open: Readonly<Record<string, number>>
    }
  }
}

const NINE_OF_TEN = normalQuantile(0.95)

/**
 * The Beta for the share of a future batch in any context, seen or unseen.
 *
 * Its logit is normal: mean from the fitted effects; variance from their uncertainty, from every factor left out
 * or at a new level, and from batch to batch. The Beta has the mean and variance of that share.
 *
 * @param offsetLogit known part of its logit, as that of the counts; 0 unless told
 * @returns shares 0 to 1; intervals hold what they say within a few points (measured in bench/coverage)
 * @source as `fitRates`; moments of a logit-normal share by quadrature, matched by a Beta
 * @example predictShare(fitRates({ observations: [{ entered: 40, survived: 36, context: { kind: 'plum' } }, {
 *   entered: 40, survived: 24, context: { kind: 'fig' } }], factors: ['kind'] }), { kind: 'plum' }).mean // 0.7866
 */
export function predictShare(model: RateModel, context: RateContext, offsetLogit = 0): PredictedShare {
  const columns: { column: number; sign: 1 }[] = []
  const open: Record<string, number> = {}
  let mean = offsetLogit + model.intercept
  model.factors.forEach((factor, f) => {
    const level = context[factor.name]
    const number = level === undefined ? undefined : factor.levelNumbers.get(level)
    if (number === undefined) {
      open[factor.name] = factor.varianceOfNew
      return
    }
    const column = model.fit.system.offsets[f]! + number
    columns.push({ column, sign: 1 })
    mean += model.fit.state.levelEffects[column]!
  })
  const estimate = varianceOfLogit(model.fit, model.precisions, [1], columns)
  const batch = model.varianceOfNewBatch
  const openSum = Object.values(open).reduce((sum, part) => sum + part, 0)
  const variance = estimate + batch + openSum
  const moments = shareMoments(mean, variance)
  const reach = NINE_OF_TEN * Math.sqrt(variance)
  const { alpha, beta } = betaOfMoments(moments.mean, moments.variance)
  return {
    alpha,
    beta,
    mean: moments.mean,
    low: shareOfLogit(mean - reach),
    high: shareOfLogit(mean + reach),
    worthBatches: batch / (estimate + openSum),
    logit: { mean, variance, parts: { estimate, batch, open } },
  }
}
