import type { CapacityRow } from '../rules/capacity.ts'
import { costOfLate } from '../rules/orders-by-their-date.ts'
import { rowName } from './drafting.ts'
import { basisFor, fullBefore, keptBasis } from './kept-basis.ts'
import { loadSolver } from './open-model.ts'
import { openRelaxation } from './relaxation.ts'
import type { Margins, RowAbout, SeasonModel, SeasonSolver, Solution, SolveOutcome } from './season-model.ts'

/** Numbers under this are rounding errors of the solver. */
export const NEGLIGIBLE = 1e-6
/** A capacity is broken by more than this (m², minutes). */
const BROKEN_BY = 1e-7
const MOST_ROUNDS = 60

/** A solver of the relaxation that keeps its basis, and the capacities that were once full, between solves. */
export async function openSolver(first: SeasonModel): Promise<SeasonSolver> {
  const highs = await loadSolver()
  let model = first
  const relaxation = openRelaxation(highs, model)
  const full = fullCapacities(model)

  return {
    get model() {
      return model
    },
    become(next) {
      if (!hasSameMatrix(model, next)) return false
      const upper = full.become(next)
      if (upper === null) return false
      model = next
      const { columns, rows } = next
      const everyColumn = Int32Array.from({ length: columns.count }, (_, c) => c)
      const everyRow = Int32Array.from({ length: rows.count }, (_, r) => r)
      relaxation.setCosts(everyColumn, columns.cost)
      relaxation.setColumnBounds(everyColumn, columns.lower, columns.upper)
      relaxation.setRowBounds(everyRow, rows.lower, rows.upper)
      relaxation.setAddedUpper(upper)
      return true
    },
    withMargins(margins) {
      relaxation.setRowBounds(model.orderRow, margins.plannedNumber, margins.plannedNumber)
      const { columns, costs } = costsOfDelivery(model, margins)
      relaxation.setCosts(columns, costs)
    },
    startFrom(kept) {
      relaxation.addRows(full.add(fullBefore(model, kept)))
      relaxation.startFrom(basisFor(model, full.rows, kept, highs.constants.basisStatus))
    },
    basis: () => keptBasis(model, full.rows, relaxation.basis(), highs.constants.basisStatus),
    setColumnBounds: relaxation.setColumnBounds,
    setColumnCosts: relaxation.setCosts,
    solve(isStopped) {
      let ran = relaxation.run(isStopped)
      for (let round = 0; ran.outcome === 'optimal' && round < MOST_ROUNDS; round++) {
        const broken = full.broken(ran.columnValue)
        if (broken.length === 0) break
        relaxation.addRows(broken)
        ran = relaxation.run(isStopped)
      }
      return readSolution(model, ran.outcome, ran.objective, ran.columnValue, ran.rowDual, full.rows)
    },
    addedRows: () => full.rows,
    memoryBytes: () => highs.memoryBytes,
    dispose: relaxation.dispose,
  }
}

/** Remembers which capacity rows are written down already. */
export function fullCapacities(model: SeasonModel) {
  const rows: CapacityRow[] = []
  const names = new Set<string>()
  let { capacities } = model
  const add = (more: readonly CapacityRow[]): readonly CapacityRow[] => {
    const added = more.filter(row => !names.has(rowName(row)))
    for (const row of added) names.add(rowName(row))
    rows.push(...added)
    return added
  }
  return {
    rows: rows as readonly CapacityRow[],
    /** The bounds of its rows in another model; null where more than the bounds differ. */
    become(next: SeasonModel): Float64Array | null {
      const same = rows.map(row => {
        const other = next.capacities.find(({ rule }) => rule === row.rule)!.row(row.subject, row.week)
        const isSame =
          row.about === other.about &&
          isEqual(row.columns, other.columns) &&
          isEqual(row.values, other.values)
        return isSame ? other : null
      })
      if (!same.every(row => row !== null)) return null
      rows.splice(0, rows.length, ...same)
      ;({ capacities } = next)
      return Float64Array.from(same, ({ upper }) => upper)
    },
    /** Those that are not written down yet. */
    add,
    broken: (columnValue: Float64Array): readonly CapacityRow[] =>
      add(capacities.flatMap(capacity => capacity.broken(columnValue, BROKEN_BY))),
  }
}

const isEqual = (a: Int32Array | Float64Array, b: Int32Array | Float64Array) =>
  a.length === b.length && a.every((value, i) => value === b[i])

const hasSameMatrix = (a: SeasonModel, b: SeasonModel) =>
  a.rows.count === b.rows.count &&
  isEqual(a.columnStarts, b.columnStarts) &&
  isEqual(a.indices, b.indices) &&
  isEqual(a.values, b.values)

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
      .filter(({ column }) => columnValue[column]! > NEGLIGIBLE)
      .map(item => ({ ...item, number: columnValue[item.column]! }))
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
