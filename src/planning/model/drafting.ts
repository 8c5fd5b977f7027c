import type { ColumnTable, LinearModel, RowAbout, RowTable } from './season-model.ts'

export interface NewColumn {
  readonly name: string
  /** The part of the cost it belongs to. */
  readonly part: string
  readonly cost: number
  readonly lower?: number
  readonly upper?: number
  readonly isWhole?: boolean
}

export interface NewRow {
  readonly rule: string
  /** What the row is about, by index and by name; the name stands in the row's own. */
  readonly subject: number
  readonly about: string
  readonly week: number
  readonly lower?: number
  readonly upper?: number
}

/** A linear model being written down: columns, rows and the numbers where they meet. */
export interface Drafting {
  column(column: NewColumn): number
  row(row: NewRow): number
  put(row: number, column: number, value: number): void
  addCost(column: number, cost: number): void
  /** Once, when all is written: what was written on is given free. */
  finished(): LinearModel
}

const FEWEST_ENTRIES = 1 << 14

/** Starts an empty model. Entries that meet at one place add up. */
export function drafting(): Drafting {
  const columns = {
    names: [] as string[],
    parts: [] as string[],
    cost: [] as number[],
    lower: [] as number[],
    upper: [] as number[],
    isWhole: [] as number[],
  }
  const rows = {
    about: [] as RowAbout[],
    lower: [] as number[],
    upper: [] as number[],
  }
  let entries = 0
  let entryRow = new Int32Array(0)
  let entryColumn = new Int32Array(0)
  let entryValue = new Float64Array(0)

  return {
    column({ name, part, cost, lower = 0, upper = Number.POSITIVE_INFINITY, isWhole = false }) {
      columns.isWhole.push(isWhole ? 1 : 0)
      columns.parts.push(part)
      columns.cost.push(cost)
      columns.lower.push(lower)
      columns.upper.push(upper)
      return columns.names.push(name) - 1
    },
    row({ rule, subject, about, week, lower = Number.NEGATIVE_INFINITY, upper = Number.POSITIVE_INFINITY }) {
      rows.lower.push(lower)
      rows.upper.push(upper)
      return rows.about.push({ rule, subject, about, week }) - 1
    },
    put(row, column, value) {
      if (value === 0) return
      if (entries === entryRow.length) {
        const room = Math.max(FEWEST_ENTRIES, 2 * entries)
        entryRow = grown(entryRow, new Int32Array(room))
        entryColumn = grown(entryColumn, new Int32Array(room))
        entryValue = grown(entryValue, new Float64Array(room))
      }
      entryRow[entries] = row
      entryColumn[entries] = column
      entryValue[entries++] = value
    },
    addCost(column, cost) {
      columns.cost[column]! += cost
    },
    finished() {
      const columnTable: ColumnTable = {
        count: columns.names.length,
        cost: Float64Array.from(columns.cost),
        lower: Float64Array.from(columns.lower),
        upper: Float64Array.from(columns.upper),
        isWhole: Int32Array.from(columns.isWhole),
        part: columns.parts,
        name: column => columns.names[column]!,
      }
      const rowTable: RowTable = {
        count: rows.about.length,
        lower: Float64Array.from(rows.lower),
        upper: Float64Array.from(rows.upper),
        about: rows.about,
      }
      const matrix = byColumn(columnTable.count, entries, entryRow, entryColumn, entryValue)
      // The rules go on holding it; of a large season it is more than the model itself.
      entries = 0
      entryRow = entryColumn = new Int32Array(0)
      entryValue = new Float64Array(0)
      return { columns: columnTable, rows: rowTable, ...matrix }
    },
  }
}

/** `space/mist bed/40`. */
export const rowName = ({ rule, about, week }: RowAbout): string =>
  week < 0 ? `${rule}/${about}` : `${rule}/${about}/${week}`

function grown<A extends Int32Array | Float64Array>(from: A, into: A): A {
  into.set(from)
  return into
}

/** Entries sorted by counting, by row and then by column, doubles added together. */
function byColumn(
  columnCount: number,
  entries: number,
  entryRow: Int32Array,
  entryColumn: Int32Array,
  entryValue: Float64Array,
): Pick<LinearModel, 'columnStarts' | 'indices' | 'values'> {
  const asWritten = Int32Array.from({ length: entries }, (_, e) => e)
  const order = counted(counted(asWritten, entryRow), entryColumn)
  const columnStarts = new Int32Array(columnCount + 1)
  const indices = new Int32Array(entries)
  const values = new Float64Array(entries)
  let used = 0
  let at = 0
  for (let c = 0; c < columnCount; c++) {
    const first = used
    columnStarts[c] = used
    for (; at < entries && entryColumn[order[at]!] === c; at++) {
      const e = order[at]!
      if (used > first && indices[used - 1] === entryRow[e]) values[used - 1]! += entryValue[e]!
      else {
        indices[used] = entryRow[e]!
        values[used++] = entryValue[e]!
      }
    }
  }
  columnStarts[columnCount] = used
  return { columnStarts, indices: indices.slice(0, used), values: values.slice(0, used) }
}

/** Entries in order of their key; what has the same key stays in its order. */
function counted(entries: Int32Array, keyOf: Int32Array): Int32Array {
  let most = 0
  for (const e of entries) if (keyOf[e]! > most) most = keyOf[e]!
  const next = new Int32Array(most + 2)
  for (const e of entries) next[keyOf[e]! + 1]!++
  for (let key = 0; key <= most; key++) next[key + 1]! += next[key]!
  const order = new Int32Array(entries.length)
  for (const e of entries) order[next[keyOf[e]!]!++] = e
  return order
}
