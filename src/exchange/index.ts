/** The door of exchange: files in, and files out. */
export { type ReadRequest, readNursery } from './reading/read-nursery.ts'
export type {
  Mapping,
  NurseryReading,
  ReadCell,
  ReadColumn,
  ReadQuestion,
  ReadSheet,
  SheetSaid,
} from './reading/reading.ts'
export type { Field, SheetForm, SheetKind } from './sheets/sheet-form.ts'
export { sheetForm, sheetForms } from './sheets/sheet-forms.ts'
export type { NamedBytes } from './table/open-file.ts'
export { writeCsv, writeCsvForSpreadsheets, writeWorkbook } from './table/write-table.ts'
