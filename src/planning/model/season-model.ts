import type { Capacity, CapacityRow } from '../rules/capacity.ts'
import type { BoughtIn, Season } from '../season.ts'

/**
 * The season model as plain data: minimise cost over columns (what may be decided) under rows (the rules).
 * Building, solving, writing it out and explaining it are separate readers of this.
 */
export interface SeasonModel extends LinearModel {
  readonly season: Season
  readonly margins: Margins
  readonly starts: readonly StartColumn[]
  /** Column of a start, or −1: `startColumn[way * weeks + week]`. */
  readonly startColumn: Int32Array
  readonly rootstockUses: readonly RootstockUseColumn[]
  readonly deliveries: readonly DeliveryColumn[]
  readonly bought: readonly BoughtColumn[]
  readonly holds: readonly HoldColumn[]
  readonly waits: readonly Wait[]
  readonly planted: readonly PlantedColumn[]
  readonly overtime: readonly OvertimeColumn[]
  readonly extraArea: readonly ExtraAreaColumn[]
  /** Rows that are added where a solution breaks them. */
  readonly capacities: readonly Capacity[]
  readonly lessThanAccepted: readonly LessColumn[]
  /** Columns of how many fewer are begun than the nursery fixed: weighed, and not paid. */
  readonly lessThanSet: readonly number[]
  readonly wholeStarts: readonly WholeStartColumns[]
  /** By order: its row (planned number on the right-hand side) and its column of what is never delivered. */
  readonly orderRow: Int32Array
  readonly shortColumn: Int32Array
}

export interface LinearModel {
  readonly columns: ColumnTable
  readonly rows: RowTable
  /** Compressed by column. */
  readonly columnStarts: Int32Array
  readonly indices: Int32Array
  readonly values: Float64Array
}

export interface ColumnTable {
  readonly count: number
  readonly cost: Float64Array
  readonly lower: Float64Array
  readonly upper: Float64Array
  /** 1 where only whole numbers make sense. */
  readonly isWhole: Int32Array
  /** The part of the cost that it belongs to: `labour`, `material`, `area` … */
  readonly part: readonly string[]
  readonly name: (column: number) => string
}

export interface RowTable {
  readonly count: number
  readonly lower: Float64Array
  readonly upper: Float64Array
  readonly about: readonly RowAbout[]
}

/** The rule that a row belongs to, one name everywhere; what it is about, by index (the rule says of what) and name. */
export interface RowAbout {
  readonly rule: string
  readonly subject: number
  readonly about: string
  /** −1 where it is about no single week. */
  readonly week: number
}

/** Plants begun by a way in a week. */
export interface StartColumn {
  readonly way: number
  readonly week: number
  readonly column: number
}
/** The same start in whole trays, with its yes or no; only in the model with whole numbers. */
export interface WholeStartColumns extends StartColumn {
  readonly trays: number
  readonly begun: number
}
/** Of those begun by a way in a week, worked on rootstocks of this kind, taken in `useWeek`. */
export interface RootstockUseColumn {
  readonly way: number
  readonly week: number
  readonly kind: number
  readonly useWeek: number
  readonly column: number
  /** Rootstocks for one plant of the column. */
  readonly perPlant: number
}
export interface DeliveryColumn {
  readonly order: number
  readonly kind: number
  readonly week: number
  readonly column: number
}
export interface BoughtColumn {
  readonly kind: number
  readonly week: number
  readonly column: number
}
/** Finished plants kept from the end of `week` to the beginning of `until`. */
export interface HoldColumn {
  readonly kind: number
  readonly week: number
  readonly until: number
  readonly column: number
}
/** What a start or a bought plant waits for the first week in which it can be taken, in plants times weeks for one. */
export interface Wait {
  readonly kind: number
  readonly column: number
  readonly plantWeeks: number
}
/** Young mother trees planted for a pool in a week. */
export interface PlantedColumn {
  readonly pool: number
  readonly week: number
  readonly column: number
}
/** Minutes beyond their hours that people of the same skills work in a week. */
export interface OvertimeColumn {
  readonly people: readonly number[]
  readonly week: number
  readonly column: number
}
/** Area lent for a week beyond what a place has. */
export interface ExtraAreaColumn {
  readonly place: number
  readonly week: number
  readonly column: number
}
/** How many fewer than accepted. */
export interface LessColumn {
  readonly way: number
  readonly week: number
  readonly accepted: number
  readonly column: number
}

/**
 * What each order is planned with: how many finished trees are planned for it (more than its number, because the
 * model works with expected survival), and the week by which (its due week or earlier, where time is what lacks).
 * Both stand on the right-hand side or in costs, so a change is solved again from the last basis.
 */
export interface Margins {
  readonly plannedNumber: Float64Array
  readonly plannedDueWeek: Int32Array
}

/** How a solve ended. `stopped` holds the best so far, or nothing. */
export type SolveOutcome = 'optimal' | 'stopped' | 'contradiction'

export interface Solution {
  readonly outcome: SolveOutcome
  readonly objective: number
  readonly columnValue: Float64Array
  /** Rows that bind, with what one more unit on their right-hand side adds to the cost (below 0: it saves). */
  readonly duals: readonly (RowAbout & { readonly dual: number })[]
  /** Only those above zero. */
  readonly starts: readonly { readonly way: number; readonly week: number; readonly number: number }[]
  readonly rootstockUses: readonly {
    readonly way: number
    readonly week: number
    readonly kind: number
    readonly useWeek: number
    readonly number: number
  }[]
  readonly deliveries: readonly {
    readonly order: number
    readonly kind: number
    readonly week: number
    readonly number: number
  }[]
  readonly bought: readonly BoughtIn[]
  /** Young mother trees. */
  readonly planted: readonly { readonly pool: number; readonly week: number; readonly number: number }[]
  /** By order: planned and never delivered. */
  readonly short: Float64Array
  /** Dual of a row by its name, `space/mist bed/40`; 0 for a name that no row has. */
  readonly dual: (rowName: string) => number
}

/**
 * A basis by the names of columns and rows, without what is as usual. A model in which most are the same, say of the same
 * season with other rates or other starts, begins from it near its optimum, though its matrix is another.
 */
export interface KeptBasis {
  readonly columns: ReadonlyMap<string, number>
  readonly rows: ReadonlyMap<string, number>
  /** Capacities that were full. */
  readonly full: readonly Pick<RowAbout, 'rule' | 'subject' | 'about' | 'week'>[]
}

/** A solver that holds one model and its last basis. */
export interface SeasonSolver {
  readonly model: SeasonModel
  /** Changes right-hand sides (and the weeks by which to deliver); the next solve starts from the last basis. */
  withMargins(margins: Margins): void
  /**
   * The same decisions under other costs, bounds and right-hand sides, say of another capacity; solved from the last basis.
   * False where the models differ in more: then nothing has changed.
   */
  become(model: SeasonModel): boolean
  /** The next solve starts from a basis kept of another model. */
  startFrom(kept: KeptBasis): void
  /** The last basis, to start another model from. */
  basis(): KeptBasis
  /** Bounds of columns, for rounding to whole trays. */
  setColumnBounds(columns: Int32Array, lower: Float64Array, upper: Float64Array): void
  setColumnCosts(columns: Int32Array, costs: Float64Array): void
  solve(isStopped?: () => boolean): Solution
  /** The capacities that were full in some solve, as rows after those of the model. */
  addedRows(): readonly CapacityRow[]
  memoryBytes(): number
  dispose(): void
}
