import type { CapacityRow } from '../rules/capacity.ts'
import { rowName } from './drafting.ts'
import type { KeptBasis, LinearModel, RowAbout, SeasonModel } from './season-model.ts'

/** The status of each column and row, in the solver's numbers. */
export interface Basis {
  readonly colStatus: Int32Array
  readonly rowStatus: Int32Array
}

/** What a column or row is where nothing is known of it. */
export interface UsualStatus {
  /** Of a column: at its lower bound. */
  readonly lower: number
  /** Of a row: nothing binds. */
  readonly basic: number
}

export function keptBasis(
  { columns, rows }: LinearModel,
  full: readonly CapacityRow[],
  { colStatus, rowStatus }: Basis,
  usual: UsualStatus,
): KeptBasis {
  const keptColumns = new Map<string, number>()
  for (let column = 0; column < columns.count; column++)
    if (colStatus[column] !== usual.lower) keptColumns.set(columns.name(column), colStatus[column]!)
  const keptRows = new Map<string, number>()
  rowsWith(rows, full).forEach((about, row) => {
    if (rowStatus[row] !== usual.basic) keptRows.set(rowName(about), rowStatus[row]!)
  })
  return {
    columns: keptColumns,
    rows: keptRows,
    full: full.map(({ rule, subject, about, week }) => ({ rule, subject, about, week })),
  }
}

/** A kept basis in the columns and rows of a model; how many are basic may differ from what it needs, which solvers mend. */
export function basisFor(
  { columns, rows }: LinearModel,
  full: readonly CapacityRow[],
  kept: KeptBasis,
  usual: UsualStatus,
): Basis {
  return {
    colStatus: Int32Array.from(
      { length: columns.count },
      (_, column) => kept.columns.get(columns.name(column)) ?? usual.lower,
    ),
    rowStatus: Int32Array.from(rowsWith(rows, full), about => kept.rows.get(rowName(about)) ?? usual.basic),
  }
}

/** The capacities of a model that were full where the basis was kept. */
export const fullBefore = ({ capacities }: SeasonModel, { full }: KeptBasis): CapacityRow[] =>
  full.flatMap(({ rule, subject, about, week }) => {
    const row = capacities.find(capacity => capacity.rule === rule)?.row(subject, week)
    return row?.about === about ? [row] : []
  })

const rowsWith = (rows: LinearModel['rows'], full: readonly CapacityRow[]): readonly RowAbout[] => [
  ...rows.about,
  ...full,
]
