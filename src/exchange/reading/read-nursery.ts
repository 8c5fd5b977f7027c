import type { Day, Nursery } from '../../record/index.ts'
import { entryText } from '../../record/index.ts'
import { createMaking, type Making, toldWithDays } from '../making/making.ts'
import { takeAccession } from '../making/take-accession.ts'
import { takeBatch } from '../making/take-batch.ts'
import { takeCultivar, takeKind } from '../making/take-kinds.ts'
import { takeMother } from '../making/take-mothers.ts'
import { takeOrder } from '../making/take-orders.ts'
import { takePast } from '../making/take-past.ts'
import { takeBench, takeNursery, takePerson } from '../making/take-places.ts'
import type { SheetKind } from '../sheets/sheet-form.ts'
import { sheetForms } from '../sheets/sheet-forms.ts'
import { type NamedBytes, openFile } from '../table/open-file.ts'
import type { Table } from '../table/table.ts'
import { headerKey } from './headers.ts'
import { readSheet, type SheetRead } from './read-sheet.ts'
import type { Mapping, NurseryReading, ReadCell, ReadQuestion, ReadSheet } from './reading.ts'
import { type RowOutcome, type RowTold, type SheetRow, textIn } from './sheet-row.ts'
import { wouldWrite } from './would-write.ts'

export interface ReadRequest {
  readonly files: readonly NamedBytes[]
  /** What the user says of these sheets. */
  readonly said: Mapping
  /** How sheets like these were mapped before. */
  readonly remembered: Mapping
  /** What the record holds already. */
  readonly nursery: Nursery
  readonly today: Day
  /** Awaited between parts of the work with how much of it is done; it may throw to end it. */
  readonly tell?: (share: number) => Promise<void>
}

/** So many rows are a part of the work. */
const ROWS = 250

interface Waiting {
  readonly read: SheetRead
  readonly row: SheetRow
  readonly kind: SheetKind
}

type Take = (row: SheetRow, told: RowTold) => RowOutcome

const takers = (making: Making, reads: readonly SheetRead[]): Readonly<Record<SheetKind, Take>> => {
  const numbers = new Map<string, number>()
  for (const { kind, rows } of reads) {
    if (kind !== 'orders') continue
    for (const row of rows) {
      const number = textIn(row, 'order')
      if (number !== null) numbers.set(number, (numbers.get(number) ?? 0) + 1)
    }
  }
  const orderNumbers = {
    isShared: (number: string) => (numbers.get(number) ?? 0) > 1,
    taken: new Set<string>(),
  }
  return {
    nursery: row => takeNursery(making, row),
    benches: (row, told) => takeBench(making, row, told),
    people: (row, told) => takePerson(making, row, told),
    cultivars: (row, told) => takeCultivar(making, row, told),
    kinds: (row, told) => takeKind(making, row, told),
    mothers: (row, told) => takeMother(making, row, told),
    passport: row => takeAccession(making, row),
    batches: (row, told) => takeBatch(making, row, told),
    history: (row, told) => takePast(making, row, told),
    orders: (row, told) => takeOrder(making, row, told, orderNumbers),
  }
}

/**
 * Reads spreadsheets and says what they would write. Nothing is written: the caller appends `told` when the user has
 * seen the rest and agrees.
 */
export async function readNursery({
  files,
  said,
  remembered,
  nursery,
  today,
  tell = () => Promise.resolve(),
}: ReadRequest): Promise<NurseryReading> {
  const tables: Table[] = []
  const unread: { file: string; wrong: string }[] = []
  for (const file of files) {
    const opened = await openFile(file)
    if (opened.kind === 'tables') tables.push(...opened.tables.filter(({ rows }) => rows.length > 0))
    else unread.push({ file: file.name, wrong: opened.wrong })
  }
  const all = tables.reduce((sum, table) => sum + table.rows.length, 0)
  let done = 0
  const reads: SheetRead[] = []
  for (const table of tables) {
    await tell(done / (2 * all))
    reads.push(readSheet(table, said, remembered, today))
    done += table.rows.length
  }
  const making = createMaking(nursery, today)
  const take = takers(making, reads)
  const cells: ReadCell[] = reads.flatMap(read => read.cells)
  const questions: ReadQuestion[] = reads.flatMap(read => read.questions)
  const lostLater = new Map<string, number>()
  let known = 0

  /** What a row told and asked is kept only with its last outcome. */
  const takeRow = ({ read, row, kind }: Waiting, isLast: boolean): boolean => {
    const said: ReadCell[] = []
    const asked: ReadQuestion[] = []
    const outcome = take[kind](row, tellerOf(read, row, said, asked))
    if (outcome.kind === 'bad' && !isLast) return false
    cells.push(...said)
    for (const question of asked) addQuestion(questions, question)
    if (outcome.kind === 'known') known += 1
    if (outcome.kind === 'bad') {
      lostLater.set(read.id, (lostLater.get(read.id) ?? 0) + 1)
      const place = read.place(row.number, outcome.field)
      cells.push({ ...place, wrong: outcome.wrong, done: 'the row is left out', rowLost: true })
    }
    return true
  }

  // What one sheet leaves open, a later one may say: rows that could not be taken are tried once more at the end.
  const rows = sheetForms.flatMap(({ kind }) =>
    reads.flatMap(read => (read.kind === kind ? read.rows.map(row => ({ read, row, kind })) : [])),
  )
  const again: Waiting[] = []
  for (const [i, row] of rows.entries()) {
    if (i % ROWS === 0) await tell(0.5 + i / (2 * rows.length))
    if (!takeRow(row, false)) again.push(row)
  }
  for (const row of again) takeRow(row, true)

  const told = toldWithDays(making)
  const sheets = reads.map(read => sheetOf(read, lostLater.get(read.id) ?? 0))
  const isOpen = questions.some(({ needed, answer }) => needed && answer === null)
  return {
    sheets,
    questions,
    cells: cells.sort(
      (a, b) => a.file.localeCompare(b.file) || (a.sheet ?? '').localeCompare(b.sheet ?? '') || a.row - b.row,
    ),
    assumptions: [...making.assumptions].map(([about, says]) => ({ about, says })),
    unread,
    would: wouldWrite(told, body => entryText(body, namesOf(making))),
    known,
    mapping: Object.fromEntries(
      reads.flatMap(read => (read.kind === null ? [] : [[headerKey(read.headers), read.said] as const])),
    ),
    ready: !isOpen && told.length > 0,
    told,
  }
}

/** Names as they will be when all is written. */
const namesOf = ({
  nursery,
  kinds,
  cultivars,
  protocols,
  benches,
  people,
  mothers,
}: Making): Parameters<typeof entryText>[1] => ({
  ...nursery,
  kinds,
  cultivars,
  protocols,
  benches,
  people,
  mothers: new Map(
    [...mothers].map(([id, mother]) => [
      id,
      {
        ...(nursery.mothers.get(id) ?? {
          observations: [],
          tests: [],
          retired: null,
          given: [],
          entries: [],
        }),
        mother,
      },
    ]),
  ),
})

const EXAMPLES = 4

function tellerOf(read: SheetRead, row: SheetRow, cells: ReadCell[], asked: ReadQuestion[]): RowTold {
  return {
    sheet: read.id,
    noted: (field, wrong, done) =>
      void cells.push({ ...read.place(row.number, field), wrong, done, rowLost: false }),
    answer: question => read.answers[question],
    ask: ({ id, asks, choices, example, suggested }) =>
      void asked.push({
        id,
        sheet: read.id,
        column: null,
        asks,
        choices: [...choices],
        examples: [example],
        answer: read.answers[id] ?? null,
        suggested,
        needed: false,
      }),
  }
}

/** Many rows raise the same question: it is asked once, with some of them as examples. */
function addQuestion(questions: ReadQuestion[], asked: ReadQuestion): void {
  const before = questions.find(({ id, sheet }) => id === asked.id && sheet === asked.sheet)
  if (before === undefined) questions.push(asked)
  else if (before.examples.length < EXAMPLES)
    for (const example of asked.examples)
      if (!before.examples.includes(example)) before.examples.push(example)
}

const sheetOf = (read: SheetRead, lostLater: number): ReadSheet => {
  const bad = read.lost + lostLater
  return {
    id: read.id,
    file: read.table.file,
    sheet: read.table.sheet,
    written: read.table.written,
    kind: read.kind,
    headerRow: read.headerRow,
    columns: read.columns,
    rows: { all: read.all, good: read.rows.length - lostLater, bad, passedOver: read.passedOver },
  }
}
