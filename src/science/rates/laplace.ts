import { inverseOnPattern, solveInPlace } from '../numerics/sparse-cholesky.ts'
import { backToBatches, eliminateBatches, findMode, type ModeState } from './conditional-mode.ts'
import type { CrossedSystem } from './crossed-system.ts'

/** A spread believed as if so many levels had been seen to lie apart by that much. */
export interface SpreadBelief {
  readonly sdLogit: number
  readonly worthLevels: number
}

/** What is believed of the spreads before any count. */
export interface SpreadPrior {
  /** Rate of an exponential prior on every spread that has no belief of its own; 0 for plain maximum likelihood. */
  readonly spreadRate: number
  /** By factor, then of the batches. */
  readonly beliefs?: readonly (SpreadBelief | undefined)[]
}

/**
 * Minus the log-likelihood of counts, with level and batch effects integrated out by Laplace's approximation,
 * and its exact slope by fixed effects and log spreads. Binomial coefficients are left out.
 *
 * −log L ≈ −ℓ(û) + ½·ûᵀ·D⁻¹·û + ½·log|D| + ½·log|ZᵀWZ + D⁻¹| at the most likely effects û. The slope follows û
 * as it moves: with h the variance of each logit and a = ½·h·dW/dη, one solve with ZᵀWZ + D⁻¹ carries a through.
 *
 * @param parameters fixed effects, then log standard deviations of the factors, then of the batches (if any)
 * @param prior a rate λ above 0 adds the prior density λ·exp(−λσ) on every σ, taken on the scale of log σ; w levels of
 *   spread s add that of w·s²/σ² as chi-square with w degrees of freedom
 * @source Breslow & Clayton 1993, J. Am. Stat. Assoc. 88:9-25 (Laplace); Simpson et al. 2017, Statistical
 *   Science 32:1-28 (exponential prior for a standard deviation); both from memory
 */
export function laplace(
  system: CrossedSystem,
  state: ModeState,
  parameters: Float64Array,
  prior: SpreadPrior,
  gradient: Float64Array,
): number {
  const { data } = system
  const factors = data.levelCounts.length
  const fixed = parameters.subarray(0, data.fixedCount)
  const variances = new Float64Array(factors + 1).fill(1)
  for (let f = 0; f < factors; f++) variances[f] = Math.exp(2 * parameters[data.fixedCount + f]!)
  if (data.batchCount > 0) variances[factors] = Math.exp(2 * parameters[data.fixedCount + factors]!)
  for (const variance of variances) if (!(variance > 1e-12 && variance < 1e4)) return Number.NaN
  const mode = findMode(system, state, fixed, variances)
  if (mode === undefined) return Number.NaN

  const carried = rowsInverse(system, state)
  const { levelSide, batchSide, rowSlopes } = carried
  eliminateBatches(system, state, levelSide, batchSide)
  const levels = solveInPlace(system.factor, levelSide)
  const batches = new Float64Array(data.batchCount)
  backToBatches(system, state, levels, batchSide, batches)

  gradient.fill(0)
  for (let r = 0; r < system.rowCount; r++) {
    let through = data.batches[r]! >= 0 ? batches[data.batches[r]!]! : 0
    for (let f = 0; f < factors; f++) {
      const column = system.columnsOfRow[r * factors + f]!
      if (column >= 0) through += levels[column]!
    }
    const slope = rowSlopes[r]! - state.residuals[r]! - state.weights[r]! * through
    for (let i = 0; i < data.fixedCount; i++) gradient[i]! += data.fixed[r * data.fixedCount + i]! * slope
  }
  for (let c = 0; c < system.size; c++) {
    const f = system.factorOfColumn[c]!
    const u = state.levelEffects[c]!
    gradient[data.fixedCount + f]! +=
      1 - (u * u + carried.levelVariances[c]! - 2 * levels[c]! * u) / variances[f]!
  }
  for (let b = 0; b < data.batchCount; b++) {
    const u = state.batchEffects[b]!
    gradient[data.fixedCount + factors]! +=
      1 - (u * u + carried.batchVariances[b]! - 2 * batches[b]! * u) / variances[factors]!
  }
  let value = -mode.penalised + 0.5 * mode.logDeterminant
  for (let i = data.fixedCount; i < parameters.length; i++) {
    const sd = Math.exp(parameters[i]!)
    const belief = prior.beliefs?.[i - data.fixedCount]
    if (belief !== undefined) {
      const ratio = belief.worthLevels * (belief.sdLogit / sd) ** 2
      value += belief.worthLevels * parameters[i]! + 0.5 * ratio
      gradient[i]! += belief.worthLevels - ratio
    } else if (prior.spreadRate > 0) {
      value += prior.spreadRate * sd - parameters[i]!
      gradient[i]! += prior.spreadRate * sd - 1
    }
  }
  return value
}

/** Variances of every effect and, for every row, ½·(variance of its logit)·dW/dη, summed to levels and batches. */
function rowsInverse(system: CrossedSystem, state: ModeState) {
  const { data, factor } = system
  const inverse = inverseOnPattern(factor)
  const rowSlopes = new Float64Array(system.rowCount)
  const levelSide = new Float64Array(system.size)
  const batchSide = new Float64Array(data.batchCount)
  const batchVariances = new Float64Array(data.batchCount)
  const levelVariances = new Float64Array(system.size)
  for (let c = 0; c < system.size; c++) levelVariances[c] = inverse[factor.columnStart[c]!]!

  for (const { rows, batch, columns, factorPlaces, rowColumns } of system.units) {
    const given = batch < 0 ? 0 : state.batchVariances[batch]!
    if (rows.length === 1) {
      const r = rows[0]!
      let variance = 0
      let at = 0
      for (let i = 0; i < columns.length; i++) {
        for (let j = 0; j < i; j++) variance += 2 * inverse[factorPlaces[at++]!]!
        variance += inverse[factorPlaces[at++]!]!
      }
      const weight = state.weights[r]!
      if (batch >= 0) batchVariances[batch] = given + (given * weight) ** 2 * variance
      const ofLogit = (1 - given * weight) ** 2 * variance + given
      rowSlopes[r] = 0.5 * ofLogit * state.weightSlopes[r]!
    } else {
      const shared = new Float64Array(columns.length)
      rows.forEach((r, i) => {
        for (const c of rowColumns[i]!) shared[c]! += state.weights[r]!
      })
      // The row's own levels less what moves with the batch: vᵀ·S⁻¹·v.
      const form = (v: Float64Array): number => {
        let sum = 0
        let at = 0
        for (let i = 0; i < columns.length; i++) {
          for (let j = 0; j < i; j++) sum += 2 * v[i]! * v[j]! * inverse[factorPlaces[at++]!]!
          sum += v[i]! * v[i]! * inverse[factorPlaces[at++]!]!
        }
        return sum
      }
      const moving = shared.map(weight => -given * weight)
      batchVariances[batch] = given + form(moving)
      rows.forEach((r, i) => {
        const v = Float64Array.from(moving)
        for (const c of rowColumns[i]!) v[c]! += 1
        rowSlopes[r] = 0.5 * (form(v) + given) * state.weightSlopes[r]!
      })
    }
    rows.forEach((r, i) => {
      for (const c of rowColumns[i]!) levelSide[columns[c]!]! += rowSlopes[r]!
      if (batch >= 0) batchSide[batch]! += rowSlopes[r]!
    })
  }
  return { levelVariances, batchVariances, rowSlopes, levelSide, batchSide }
}
