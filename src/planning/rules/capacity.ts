import type { Season } from '../season.ts'

/**
 * Rows that matter only where something is full: area by place and week, hours by skill and week. Most never bind, so
 * they are not written down beforehand: after a solve, those that it breaks are added, and it is solved again from
 * its last basis until none is broken. The optimum and the duals are those of the model with all rows.
 */
export interface CapacityRow {
  readonly rule: string
  readonly subject: number
  readonly about: string
  readonly week: number
  readonly upper: number
  readonly columns: Int32Array
  readonly values: Float64Array
}

/** Area and hours that are given away, week by week. */
export type Taken = NonNullable<Season['taken']>

export interface Capacity {
  readonly rule: string
  /** Rows broken by these values of the columns by more than `tolerance`, worst ones where several say the same. */
  broken(columnValue: Float64Array, tolerance: number): readonly CapacityRow[]
  /** The row of one subject in one week. */
  row(subject: number, week: number): CapacityRow
  /** What these values of the columns take. */
  taken(columnValue: Float64Array): Taken
  /** All rows that can matter at all. */
  all(): readonly CapacityRow[]
}

/** Collects the entries of one row; what meets at one column adds up. */
export function rowEntries(): {
  add(column: number, value: number): void
  done(): { columns: Int32Array; values: Float64Array }
} {
  const entries = new Map<number, number>()
  return {
    add(column, value) {
      if (value !== 0) entries.set(column, (entries.get(column) ?? 0) + value)
    },
    done: () => ({ columns: Int32Array.from(entries.keys()), values: Float64Array.from(entries.values()) }),
  }
}
