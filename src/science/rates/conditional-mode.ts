import { logOnePlusExp } from '../numerics/logit.ts'
import { factorise, solveInPlace } from '../numerics/sparse-cholesky.ts'
import type { CrossedSystem } from './crossed-system.ts'

/** Where the search stands: the effects of levels and batches, and what every row looks like there. */
export interface ModeState {
  readonly levelEffects: Float64Array
  readonly batchEffects: Float64Array
  /** Fixed part of every row's logit. */
  readonly offset: Float64Array
  readonly logits: Float64Array
  readonly residuals: Float64Array
  /** n·p·(1 − p), or the precision of a belief. */
  readonly weights: Float64Array
  /** Derivative of the weight by the logit. */
  readonly weightSlopes: Float64Array
  /** For each batch: 1 / (sum of its weights + 1/σ²), its conditional variance. */
  readonly batchVariances: Float64Array
  readonly matrix: Float64Array
}

export interface Mode {
  /** Log-likelihood of the rows minus half the scaled squares of the effects. */
  readonly penalised: number
  readonly logDeterminant: number
}

export function emptyState(system: CrossedSystem): ModeState {
  const rows = system.rowCount
  return {
    levelEffects: new Float64Array(system.size),
    batchEffects: new Float64Array(system.data.batchCount),
    offset: new Float64Array(rows),
    logits: new Float64Array(rows),
    residuals: new Float64Array(rows),
    weights: new Float64Array(rows),
    weightSlopes: new Float64Array(rows),
    batchVariances: new Float64Array(system.data.batchCount),
    matrix: new Float64Array(system.pattern.columns.length),
  }
}

/**
 * The most likely effects of levels and batches, given fixed effects and spreads (penalised iteratively
 * reweighted least squares with step halving). Starts from what `state` holds, and leaves its answer there,
 * together with the factor of the levels' equations at that point.
 *
 * @param fixed fixed effects
 * @param variances of the factors, then (last) of the batches
 * @returns undefined where the equations cannot be solved (spreads far out of range)
 */
export function findMode(
  system: CrossedSystem,
  state: ModeState,
  fixed: Float64Array,
  variances: Float64Array,
): Mode | undefined {
  const { data, size } = system
  const batchPrecision = 1 / variances[data.levelCounts.length]!
  const rhs = new Float64Array(size)
  const levelStep = new Float64Array(size)
  const batchStep = new Float64Array(data.batchCount)
  const batchSlopes = new Float64Array(data.batchCount)
  for (let r = 0; r < system.rowCount; r++) {
    let sum = data.offsets?.[r] ?? 0
    for (let i = 0; i < data.fixedCount; i++) sum += data.fixed[r * data.fixedCount + i]! * fixed[i]!
    state.offset[r] = sum
  }
  let penalised = lookAtRows(system, state, variances)
  if (!Number.isFinite(penalised)) {
    state.levelEffects.fill(0)
    state.batchEffects.fill(0)
    penalised = lookAtRows(system, state, variances)
    if (!Number.isFinite(penalised)) return undefined
  }
  for (let round = 0; round < 60; round++) {
    assemble(system, state, variances, rhs, batchSlopes)
    const slope = Float64Array.from(rhs)
    eliminateBatches(system, state, rhs, batchSlopes)
    const logDeterminant = factorise(system.factor, state.matrix)
    if (Number.isNaN(logDeterminant)) return undefined
    levelStep.set(rhs)
    solveInPlace(system.factor, levelStep)
    backToBatches(system, state, levelStep, batchSlopes, batchStep)
    let promised = 0
    for (let c = 0; c < size; c++) promised += levelStep[c]! * slope[c]!
    for (let b = 0; b < batchStep.length; b++) promised += batchStep[b]! * batchSlopes[b]!
    if (!(promised > 1e-11)) {
      let logOfBatches = 0
      for (let b = 0; b < batchStep.length; b++)
        logOfBatches -= Math.log(state.batchVariances[b]! * batchPrecision)
      let logOfLevels = 0
      data.levelCounts.forEach((count, f) => {
        logOfLevels += count * Math.log(variances[f]!)
      })
      return { penalised, logDeterminant: logDeterminant + logOfBatches + logOfLevels }
    }
    let length = 1
    let done = 0
    for (;;) {
      for (let c = 0; c < size; c++) state.levelEffects[c]! += (length - done) * levelStep[c]!
      for (let b = 0; b < batchStep.length; b++) state.batchEffects[b]! += (length - done) * batchStep[b]!
      done = length
      const found = lookAtRows(system, state, variances)
      if (found >= penalised - 1e-9 * (1 + Math.abs(penalised)) || length < 1e-5) {
        penalised = found
        break
      }
      length /= 2
    }
  }
  return undefined
}

/** Logits, residuals and weights of all rows at the present effects; the penalised log-likelihood. */
function lookAtRows(system: CrossedSystem, state: ModeState, variances: Float64Array): number {
  const { data, columnsOfRow, factorOfColumn } = system
  const factors = data.levelCounts.length
  const { levelEffects, batchEffects, logits, residuals, weights, weightSlopes } = state
  let sum = 0
  for (let r = 0; r < system.rowCount; r++) {
    let logit = state.offset[r]!
    for (let f = 0; f < factors; f++) {
      const column = columnsOfRow[r * factors + f]!
      if (column >= 0) logit += levelEffects[column]!
    }
    const batch = data.batches[r]!
    if (batch >= 0) logit += batchEffects[batch]!
    logits[r] = logit
    const precision = data.beliefPrecision[r]!
    if (precision > 0) {
      const away = data.beliefLogit[r]! - logit
      residuals[r] = precision * away
      weights[r] = precision
      weightSlopes[r] = 0
      sum -= 0.5 * precision * away * away
      continue
    }
    const n = data.entered[r]!
    const share = 1 / (1 + Math.exp(-logit))
    residuals[r] = data.survived[r]! - n * share
    weights[r] = n * share * (1 - share)
    weightSlopes[r] = weights[r]! * (1 - 2 * share)
    sum += data.survived[r]! * logit - n * logOnePlusExp(logit)
  }
  for (let c = 0; c < levelEffects.length; c++)
    sum -= (0.5 * levelEffects[c]! ** 2) / variances[factorOfColumn[c]!]!
  for (let b = 0; b < batchEffects.length; b++) sum -= (0.5 * batchEffects[b]! ** 2) / variances[factors]!
  return sum
}

/** The levels' equations with the batches eliminated, and the slopes of levels (`rhs`) and batches. */
function assemble(
  system: CrossedSystem,
  state: ModeState,
  variances: Float64Array,
  rhs: Float64Array,
  batchSlopes: Float64Array,
): void {
  const { data, columnsOfRow, factorOfColumn, pattern } = system
  const factors = data.levelCounts.length
  const { matrix, weights, residuals } = state
  const batchPrecision = 1 / variances[factors]!
  matrix.fill(0)
  for (let c = 0; c < system.size; c++) {
    const precision = 1 / variances[factorOfColumn[c]!]!
    matrix[pattern.rowStart[c + 1]! - 1] = precision
    rhs[c] = -precision * state.levelEffects[c]!
  }
  for (let b = 0; b < batchSlopes.length; b++) batchSlopes[b] = -batchPrecision * state.batchEffects[b]!
  for (let r = 0; r < system.rowCount; r++) {
    const residual = residuals[r]!
    for (let f = 0; f < factors; f++) {
      const column = columnsOfRow[r * factors + f]!
      if (column >= 0) rhs[column]! += residual
    }
    const batch = data.batches[r]!
    if (batch >= 0) batchSlopes[batch]! += residual
  }
  for (const unit of system.units) {
    const { rows, batch, matrixPlaces } = unit
    let total = 0
    for (let i = 0; i < rows.length; i++) total += weights[rows[i]!]!
    const variance = batch < 0 ? 0 : 1 / (total + batchPrecision)
    if (batch >= 0) state.batchVariances[batch] = variance
    if (rows.length === 1) {
      const weight = total * (1 - variance * total)
      for (let p = 0; p < matrixPlaces.length; p++) matrix[matrixPlaces[p]!]! += weight
      continue
    }
    const shared = new Float64Array(unit.columns.length)
    for (let i = 0; i < rows.length; i++) {
      const weight = weights[rows[i]!]!
      const own = unit.rowColumns[i]!
      for (let a = 0; a < own.length; a++) {
        const row = own[a]!
        shared[row]! += weight
        for (let b = 0; b <= a; b++) matrix[matrixPlaces[(row * (row + 1)) / 2 + own[b]!]!]! += weight
      }
    }
    let at = 0
    for (let i = 0; i < shared.length; i++)
      for (let j = 0; j <= i; j++) matrix[matrixPlaces[at++]!]! -= variance * shared[i]! * shared[j]!
  }
}

/** Takes out of the levels' right-hand side what the batches explain: rhs − Σ g·variance·slope. */
export function eliminateBatches(
  system: CrossedSystem,
  state: ModeState,
  rhs: Float64Array,
  batchSide: Float64Array,
): void {
  const { data, columnsOfRow } = system
  const factors = data.levelCounts.length
  for (let r = 0; r < system.rowCount; r++) {
    const batch = data.batches[r]!
    if (batch < 0) continue
    const taken = state.weights[r]! * state.batchVariances[batch]! * batchSide[batch]!
    for (let f = 0; f < factors; f++) {
      const column = columnsOfRow[r * factors + f]!
      if (column >= 0) rhs[column]! -= taken
    }
  }
}

/** The batches' part of a solution, once the levels' part is known. */
export function backToBatches(
  system: CrossedSystem,
  state: ModeState,
  levels: Float64Array,
  batchSide: Float64Array,
  out: Float64Array,
): void {
  const { data, columnsOfRow } = system
  const factors = data.levelCounts.length
  out.set(batchSide)
  for (let r = 0; r < system.rowCount; r++) {
    const batch = data.batches[r]!
    if (batch < 0) continue
    let sum = 0
    for (let f = 0; f < factors; f++) {
      const column = columnsOfRow[r * factors + f]!
      if (column >= 0) sum += levels[column]!
    }
    out[batch]! -= state.weights[r]! * sum
  }
  for (let b = 0; b < out.length; b++) out[b]! *= state.batchVariances[b]!
}
