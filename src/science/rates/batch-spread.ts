import { normalRule } from '../numerics/gauss-hermite.ts'
import { logChoose } from '../numerics/log-choose.ts'
import { logOnePlusExp, shareOfLogit } from '../numerics/logit.ts'
import { curvature, minimise, withSlope } from '../numerics/quasi-newton.ts'
import { invertPositiveDefinite } from '../numerics/small-cholesky.ts'
import type { LogisticInput } from './logistic.ts'

export interface BatchSpreadFit {
  readonly estimates: readonly number[]
  readonly standardErrors: readonly number[]
  /** Standard deviation between rows on the logit scale, and its standard error. */
  readonly spread: number
  readonly spreadStandardError: number
  /** With the binomial coefficients. */
  readonly logLikelihood: number
  /** For each row: its own share, drawn towards the fitted one; mean, spread and most likely value. */
  readonly shares: readonly { readonly mean: number; readonly sd: number; readonly mostLikely: number }[]
}

/**
 * Logistic regression whose rows (batches, plates) differ by more than chance: logit p = design · estimates + b,
 * b normal with one spread. The spread is integrated out row by row by adaptive Gauss–Hermite quadrature, so
 * this is exact where `fitRates` approximates; but it knows no crossed effects. For one table or one trial.
 *
 * @param points of the quadrature, 1 (Laplace) to 64; 25 gives the likelihood to 1e-8
 * @source Pinheiro & Bates 1995, J. Comput. Graph. Stat. 4:12-35, from memory; checked against lme4 and published
 *   maximum-likelihood estimates (outside checks)
 * @example fitBatchSpread({ entered: [40, 40, 40], survived: [36, 24, 30], design: [1, 1, 1], columns: 1 }).spread
 *   // 0.6002
 */
export function fitBatchSpread(input: LogisticInput, points = 25): BatchSpreadFit {
  const { columns } = input
  const size = columns + 1
  const start = new Float64Array(size)
  let plants = 0
  let alive = 0
  for (let r = 0; r < input.entered.length; r++) {
    plants += input.entered[r]!
    alive += input.survived[r]!
  }
  start[0] = Math.log((alive + 0.5) / (plants - alive + 0.5))
  start[columns] = Math.log(0.4)
  const scale = new Float64Array(size).fill(0.3)
  const objective = withSlope(at => {
    const spread = Math.exp(at[columns]!)
    if (!(spread > 1e-4 && spread < 30)) return Number.NaN
    return -batchSpreadLogLikelihood(input, at.subarray(0, columns), spread, points)
  }, 1e-4)
  const found = minimise(objective, start, { scale, stepAtMost: 1.5, fallBelow: 1e-10 })
  const covariance = invertPositiveDefinite(curvature(objective, found, 1e-3), size)
  const error = (i: number) => (covariance === undefined ? Number.NaN : Math.sqrt(covariance[i * size + i]!))
  const spread = Math.exp(found.at[columns]!)
  return {
    estimates: Array.from(found.at.subarray(0, columns)),
    standardErrors: Array.from({ length: columns }, (_, i) => error(i)),
    spread,
    spreadStandardError: spread * error(columns),
    logLikelihood: -found.value,
    shares: batchShares(input, found.at, spread, points),
  }
}

/** Each row's own share at given fixed effects and spread: mean, spread and most likely value. */
export function batchShares(
  input: LogisticInput,
  estimates: Float64Array,
  spread: number,
  points: number,
): BatchSpreadFit['shares'] {
  return Array.from({ length: input.entered.length }, (_, r) => {
    const { mean, sd, mostLikely } = integrateRow(input, r, offsetOf(input, estimates, r), spread, points)
    return { mean, sd, mostLikely }
  })
}

/** Log-likelihood of all rows at given fixed effects and spread, binomial coefficients included. */
export function batchSpreadLogLikelihood(
  input: LogisticInput,
  estimates: Float64Array,
  spread: number,
  points: number,
): number {
  let sum = 0
  for (let r = 0; r < input.entered.length; r++)
    sum += integrateRow(input, r, offsetOf(input, estimates, r), spread, points).logLikelihood
  return sum
}

function offsetOf({ design, columns }: LogisticInput, estimates: Float64Array, r: number): number {
  let sum = 0
  for (let i = 0; i < columns; i++) sum += design[r * columns + i]! * estimates[i]!
  return sum
}

function integrateRow(input: LogisticInput, r: number, offset: number, spread: number, points: number) {
  const n = input.entered[r]!
  const y = input.survived[r]!
  // Most likely standardised effect z and the curvature there.
  let z = 0
  let information = 1
  for (let round = 0; round < 60; round++) {
    const share = shareOfLogit(offset + spread * z)
    information = 1 + spread * spread * n * share * (1 - share)
    const step = (spread * (y - n * share) - z) / information
    z += Math.max(-2, Math.min(2, step))
    if (Math.abs(step) < 1e-12) break
  }
  const width = 1 / Math.sqrt(information)
  const log = (at: number) =>
    y * (offset + spread * at) - n * logOnePlusExp(offset + spread * at) - 0.5 * at * at
  const highest = log(z)
  const rule = normalRule(points)
  let total = 0
  let first = 0
  let second = 0
  for (let k = 0; k < points; k++) {
    const node = rule.points[k]!
    const at = z + width * node
    const weight = rule.weights[k]! * Math.exp(log(at) - highest + 0.5 * node * node)
    const share = shareOfLogit(offset + spread * at)
    total += weight
    first += weight * share
    second += weight * share * share
  }
  const mean = first / total
  return {
    logLikelihood: logChoose(n, y) + highest + Math.log(width * total),
    mean,
    sd: Math.sqrt(Math.max(second / total - mean * mean, 0)),
    mostLikely: shareOfLogit(offset + spread * z),
  }
}
