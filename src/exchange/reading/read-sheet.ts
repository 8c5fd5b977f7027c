import { saysNothing } from '../cells/blank.ts'
import type { SheetForm, SheetKind } from '../sheets/sheet-form.ts'
import { isSheetKind, sheetForm, sheetForms } from '../sheets/sheet-forms.ts'
import { cellText, columnLetters, type RawCell, type Table, tableId } from '../table/table.ts'
import { columnNames, findHeaderRow, foldHeader, guessKind, headerKey, mapHeaders } from './headers.ts'
import { columnReaders, type MappedColumn } from './read-columns.ts'
import type { Mapping, ReadCell, ReadColumn, ReadQuestion, SheetSaid } from './reading.ts'
import type { SheetRow } from './sheet-row.ts'

/** A sheet with its rows read, before anything is made of them. */
export interface SheetRead {
  readonly id: string
  readonly table: Table
  readonly kind: SheetKind | null
  readonly headerRow: number | null
  readonly headers: readonly string[]
  readonly columns: ReadColumn[]
  readonly all: number
  readonly passedOver: number
  readonly rows: readonly SheetRow[]
  readonly lost: number
  readonly cells: readonly ReadCell[]
  readonly questions: readonly ReadQuestion[]
  readonly answers: Readonly<Record<string, string>>
  /** What is worth remembering of how it was mapped. */
  readonly said: SheetSaid
  place(
    row: number,
    field: string | null,
  ): Pick<ReadCell, 'file' | 'sheet' | 'row' | 'column' | 'header' | 'said'>
}

const total =
  /^((grand |sub)?totals?|sum|summe|gesamt(summe)?|zwischensumme|somme|totale?|suma|soma|totaal|som)\b[:.]?$/iu
const EXAMPLES = 3

export function readSheet(table: Table, user: Mapping, remembered: Mapping, today: string): SheetRead {
  const id = tableId(table)
  const knownHeaders = new Set(
    [...Object.values(user), ...Object.values(remembered)].flatMap(({ columns }) =>
      Object.keys(columns ?? {}).map(foldHeader),
    ),
  )
  const headerRow = findHeaderRow(table.rows, knownHeaders)
  const width = table.rows.reduce((most, row) => Math.max(most, row.length), 0)
  const headers = headerRow === null ? [] : columnNames(table.rows[headerRow]!, width, columnLetters)
  const key = headerKey(headers)
  const now = answeredAsSaid(user[id] ?? user[key] ?? {})
  const before = remembered[key] ?? {}
  const kind =
    headerRow === null
      ? null
      : now.kind !== undefined
        ? now.kind
        : before.kind !== undefined
          ? before.kind
          : guessKind(table, headers)
  const answers = { ...before.answers, ...now.answers }
  const body = headerRow === null ? [] : table.rows.slice(headerRow + 1)

  const form = kind === null ? null : sheetForm(kind)
  const columns = columnsOf(form, headers, body, now, before)
  const mapped: MappedColumn[] = columns.flatMap((column, index) => {
    const field = form?.fields.find(({ id: fieldId }) => fieldId === column.field)
    return field ? [{ index, header: column.header, field, cells: body.map(row => row[index] ?? null) }] : []
  })
  const place: SheetRead['place'] = (row, field) => {
    const column = mapped.find(one => one.field.id === field)
    return {
      file: table.file,
      sheet: table.sheet,
      row,
      column: column ? columnLetters(column.index) : '',
      header: column?.header ?? form?.fields.find(one => one.id === field)?.name ?? '',
      said: column ? cellText(table.rows[row - 1]?.[column.index]) : '',
    }
  }
  const lacking = missingFields(id, form, mapped, columns, answers)
  const questions: ReadQuestion[] = [
    ...(kind === null && headers.length > 0 ? [whatIsIt(id, table)] : []),
    ...lacking,
  ]
  const { read, questions: open } = columnReaders(id, mapped, table.separator, answers, today)
  questions.push(...open)

  const cells: ReadCell[] = []
  const rows: SheetRow[] = []
  let passedOver = 0
  let lost = 0
  const others = columns.flatMap((column, index) =>
    column.field === null ? [{ header: column.header, index }] : [],
  )
  body.forEach((cellsOfRow, at) => {
    const number = headerRow! + at + 2
    if (isPassedOver(cellsOfRow, headers, mapped)) {
      passedOver += 1
      return
    }
    if (lacking.length > 0) {
      lost += 1
      return
    }
    const values = new Map<string, string | number>()
    let isLost = false
    for (const column of mapped) {
      const reading = read(cellsOfRow[column.index], column)
      const { field } = column
      if (reading.kind === 'value') {
        values.set(field.id, reading.value)
        if (reading.noted !== undefined)
          cells.push({
            ...place(number, field.id),
            wrong: reading.noted,
            done: `taken as ${reading.value}`,
            rowLost: false,
          })
      } else if (reading.kind === 'wrong' || field.needed) {
        const rowLost = field.needed === true
        isLost ||= rowLost
        cells.push({
          ...place(number, field.id),
          wrong: reading.kind === 'wrong' ? reading.wrong : 'nothing is said here',
          done: rowLost ? 'the row is left out' : 'taken as if nothing were said',
          rowLost,
        })
      }
    }
    if (form?.oneOf && !form.oneOf.some(field => values.has(field))) {
      isLost = true
      cells.push({
        ...place(
          number,
          form.oneOf.find(field => mapped.some(column => column.field.id === field)) ?? form.oneOf[0]!,
        ),
        wrong: 'nothing is said here',
        done: 'the row is left out',
        rowLost: true,
      })
    }
    if (isLost || mapped.length === 0) lost += 1
    else
      rows.push({
        number,
        values,
        others: new Map(
          others.flatMap(({ header, index }) =>
            saysNothing(cellsOfRow[index]) ? [] : [[header, cellText(cellsOfRow[index])] as const],
          ),
        ),
      })
  })

  return {
    id,
    table,
    kind,
    headerRow: headerRow === null ? null : headerRow + 1,
    headers,
    columns,
    all: body.length,
    passedOver: kind === null ? body.length : passedOver,
    rows: kind === null ? [] : rows,
    lost: kind === null ? 0 : lost,
    cells: kind === null ? [] : cells,
    questions,
    answers,
    said: {
      kind,
      columns: Object.fromEntries(columns.map(({ header, field }) => [header, field])),
      answers,
    },
    place,
  }
}

/** An answer that names the kind of the sheet, or the column of a field, says the same as a mapping does. */
function answeredAsSaid(said: SheetSaid): SheetSaid {
  const { answers = {} } = said
  const columns = Object.entries(answers).flatMap(([question, header]) => {
    const field = /^column: (.+)$/.exec(question)?.[1]
    return field === undefined ? [] : [[header, field] as const]
  })
  const kind =
    said.kind === undefined && answers.kind !== undefined && isSheetKind(answers.kind)
      ? answers.kind
      : said.kind
  return {
    ...said,
    ...(kind === undefined ? {} : { kind }),
    columns: { ...said.columns, ...Object.fromEntries(columns) },
  }
}

function columnsOf(
  form: SheetForm | null,
  headers: readonly string[],
  body: readonly (readonly RawCell[])[],
  now: SheetSaid,
  before: SheetSaid,
): ReadColumn[] {
  const guessed = form === null ? [] : mapHeaders(form, headers).fields
  const isField = (field: string | null | undefined): boolean =>
    field === null || form?.fields.some(({ id }) => id === field) === true
  const chosen = headers.map((header, index): Pick<ReadColumn, 'field' | 'by'> => {
    const user = now.columns?.[header]
    if (isField(user)) return { field: user ?? null, by: 'user' }
    const earlier = before.columns?.[header]
    if (isField(earlier)) return { field: earlier ?? null, by: 'before' }
    const field = guessed[index] ?? null
    return { field, by: field === null ? null : 'header' }
  })
  const byOthers = new Set(
    chosen.flatMap(({ field, by }) => (by === 'user' && field !== null ? [field] : [])),
  )
  return headers.map((header, index) => {
    const { field, by } = chosen[index]!
    const isGiven = field !== null && by !== 'user' && byOthers.has(field)
    const isTwice = field !== null && chosen.findIndex(one => one.field === field && one.by === by) < index
    return {
      column: columnLetters(index),
      header,
      field: isGiven || isTwice ? null : field,
      by: isGiven || isTwice ? null : by,
      examples: [
        ...new Set(
          body.flatMap(row => (saysNothing(row[index]) ? [] : [cellText(row[index])])).slice(0, EXAMPLES),
        ),
      ],
    }
  })
}

/** Blank, a total, or the headers once more, as where pages were pasted one below the other. */
function isPassedOver(
  row: readonly RawCell[],
  headers: readonly string[],
  mapped: readonly MappedColumn[],
): boolean {
  const said = row.filter(cell => !saysNothing(cell))
  if (said.length === 0) return true
  if (
    said.length >= 2 &&
    mapped.length > 0 &&
    mapped.every(({ index, header }) => foldHeader(cellText(row[index])) === foldHeader(header))
  )
    return true
  const first = said.find(cell => typeof cell === 'string' && !/^[\d.,\s]+$/.test(cell))
  return said.length <= Math.max(3, headers.length / 2) && total.test(cellText(first))
}

const whatIsIt = (id: string, { file, sheet }: Table): ReadQuestion => ({
  id: 'kind',
  sheet: id,
  column: null,
  asks: `What is ${sheet === null ? file : `the sheet "${sheet}" of ${file}`}? It is left out until this is said.`,
  choices: sheetForms.map(({ kind, name }) => ({ id: kind, says: name })),
  examples: [],
  answer: null,
  suggested: null,
  needed: false,
})

/** A field without which no row can be used, and no column that holds it. */
function missingFields(
  sheet: string,
  form: SheetForm | null,
  mapped: readonly MappedColumn[],
  columns: readonly ReadColumn[],
  answers: Readonly<Record<string, string>>,
): ReadQuestion[] {
  if (form === null) return []
  const has = new Set(mapped.map(({ field }) => field.id))
  const lacking = form.fields.filter(({ id, needed }) => needed && !has.has(id))
  const oneOf =
    form.oneOf && !form.oneOf.some(id => has.has(id))
      ? form.fields.filter(({ id }) => id === form.oneOf![0])
      : []
  return [...oneOf, ...lacking].map(field => ({
    id: `column: ${field.id}`,
    sheet,
    column: null,
    asks: `Which column of ${sheet} says "${field.name}" (${field.says})? Map one, or leave the sheet out.`,
    choices: columns.flatMap(({ header, field: held }) =>
      held === null ? [{ id: header, says: header }] : [],
    ),
    examples: [],
    answer: answers[`column: ${field.id}`] ?? null,
    suggested: null,
    needed: true,
  }))
}
