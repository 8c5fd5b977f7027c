import { normalQuantile } from '../distributions/normal.ts'
import { shareOfLogit } from '../numerics/logit.ts'
import type { RateContext, RateFactor, RateModel } from './fit-rates.ts'
import { varianceOfLogit } from './precisions.ts'

export interface LevelEstimate {
  readonly level: string
  /** Share of an average batch at this level, all other factors at their average; shrunken towards them all. */
  readonly share: number
  /** The share lies from low to high with a chance of nine in ten. */
  readonly low: number
  readonly high: number
  /** Logit less the average of all levels, and its standard error. */
  readonly effect: number
  readonly standardError: number
  /** Own counts behind it. */
  readonly batches: number
  readonly entered: number
  readonly survived: number
}

const NINE_OF_TEN = normalQuantile(0.95)

/**
 * Every level of a factor with an estimate that is fair to small numbers: a grafter with two batches is told
 * close to the average, with a wide interval. Order of first appearance.
 *
 * @throws RangeError for a factor that the model does not have
 * @source as `fitRates`
 * @example levelEstimates(fitRates({ observations: [{ entered: 40, survived: 36, context: { kind: 'plum' } }, {
 *   entered: 40, survived: 24, context: { kind: 'fig' } }], factors: ['kind'] }), 'kind')[0].share // 0.8295
 */
export function levelEstimates(model: RateModel, factorName: string): readonly LevelEstimate[] {
  const f = factorNumber(model, factorName)
  const factor = model.factors[f]!
  return [...factor.levelNumbers].map(([level, number]) => {
    const column = model.fit.system.offsets[f]! + number
    const effect = model.fit.state.levelEffects[column]!
    const only = [{ column, sign: 1 as const }]
    const reach = NINE_OF_TEN * Math.sqrt(varianceOfLogit(model.fit, model.precisions, [1], only))
    const logit = model.intercept + effect
    return {
      level,
      share: shareOfLogit(logit),
      low: shareOfLogit(logit - reach),
      high: shareOfLogit(logit + reach),
      effect,
      standardError: Math.sqrt(varianceOfLogit(model.fit, model.precisions, [0], only)),
      batches: factor.batches[number]!,
      entered: factor.entered[number]!,
      survived: factor.survived[number]!,
    }
  })
}

export interface LevelDifference {
  /** Logit of the first less logit of the second. */
  readonly effect: number
  readonly standardError: number
  readonly oddsRatio: number
  readonly oddsRatioLow: number
  readonly oddsRatioHigh: number
}

/**
 * Two levels of a factor, shrunken, with what they share taken into account; interval of nine in ten.
 * @throws RangeError for an argument out of range
 * @source as `fitRates`
 * @example levelDifference(fitRates({ observations: [{ entered: 40, survived: 36, context: { kind: 'plum' } }, {
 *   entered: 40, survived: 24, context: { kind: 'fig' } }], factors: ['kind'] }), 'kind', 'plum', 'fig').oddsRatio
 *   // 1.991
 */
export function levelDifference(
  model: RateModel,
  factorName: string,
  first: string,
  second: string,
): LevelDifference {
  const f = factorNumber(model, factorName)
  const column = (level: string): number => {
    const number = model.factors[f]!.levelNumbers.get(level)
    if (number === undefined)
      throw new RangeError(`levelDifference: level must be one that ${factorName} has, got ${level}`)
    return model.fit.system.offsets[f]! + number
  }
  const a = column(first)
  const b = column(second)
  const effect = model.fit.state.levelEffects[a]! - model.fit.state.levelEffects[b]!
  const columns = [
    { column: a, sign: 1 as const },
    { column: b, sign: -1 as const },
  ]
  const standardError = a === b ? 0 : Math.sqrt(varianceOfLogit(model.fit, model.precisions, [0], columns))
  return {
    effect,
    standardError,
    oddsRatio: Math.exp(effect),
    oddsRatioLow: Math.exp(effect - NINE_OF_TEN * standardError),
    oddsRatioHigh: Math.exp(effect + NINE_OF_TEN * standardError),
  }
}

/**
 * Logit of the share of an average batch of a context; what is not told, or was never seen, is average.
 * @source as `fitRates`
 * @example logitInContext(fitRates({ observations: [{ entered: 40, survived: 36, context: { kind: 'plum' } }, {
 *   entered: 40, survived: 24, context: { kind: 'fig' } }], factors: ['kind'] }), { kind: 'plum' }) // 1.582
 */
export function logitInContext(model: RateModel, context: RateContext, offsetLogit = 0): number {
  const { offsets } = model.fit.system
  return model.factors.reduce((logit, { name, levelNumbers }, f) => {
    const level = context[name]
    const number = level === undefined ? undefined : levelNumbers.get(level)
    return number === undefined ? logit : logit + model.fit.state.levelEffects[offsets[f]! + number]!
  }, model.intercept + offsetLogit)
}

/** How far levels of a factor lie apart: standard deviation on the logit scale, and as shares about the average. */
export interface FactorSpread {
  readonly factor: string
  readonly levels: number
  readonly sdLogit: number
  /** Nine of ten levels would lie from low to high if everything else were average. */
  readonly low: number
  readonly high: number
}

/**
 * The spread of every factor, widest first; batches (for no known reason) under the name given by `batchName`.
 * @source as `fitRates`
 * @example spreads(fitRates({ observations: [{ entered: 40, survived: 36, context: { kind: 'plum' } }, { entered:
 *   40, survived: 24, context: { kind: 'fig' } }], factors: ['kind'] })).map(({ sdLogit }) => sdLogit) // [0.5381,
 *   0.5381]
 */
export function spreads(model: RateModel, batchName = 'batch'): readonly FactorSpread[] {
  const asSpread = (factor: string, levels: number, sdLogit: number): FactorSpread => ({
    factor,
    levels,
    sdLogit,
    low: shareOfLogit(model.intercept - NINE_OF_TEN * sdLogit),
    high: shareOfLogit(model.intercept + NINE_OF_TEN * sdLogit),
  })
  return [
    ...model.factors.map(({ name, levelNumbers, spread }: RateFactor) =>
      asSpread(name, levelNumbers.size, spread),
    ),
    asSpread(batchName, model.batches, model.spreadBetweenBatches),
  ].sort((a, b) => b.sdLogit - a.sdLogit)
}

function factorNumber(model: RateModel, name: string): number {
  const f = model.factors.findIndex(factor => factor.name === name)
  if (f < 0) throw new RangeError(`rates: factor must be one that the model has, got ${name}`)
  return f
}
