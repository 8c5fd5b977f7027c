import type { SheetForm, SheetKind } from './sheets/sheet-form.ts'
import { sheetForm, sheetForms } from './sheets/sheet-forms.ts'
import {
  type SheetToWrite,
  type Written,
  writeCsvForSpreadsheets,
  writeWorkbook,
} from './table/write-table.ts'

/** Sheets that come first for a nursery that begins. */
const order: readonly SheetKind[] = [
  'orders',
  'mothers',
  'benches',
  'people',
  'batches',
  'kinds',
  'history',
  'cultivars',
  'passport',
  'nursery',
]
export const emptySheetForms: readonly SheetForm[] = order.map(sheetForm)

/** What each field means stands in the second workbook sheet, not among the rows that are read. */
const rowsOf = (form: SheetForm): Written[][] => [
  form.fields.map(({ name }) => name),
  form.fields.map(({ example }) => example),
]

const explained: SheetToWrite = {
  sheet: 'What goes where',
  headerRows: 1,
  rows: [
    ['Which sheet', 'Its header', 'What it says', 'Must be filled'],
    ...sheetForms.flatMap(form =>
      form.fields.map(({ name, says, needed }): Written[] => [form.name, name, says, needed ? 'yes' : null]),
    ),
  ],
}

const sheetOf = (form: SheetForm): SheetToWrite => ({ sheet: form.name, rows: rowsOf(form), headerRows: 1 })

export interface SavedFile {
  readonly name: string
  readonly type: string
  readonly bytes: Uint8Array
}

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'

/** `orders.csv`, `orders.xlsx`, or `all.xlsx` for one workbook of all: headers and one example to overwrite. */
export async function emptySheet(file: string): Promise<SavedFile | null> {
  if (file === 'all.xlsx')
    return {
      name: file,
      type: XLSX,
      bytes: await writeWorkbook([...emptySheetForms.map(sheetOf), explained]),
    }
  const [, kind, ending] = /^([a-z]+)\.(csv|xlsx)$/.exec(file) ?? []
  const form = emptySheetForms.find(one => one.kind === kind)
  if (form === undefined) return null
  return ending === 'csv'
    ? {
        name: file,
        type: 'text/csv; charset=utf-8',
        bytes: new TextEncoder().encode(writeCsvForSpreadsheets(rowsOf(form))),
      }
    : { name: file, type: XLSX, bytes: await writeWorkbook([sheetOf(form)]) }
}
