import { requireAbove, requireWhole, requireWithin } from '../bounds.ts'
import { normalCdf } from '../distributions/normal.ts'
import { normalRule } from '../numerics/gauss-hermite.ts'

/** Stems of a batch measured on one day, at so many degree-days since it was started. */
export interface CaliperSample {
  readonly degreeDays: number
  readonly meanMm: number
  readonly sdMm: number
  /** Stems measured. */
  readonly number: number
}

export interface CaliperInput {
  /** At least one; a starting guess may stand as a sample of few stems. */
  readonly samples: readonly CaliperSample[]
  /** Growth expected beforehand, in mm per 100 degree-days: mean and standard deviation between seasons and batches. */
  readonly expectedRate: { readonly mean: number; readonly sd: number }
}

export interface CaliperGrowth {
  /** mm per 100 degree-days, and its standard error. */
  readonly rate: number
  readonly rateStandardError: number
  /** Spread over mean, taken as the same at every age. */
  readonly coefficientOfVariation: number
  /** Mean caliper at `centre` degree-days, its variance, and the variances that let it be carried to other days. */
  readonly centre: number
  readonly meanMm: number
  readonly meanVariance: number
}

/** What a straight line misses of a batch's growth: 3 % of the mean, added to each sample's own error. Our choice. */
const MISFIT = 0.03
/** Coefficient of variation that is usual in seedling stocks, worth so many stems. Common practice, no source. */
const USUAL_VARIATION = 0.2
const USUAL_WORTH = 5

/**
 * Growth of stems with thermal time: mean caliper is a straight line in degree-days, spread keeps step with the mean.
 * Weighted regression of the samples' means, with the expected rate as a normal belief; coefficient of variation pooled
 * over the samples.
 *
 * @param input samples in any order; calipers in mm, degree-days 0 or more
 * @returns good between and a little beyond the samples; growth that levels off late in the season is not modelled
 * @throws RangeError for an argument out of range
 * @source straight growth in degree-days is common practice; weighted regression with a prior: Gelman et al. 2013,
 *   Bayesian Data Analysis, ch. 14
 * @example fitCaliper({ samples: [{ degreeDays: 800, meanMm: 7, sdMm: 1.2, number: 30 }],
 *   expectedRate: { mean: 0.3, sd: 0.1 } }).coefficientOfVariation // 0.1759
 */
export function fitCaliper(input: CaliperInput): CaliperGrowth {
  const { samples, expectedRate } = input
  if (samples.length === 0) throw new RangeError('fitCaliper: samples must not be empty')
  requireAbove('fitCaliper', 'expectedRate.sd', expectedRate.sd, 0)
  let squares = USUAL_WORTH * USUAL_VARIATION ** 2
  let stems = USUAL_WORTH
  let weightSum = 0
  let dayMoment = 0
  const points = samples.map(({ degreeDays, meanMm, sdMm, number }) => {
    requireWithin('fitCaliper', 'degreeDays', degreeDays, 0, 1e6)
    requireAbove('fitCaliper', 'meanMm', meanMm, 0)
    requireWithin('fitCaliper', 'sdMm', sdMm, 0, 1e4)
    requireWhole('fitCaliper', 'number', number, 1)
    if (number > 1) {
      squares += (number - 1) * (sdMm / meanMm) ** 2
      stems += number - 1
    }
    return { degreeDays, meanMm, number }
  })
  const coefficientOfVariation = Math.sqrt(squares / stems)
  const weighted = points.map(point => {
    const variance =
      (coefficientOfVariation * point.meanMm) ** 2 / point.number + (MISFIT * point.meanMm) ** 2
    weightSum += 1 / variance
    dayMoment += point.degreeDays / variance
    return { ...point, weight: 1 / variance }
  })
  const centre = dayMoment / weightSum
  let meanMm = 0
  let information = (100 / expectedRate.sd) ** 2
  let slope = (expectedRate.mean / 100) * information
  for (const { degreeDays, meanMm: own, weight } of weighted) {
    meanMm += (weight * own) / weightSum
    information += weight * (degreeDays - centre) ** 2
    slope += weight * (degreeDays - centre) * own
  }
  return {
    rate: (100 * slope) / information,
    rateStandardError: 100 / Math.sqrt(information),
    coefficientOfVariation,
    centre,
    meanMm,
    meanVariance: 1 / weightSum,
  }
}

export interface CaliperAt {
  /** Mean caliper expected, its standard error, and the spread of stems about it. */
  readonly meanMm: number
  readonly standardErrorMm: number
  readonly sdMm: number
}

/**
 * Mean and spread of a batch's calipers when so many degree-days have gone by; stems do not shrink below 0.1 mm.
 * @throws RangeError for an argument out of range
 * @source as `fitCaliper`
 * @example caliperAt(fitCaliper({ samples: [{ degreeDays: 800, meanMm: 7, sdMm: 1.2, number: 30 }],
 *   expectedRate: { mean: 0.3, sd: 0.1 } }), 1200).meanMm // 8.2
 */
export function caliperAt(growth: CaliperGrowth, degreeDays: number): CaliperAt {
  requireWithin('caliperAt', 'degreeDays', degreeDays, 0, 1e6)
  const ahead = degreeDays - growth.centre
  const meanMm = Math.max(growth.meanMm + (growth.rate / 100) * ahead, 0.1)
  const variance = growth.meanVariance + ((growth.rateStandardError / 100) * ahead) ** 2
  return { meanMm, standardErrorMm: Math.sqrt(variance), sdMm: growth.coefficientOfVariation * meanMm }
}

export interface ShareInside {
  /** Expected share of stems from least to most mm, and where it lies nine times in ten. */
  readonly share: number
  readonly low: number
  readonly high: number
}

/**
 * Share of a batch whose caliper lies inside [leastMm, mostMm] when so many degree-days have gone by: workable for a
 * graft, or saleable. Averaged over what is not known of the mean.
 *
 * @returns shares 0 to 1; stems taken as normal about their mean
 * @throws RangeError for an argument out of range
 * @source normal law of a length, common practice
 * @example shareInsideCaliper(fitCaliper({ samples: [{ degreeDays: 800, meanMm: 7, sdMm: 1.2, number: 30 }],
 *   expectedRate: { mean: 0.3, sd: 0.1 } }), 1200, 6, 10).share // 0.807
 */
export function shareInsideCaliper(
  growth: CaliperGrowth,
  degreeDays: number,
  leastMm: number,
  mostMm: number,
): ShareInside {
  requireWithin('shareInsideCaliper', 'leastMm', leastMm, 0, mostMm)
  const { meanMm, standardErrorMm } = caliperAt(growth, degreeDays)
  const { points, weights } = normalRule(40)
  const cases = points.map((point, i) => {
    const mean = Math.max(meanMm + standardErrorMm * point, 0.1)
    const sd = growth.coefficientOfVariation * mean
    const above = mostMm === Number.POSITIVE_INFINITY ? 1 : normalCdf((mostMm - mean) / sd)
    return { share: above - normalCdf((leastMm - mean) / sd), weight: weights[i]! }
  })
  const sorted = cases.toSorted((a, b) => a.share - b.share)
  const quantile = (at: number) => {
    let sum = 0
    for (const { share, weight } of sorted) {
      sum += weight
      if (sum >= at) return share
    }
    return sorted.at(-1)!.share
  }
  return {
    share: cases.reduce((sum, { share, weight }) => sum + weight * share, 0),
    low: quantile(0.05),
    high: quantile(0.95),
  }
}
