import type { Highs } from 'highs'
import type { CapacityRow } from '../rules/capacity.ts'
import { blockModel, blocksOf, pooledBlocks } from './blocks.ts'
import type { Basis } from './kept-basis.ts'
import { addRows, type OpenedModel as Opened, openModel } from './open-model.ts'
import type { LinearModel, SolveOutcome } from './season-model.ts'

/**
 * Measured on seasons of 300 kinds: presolve costs more than it saves, and throws a basis away; Devex weights save a
 * quarter against steepest edge, whose weights must be worked out anew for every basis that is handed in.
 */
const DUAL_SIMPLEX = {
  solver: 'simplex',
  presolve: 'off',
  simplex_strategy: 1,
  simplex_dual_edge_weight_strategy: 1,
} as const

/** Smaller models are solved whole: to take them apart costs more than it saves. */
const LARGE = 5000
/** Columns that a block has at least. */
const LEAST = 400

/** A linear model whose bounds and costs change between solves. */
export interface Relaxation {
  setCosts(columns: Int32Array, costs: Float64Array): void
  setColumnBounds(columns: Int32Array, lower: Float64Array, upper: Float64Array): void
  setRowBounds(rows: Int32Array, lower: Float64Array, upper: Float64Array): void
  /** Rows that tie blocks together. */
  addRows(rows: readonly CapacityRow[]): void
  /** Other bounds for the rows added so far, in their order. */
  setAddedUpper(upper: Float64Array): void
  run(isStopped?: () => boolean): Ran
  /** The next solve starts from this basis; from then on the model is solved whole. */
  startFrom(basis: Basis): void
  basis(): Basis
  dispose(): void
}

export interface Ran {
  readonly outcome: SolveOutcome
  readonly objective: number
  readonly columnValue: Float64Array
  /** Rows of the model, then those added. */
  readonly rowDual: Float64Array
}

/**
 * Solves block by block, each from its own last basis, and only where something changed. What the blocks share (area,
 * hours) is written down where it is full; then the whole is solved from the bases of its blocks side by side: it lacks
 * nothing but what the full rows force, which is a small part of solving it from nothing.
 * @param large models of more columns are taken apart
 */
export function openRelaxation(highs: Highs, model: LinearModel, large = LARGE): Relaxation {
  const { columns, rows } = model
  const cost = Float64Array.from(columns.cost)
  const lower = Float64Array.from(columns.lower)
  const upper = Float64Array.from(columns.upper)
  const rowLower = Float64Array.from(rows.lower)
  const rowUpper = Float64Array.from(rows.upper)
  const { basic, lower: atLower } = highs.constants.basisStatus
  const { optimal, interrupted } = highs.constants.modelStatus
  const { simplexInterrupt } = highs.constants.callbackType

  const blocks = columns.count > large ? pooledBlocks(blocksOf(model), LEAST) : []
  const parts =
    blocks.length > 1 ? blocks.map(block => ({ block, isTold: false, basis: null as Basis | null })) : []
  const partOfColumn = new Int32Array(columns.count).fill(-1)
  const partOfRow = new Int32Array(rows.count).fill(-1)
  parts.forEach(({ block }, p) => {
    for (const column of block.columns) partOfColumn[column] = p
    for (const row of block.rows) partOfRow[row] = p
  })
  const side = {
    columnValue: new Float64Array(columns.count),
    rowDual: new Float64Array(rows.count),
    columnStatus: new Int32Array(columns.count).fill(atLower),
    rowStatus: new Int32Array(rows.count).fill(basic),
  }
  const added: CapacityRow[] = []
  let whole: Opened | null = null
  let isTakenApart = parts.length > 0
  let startingFrom: Basis | null = null
  /** 1 for columns and rows of which the whole has not been told what holds now. */
  const untold = { columns: new Uint8Array(columns.count), rows: new Uint8Array(rows.count) }

  const open = (of: LinearModel): Opened => {
    const opened = openModel(highs, of, true)
    opened.options.set(DUAL_SIMPLEX)
    return opened
  }
  const run = (opened: Opened, isStopped: (() => boolean) | undefined): SolveOutcome => {
    opened.run(
      isStopped && {
        [simplexInterrupt](event) {
          if (isStopped()) event.interrupt()
          return undefined
        },
      },
    )
    const status = opened.getModelStatus()
    return status === optimal ? 'optimal' : status === interrupted ? 'stopped' : 'contradiction'
  }
  const holdsNow: LinearModel = {
    ...model,
    columns: { ...columns, cost, lower, upper },
    rows: { ...rows, lower: rowLower, upper: rowUpper },
  }

  /** A block is open only while it is solved: all of them together would take as much memory as the whole. */
  const runPart = (part: (typeof parts)[number]): SolveOutcome => {
    const opened = open(blockModel(holdsNow, part.block))
    try {
      if (part.basis) opened.setBasis(part.basis)
      const outcome = run(opened, undefined)
      if (outcome !== 'optimal') return outcome
      const { colValue, rowDual } = opened.getSolution()
      const { colStatus, rowStatus } = opened.getBasis()
      part.basis = { colStatus, rowStatus }
      part.isTold = true
      part.block.columns.forEach((column, c) => {
        side.columnValue[column] = colValue[c]!
        side.columnStatus[column] = colStatus[c]!
      })
      part.block.rows.forEach((row, r) => {
        side.rowDual[row] = rowDual[r]!
        side.rowStatus[row] = rowStatus[r]!
      })
      return outcome
    } finally {
      opened.dispose()
    }
  }
  const runParts = (isStopped: (() => boolean) | undefined): SolveOutcome => {
    for (const part of parts) {
      if (part.isTold) continue
      const outcome = isStopped?.() ? 'stopped' : runPart(part)
      if (outcome !== 'optimal') return outcome
    }
    partOfColumn.forEach((part, column) => {
      if (part < 0) side.columnValue[column] = lower[column]!
    })
    return 'optimal'
  }
  /** Hands over what the whole has not been told; true where there was something. */
  const tellWhole = (opened: Opened): boolean => {
    const columnsTold = marked(untold.columns)
    const rowsTold = marked(untold.rows)
    if (columnsTold.length > 0) {
      const of = (all: Float64Array) => Float64Array.from(columnsTold, column => all[column]!)
      opened.changeColsCost({ kind: 'set', indices: columnsTold }, of(cost))
      opened.changeColsBounds({ kind: 'set', indices: columnsTold }, of(lower), of(upper))
    }
    if (rowsTold.length > 0) {
      const of = (all: Float64Array) => Float64Array.from(rowsTold, row => all[row]!)
      opened.changeRowsBounds({ kind: 'set', indices: rowsTold }, of(rowLower), of(rowUpper))
    }
    untold.columns.fill(0)
    untold.rows.fill(0)
    return columnsTold.length + rowsTold.length > 0
  }
  const basisOfParts = (): Basis => {
    const rowStatus = new Int32Array(rows.count + added.length).fill(basic)
    rowStatus.set(side.rowStatus)
    return { colStatus: side.columnStatus, rowStatus }
  }
  const isUntold = () => untold.columns.includes(1) || untold.rows.includes(1)
  const runWhole = (isStopped: (() => boolean) | undefined): Ran => {
    if (isTakenApart && isUntold()) {
      // To be handed a basis costs the solver as much memory again each time, unless it begins with nothing.
      whole?.dispose()
      whole = null
    }
    const isFirst = whole === null
    if (!whole) {
      whole = open(holdsNow)
      addRows(whole, added)
      untold.columns.fill(0)
      untold.rows.fill(0)
    }
    const isOther = tellWhole(whole) || isFirst
    if (startingFrom) whole.setBasis(startingFrom)
    else if (isOther && isTakenApart) whole.setBasis(basisOfParts())
    startingFrom = null
    const outcome = run(whole, isStopped)
    const { colValue, rowDual } = whole.getSolution()
    return { outcome, objective: whole.getObjectiveValue(), columnValue: colValue, rowDual }
  }
  const touchColumn = (column: number) => {
    untold.columns[column] = 1
    const part = parts[partOfColumn[column]!]
    if (part) part.isTold = false
  }
  const touchRow = (row: number) => {
    untold.rows[row] = 1
    const part = parts[partOfRow[row]!]
    if (part) part.isTold = false
  }

  return {
    setCosts(at, costs) {
      at.forEach((column, i) => {
        if (cost[column] === costs[i]) return
        cost[column] = costs[i]!
        touchColumn(column)
      })
    },
    setColumnBounds(at, lowest, highest) {
      at.forEach((column, i) => {
        if (lower[column] === lowest[i] && upper[column] === highest[i]) return
        lower[column] = lowest[i]!
        upper[column] = highest[i]!
        touchColumn(column)
      })
    },
    setRowBounds(at, lowest, highest) {
      at.forEach((row, i) => {
        if (rowLower[row] === lowest[i] && rowUpper[row] === highest[i]) return
        rowLower[row] = lowest[i]!
        rowUpper[row] = highest[i]!
        touchRow(row)
      })
    },
    addRows(more) {
      added.push(...more)
      if (whole) addRows(whole, more)
    },
    setAddedUpper(upper) {
      upper.forEach((most, r) => {
        added[r] = { ...added[r]!, upper: most }
      })
      whole?.changeRowsBounds(
        { kind: 'set', indices: Int32Array.from(upper, (_, r) => rows.count + r) },
        new Float64Array(upper.length).fill(Number.NEGATIVE_INFINITY),
        upper,
      )
    },
    run(isStopped) {
      if (!isTakenApart) return runWhole(isStopped)
      const outcome = runParts(isStopped)
      if (outcome === 'optimal' && added.length > 0) return runWhole(isStopped)
      const columnValue = Float64Array.from(side.columnValue)
      const objective = columnValue.reduce((sum, value, column) => sum + value * cost[column]!, 0)
      return { outcome, objective, columnValue, rowDual: Float64Array.from(side.rowDual) }
    },
    startFrom(basis) {
      startingFrom = basis
      isTakenApart = false
    },
    basis: () => (whole && (!isTakenApart || added.length > 0) ? whole.getBasis() : basisOfParts()),
    dispose() {
      whole?.dispose()
    },
  }
}

function marked(marks: Uint8Array): Int32Array {
  let count = 0
  for (let i = 0; i < marks.length; i++) count += marks[i]!
  const all = new Int32Array(count)
  for (let i = 0, at = 0; at < count; i++) if (marks[i] === 1) all[at++] = i
  return all
}
