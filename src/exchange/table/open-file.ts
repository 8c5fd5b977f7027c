import { readDelimited, separatorName } from './delimited.ts'
import { decodeText } from './encoding.ts'
import type { Table } from './table.ts'
import { readWorkbook } from './workbook.ts'

export interface NamedBytes {
  readonly name: string
  readonly bytes: Uint8Array
}

export type OpenedFile =
  | { readonly kind: 'tables'; readonly tables: readonly Table[] }
  | { readonly kind: 'not a spreadsheet'; readonly wrong: string }

const isZip = (bytes: Uint8Array): boolean => bytes[0] === 0x50 && bytes[1] === 0x4b
/** The container of spreadsheets from before 2007. */
const isOldWorkbook = (bytes: Uint8Array): boolean => bytes[0] === 0xd0 && bytes[1] === 0xcf

/** The tables of a file, by what its bytes are; its name is not trusted. */
export async function openFile({ name, bytes }: NamedBytes): Promise<OpenedFile> {
  if (isOldWorkbook(bytes)) return not('It is a workbook of the old form (.xls). Save it as .xlsx or CSV.')
  if (isZip(bytes)) {
    try {
      const sheets = await readWorkbook(bytes)
      return {
        kind: 'tables',
        tables: sheets.map(({ sheet, rows }) => ({
          file: name,
          sheet,
          written: 'workbook',
          separator: null,
          rows,
        })),
      }
    } catch {
      return not('It is no workbook that can be read. Save it again as .xlsx, or as CSV.')
    }
  }
  if (bytes.length === 0) return not('It is empty.')
  const { text, encoding } = decodeText(bytes)
  if (text.includes('\u0000')) return not('It holds no text. Save the table as CSV or .xlsx.')
  const { separator, rows } = readDelimited(text)
  const written = `${encoding}, ${separatorName[separator]}`
  return { kind: 'tables', tables: [{ file: name, sheet: null, written, separator, rows: withoutEnd(rows) }] }
}

/** A line break at the end of a file begins no row. */
const withoutEnd = (rows: readonly (readonly string[])[]): readonly (readonly string[])[] =>
  rows.slice(0, rows.findLastIndex(row => row.some(cell => cell !== '')) + 1)

const not = (wrong: string): OpenedFile => ({ kind: 'not a spreadsheet', wrong })
