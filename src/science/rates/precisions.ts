import { invertPositiveDefinite } from '../numerics/small-cholesky.ts'
import { inverseForm, solveInPlace } from '../numerics/sparse-cholesky.ts'
import type { MixedLogisticFit } from './mixed-logistic.ts'

/**
 * How sure the fitted logits are: the joint covariance of fixed and level effects, kept in parts.
 * Var(x·β + z·u) = zᵀS⁻¹z + (x − Cᵀz)ᵀ·V·(x − Cᵀz), with S the levels' equations, C = S⁻¹ZᵀWX, V = Var(β).
 */
export interface Precisions {
  readonly fixedCovariance: Float64Array
  /** For each fixed effect, the column of C. */
  readonly carried: readonly Float64Array[]
}

export function precisionsOf(fit: MixedLogisticFit): Precisions {
  const { system, state } = fit
  const { data } = system
  const p = data.fixedCount
  const factors = data.levelCounts.length
  const information = new Float64Array(p * p)
  const carried = Array.from({ length: p }, () => new Float64Array(system.size))
  for (const { rows, batch } of system.units) {
    const variance = batch < 0 ? 0 : state.batchVariances[batch]!
    const shared = new Float64Array(p)
    for (const r of rows) for (let i = 0; i < p; i++) shared[i]! += state.weights[r]! * data.fixed[r * p + i]!
    for (const r of rows) {
      const weight = state.weights[r]!
      for (let i = 0; i < p; i++) {
        // Row of W·X after the batch effect has taken its part.
        const left = weight * (data.fixed[r * p + i]! - variance * shared[i]!)
        for (let j = 0; j < p; j++) information[i * p + j]! += left * data.fixed[r * p + j]!
        for (let f = 0; f < factors; f++) {
          const column = system.columnsOfRow[r * factors + f]!
          if (column >= 0) carried[i]![column]! += left
        }
      }
    }
  }
  const crossed = carried.map(column => Float64Array.from(column))
  for (const column of carried) solveInPlace(system.factor, column)
  for (let i = 0; i < p; i++)
    for (let j = 0; j < p; j++)
      for (let c = 0; c < system.size; c++) information[i * p + j]! -= crossed[i]![c]! * carried[j]![c]!
  const fixedCovariance = invertPositiveDefinite(information, p)
  if (fixedCovariance === undefined)
    throw new RangeError('precisionsOf: fixed effects must be separable from each other')
  return { fixedCovariance, carried }
}

/** Variance of fixed · β + Σ sign · effect(column), everything else uncertain. */
export function varianceOfLogit(
  fit: MixedLogisticFit,
  { fixedCovariance, carried }: Precisions,
  fixed: readonly number[],
  columns: readonly { readonly column: number; readonly sign: 1 | -1 }[],
): number {
  const p = fixed.length
  const { factor } = fit.system
  const side = factor.work
  for (const { column, sign } of columns) side[column]! += sign
  let variance = inverseForm(factor, side, Math.min(...columns.map(({ column }) => column)))
  const rest = fixed.map((x, i) => {
    let moved = x
    for (const { column, sign } of columns) moved -= sign * carried[i]![column]!
    return moved
  })
  for (let i = 0; i < p; i++)
    for (let j = 0; j < p; j++) variance += rest[i]! * fixedCovariance[i * p + j]! * rest[j]!
  return variance
}
