import { requireAbove, requireWithin } from '../bounds.ts'
import { normalCdf, normalQuantile } from '../distributions/normal.ts'
import { normalRule } from '../numerics/gauss-hermite.ts'
import { curvature, minimise, withSlope } from '../numerics/quasi-newton.ts'
import { invertPositiveDefinite } from '../numerics/small-cholesky.ts'
import type { LogNormalTime } from './take-curve.ts'

/** How long a batch was in a step: exactly (from = to), between two looks, or so far (to = Infinity: unfinished). */
export interface DurationObservation {
  readonly from: number
  readonly to: number
  /** Batches of one group (protocol, season) share a typical time of their own; one without a group is of its own. */
  readonly group?: string
}

/** What is believed beforehand: nine in ten batches take low to high; worth this many batches of one's own. */
export interface DurationBelief extends LogNormalTime {
  readonly worthBatches: number
}

export interface DurationModel {
  readonly meanLog: number
  readonly standardError: number
  /** Standard deviation of log time from batch to batch within a group, and between groups. */
  readonly within: number
  readonly between: number
  /** Each group's departure from the mean, drawn towards 0 as far as its batches are few. */
  readonly groups: ReadonlyMap<
    string,
    { readonly effect: number; readonly variance: number; readonly batches: number }
  >
  /** Of the observations, density in the unit of time; beliefs left out. */
  readonly logLikelihood: number
}

/**
 * Time in a step, in days or degree-days: log-normal, with batches not yet finished counted as longer than they have
 * been so far, and groups drawn towards each other. Maximum likelihood; the group effect is integrated out by
 * 15-point adaptive quadrature.
 *
 * @param belief adds a normal for the mean of log time and keeps both spreads near its own; left out, plain likelihood
 * @throws RangeError without observations and belief, for times not above 0 or to < from, or if every batch is unfinished
 *   and nothing is believed
 * @source Lawless 2003, Statistical Models and Methods for Lifetime Data, ch. 5; from memory; checked against R's
 *   survreg and lme4 (outside checks)
 * @example Math.exp(fitStepDuration([{ from: 20, to: 20 }, { from: 28, to: 28 }, { from: 25, to: Infinity
 *   }]).meanLog) // 25.32
 */
export function fitStepDuration(
  observations: readonly DurationObservation[],
  belief?: DurationBelief,
): DurationModel {
  for (const { from, to } of observations) {
    requireWithin('fitStepDuration', 'from', from, 0, Number.MAX_VALUE)
    if (!(to >= from && to > 0))
      throw new RangeError(`fitStepDuration: to must be from or later, got ${from} to ${to}`)
  }
  if (belief !== undefined) {
    requireAbove('fitStepDuration', 'belief.sdLog', belief.sdLog, 0)
    requireAbove('fitStepDuration', 'belief.worthBatches', belief.worthBatches, 0)
  } else if (!observations.some(({ to }) => Number.isFinite(to)))
    throw new RangeError('fitStepDuration: observations must have a finished batch where nothing is believed')

  const named = new Map<string, DurationObservation[]>()
  observations.forEach((observation, i) => {
    const key = observation.group ?? `\u0000${i}`
    named.set(key, [...(named.get(key) ?? []), observation])
  })
  const grouped = observations.some(({ group }) => group !== undefined)
  const lists = [...named.values()]
  const finished = observations.filter(({ to }) => Number.isFinite(to))
  const middle = (o: DurationObservation) => Math.log(Math.max((o.from + o.to) / 2, 1e-9))
  const mean0 = belief?.meanLog ?? finished.reduce((sum, o) => sum + middle(o), 0) / finished.length
  const spread0 =
    belief?.sdLog ??
    Math.max(
      0.05,
      Math.sqrt(finished.reduce((sum, o) => sum + (middle(o) - mean0) ** 2, 0) / finished.length),
    )

  const likelihood = (at: Float64Array): number =>
    lists.reduce(
      (sum, list) => sum + groupIntegral(list, at[0]!, Math.exp(at[1]!), grouped ? Math.exp(at[2]!) : 0).log,
      0,
    )
  const objective = (at: Float64Array): number => {
    if (at[1]! < Math.log(0.005) || at[1]! > Math.log(5)) return Number.NaN
    if (grouped && (at[2]! < Math.log(1e-3) || at[2]! > Math.log(5))) return Number.NaN
    let value = -likelihood(at)
    if (belief !== undefined) {
      value += (0.5 * belief.worthBatches * (at[0]! - belief.meanLog) ** 2) / belief.sdLog ** 2
      value += 0.5 * ((at[1]! - Math.log(belief.sdLog)) / 0.5) ** 2
      if (grouped) value += 0.5 * ((at[2]! - Math.log(belief.sdLog / 2)) / 0.7) ** 2
    }
    return value
  }
  const start = Float64Array.from([mean0, Math.log(spread0), ...(grouped ? [Math.log(spread0 / 2)] : [])])
  const slopes = withSlope(objective, 1e-5)
  const found = minimise(slopes, start, {
    scale: Float64Array.from(start, () => 0.2),
    stepAtMost: 1,
    fallBelow: 1e-10,
  })
  const covariance = invertPositiveDefinite(curvature(slopes, found, 1e-3), start.length)
  const meanLog = found.at[0]!
  const within = Math.exp(found.at[1]!)
  const between = grouped ? Math.exp(found.at[2]!) : 0
  return {
    meanLog,
    standardError: covariance === undefined ? within : Math.sqrt(covariance[0]!),
    within,
    between,
    groups: new Map(
      [...named]
        .filter(([key]) => !key.startsWith('\u0000'))
        .map(([key, list]) => {
          const { effect, variance } = groupIntegral(list, meanLog, within, between)
          return [key, { effect, variance, batches: list.length }]
        }),
    ),
    logLikelihood: likelihood(found.at),
  }
}

/** Log-likelihood of one group's batches with its effect integrated out; posterior mean and variance of the effect. */
function groupIntegral(
  list: readonly DurationObservation[],
  meanLog: number,
  within: number,
  between: number,
) {
  const log = (effect: number) => list.reduce((sum, o) => sum + logDensity(o, meanLog + effect, within), 0)
  if (between === 0) return { log: log(0), effect: 0, variance: 0 }
  const at = (z: number) => log(between * z) - 0.5 * z * z
  let z = 0
  let width = 1
  for (let round = 0; round < 50; round++) {
    const h = 1e-4
    const here = at(z)
    const above = at(z + h)
    const below = at(z - h)
    const slope = (above - below) / (2 * h)
    const bend = Math.min((above - 2 * here + below) / (h * h), -0.5)
    width = 1 / Math.sqrt(-bend)
    const step = Math.max(-2, Math.min(2, -slope / bend))
    z += step
    if (Math.abs(step) < 1e-7) break
  }
  const rule = normalRule(15)
  const highest = at(z)
  let total = 0
  let first = 0
  let second = 0
  rule.points.forEach((node, k) => {
    const point = z + width * node
    const weight = rule.weights[k]! * Math.exp(at(point) - highest + 0.5 * node * node)
    total += weight
    first += weight * point
    second += weight * point * point
  })
  const mean = first / total
  return {
    log: highest + Math.log(width * total),
    effect: between * mean,
    variance: between * between * Math.max(second / total - mean * mean, 0),
  }
}

function logDensity({ from, to }: DurationObservation, meanLog: number, sdLog: number): number {
  if (to === from) {
    const z = (Math.log(to) - meanLog) / sdLog
    return -0.5 * z * z - Math.log(sdLog * to) - 0.5 * Math.log(2 * Math.PI)
  }
  const low = from > 0 ? (Math.log(from) - meanLog) / sdLog : Number.NEGATIVE_INFINITY
  const high = Number.isFinite(to) ? (Math.log(to) - meanLog) / sdLog : Number.POSITIVE_INFINITY
  // In the upper half, the difference of upper tails keeps its digits.
  const chance = low > 0 ? cdf(-low) - cdf(-high) : cdf(high) - cdf(low)
  return Math.log(Math.max(chance, 1e-300))
}

const cdf = (z: number) =>
  z === Number.POSITIVE_INFINITY ? 1 : z === Number.NEGATIVE_INFINITY ? 0 : normalCdf(z)

/**
 * How long the next batch will be in the step. A group not seen before varies by the spread between groups too.
 * @returns log-normal time; the uncertainty of the mean is in its spread
 * @source as `fitStepDuration`
 * @example durationQuantile(predictDuration(fitStepDuration([{ from: 20, to: 20 }, { from: 28, to: 28 }, { from:
 *   25, to: Infinity }])), 0.5) // 25.32
 */
export function predictDuration(model: DurationModel, group?: string): LogNormalTime {
  const known = group === undefined ? undefined : model.groups.get(group)
  const variance =
    model.within ** 2 + model.standardError ** 2 + (known === undefined ? model.between ** 2 : known.variance)
  return { meanLog: model.meanLog + (known?.effect ?? 0), sdLog: Math.sqrt(variance) }
}

/**
 * The time in the step that a share of batches does not exceed, given that this one has been in it for `soFar`.
 * @param share between 0 and 1: 0.5 is the middle
 * @throws RangeError for an argument out of range
 * @source log-normal law cut off below; no source needed
 * @example durationQuantile({ meanLog: Math.log(28), sdLog: 0.2 }, 0.5, 0) // 28
 */
export function durationQuantile(time: LogNormalTime, share: number, soFar = 0): number {
  requireWithin('durationQuantile', 'share', share, 1e-9, 1 - 1e-9)
  requireWithin('durationQuantile', 'soFar', soFar, 0, Number.MAX_VALUE)
  const late = soFar > 0 ? (Math.log(soFar) - time.meanLog) / time.sdLog : Number.NEGATIVE_INFINITY
  const stays = 1 - share
  const quantile = late > FAR_TAIL ? farTailQuantile(late, stays) : -normalQuantile(stays * cdf(-late))
  return Math.max(soFar, Math.exp(time.meanLog + time.sdLog * quantile))
}

/** Standard deviations beyond which the chance left of a normal law comes near the least number a double holds. */
const FAR_TAIL = 30

/**
 * The z that a share of what lies above `from` is beyond. So far out the chance above z is the density over z, so that
 * z²/2 + ln z grows by −ln(share); ln z hardly moves and is taken from a first step without it.
 * @source Abramowitz and Stegun 1964, Handbook of Mathematical Functions, 26.2.12 (first term), from memory
 */
function farTailQuantile(from: number, share: number): number {
  const first = from ** 2 - 2 * Math.log(share)
  return Math.sqrt(first - Math.log(first / from ** 2))
}
