import { type SparseFactor, type SparsePattern, symbolicFactor } from '../numerics/sparse-cholesky.ts'

/**
 * Counts and who and what they belong to, as flat arrays. Row r is one count; `levels[r · factors + f]` is its
 * level of factor f, −1 where that is not known; `batches[r]` is its batch, −1 for a row without a batch effect.
 * A row with `beliefPrecision[r] > 0` is no count but a belief: its logit, without batch effect, is normal about
 * `beliefLogit[r]` with that precision.
 */
export interface MixedLogisticData {
  readonly entered: Float64Array
  readonly survived: Float64Array
  readonly fixed: Float64Array
  readonly fixedCount: number
  readonly levels: Int32Array
  readonly levelCounts: readonly number[]
  readonly batches: Int32Array
  readonly batchCount: number
  readonly beliefLogit: Float64Array
  readonly beliefPrecision: Float64Array
  /** Known part of every row's logit; all 0 where left out. */
  readonly offsets?: Float64Array
}

/** Rows that share one batch effect (or a single row without any). Plain lists: there are thousands of small ones. */
export interface Unit {
  readonly rows: readonly number[]
  readonly batch: number
  /** Columns of the crossed levels that any of the rows has, ascending. */
  readonly columns: readonly number[]
  /** For each pair of columns (i ≥ j, by i then j): place in the matrix's values, and in the factor's values. */
  readonly matrixPlaces: readonly number[]
  readonly factorPlaces: readonly number[]
  /** For each row, where its columns stand in `columns`, ascending. */
  readonly rowColumns: readonly (readonly number[])[]
}

/** What stays the same for one set of counts: where every level's column is, and the sparse pattern. */
export interface CrossedSystem {
  readonly data: MixedLogisticData
  readonly rowCount: number
  /** Number of crossed levels in all. */
  readonly size: number
  /** First column of each factor. */
  readonly offsets: readonly number[]
  /** `columnsOfRow[r · factors + f]`, −1 where not known. */
  readonly columnsOfRow: Int32Array
  readonly factorOfColumn: Int32Array
  readonly units: readonly Unit[]
  readonly pattern: SparsePattern
  readonly factor: SparseFactor
}

/**
 * Lays out the equations for the crossed levels once the batch effects are eliminated (each batch touches
 * only its own levels, so that costs nothing). Factors with most levels come first: levels of one factor
 * never meet each other, so they fill least.
 */
export function crossedSystem(data: MixedLogisticData): CrossedSystem {
  const factors = data.levelCounts.length
  const rowCount = data.entered.length
  const offsets = new Array<number>(factors).fill(0)
  const order = data.levelCounts.map((_, f) => f).sort((a, b) => data.levelCounts[b]! - data.levelCounts[a]!)
  let size = 0
  for (const f of order) {
    offsets[f] = size
    size += data.levelCounts[f]!
  }
  const factorOfColumn = new Int32Array(size)
  for (const f of order) factorOfColumn.fill(f, offsets[f]!, offsets[f]! + data.levelCounts[f]!)
  const columnsOfRow = new Int32Array(rowCount * factors)
  const rowsOfBatch: number[][] = Array.from({ length: data.batchCount }, () => [])
  const groups: { batch: number; rows: number[] }[] = []
  for (let r = 0; r < rowCount; r++) {
    for (let f = 0; f < factors; f++) {
      const level = data.levels[r * factors + f]!
      columnsOfRow[r * factors + f] = level < 0 ? -1 : offsets[f]! + level
    }
    const batch = data.batches[r]!
    if (batch < 0) groups.push({ batch: -1, rows: [r] })
    else rowsOfBatch[batch]!.push(r)
  }
  rowsOfBatch.forEach((rows, batch) => {
    if (rows.length > 0) groups.push({ batch, rows })
  })

  const columnsOfGroup = groups.map(({ rows }) => {
    const columns: number[] = []
    for (const r of rows)
      for (let f = 0; f < factors; f++) {
        const column = columnsOfRow[r * factors + f]!
        if (column >= 0 && !columns.includes(column)) columns.push(column)
      }
    return columns.sort((i, j) => i - j)
  })
  const pattern = patternOf(size, columnsOfGroup)
  const factor = symbolicFactor(pattern)
  const units = groups.map(({ batch, rows }, g): Unit => {
    const columns = columnsOfGroup[g]!
    const matrixPlaces: number[] = []
    const factorPlaces: number[] = []
    for (let i = 0; i < columns.length; i++)
      for (let j = 0; j <= i; j++) {
        const row = columns[i]!
        const column = columns[j]!
        matrixPlaces.push(search(pattern.columns, pattern.rowStart[row]!, pattern.rowStart[row + 1]!, column))
        factorPlaces.push(
          search(factor.rows, factor.columnStart[column]!, factor.columnStart[column + 1]!, row),
        )
      }
    const rowColumns =
      rows.length === 1
        ? [columns.map((_, i) => i)]
        : rows.map(r => {
            const own: number[] = []
            for (let f = 0; f < factors; f++) {
              const column = columnsOfRow[r * factors + f]!
              if (column >= 0) own.push(columns.indexOf(column))
            }
            return own.sort((i, j) => i - j)
          })
    return { rows, batch, columns, matrixPlaces, factorPlaces, rowColumns }
  })
  return { data, rowCount, size, offsets, columnsOfRow, factorOfColumn, units, pattern, factor }
}

/** Lower triangle by rows: every pair of columns that meets in some unit, and the diagonal. */
function patternOf(size: number, cliques: readonly (readonly number[])[]): SparsePattern {
  const neighbours: Set<number>[] = Array.from({ length: size }, (_, i) => new Set([i]))
  for (const columns of cliques)
    for (let i = 0; i < columns.length; i++) {
      const row = neighbours[columns[i]!]!
      for (let j = 0; j < i; j++) row.add(columns[j]!)
    }
  const rowStart = new Int32Array(size + 1)
  for (let i = 0; i < size; i++) rowStart[i + 1] = rowStart[i]! + neighbours[i]!.size
  const columns = new Int32Array(rowStart[size]!)
  for (let i = 0; i < size; i++) columns.set(Int32Array.from(neighbours[i]!).sort(), rowStart[i]!)
  return { size, rowStart, columns }
}

/** Where `wanted` lies in the ascending stretch from … to − 1. */
function search(sorted: Int32Array, from: number, to: number, wanted: number): number {
  let low = from
  let high = to - 1
  while (low < high) {
    const middle = (low + high) >> 1
    if (sorted[middle]! < wanted) low = middle + 1
    else high = middle
  }
  return low
}
