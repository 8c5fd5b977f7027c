import overdispersed from '../fixtures/overdispersed-counts.json' with { type: 'json' }
import { normalRule } from '../numerics/gauss-hermite.ts'
import { curvature, minimise, withSlope } from '../numerics/quasi-newton.ts'
import { choleskyFactor } from '../numerics/small-cholesky.ts'
import { batchShares, batchSpreadLogLikelihood } from '../rates/batch-spread.ts'
import type { LogisticInput } from '../rates/logistic.ts'
import { casesOf, type Fixture, sourceOf } from './fixture.ts'
import { type CheckValue, type OutsideCheck, outsideCheck, type Tolerance } from './outside-check.ts'

const fixture: Fixture = overdispersed
const { seeds, units12: units } = overdispersed.data

interface Point {
  readonly estimates: Float64Array
  readonly spread: number
  readonly logWeight: number
}

/** Points and weights of the likelihood over fixed effects (flat prior) and log spread, to be weighed by a prior of the spread. */
function likelihoodPoints(input: LogisticInput): readonly Point[] {
  const { columns } = input
  // Near the peak the posterior of fixed effects is close to normal: few points are enough.
  const rule = normalRule(columns > 1 ? 3 : 7)
  let start = new Float64Array(columns)
  const points: Point[] = []
  for (let k = 0; k < 36; k++) {
    const spread = Math.exp(-4.4 + (5.6 * k) / 35)
    const objective = withSlope(at => -batchSpreadLogLikelihood(input, at, spread, 9), 1e-4)
    const found = minimise(objective, start, { scale: new Float64Array(columns).fill(0.2), stepAtMost: 1 })
    start = Float64Array.from(found.at)
    const lower = choleskyFactor(curvature(objective, found, 1e-3), columns)
    if (lower === undefined) throw new RangeError('likelihoodPoints: the likelihood must have a peak')
    const nodes = rule.points.length
    for (let index = 0; index < nodes ** columns; index++) {
      const z = Array.from({ length: columns }, (_, i) => Math.floor(index / nodes ** i) % nodes)
      const step = z.map(i => rule.points[i]!)
      // x solves Lᵀ·x = z, so that x has the covariance of the peak.
      for (let i = columns - 1; i >= 0; i--) {
        for (let j = i + 1; j < columns; j++) step[i]! -= lower[j * columns + i]! * step[j]!
        step[i]! /= lower[i * columns + i]!
      }
      const estimates = found.at.map((value, i) => value + step[i]!)
      let logWeight = batchSpreadLogLikelihood(input, estimates, spread, 9)
      for (let i = 0; i < columns; i++) {
        const node = rule.points[z[i]!]!
        logWeight += Math.log(rule.weights[z[i]!]!) + 0.5 * node * node - Math.log(lower[i * columns + i]!)
      }
      points.push({ estimates, spread, logWeight })
    }
  }
  return points
}

/** Prior densities of log spread: precision Gamma(0.001, 0.001), and spread uniform. */
const gammaPrecision = (spread: number) => -0.002 * Math.log(spread) - 0.001 / spread ** 2
const uniformSpread = (spread: number) => Math.log(spread)

/** Mean and standard deviation of several quantities under the posterior. */
function averages(
  points: readonly Point[],
  prior: (spread: number) => number,
  of: (point: Point) => readonly number[],
) {
  const logs = points.map(({ logWeight, spread }) => logWeight + prior(spread))
  const highest = Math.max(...logs)
  let total = 0
  const first: number[] = []
  const second: number[] = []
  points.forEach((point, k) => {
    const weight = Math.exp(logs[k]! - highest)
    if (weight < 1e-12) return
    total += weight
    of(point).forEach((value, i) => {
      first[i] = (first[i] ?? 0) + weight * value
      second[i] = (second[i] ?? 0) + weight * value * value
    })
  })
  const mean = first.map(sum => sum / total)
  return { mean, sd: second.map((sum, i) => Math.sqrt(Math.max(sum / total - mean[i]! ** 2, 0))) }
}

function check(
  id: string,
  what: string,
  fields: readonly string[],
  got: CheckValue,
  tolerance: Tolerance,
): OutsideCheck {
  const { basis, expected, note } = casesOf<unknown, Record<string, CheckValue>>(fixture, id).find(
    one => one.id === id,
  )!
  return outsideCheck({
    what: `${what} (${id})`,
    source: sourceOf(fixture, { note }),
    basis,
    expected: Object.fromEntries(fields.map(field => [field, expected[field]!])),
    got,
    tolerance,
  })
}

/** The likelihood of the batch-spread model, integrated over priors, against published and recomputed Bayesian fits. */
export function posteriorChecks(): readonly OutsideCheck[] {
  const crossed = {
    entered: seeds.n,
    survived: seeds.r,
    design: seeds.n.flatMap((_, i) => [1, seeds.x1[i]!, seeds.x2[i]!, seeds.x1[i]! * seeds.x2[i]!]),
    columns: 4,
  }
  const points = likelihoodPoints(crossed)
  const named = (list: readonly number[]) => ({
    alpha0: list[0]!,
    alpha1: list[1]!,
    alpha2: list[2]!,
    alpha12: list[3]!,
    sigma: list[4]!,
  })
  const seedsUnder = (prior: (spread: number) => number) => {
    const { mean, sd } = averages(points, prior, ({ estimates, spread }) => [...estimates, spread])
    return { mean: named(mean), sd: named(sd) }
  }
  const alone = { entered: units.n, survived: units.r, design: units.n.map(() => 1), columns: 1 }
  const unitPoints = likelihoodPoints(alone)
  const { mean } = averages(unitPoints, gammaPrecision, ({ estimates, spread }) => {
    const shares = batchShares(alone, estimates, spread, 9)
    return [
      estimates[0]!,
      spread,
      1 / (1 + Math.exp(-estimates[0]!)),
      ...shares.map(share => share.mean),
      ...shares.map(share => share.sd ** 2 + share.mean ** 2),
    ]
  })
  const own = mean.slice(3, 15)
  const unitsGot = {
    mu: mean[0]!,
    sigma: mean[1]!,
    popMean: mean[2]!,
    posteriorMean: own,
    posteriorSD: mean.slice(15, 27).map((square, i) => Math.sqrt(square - own[i]! ** 2)),
  }
  const unitFields = ['mu', 'sigma', 'popMean', 'posteriorMean', 'posteriorSD']
  return [
    check(
      'seeds-bugs-published',
      'germination, Bayesian, as published',
      ['mean', 'sd'],
      seedsUnder(gammaPrecision),
      0.03,
    ),
    check(
      'seeds-jags-gamma-prior',
      'germination, Bayesian, gamma prior of the precision',
      ['mean', 'sd'],
      seedsUnder(gammaPrecision),
      0.01,
    ),
    check(
      'seeds-jags-uniform-prior',
      'germination, Bayesian, uniform prior of the spread',
      ['mean', 'sd'],
      seedsUnder(uniformSpread),
      0.01,
    ),
    check(
      'units12-partial-pooling-published',
      'twelve units drawn towards each other, as published',
      unitFields,
      unitsGot,
      {
        mu: 0.02,
        sigma: 0.03,
        other: 0.002,
      },
    ),
    check(
      'units12-partial-pooling-jags',
      'twelve units drawn towards each other, Bayesian',
      unitFields,
      unitsGot,
      {
        mu: 0.01,
        sigma: 0.01,
        other: 0.001,
      },
    ),
  ]
}
