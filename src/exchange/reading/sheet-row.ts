/** One good row of a sheet: what it says by field, and what stands in columns that were not mapped. */
export interface SheetRow {
  /** As the spreadsheet numbers it. */
  readonly number: number
  readonly values: ReadonlyMap<string, string | number>
  /** Columns that no field holds, by header. */
  readonly others: ReadonlyMap<string, string>
}

export const textIn = ({ values }: SheetRow, field: string): string | null => {
  const value = values.get(field)
  return value === undefined ? null : String(value)
}

export const numberIn = ({ values }: SheetRow, field: string): number | null => {
  const value = values.get(field)
  return typeof value === 'number' ? value : null
}

/** What became of a row: something was made of it, the record had it already, or it cannot be used. */
export type RowOutcome = { readonly kind: 'made' } | { readonly kind: 'known' } | BadRow
export interface BadRow {
  readonly kind: 'bad'
  readonly field: string
  readonly wrong: string
}
export const made = { kind: 'made' } as const
export const known = { kind: 'known' } as const
export const bad = (field: string, wrong: string): BadRow => ({ kind: 'bad', field, wrong })

/** What can be said and asked while a row is taken. */
export interface RowTold {
  /** The sheet's id. */
  readonly sheet: string
  /** The row is used, and something in it was not taken as it stands. */
  noted(field: string, wrong: string, done: string): void
  answer(question: string): string | undefined
  /** Asks what only the user can know, once for all rows that raise it. */
  ask(question: {
    readonly id: string
    readonly asks: string
    readonly choices: readonly { readonly id: string; readonly says: string }[]
    readonly example: string
    readonly suggested: string | null
  }): void
}
