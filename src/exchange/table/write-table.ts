import Papa from 'papaparse'
import writeSheets from 'write-excel-file/universal'

export type Written = string | number | boolean | null

/** CSV as RFC 4180 has it, in UTF-8. A cell that a spreadsheet would run as a formula is kept as text. */
export const writeCsv = (rows: readonly (readonly Written[])[]): string =>
  `${Papa.unparse(
    rows.map(row => row.map(cell => cell ?? '')),
    { escapeFormulae: /^(?![-+]?\d+([.,]\d+)?$)[=+\-@\t\r]/, newline: '\r\n' },
  )}\r\n`

/** The same with the mark by which spreadsheet programs tell UTF-8 from the older encodings. */
export const writeCsvForSpreadsheets = (rows: readonly (readonly Written[])[]): string =>
  `\uFEFF${writeCsv(rows)}`

export interface SheetToWrite {
  readonly sheet: string
  readonly rows: readonly (readonly Written[])[]
  /** Rows that head the table and stay in sight. */
  readonly headerRows: number
}

const WIDEST = 40

/** A workbook. Text stays text: a cell that begins with = is no formula. */
export async function writeWorkbook(sheets: readonly SheetToWrite[]): Promise<Uint8Array> {
  const blob = await writeSheets(
    sheets.map(({ sheet, rows, headerRows }) => ({
      sheet,
      stickyRowsCount: headerRows,
      columns: (rows[0] ?? []).map((_, column) => ({
        width: Math.min(WIDEST, 2 + Math.max(...rows.map(row => String(row[column] ?? '').length))),
      })),
      data: rows.map((row, at) =>
        row.map(value =>
          value === null ? null : at < headerRows ? { value, fontWeight: 'bold' as const } : { value },
        ),
      ),
    })),
  ).toBlob()
  return new Uint8Array(await blob.arrayBuffer())
}
