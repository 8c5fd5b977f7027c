import loadHighs, { type Highs } from 'highs'
import type { CapacityRow } from '../rules/capacity.ts'
import type { LinearModel } from './season-model.ts'

let loading: Promise<Highs> | undefined

/** The solver is loaded once; its memory only grows, so a long-lived process plans in a worker of its own. */
export const loadSolver = (): Promise<Highs> => {
  loading ??= loadHighs()
  return loading
}

/** Hands the arrays of a model to the solver as they are. */
export function openModel(highs: Highs, model: LinearModel, isRelaxed: boolean) {
  const { columns, rows } = model
  const opened = highs.createModel({
    numCols: columns.count,
    numRows: rows.count,
    sense: highs.constants.objectiveSense.minimize,
    colCost: columns.cost,
    colLower: columns.lower,
    colUpper: columns.upper,
    rowLower: rows.lower,
    rowUpper: rows.upper,
    matrix: {
      format: 'csc',
      numRows: rows.count,
      numCols: columns.count,
      starts: model.columnStarts,
      indices: model.indices,
      values: model.values,
    },
    ...(isRelaxed ? {} : { integrality: columns.isWhole }),
  })
  opened.options.set({ output_flag: false, log_to_console: false, random_seed: 1 })
  return opened
}
export type OpenedModel = ReturnType<typeof openModel>

export function addRows(opened: OpenedModel, rows: readonly CapacityRow[]): void {
  const starts = new Int32Array(rows.length + 1)
  rows.forEach((row, r) => {
    starts[r + 1] = starts[r]! + row.columns.length
  })
  const indices = new Int32Array(starts[rows.length]!)
  const values = new Float64Array(starts[rows.length]!)
  rows.forEach((row, r) => {
    indices.set(row.columns, starts[r]!)
    values.set(row.values, starts[r]!)
  })
  opened.addRows({
    lower: new Float64Array(rows.length).fill(Number.NEGATIVE_INFINITY),
    upper: Float64Array.from(rows, row => row.upper),
    matrix: {
      format: 'csr',
      numRows: rows.length,
      numCols: opened.getDimensions().numCols,
      starts,
      indices,
      values,
    },
  })
}
