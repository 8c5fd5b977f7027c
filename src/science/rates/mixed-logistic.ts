import { logChoose } from '../numerics/log-choose.ts'
import { curvature, minimise } from '../numerics/quasi-newton.ts'
import { invertPositiveDefinite } from '../numerics/small-cholesky.ts'
import { emptyState, type ModeState } from './conditional-mode.ts'
import { type CrossedSystem, crossedSystem, type MixedLogisticData } from './crossed-system.ts'
import { laplace, type SpreadPrior } from './laplace.ts'

export interface MixedLogisticFit {
  readonly fixed: Float64Array
  /** Standard deviation of each factor's effects, on the logit scale; then of the batches, if there are any. */
  readonly spreads: Float64Array
  /** Fixed effects, then log spreads: their covariance, row by row; undefined where the peak is not a proper one. */
  readonly covariance: Float64Array | undefined
  /** Laplace's approximation, binomial coefficients included, spread prior left out. */
  readonly logLikelihood: number
  readonly evaluations: number
  readonly converged: boolean
  readonly system: CrossedSystem
  readonly state: ModeState
}

/**
 * Logistic regression with crossed random effects and a batch effect, fitted by maximum (penalised) Laplace
 * likelihood over fixed effects and log spreads together.
 *
 * @returns estimates within about 1e-4 standard errors of the optimum; the Laplace approximation itself is low in
 *   the spreads where counts are few (seeds data: 0.2346 against 0.2362 by quadrature)
 * @source as `laplace`
 */
export function fitMixedLogistic(data: MixedLogisticData, prior: SpreadPrior): MixedLogisticFit {
  const system = crossedSystem(data)
  const state = emptyState(system)
  const factors = data.levelCounts.length
  const spreadCount = factors + (data.batchCount > 0 ? 1 : 0)
  const size = data.fixedCount + spreadCount
  const start = new Float64Array(size)
  const scale = new Float64Array(size)
  start.set(startOfFixed(data))
  for (let i = 0; i < data.fixedCount; i++) scale[i] = 0.1
  for (let s = 0; s < spreadCount; s++) {
    const count = s < factors ? data.levelCounts[s]! : data.batchCount
    start[data.fixedCount + s] = Math.log(0.4)
    scale[data.fixedCount + s] = Math.min(0.7, 1.5 / Math.sqrt(2 * count))
  }
  const objective = (at: Float64Array, gradient: Float64Array) => laplace(system, state, at, prior, gradient)
  const found = minimise(objective, start, { scale, stepAtMost: 1.5, fallBelow: 1e-8 })
  const second = curvature(objective, found, 1e-3)
  const gradient = new Float64Array(size)
  const value = laplace(system, state, found.at, { spreadRate: 0 }, gradient)
  let coefficients = 0
  for (let r = 0; r < system.rowCount; r++)
    if (!(data.beliefPrecision[r]! > 0)) coefficients += logChoose(data.entered[r]!, data.survived[r]!)
  return {
    fixed: found.at.slice(0, data.fixedCount),
    spreads: found.at.slice(data.fixedCount).map(Math.exp),
    covariance: invertPositiveDefinite(second, size),
    logLikelihood: coefficients - value,
    evaluations: found.evaluations,
    converged: found.converged,
    system,
    state,
  }
}

/** A few damped Newton steps without any random effect: near enough to begin. */
function startOfFixed(data: MixedLogisticData): Float64Array {
  const { fixedCount: p } = data
  const fixed = new Float64Array(p)
  for (let round = 0; round < 8; round++) {
    const information = new Float64Array(p * p)
    const slope = new Float64Array(p)
    for (let i = 0; i < p; i++) {
      information[i * p + i] = 0.1
      slope[i] = -0.1 * fixed[i]!
    }
    for (let r = 0; r < data.entered.length; r++) {
      let logit = data.offsets?.[r] ?? 0
      for (let i = 0; i < p; i++) logit += data.fixed[r * p + i]! * fixed[i]!
      const share = 1 / (1 + Math.exp(-logit))
      const belief = data.beliefPrecision[r]!
      const weight = belief > 0 ? belief : data.entered[r]! * share * (1 - share)
      const residual =
        belief > 0 ? belief * (data.beliefLogit[r]! - logit) : data.survived[r]! - data.entered[r]! * share
      for (let i = 0; i < p; i++) {
        const xi = data.fixed[r * p + i]!
        slope[i]! += xi * residual
        for (let j = 0; j < p; j++) information[i * p + j]! += weight * xi * data.fixed[r * p + j]!
      }
    }
    const inverse = invertPositiveDefinite(information, p)
    if (inverse === undefined) break
    for (let i = 0; i < p; i++) {
      let step = 0
      for (let j = 0; j < p; j++) step += inverse[i * p + j]! * slope[j]!
      fixed[i] = Math.max(-8, Math.min(8, fixed[i]! + Math.max(-2, Math.min(2, step))))
    }
  }
  return fixed
}
