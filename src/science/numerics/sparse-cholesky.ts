/**
 * Sparse Cholesky factorisation A = L·Lᵀ of a symmetric positive definite matrix whose pattern stays the
 * same while its values change many times: the pattern is worked out once, the numbers as often as wanted.
 * No reordering: whoever builds the matrix puts the columns that fill least first.
 *
 * @source Davis 2006, Direct Methods for Sparse Linear Systems, ch. 4 (elimination tree, up-looking factor);
 *   Takahashi, Fagan & Chen 1973 (entries of the inverse on the pattern of L); both from memory
 */
export interface SparsePattern {
  readonly size: number
  /** Lower triangle by rows with the diagonal: row i has columns `columns[rowStart[i]] … ≤ i`, ascending. */
  readonly rowStart: Int32Array
  readonly columns: Int32Array
}

export interface SparseFactor {
  readonly pattern: SparsePattern
  /** L by columns, diagonal first, rows ascending. */
  readonly columnStart: Int32Array
  readonly rows: Int32Array
  readonly values: Float64Array
  /** For each row of L, the columns left of its diagonal, ascending, and where each value lies. */
  readonly reachStart: Int32Array
  readonly reachColumns: Int32Array
  readonly reachPlaces: Int32Array
  readonly work: Float64Array
}

/** The pattern of L, with room for its values; all values are 0 until `factorise`. */
export function symbolicFactor(pattern: SparsePattern): SparseFactor {
  const { size, rowStart, columns } = pattern
  const parent = new Int32Array(size).fill(-1)
  const ancestor = new Int32Array(size).fill(-1)
  for (let i = 0; i < size; i++) {
    for (let p = rowStart[i]!; p < rowStart[i + 1]!; p++) {
      let j = columns[p]!
      while (j !== -1 && j < i) {
        const next = ancestor[j]!
        ancestor[j] = i
        if (next === -1) parent[j] = i
        j = next
      }
    }
  }
  const mark = new Int32Array(size).fill(-1)
  const counts = new Int32Array(size).fill(1)
  const reaches: Int32Array[] = []
  let entries = 0
  for (let i = 0; i < size; i++) {
    const reach: number[] = []
    mark[i] = i
    for (let p = rowStart[i]!; p < rowStart[i + 1]!; p++) {
      let j = columns[p]!
      while (j !== -1 && mark[j] !== i) {
        mark[j] = i
        reach.push(j)
        j = parent[j]!
      }
    }
    const sorted = Int32Array.from(reach).sort()
    for (const j of sorted) counts[j] = counts[j]! + 1
    entries += sorted.length
    reaches.push(sorted)
  }
  const columnStart = new Int32Array(size + 1)
  for (let j = 0; j < size; j++) columnStart[j + 1] = columnStart[j]! + counts[j]!
  const rows = new Int32Array(columnStart[size]!)
  const next = columnStart.slice(0, size)
  for (let j = 0; j < size; j++) {
    rows[next[j]!] = j
    next[j] = next[j]! + 1
  }
  const reachStart = new Int32Array(size + 1)
  const reachColumns = new Int32Array(entries)
  const reachPlaces = new Int32Array(entries)
  let at = 0
  for (let i = 0; i < size; i++) {
    reachStart[i] = at
    for (const j of reaches[i]!) {
      const place = next[j]!
      rows[place] = i
      next[j] = place + 1
      reachColumns[at] = j
      reachPlaces[at++] = place
    }
  }
  reachStart[size] = at
  const values = new Float64Array(rows.length)
  return {
    pattern,
    columnStart,
    rows,
    values,
    reachStart,
    reachColumns,
    reachPlaces,
    work: new Float64Array(size),
  }
}

/**
 * Fills the factor from the matrix's values (in the order of the pattern).
 * @returns the natural logarithm of the determinant of A; NaN where A is not positive definite
 */
export function factorise(factor: SparseFactor, matrix: Float64Array): number {
  const { pattern, columnStart, rows, values, reachStart, reachColumns, reachPlaces, work } = factor
  const { size, rowStart, columns } = pattern
  let logDeterminant = 0
  for (let i = 0; i < size; i++) {
    for (let p = rowStart[i]!; p < rowStart[i + 1]!; p++) work[columns[p]!] = matrix[p]!
    let diagonal = work[i]!
    work[i] = 0
    for (let r = reachStart[i]!; r < reachStart[i + 1]!; r++) {
      const j = reachColumns[r]!
      const place = reachPlaces[r]!
      const start = columnStart[j]!
      const entry = work[j]! / values[start]!
      work[j] = 0
      for (let p = start + 1; p < place; p++) work[rows[p]!]! -= values[p]! * entry
      values[place] = entry
      diagonal -= entry * entry
    }
    if (!(diagonal > 0)) {
      work.fill(0)
      return Number.NaN
    }
    values[columnStart[i]!] = Math.sqrt(diagonal)
    logDeterminant += Math.log(diagonal)
  }
  return logDeterminant
}

/** Solves A·x = b in place. */
export function solveInPlace(factor: SparseFactor, x: Float64Array): Float64Array {
  const { columnStart, rows, values } = factor
  const size = factor.pattern.size
  for (let j = 0; j < size; j++) {
    const start = columnStart[j]!
    const xj = x[j]! / values[start]!
    x[j] = xj
    if (xj !== 0) for (let p = start + 1; p < columnStart[j + 1]!; p++) x[rows[p]!]! -= values[p]! * xj
  }
  for (let j = size - 1; j >= 0; j--) {
    const start = columnStart[j]!
    let xj = x[j]!
    for (let p = start + 1; p < columnStart[j + 1]!; p++) xj -= values[p]! * x[rows[p]!]!
    x[j] = xj / values[start]!
  }
  return x
}

/** bᵀ·A⁻¹·b for a b with few entries, all from column `from` on: ‖L⁻¹·b‖². Leaves b all zeros. */
export function inverseForm(factor: SparseFactor, b: Float64Array, from: number): number {
  const { columnStart, rows, values } = factor
  let sum = 0
  for (let j = from; j < factor.pattern.size; j++) {
    if (b[j] === 0) continue
    const start = columnStart[j]!
    const bj = b[j]! / values[start]!
    b[j] = 0
    sum += bj * bj
    for (let p = start + 1; p < columnStart[j + 1]!; p++) b[rows[p]!]! -= values[p]! * bj
  }
  return sum
}

/** The entries of A⁻¹ on the pattern of L, laid out as L's values are. */
export function inverseOnPattern(factor: SparseFactor): Float64Array {
  const { columnStart, rows, values } = factor
  const size = factor.pattern.size
  const inverse = new Float64Array(values.length)
  const where = new Int32Array(size).fill(-1)
  const sums = new Float64Array(size)
  const scaled = new Float64Array(size)
  for (let j = size - 1; j >= 0; j--) {
    const start = columnStart[j]!
    const end = columnStart[j + 1]!
    const diagonal = values[start]!
    const count = end - start - 1
    for (let a = 0; a < count; a++) {
      where[rows[start + 1 + a]!] = a
      scaled[a] = values[start + 1 + a]! / diagonal
      sums[a] = 0
    }
    for (let a = 0; a < count; a++) {
      const k = rows[start + 1 + a]!
      const scaledA = scaled[a]!
      let p = columnStart[k]!
      let sumA = scaledA * inverse[p]!
      for (p++; p < columnStart[k + 1]!; p++) {
        const b = where[rows[p]!]!
        if (b < 0) continue
        const entry = inverse[p]!
        sumA += scaled[b]! * entry
        sums[b] = sums[b]! + scaledA * entry
      }
      sums[a] = sums[a]! + sumA
    }
    let atDiagonal = 1 / (diagonal * diagonal)
    for (let a = 0; a < count; a++) {
      inverse[start + 1 + a] = -sums[a]!
      atDiagonal += scaled[a]! * sums[a]!
      where[rows[start + 1 + a]!] = -1
    }
    inverse[start] = atDiagonal
  }
  return inverse
}
