/** The door of exchange: files in, and files out. */
export { type BroughtIn, broughtIn, rememberBrought } from './brought-in.ts'
export { emptySheet, emptySheetForms, type SavedFile } from './empty-sheets.ts'
export {
  DESCRIPTOR_FILE,
  ENTRIES_FILE,
  type EntriesRead,
  entryLines,
  packageFile,
  packageFiles,
  readEntryLines,
} from './package/data-package.ts'
export { type ReadRequest, readNursery } from './reading/read-nursery.ts'
export {
  MAPPING_KEY,
  type Mapping,
  type NurseryReading,
  type ReadCell,
  type ReadColumn,
  type ReadQuestion,
  type ReadSheet,
  type SheetSaid,
} from './reading/reading.ts'
export { summaryText } from './reading/summary-text.ts'
export type { Field, SheetForm, SheetKind } from './sheets/sheet-form.ts'
export { sheetForm, sheetForms } from './sheets/sheet-forms.ts'
export type { NamedBytes } from './table/open-file.ts'
export { writeCsv, writeCsvForSpreadsheets } from './table/write-table.ts'
