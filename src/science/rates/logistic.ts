import { logChoose } from '../numerics/log-choose.ts'
import { logOnePlusExp } from '../numerics/logit.ts'
import { choleskyFactor, invertPositiveDefinite, solveWithFactor } from '../numerics/small-cholesky.ts'

export interface LogisticInput {
  /** Plants that entered and that survived, one entry a row. */
  readonly entered: ArrayLike<number>
  readonly survived: ArrayLike<number>
  /** Design, row by row: `columns` numbers for each row; the first is usually 1. */
  readonly design: ArrayLike<number>
  readonly columns: number
}

export interface LogisticFit {
  readonly estimates: readonly number[]
  readonly standardErrors: readonly number[]
  /** Covariance of the estimates, row by row. */
  readonly covariance: Float64Array
  /** Fitted shares, one a row. */
  readonly shares: readonly number[]
  /** Twice the log-likelihood lost against a model with a share of its own for every row. */
  readonly deviance: number
  readonly pearsonChiSquare: number
  readonly degreesOfFreedom: number
  /** Pearson's chi-square over its degrees of freedom: above 1, rows differ by more than chance. */
  readonly dispersion: number
  /** With the binomial coefficients. */
  readonly logLikelihood: number
}

/**
 * Logistic regression of counts: logit of the share = design · estimates, rows independent binomial.
 * Newton's method with step halving; stops when a step promises less than 1e-14 in log-likelihood.
 *
 * @returns estimates on the logit scale, exact to about 1e-9 where they are finite
 * @throws RangeError where columns repeat each other, or an estimate runs to infinity (a column separates
 *   all-dead from all-alive rows): then `fitRates`, which borrows strength, is the tool
 * @source McCullagh & Nelder 1989, Generalized Linear Models, ch. 4; from memory
 * @example logisticRegression({ entered: [10, 10], survived: [5, 8], design: [1, 0, 1, 1], columns: 2 }).estimates // 0, 1.386
 */
export function logisticRegression(input: LogisticInput): LogisticFit {
  const { entered, survived, design, columns } = input
  const rows = entered.length
  if (survived.length !== rows)
    throw new RangeError(`logisticRegression: survived must have ${rows} rows, got ${survived.length}`)
  if (design.length !== rows * columns)
    throw new RangeError(
      `logisticRegression: design must have ${rows * columns} numbers, got ${design.length}`,
    )
  for (let r = 0; r < rows; r++)
    if (!(survived[r]! >= 0 && survived[r]! <= entered[r]!))
      throw new RangeError(`logisticRegression: survived must be 0 to ${entered[r]}, got ${survived[r]}`)

  let estimates = new Float64Array(columns)
  let state = look(input, estimates)
  for (let round = 0; round < 100; round++) {
    const factor = choleskyFactor(state.information, columns)
    if (factor === undefined)
      throw new RangeError('logisticRegression: design must have independent columns and finite estimates')
    const step = solveWithFactor(factor, columns, Float64Array.from(state.slope))
    let promised = 0
    for (let i = 0; i < columns; i++) promised += step[i]! * state.slope[i]!
    if (promised < 1e-14) {
      estimates = estimates.map((e, i) => e + step[i]!)
      state = look(input, estimates)
      break
    }
    let length = 1
    for (;;) {
      const next = estimates.map((e, i) => e + length * step[i]!)
      const found = look(input, next)
      if (found.logLikelihood >= state.logLikelihood - 1e-12 || length < 1e-6) {
        estimates = next
        state = found
        break
      }
      length /= 2
    }
    if (estimates.some(e => Math.abs(e) > 25))
      throw new RangeError('logisticRegression: estimates must be finite, got one that runs to infinity')
  }
  const covariance = invertPositiveDefinite(state.information, columns)
  if (covariance === undefined)
    throw new RangeError('logisticRegression: design must have independent columns')
  let deviance = 0
  let pearson = 0
  let coefficients = 0
  for (let r = 0; r < rows; r++) {
    const n = entered[r]!
    const y = survived[r]!
    const p = state.shares[r]!
    if (y > 0) deviance += 2 * y * Math.log(y / (n * p))
    if (y < n) deviance += 2 * (n - y) * Math.log((n - y) / (n * (1 - p)))
    if (n > 0) pearson += (y - n * p) ** 2 / (n * p * (1 - p))
    coefficients += logChoose(n, y)
  }
  const degreesOfFreedom = rows - columns
  return {
    estimates: Array.from(estimates),
    standardErrors: Array.from(estimates, (_, i) => Math.sqrt(covariance[i * columns + i]!)),
    covariance,
    shares: Array.from(state.shares),
    deviance,
    pearsonChiSquare: pearson,
    degreesOfFreedom,
    dispersion: degreesOfFreedom > 0 ? pearson / degreesOfFreedom : Number.NaN,
    logLikelihood: state.logLikelihood + coefficients,
  }
}

function look({ entered, survived, design, columns }: LogisticInput, estimates: Float64Array) {
  const rows = entered.length
  const shares = new Float64Array(rows)
  const slope = new Float64Array(columns)
  const information = new Float64Array(columns * columns)
  let logLikelihood = 0
  for (let r = 0; r < rows; r++) {
    let logit = 0
    for (let i = 0; i < columns; i++) logit += design[r * columns + i]! * estimates[i]!
    const n = entered[r]!
    const p = 1 / (1 + Math.exp(-logit))
    shares[r] = p
    logLikelihood += survived[r]! * logit - n * logOnePlusExp(logit)
    const weight = n * p * (1 - p)
    for (let i = 0; i < columns; i++) {
      const xi = design[r * columns + i]!
      slope[i] = slope[i]! + xi * (survived[r]! - n * p)
      for (let j = 0; j < columns; j++)
        information[i * columns + j] = information[i * columns + j]! + weight * xi * design[r * columns + j]!
    }
  }
  return { shares, slope, information, logLikelihood }
}
