import loadHighs, { type Highs } from 'highs'
import { costOfLate } from '../rules/orders-by-their-date.ts'
import type {
  LinearModel,
  Margins,
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

export interface SolverOptions {
  /** Start from this basis (of a model with the same columns and rows). */
  readonly basis?: Basis
}

export interface Basis {
  readonly colStatus: Int32Array
  readonly rowStatus: Int32Array
}

/** Numbers under this are rounding errors of the solver. */
export const NEGLIGIBLE = 1e-6

const OPTIONS = { output_flag: false, log_to_console: false, random_seed: 1 }

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
  opened.options.set(OPTIONS)
  return opened
}

/** A solver of the relaxation that keeps its basis between solves. */
export async function openSolver(
  model: SeasonModel,
  options: SolverOptions = {},
): Promise<SeasonSolver & WithBasis> {
  const highs = await loadSolver()
  const opened = openModel(highs, model, true)
  if (options.basis) opened.setBasis({ ...options.basis })
  let isWarm = options.basis !== undefined
  const { interrupted, optimal } = highs.constants.modelStatus
  const interrupt = highs.constants.callbackType.simplexInterrupt

  return {
    withMargins(margins) {
      const rows = model.orderRow
      opened.changeRowsBounds({ kind: 'set', indices: rows }, margins.plannedNumber, margins.plannedNumber)
      const costs = costsOfDelivery(model, margins)
      opened.changeColsCost({ kind: 'set', indices: costs.columns }, costs.costs)
    },
    setColumnBounds(columns, lower, upper) {
      opened.changeColsBounds({ kind: 'set', indices: columns }, lower, upper)
    },
    setRowBounds(rows, lower, upper) {
      opened.changeRowsBounds({ kind: 'set', indices: rows }, lower, upper)
    },
    solve(isStopped) {
      // From a basis, presolve would throw away more than it saves.
      opened.options.set({ solver: 'simplex', presolve: isWarm ? 'off' : 'on' })
      opened.run(
        isStopped
          ? {
              [interrupt](event) {
                if (isStopped()) event.interrupt()
                return undefined
              },
            }
          : undefined,
      )
      const status = opened.getModelStatus()
      const outcome: SolveOutcome =
        status === optimal ? 'optimal' : status === interrupted ? 'stopped' : 'contradiction'
      isWarm = outcome === 'optimal'
      const { colValue, rowDual } = opened.getSolution()
      return readSolution(model, outcome, opened.getObjectiveValue(), colValue, rowDual)
    },
    basis: () => opened.getBasis(),
    memoryBytes: () => highs.memoryBytes,
    dispose: () => opened.dispose(),
  }
}

interface WithBasis {
  basis(): Basis
  memoryBytes(): number
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
): Solution {
  const withNumber = <Item extends { readonly column: number }>(items: readonly Item[]) =>
    items
      .map(item => ({ ...item, number: columnValue[item.column]! }))
      .filter(({ number }) => number > NEGLIGIBLE)
  let rowByName: Map<string, number> | undefined
  return {
    outcome,
    objective,
    columnValue,
    rowDual,
    starts: withNumber(model.starts),
    rootstockUses: withNumber(model.rootstockUses).map(use => ({
      ...use,
      number: use.number * use.perPlant,
    })),
    deliveries: withNumber(model.deliveries),
    bought: withNumber(model.bought),
    short: Float64Array.from(model.shortColumn, column => Math.max(0, columnValue[column]!)),
    dual: name => {
      rowByName ??= new Map(Array.from({ length: model.rows.count }, (_, row) => [model.rows.name(row), row]))
      const row = rowByName.get(name)
      return row === undefined ? 0 : rowDual[row]!
    },
  }
}
