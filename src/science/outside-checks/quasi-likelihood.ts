import overdispersed from '../fixtures/overdispersed-counts.json' with { type: 'json' }
import { minimise, withSlope } from '../numerics/quasi-newton.ts'
import { invertPositiveDefinite } from '../numerics/small-cholesky.ts'
import { casesOf, type Fixture, sourceOf } from './fixture.ts'
import { type CheckValue, type OutsideCheck, outsideCheck, type Tolerance } from './outside-check.ts'

/**
 * Penalised quasi-likelihood, computed here only to be compared: it is known to be less exact than the Laplace
 * likelihood that the rates use, and nothing else needs it.
 */

const fixture: Fixture = overdispersed
const { seeds } = overdispersed.data
const plates = seeds.r.length
const design = seeds.r.map((_, i) => [1, seeds.x1[i]!, seeds.x2[i]!, seeds.x1[i]! * seeds.x2[i]!])
const columns = 4

interface LinearFit {
  readonly estimates: readonly number[]
  readonly covariance: Float64Array
  readonly sumOfSquares: number
  readonly logOfVariances: number
}

/** Least squares with a variance for each plate. */
function weighted(response: readonly number[], variances: readonly number[]): LinearFit {
  const information = new Float64Array(columns * columns)
  const side = new Float64Array(columns)
  design.forEach((x, i) => {
    for (let a = 0; a < columns; a++) {
      side[a]! += (x[a]! * response[i]!) / variances[i]!
      for (let b = 0; b < columns; b++) information[a * columns + b]! += (x[a]! * x[b]!) / variances[i]!
    }
  })
  const covariance = invertPositiveDefinite(information, columns)!
  const estimates = Array.from(side, (_, a) =>
    side.reduce((sum, value, b) => sum + covariance[a * columns + b]! * value, 0),
  )
  return {
    estimates,
    covariance,
    sumOfSquares: response.reduce((sum, z, i) => sum + (z - fittedAt(estimates, i)) ** 2 / variances[i]!, 0),
    logOfVariances: variances.reduce((sum, variance) => sum + Math.log(variance), 0),
  }
}

const fittedAt = (estimates: readonly number[], plate: number) =>
  design[plate]!.reduce((sum, x, a) => sum + x * estimates[a]!, 0)

/** Log-determinant of the information: minus that of the covariance. */
function logOfInformation(covariance: Float64Array): number {
  const lower = Float64Array.from(covariance)
  let log = 0
  for (let i = 0; i < columns; i++) {
    for (let j = 0; j < i; j++) {
      let sum = lower[i * columns + j]!
      for (let k = 0; k < j; k++) sum -= lower[i * columns + k]! * lower[j * columns + k]!
      lower[i * columns + j] = sum / lower[j * columns + j]!
    }
    let left = lower[i * columns + i]!
    for (let k = 0; k < i; k++) left -= lower[i * columns + k]! ** 2
    lower[i * columns + i] = Math.sqrt(left)
    log -= Math.log(left)
  }
  return log
}

interface QuasiFit extends LinearFit {
  readonly spread: number
  readonly variances: readonly number[]
}

/**
 * A linear mixed model of the working response, again and again until its own fitted logits come back.
 * @param scaleIsKnown the binomial scale 1, and the spread by restricted likelihood; else both by likelihood
 */
function quasiLikelihood(scaleIsKnown: boolean): QuasiFit {
  let logits = seeds.r.map((r, i) => Math.log((r + 0.5) / (seeds.n[i]! - r + 0.5)))
  let start = new Float64Array(scaleIsKnown ? [-2] : [-2, 0])
  for (;;) {
    const shares = logits.map(logit => 1 / (1 + Math.exp(-logit)))
    const unit = shares.map(share => share * (1 - share))
    const response = logits.map((logit, i) => logit + (seeds.r[i]! / seeds.n[i]! - shares[i]!) / unit[i]!)
    const variancesAt = (at: Float64Array) =>
      unit.map((value, i) => Math.exp(at[0]!) + Math.exp(at[1] ?? 0) / (seeds.n[i]! * value))
    const found = minimise(
      withSlope(at => {
        const { covariance, sumOfSquares, logOfVariances } = weighted(response, variancesAt(at))
        return 0.5 * (logOfVariances + sumOfSquares + (scaleIsKnown ? logOfInformation(covariance) : 0))
      }),
      start,
      { scale: new Float64Array(start.length).fill(0.5), stepAtMost: 1, fallBelow: 1e-14 },
    )
    start = Float64Array.from(found.at)
    const variances = variancesAt(found.at)
    const fit = weighted(response, variances)
    const ofPlates = Math.exp(found.at[0]!)
    const next = response.map((z, i) => {
      const mean = fittedAt(fit.estimates, i)
      return mean + (ofPlates / variances[i]!) * (z - mean)
    })
    const moved = Math.max(...next.map((logit, i) => Math.abs(logit - logits[i]!)))
    logits = next
    if (moved < 1e-7) return { ...fit, spread: Math.sqrt(ofPlates), variances }
  }
}

/** Standard error of the spread from the restricted information of its square, ½·tr(P·P). */
function errorOfSpread({ covariance, variances, spread }: QuasiFit): number {
  let trace = 0
  for (let i = 0; i < plates; i++)
    for (let j = 0; j < plates; j++) {
      let shared = 0
      for (let a = 0; a < columns; a++)
        for (let b = 0; b < columns; b++)
          shared += design[i]![a]! * covariance[a * columns + b]! * design[j]![b]!
      trace += ((i === j ? 1 / variances[i]! : 0) - shared / (variances[i]! * variances[j]!)) ** 2
    }
  return Math.sqrt(2 / trace) / (2 * spread)
}

const NAMES = ['alpha0', 'alpha1', 'alpha2', 'alpha12']
const named = (values: readonly number[], what: string) =>
  Object.fromEntries(values.map((value, i) => [`${what} ${NAMES[i]!}`, value]))

function check(id: string, what: string, got: Record<string, number>, tolerance: Tolerance): OutsideCheck {
  const [known] = casesOf<unknown, Record<string, number | Record<string, number>>>(fixture, id)
  const { basis, expected, note } = known!
  return outsideCheck({
    what: `${what} (${id})`,
    source: sourceOf(fixture, { note }),
    basis,
    expected: Object.fromEntries(
      Object.entries(expected).flatMap(([key, value]): [string, CheckValue][] =>
        typeof value === 'number'
          ? [[key, value]]
          : Object.entries(value).map(([name, v]) => [`${key} ${name}`, v]),
      ),
    ),
    got,
    tolerance,
  })
}

/** Seeds on plates by penalised quasi-likelihood: the published column, and both ways in which R computes it. */
export function quasiLikelihoodChecks(): readonly OutsideCheck[] {
  const errorsOf = (fit: QuasiFit, factor = 1) =>
    NAMES.map((_, i) => factor * Math.sqrt(fit.covariance[i * columns + i]!))
  const known = quasiLikelihood(true)
  const got = {
    ...named(known.estimates, 'estimate'),
    ...named(errorsOf(known), 'se'),
    sigma: known.spread,
    sigmaSE: errorOfSpread(known),
  }
  const free = quasiLikelihood(false)
  return [
    // Printed to three decimals.
    check('seeds-pql-published', 'plate-to-plate spread by quasi-likelihood, as published', got, 0.0006),
    check('seeds-pql-reml', 'plate-to-plate spread by quasi-likelihood, restricted', got, 0.0002),
    check(
      'seeds-pql-mass',
      'plate-to-plate spread by quasi-likelihood with a scale of its own',
      {
        ...named(free.estimates, 'estimate'),
        // The library enlarges its errors for the fixed effects estimated.
        ...named(errorsOf(free, Math.sqrt(plates / (plates - columns))), 'se'),
      },
      0.001,
    ),
  ]
}
