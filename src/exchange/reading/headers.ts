import { foldName } from '../../trade/index.ts'
import type { Field, SheetForm, SheetKind } from '../sheets/sheet-form.ts'
import { sheetForms } from '../sheets/sheet-forms.ts'
import { cellText, type RawCell, type Table } from '../table/table.ts'

/** A header without its unit, its type code and its signs: "Qty. (trees)" is "qty". */
export const foldHeader = (header: string): string =>
  foldName(
    header
      .replace(/,[A-Z],\d+(,\d+)?$/, '')
      .replace(/[([{].*?[)\]}]/gu, ' ')
      .replace(/[_/.]/g, ' ')
      .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
      .replace(/n[°º]/giu, 'no')
      .replace(/#/g, ' no '),
  ) || foldName(header)

const wordsOf = new Map<Field, readonly string[]>()
const foldedWords = (field: Field): readonly string[] => {
  const known = wordsOf.get(field)
  if (known) return known
  const words = [...new Set([field.name, field.id, ...field.words.split(', ')].map(foldName))]
  wordsOf.set(field, words)
  return words
}

/** From 0, not at all, to 1, the very word. The words that a field has first speak for it most. */
function likeness(field: Field, folded: string): number {
  if (folded === '') return 0
  const words = foldedWords(field)
  const at = words.indexOf(folded)
  if (at >= 0) return 1 - 0.002 * at
  let best = 0
  for (const word of words)
    if (word.length >= 4 && ` ${folded} `.includes(` ${word} `))
      best = Math.max(best, (0.8 * word.length) / folded.length)
  return best < 0.3 ? 0 : best
}

/**
 * The field of each column by its header, and how well they fit together. They are scant where something needed is
 * lacking and most columns say nothing that such a sheet says: then it is hardly one.
 */
export function mapHeaders(
  form: SheetForm,
  headers: readonly string[],
): { readonly fields: readonly (string | null)[]; readonly fit: number; readonly isScant: boolean } {
  const pairs = headers.flatMap((header, column) =>
    form.fields.flatMap(field => {
      const like = likeness(field, foldHeader(header))
      return like > 0 ? [{ column, field: field.id, like }] : []
    }),
  )
  pairs.sort((a, b) => b.like - a.like || a.column - b.column)
  const fields: (string | null)[] = headers.map(() => null)
  const given = new Set<string>()
  let fit = 0
  for (const { column, field, like } of pairs) {
    if (fields[column] !== null || given.has(field)) continue
    fields[column] = field
    given.add(field)
    fit += like
  }
  const lacks = form.fields.filter(({ id, needed }) => needed && !given.has(id)).length
  const lacksAny = form.oneOf && !form.oneOf.some(id => given.has(id)) ? 1 : 0
  const named = headers.filter(header => !header.startsWith('column ')).length
  const covered = named === 0 ? 0 : given.size / named
  return {
    fields,
    fit: fit * (0.5 + 0.5 * covered) - lacks - lacksAny,
    isScant: lacks + lacksAny > 0 && covered < 0.5,
  }
}

const isCalled = (form: SheetForm, name: string): boolean => {
  const folded = ` ${foldName(name.replace(/\.(csv|tsv|txt|xlsx)$/i, '').replace(/[_\-\d]/g, ' '))} `
  return form.called.split(', ').some(word => folded.includes(` ${foldName(word)} `))
}

const NAME_SPEAKS = 1.5
const LEAST_FIT = 1.5

/** Where a father stands beside it, the mother is a parent of a cross and no tree to cut from. */
const parents: ReadonlySet<string> = new Set([
  'father',
  'pollen parent',
  'male parent',
  'vater',
  'pere',
  'padre',
  'pai',
  'vader',
])

/** What the sheet is about, by its headers and by how it is called; null where neither says. */
export function guessKind(
  table: Pick<Table, 'file' | 'sheet'>,
  headers: readonly string[],
): SheetKind | null {
  let best: SheetKind | null = null
  let most = LEAST_FIT
  const isOfParents = headers.some(header => parents.has(foldHeader(header)))
  for (const form of sheetForms) {
    if (form.kind === 'mothers' && isOfParents) continue
    const { fit, isScant } = mapHeaders(form, headers)
    const named =
      table.sheet !== null && isCalled(form, table.sheet)
        ? NAME_SPEAKS
        : isCalled(form, table.file)
          ? NAME_SPEAKS / 1.5
          : 0
    if (isScant && named === 0) continue
    if (fit + named > most && fit > 0) [best, most] = [form.kind, fit + named]
  }
  return best
}

const allWords: ReadonlySet<string> = new Set(
  sheetForms.flatMap(form =>
    form.fields.flatMap(field => foldedWords(field).filter(word => word.length > 1)),
  ),
)

const HEADER_WITHIN_ROWS = 30

/**
 * The row of the headers: of the first rows the one with most words that are headers anywhere; titles and blank rows
 * may stand above it. Null in a table without any such row.
 */
export function findHeaderRow(
  rows: readonly (readonly RawCell[])[],
  known: ReadonlySet<string>,
): number | null {
  let best: number | null = null
  let most = 0
  rows.slice(0, HEADER_WITHIN_ROWS).forEach((row, at) => {
    const texts = row.filter(cell => typeof cell === 'string' && cell.trim() !== '').map(cellText)
    const hits = texts.filter(text => allWords.has(foldHeader(text)) || known.has(foldHeader(text))).length
    if (hits > most && hits >= Math.min(2, texts.length) && hits >= texts.length / 4)
      [best, most] = [at, hits]
  })
  if (best !== null) return best
  const first = rows.findIndex(row => row.filter(cell => cellText(cell) !== '').length >= 2)
  return first >= 0 && rows[first]!.every(cell => cell === null || typeof cell === 'string') ? first : null
}

/** Headers as the columns are called: a name that comes twice is numbered, one that is missing is lettered. */
export function columnNames(
  row: readonly RawCell[],
  width: number,
  letters: (column: number) => string,
): string[] {
  const seen = new Map<string, number>()
  return Array.from({ length: width }, (_, column) => {
    const text = cellText(row[column]).replace(/\s+/g, ' ')
    const name = text === '' ? `column ${letters(column)}` : text
    const times = (seen.get(name) ?? 0) + 1
    seen.set(name, times)
    return times === 1 ? name : `${name} (${times})`
  })
}

/** Sheets with the same headers, whatever their file is called, are mapped alike. */
export const headerKey = (headers: readonly string[]): string =>
  `headers: ${headers.map(foldHeader).join(' | ')}`
