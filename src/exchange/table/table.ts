/** What a cell holds before anyone has asked what it means. A day that the spreadsheet knew as one is ISO text. */
export type RawCell = string | number | boolean | null

/** One table of a file. `rows[0]` is the row that a spreadsheet numbers 1. */
export interface Table {
  readonly file: string
  /** Null for a file that is one table. */
  readonly sheet: string | null
  /** How the file is written, in words: "Windows-1252, semicolons". */
  readonly written: string
  /** The mark between cells, where there is one. A semicolon makes a decimal comma likely. */
  readonly separator: string | null
  readonly rows: readonly (readonly RawCell[])[]
}

/** What a table is called by: its file, and its sheet where a file has several. */
export const tableId = ({ file, sheet }: Pick<Table, 'file' | 'sheet'>): string =>
  sheet === null ? file : `${file}#${sheet}`

/** As a spreadsheet letters its columns: 0 is A, 25 Z, 26 AA. */
export const columnLetters = (index: number): string =>
  (index >= 26 ? columnLetters(Math.floor(index / 26) - 1) : '') + String.fromCharCode(65 + (index % 26))

export const cellText = (cell: RawCell | undefined): string =>
  cell === null || cell === undefined ? '' : String(cell).trim()
