import { cellText, type RawCell } from '../table/table.ts'

/** Ways in which people and programs write that a cell says nothing. */
const nothing: ReadonlySet<string> = new Set([
  '',
  'na',
  'n/a',
  '#n/a',
  '#nv',
  'nan',
  'null',
  'nil',
  'none',
  'keine',
  'k.a.',
  '-',
  '–',
  '—',
  '--',
  '.',
  '?',
])

export const saysNothing = (cell: RawCell | undefined): boolean => nothing.has(cellText(cell).toLowerCase())

/** What a spreadsheet shows where its formula failed. */
export const isFormulaError = (cell: RawCell | undefined): boolean =>
  /^#(REF!|VALUE!|DIV\/0!|NAME\?|NUM!|NULL!|BEZUG!|WERT!|WAARDE!|VALEUR!|¡VALOR!|ZAHL!)$/i.test(
    cellText(cell),
  )
