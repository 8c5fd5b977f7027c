import loadHighs, { type Highs } from 'highs'
import type { CapacityRow } from '../rules/capacity.ts'
import { costOfLate } from '../rules/orders-by-their-date.ts'
import { rowName } from './drafting.ts'
import type {
  LinearModel,
  Margins,
  RowAbout,
  SeasonModel,
  SeasonSolver,
  Solution,
  SolveOutcome,
} from './season-model.ts'

let loading: Promise<Highs> | undefined

/** The solver is loaded once; its memory only grows, so a long-lived process plans in a worker of its own. */
export const loadSolver = (): Promise<Highs> => {
  loading ??= loadHighs()
  return loading
}

/** Numbers under this are rounding errors of the solver. */
export const NEGLIGIBLE = 1e-6
/** A capacity is broken by more than this (m², minutes). */
const BROKEN_BY = 1e-6
const MOST_ROUNDS = 60

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
type OpenedModel = ReturnType<typeof openModel>

/** A solver of the relaxation that keeps its basis, and the capacities that were once full, between solves. */
export async function openSolver(model: SeasonModel): Promise<SeasonSolver> {
  const highs = await loadSolver()
  const opened = openModel(highs, model, true)
  const full = fullCapacities(model)
  const { interrupted, optimal } = highs.constants.modelStatus
  const interrupt = highs.constants.callbackType.simplexInterrupt
  opened.options.set(DUAL_SIMPLEX)

  const run = (isStopped: (() => boolean) | undefined): SolveOutcome => {
    opened.run(
      isStopped && {
        [interrupt](event) {
          if (isStopped()) event.interrupt()
          return undefined
        },
      },
    )
    const status = opened.getModelStatus()
    return status === optimal ? 'optimal' : status === interrupted ? 'stopped' : 'contradiction'
  }

  return {
    model,
    withMargins(margins) {
      const rows = model.orderRow
      opened.changeRowsBounds({ kind: 'set', indices: rows }, margins.plannedNumber, margins.plannedNumber)
      const { columns, costs } = costsOfDelivery(model, margins)
      opened.changeColsCost({ kind: 'set', indices: columns }, costs)
    },
    setColumnBounds(columns, lower, upper) {
      opened.changeColsBounds({ kind: 'set', indices: columns }, lower, upper)
    },
    setColumnCosts(columns, costs) {
      opened.changeColsCost({ kind: 'set', indices: columns }, costs)
    },
    solve(isStopped) {
      let outcome = run(isStopped)
      for (let round = 0; outcome === 'optimal' && round < MOST_ROUNDS; round++) {
        const broken = full.broken(opened.getSolution().colValue)
        if (broken.length === 0) break
        addRows(opened, broken)
        outcome = run(isStopped)
      }
      const { colValue, rowDual } = opened.getSolution()
      return readSolution(model, outcome, opened.getObjectiveValue(), colValue, rowDual, full.rows)
    },
    addedRows: () => full.rows,
    memoryBytes: () => highs.memoryBytes,
    dispose: () => opened.dispose(),
  }
}

/** Remembers which capacity rows are written down already. */
export function fullCapacities(model: SeasonModel) {
  const rows: CapacityRow[] = []
  const names = new Set<string>()
  return {
    rows: rows as readonly CapacityRow[],
    broken(columnValue: Float64Array): readonly CapacityRow[] {
      const added = model.capacities
        .flatMap(capacity => capacity.broken(columnValue, BROKEN_BY))
        .filter(row => !names.has(rowName(row)))
      for (const row of added) names.add(rowName(row))
      rows.push(...added)
      return added
    },
  }
}

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

/** What each delivery costs under other margins: the weeks after the planned due week count as late. */
function costsOfDelivery(model: SeasonModel, margins: Margins): { columns: Int32Array; costs: Float64Array } {
  const { season, deliveries } = model
  return {
    columns: Int32Array.from(deliveries, delivery => delivery.column),
    costs: Float64Array.from(deliveries, ({ order, kind, week }) => {
      const wanted = season.orders[order]!
      const { lessWorth } = wanted.kinds.find(accepted => accepted.kind === kind)!
      return lessWorth + costOfLate(wanted, season.prices, margins.plannedDueWeek[order]!, week)
    }),
  }
}

/** The columns read back as starts, deliveries and what is short. */
export function readSolution(
  model: SeasonModel,
  outcome: SolveOutcome,
  objective: number,
  columnValue: Float64Array,
  rowDual: Float64Array,
  added: readonly RowAbout[],
): Solution {
  const withNumber = <Item extends { readonly column: number }>(items: readonly Item[]) =>
    items
      .map(item => ({ ...item, number: columnValue[item.column]! }))
      .filter(({ number }) => number > NEGLIGIBLE)
  const duals: (RowAbout & { dual: number })[] = []
  rowDual.forEach((dual, row) => {
    if (Math.abs(dual) <= NEGLIGIBLE) return
    const { rule, subject, about, week } = model.rows.about[row] ?? added[row - model.rows.count]!
    duals.push({ rule, subject, about, week, dual })
  })
  return {
    outcome,
    objective,
    columnValue,
    duals,
    starts: withNumber(model.starts),
    rootstockUses: withNumber(model.rootstockUses).map(use => ({
      ...use,
      number: use.number * use.perPlant,
    })),
    deliveries: withNumber(model.deliveries),
    bought: withNumber(model.bought),
    planted: withNumber(model.planted),
    short: Float64Array.from(model.shortColumn, column => Math.max(0, columnValue[column]!)),
    dual: name => duals.find(row => rowName(row) === name)?.dual ?? 0,
  }
}
