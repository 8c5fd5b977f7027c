import gammaln from '@stdlib/math-base-special-gammaln'
import { logChoose } from '../numerics/log-choose.ts'
import { shareOfLogit } from '../numerics/logit.ts'
import { curvature, minimise, withSlope } from '../numerics/quasi-newton.ts'
import { invertPositiveDefinite } from '../numerics/small-cholesky.ts'
import type { LogisticInput } from './logistic.ts'

export interface BetaBinomialFit {
  readonly estimates: readonly number[]
  readonly standardErrors: readonly number[]
  /** Correlation of two plants of one row, 0 to 1: 1 / (alpha + beta + 1). */
  readonly correlation: number
  readonly correlationStandardError: number
  /** alpha + beta: rows differ as if each were this many plants' worth of evidence. */
  readonly precision: number
  readonly logLikelihood: number
}

/**
 * Beta-binomial regression by maximum likelihood: each row's share is Beta with mean of logit design · estimates
 * and one correlation for all rows. With one column of ones, alpha = mean · precision and a row's own share
 * given its count is Beta(alpha + survived, beta + dead).
 *
 * @source Crowder 1978, Applied Statistics 27:34-37 (the model); checked against VGAM (outside checks)
 * @example fitBetaBinomial({ entered: [40, 40, 40], survived: [36, 24, 30], design: [1, 1, 1], columns: 1
 *   }).correlation // 0.05866
 */
export function fitBetaBinomial(input: LogisticInput): BetaBinomialFit {
  const { columns, entered, survived, design } = input
  const size = columns + 1
  const logLikelihood = (at: Float64Array): number => {
    const correlation = shareOfLogit(at[columns]!)
    const precision = 1 / correlation - 1
    let sum = 0
    for (let r = 0; r < entered.length; r++) {
      let logit = 0
      for (let i = 0; i < columns; i++) logit += design[r * columns + i]! * at[i]!
      const mean = shareOfLogit(logit)
      sum += logChoose(entered[r]!, survived[r]!)
      sum += logBetaRatio(mean * precision, (1 - mean) * precision, survived[r]!, entered[r]! - survived[r]!)
    }
    return sum
  }
  const start = new Float64Array(size)
  let plants = 0
  let alive = 0
  for (let r = 0; r < entered.length; r++) {
    plants += entered[r]!
    alive += survived[r]!
  }
  start[0] = Math.log((alive + 0.5) / (plants - alive + 0.5))
  start[columns] = -3
  const objective = withSlope(
    at => (at[columns]! > -14 && at[columns]! < 6 ? -logLikelihood(at) : Number.NaN),
    1e-4,
  )
  const found = minimise(objective, start, {
    scale: new Float64Array(size).fill(0.3),
    stepAtMost: 1.5,
    fallBelow: 1e-10,
  })
  const covariance = invertPositiveDefinite(curvature(objective, found, 1e-3), size)
  const error = (i: number) => (covariance === undefined ? Number.NaN : Math.sqrt(covariance[i * size + i]!))
  const correlation = shareOfLogit(found.at[columns]!)
  return {
    estimates: Array.from(found.at.subarray(0, columns)),
    standardErrors: Array.from({ length: columns }, (_, i) => error(i)),
    correlation,
    correlationStandardError: correlation * (1 - correlation) * error(columns),
    precision: 1 / correlation - 1,
    logLikelihood: -found.value,
  }
}

/** log of B(a + y, b + m) / B(a, b), summed term by term where that is short and so free of cancellation. */
function logBetaRatio(a: number, b: number, y: number, m: number): number {
  if (y + m > 400)
    return gammaln(a + y) - gammaln(a) + gammaln(b + m) - gammaln(b) - gammaln(a + b + y + m) + gammaln(a + b)
  let sum = 0
  for (let k = 0; k < y; k++) sum += Math.log(a + k)
  for (let k = 0; k < m; k++) sum += Math.log(b + k)
  for (let k = 0; k < y + m; k++) sum -= Math.log(a + b + k)
  return sum
}
