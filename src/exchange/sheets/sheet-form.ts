import type { Written } from '../table/write-table.ts'

/** What a sheet of a nursery is about. */
export type SheetKind =
  | 'orders'
  | 'mothers'
  | 'benches'
  | 'people'
  | 'batches'
  | 'kinds'
  | 'history'
  | 'cultivars'
  | 'passport'
  | 'nursery'

export type CellForm =
  | 'text'
  | 'whole'
  | 'number'
  | 'day'
  | 'days'
  | 'share'
  | 'square metres'
  | 'metres'
  | 'degrees'

/** One thing that a sheet can say of each of its rows. */
export interface Field {
  readonly id: string
  /** Its header in the empty sheet. */
  readonly name: string
  readonly says: string
  /** Headers by which people call it, in several languages. */
  readonly words: string
  readonly form: CellForm
  /** A row that does not say it cannot be used. */
  readonly needed?: boolean
  readonly example: Written
}

/** A kind of sheet: its fields, and the words by which files and tabs of it are named. */
export interface SheetForm {
  readonly kind: SheetKind
  readonly name: string
  readonly says: string
  readonly called: string
  readonly fields: readonly Field[]
  /** Of these, a row says at least one. */
  readonly oneOf?: readonly string[]
}
