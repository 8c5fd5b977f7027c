/**
 * Inverse of a small symmetric positive definite matrix (row by row), by its Cholesky factor.
 * @returns the inverse, or undefined where the matrix is not positive definite
 */
export function invertPositiveDefinite(matrix: Float64Array, size: number): Float64Array | undefined {
  const lower = choleskyFactor(matrix, size)
  if (lower === undefined) return undefined
  const out = new Float64Array(size * size)
  const column = new Float64Array(size)
  for (let k = 0; k < size; k++) {
    column.fill(0)
    column[k] = 1
    solveWithFactor(lower, size, column)
    for (let i = 0; i < size; i++) out[i * size + k] = column[i]!
  }
  return out
}

/** Lower factor L of A = L·Lᵀ, row by row; undefined where A is not positive definite. */
export function choleskyFactor(matrix: Float64Array, size: number): Float64Array | undefined {
  const lower = new Float64Array(size * size)
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * size + j]!
      for (let k = 0; k < j; k++) sum -= lower[i * size + k]! * lower[j * size + k]!
      if (i === j) {
        if (!(sum > 0)) return undefined
        lower[i * size + i] = Math.sqrt(sum)
      } else lower[i * size + j] = sum / lower[j * size + j]!
    }
  }
  return lower
}

/** Solves L·Lᵀ·x = b in place. */
export function solveWithFactor(lower: Float64Array, size: number, x: Float64Array): Float64Array {
  for (let i = 0; i < size; i++) {
    let sum = x[i]!
    for (let k = 0; k < i; k++) sum -= lower[i * size + k]! * x[k]!
    x[i] = sum / lower[i * size + i]!
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = x[i]!
    for (let k = i + 1; k < size; k++) sum -= lower[k * size + i]! * x[k]!
    x[i] = sum / lower[i * size + i]!
  }
  return x
}
