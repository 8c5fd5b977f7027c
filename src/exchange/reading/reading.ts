import type { Body, Day } from '../../record/index.ts'
import type { SheetKind } from '../sheets/sheet-form.ts'

/** What is said of one sheet. What is not said is guessed, or was said of such a sheet before. */
export interface SheetSaid {
  /** Null: the sheet is left out. */
  readonly kind?: SheetKind | null | undefined
  /** Field by the header of its column; null: the column is not read. */
  readonly columns?: Readonly<Record<string, string | null>> | undefined
  /** Choice by question. */
  readonly answers?: Readonly<Record<string, string>> | undefined
}

/** By a sheet's id (`orders.csv`, `nursery.xlsx#Orders`), or by its headers for all sheets like it. */
export type Mapping = Readonly<Record<string, SheetSaid>>

/** Under this the log remembers mappings, for the office and for the command alike. */
export const MAPPING_KEY = 'exchange mapping'

export interface ReadColumn {
  readonly column: string
  readonly header: string
  readonly field: string | null
  readonly by: 'header' | 'before' | 'user' | null
  readonly examples: string[]
}

export interface ReadSheet {
  readonly id: string
  readonly file: string
  readonly sheet: string | null
  readonly written: string
  readonly kind: SheetKind | null
  readonly headerRow: number | null
  readonly columns: ReadColumn[]
  readonly rows: {
    readonly all: number
    readonly good: number
    readonly bad: number
    readonly passedOver: number
  }
}

/** What only the user can know. The answer goes under `answers` of the sheet. */
export interface ReadQuestion {
  readonly id: string
  readonly sheet: string
  readonly column: string | null
  readonly asks: string
  readonly choices: { readonly id: string; readonly says: string }[]
  readonly examples: string[]
  readonly answer: string | null
  readonly suggested: string | null
  /** Nothing can be accepted before it is answered; the others may stay open, at the cost of their rows. */
  readonly needed: boolean
}

/** A cell that could not be read as it stands: where, what is wrong, and what was done. */
export interface ReadCell {
  readonly file: string
  readonly sheet: string | null
  readonly row: number
  readonly column: string
  readonly header: string
  readonly said: string
  readonly wrong: string
  readonly done: string
  readonly rowLost: boolean
}

/** What the files say, before anything of it is written. */
export interface NurseryReading {
  readonly sheets: ReadSheet[]
  readonly questions: ReadQuestion[]
  readonly cells: ReadCell[]
  readonly assumptions: { readonly about: string; readonly says: string }[]
  readonly unread: { readonly file: string; readonly wrong: string }[]
  readonly would: {
    readonly kind: string
    readonly number: number
    readonly says: string
    readonly first: string[]
  }[]
  /** Rows that say what the record has already. */
  readonly known: number
  /** How the sheets were mapped, by their headers: what is worth remembering. */
  readonly mapping: Mapping
  readonly ready: boolean
  readonly told: readonly { readonly on: Day; readonly body: Body }[]
}
