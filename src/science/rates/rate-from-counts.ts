import gammaln from '@stdlib/math-base-special-gammaln'

/** A share's Beta distribution: mean alpha / (alpha + beta). */
export interface BetaShare {
  readonly alpha: number
  readonly beta: number
}

/** Plants that entered a step in one batch, and how many of them came out alive. */
export interface RateCount {
  readonly entered: number
  readonly survived: number
}

export interface RateFromCountsInput {
  /** What is believed of the next batch's share before any count: its mean and its spread from batch to batch. */
  readonly prior: BetaShare
  /** Finished batches of this very kind, one entry a batch. */
  readonly counts: readonly RateCount[]
  /** How many batches of one's own the prior's mean is worth; 2 unless told (our choice, no source). */
  readonly priorWorthBatches?: number
}

const GRID_POINTS = 15
/** How far the spread between batches may be from the prior's, as a standard deviation of its log (our choice). */
const SPREAD_PRIOR_SD = 0.6
const HIGHEST_LOG_RHO = Math.log(0.95)

/**
 * The Beta for the share of the next batch, learnt from batches of the same kind.
 *
 * Each batch has its own share, Beta(m(1−ρ)/ρ, (1−m)(1−ρ)/ρ); its count is then beta-binomial.
 * The prior is split into what batches differ among each other and what is not known of their mean m:
 * with variance V of the prior, the mean is worth k batches, so Var(m) = V/(k+1) and ρ is centred so
 * that the two add up to V. m and ρ (log-normal about its centre) are integrated on a grid that closes in on
 * the weight; the result has the mean and variance of the predictive distribution.
 * Without counts it is the prior itself; with many batches it is the beta-binomial fit to them.
 *
 * @param input prior alpha, beta > 0; counts in whole plants, 0 ≤ survived ≤ entered; priorWorthBatches > 0
 * @returns alpha and beta of the next batch's share; grid error below 0.001 in the mean
 * @source Skellam 1948, J. R. Stat. Soc. B 10:257-261 (beta-binomial); the split of the prior is ours
 * @example rateFromCounts({ prior: { alpha: 12, beta: 8 }, counts: [{ entered: 50, survived: 45 }] }) // mean 0.66
 */
export function rateFromCounts(input: RateFromCountsInput): BetaShare {
  const { prior, counts } = input
  const worth = input.priorWorthBatches ?? 2
  if (!(prior.alpha > 0 && Number.isFinite(prior.alpha)))
    throw new RangeError(`rateFromCounts: prior.alpha must be above 0, got ${prior.alpha}`)
  if (!(prior.beta > 0 && Number.isFinite(prior.beta)))
    throw new RangeError(`rateFromCounts: prior.beta must be above 0, got ${prior.beta}`)
  if (!(worth > 0 && Number.isFinite(worth)))
    throw new RangeError(`rateFromCounts: priorWorthBatches must be above 0, got ${worth}`)
  for (const { entered, survived } of counts) {
    if (!(Number.isInteger(entered) && entered >= 0))
      throw new RangeError(`rateFromCounts: entered must be a whole number of 0 or more, got ${entered}`)
    if (!(Number.isInteger(survived) && survived >= 0 && survived <= entered))
      throw new RangeError(
        `rateFromCounts: survived must be a whole number of 0 to ${entered}, got ${survived}`,
      )
  }
  const seen = counts.filter(count => count.entered > 0)
  if (seen.length === 0) return { alpha: prior.alpha, beta: prior.beta }

  const mean0 = prior.alpha / (prior.alpha + prior.beta)
  const spreadOfOne = mean0 * (1 - mean0)
  const variance0 = spreadOfOne / (prior.alpha + prior.beta + 1)
  const meanVariance = variance0 / (worth + 1)
  const rho0 = (variance0 - meanVariance) / (spreadOfOne - meanVariance)
  const meanPrecision = spreadOfOne / meanVariance - 1
  const a = mean0 * meanPrecision
  const b = (1 - mean0) * meanPrecision

  const logPosterior = (logitMean: number, logRho: number): number => {
    const mean = 1 / (1 + Math.exp(-logitMean))
    const away = (logRho - Math.log(rho0)) / SPREAD_PRIOR_SD
    // The Jacobian of the logit turns the powers a − 1, b − 1 of the Beta density into a and b.
    return (
      -0.5 * away * away +
      a * Math.log(mean) +
      b * Math.log1p(-mean) +
      logLikelihood(seen, mean, Math.exp(logRho))
    )
  }

  let grid: Grid = {
    logitMean: { centre: Math.log(mean0 / (1 - mean0)), halfWidth: 8 },
    logRho: { centre: Math.log(rho0), halfWidth: 3 * SPREAD_PRIOR_SD },
  }
  // Each round looks closer at where the last one found the weight.
  for (let round = 0; round < 5; round++) {
    const closer = narrowed(grid, weigh(grid, logPosterior))
    const settled = closer.logitMean.halfWidth > 0.6 * grid.logitMean.halfWidth
    grid = closer
    if (settled) break
  }

  let total = 0
  let first = 0
  let second = 0
  for (const { logitMean, logRho, weight } of weigh(grid, logPosterior)) {
    const mean = 1 / (1 + Math.exp(-logitMean))
    total += weight
    first += weight * mean
    second += weight * (mean * mean + Math.exp(logRho) * mean * (1 - mean))
  }
  const mean = first / total
  const variance = second / total - mean * mean
  const precision = (mean * (1 - mean)) / variance - 1
  return { alpha: mean * precision, beta: (1 - mean) * precision }
}

interface Range {
  readonly centre: number
  readonly halfWidth: number
}
interface Grid {
  readonly logitMean: Range
  readonly logRho: Range
}
interface WeightedPoint {
  readonly logitMean: number
  readonly logRho: number
  readonly weight: number
}

/** The posterior at the points of a grid, scaled so that the highest weight is 1. */
function weigh(grid: Grid, logPosterior: (logitMean: number, logRho: number) => number): WeightedPoint[] {
  const points: { logitMean: number; logRho: number; log: number }[] = []
  for (let i = 0; i < GRID_POINTS; i++) {
    const logitMean = at(grid.logitMean, i)
    for (let j = 0; j < GRID_POINTS; j++) {
      const logRho = Math.min(at(grid.logRho, j), HIGHEST_LOG_RHO)
      points.push({ logitMean, logRho, log: logPosterior(logitMean, logRho) })
    }
  }
  const highest = Math.max(...points.map(point => point.log))
  return points.map(({ logitMean, logRho, log }) => ({ logitMean, logRho, weight: Math.exp(log - highest) }))
}

const at = ({ centre, halfWidth }: Range, i: number) =>
  centre - halfWidth + (2 * halfWidth * (i + 0.5)) / GRID_POINTS

/** The grid that reaches four and a half standard deviations around what the points weigh. */
function narrowed(before: Grid, points: readonly WeightedPoint[]): Grid {
  const range = (was: Range, of: (point: WeightedPoint) => number): Range => {
    let total = 0
    let first = 0
    for (const point of points) {
      total += point.weight
      first += point.weight * of(point)
    }
    const centre = first / total
    let square = 0
    for (const point of points) square += point.weight * (of(point) - centre) ** 2
    return { centre, halfWidth: Math.max(4.5 * Math.sqrt(square / total), (2 * was.halfWidth) / GRID_POINTS) }
  }
  return {
    logitMean: range(before.logitMean, point => point.logitMean),
    logRho: range(before.logRho, point => point.logRho),
  }
}

/** Beta-binomial log-likelihood of several batches, without the binomial coefficients. */
function logLikelihood(counts: readonly RateCount[], mean: number, rho: number): number {
  const precision = (1 - rho) / rho
  const a = mean * precision
  const b = (1 - mean) * precision
  const base = gammaln(a + b) - gammaln(a) - gammaln(b)
  let sum = 0
  for (const { entered, survived } of counts)
    sum += base + gammaln(a + survived) + gammaln(b + entered - survived) - gammaln(a + b + entered)
  return sum
}
