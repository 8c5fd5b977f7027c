import { type DayOrder, dayOrderOf, isUnclearDay, readDay } from '../cells/day.ts'
import { readDegrees } from '../cells/degrees.ts'
import { readMeasure } from '../cells/measure.ts'
import { type DecimalMark, decimalMarkOf, isUnclearNumber, readNumber, readWhole } from '../cells/number.ts'
import type { CellReading } from '../cells/read-cell.ts'
import { readShare } from '../cells/share.ts'
import { daysInSpans, readSpans } from '../cells/spans.ts'
import { readText } from '../cells/text.ts'
import type { CellForm, Field } from '../sheets/sheet-form.ts'
import { cellText, type RawCell } from '../table/table.ts'
import type { ReadQuestion } from './reading.ts'

/** A column that is read: which field it holds, and all its cells. */
export interface MappedColumn {
  readonly index: number
  readonly header: string
  readonly field: Field
  readonly cells: readonly RawCell[]
}

export type CellReader = (cell: RawCell | undefined, column: MappedColumn) => CellReading<string | number>

const isDecimal = (form: CellForm): boolean =>
  form === 'number' || form === 'square metres' || form === 'metres' || form === 'share'
const isNumeric = (form: CellForm): boolean => isDecimal(form) || form === 'whole' || form === 'degrees'

const EXAMPLES = 4
const examplesOf = (cells: readonly RawCell[], which: (cell: RawCell) => boolean): string[] => [
  ...new Set(cells.filter(which).slice(0, EXAMPLES).map(cellText)),
]

/**
 * How the cells of a sheet's columns are read. What the cells themselves leave open (which mark is the decimal one,
 * whether day or month comes first) is asked, with what other columns suggest.
 */
export function columnReaders(
  sheet: string,
  columns: readonly MappedColumn[],
  separator: string | null,
  answers: Readonly<Record<string, string>>,
  today: string,
): { readonly read: CellReader; readonly questions: readonly ReadQuestion[] } {
  const questions: ReadQuestion[] = []

  const numeric = columns.filter(({ field }) => isNumeric(field.form))
  const shown = decimalMarkOf(numeric.flatMap(({ cells }) => cells))
  const unclear = columns.filter(({ field, cells }) => isDecimal(field.form) && cells.some(isUnclearNumber))
  const answered = answers.decimal === 'comma' || answers.decimal === 'point' ? answers.decimal : null
  const likely: DecimalMark = separator === ';' ? 'comma' : 'point'
  const mark = answered ?? shown ?? likely
  if (unclear.length > 0 && (shown === null || answered !== null)) {
    const cells = unclear.flatMap(column => column.cells)
    questions.push({
      id: 'decimal',
      sheet,
      column: unclear[0]!.header,
      asks: `Which mark parts the decimals, in numbers such as ${examplesOf(cells, isUnclearNumber)[0]}?`,
      choices: [
        { id: 'point', says: 'the point: 1.5 is one and a half, 1,500 fifteen hundred' },
        { id: 'comma', says: 'the comma: 1,5 is one and a half, 1.500 fifteen hundred' },
      ],
      examples: examplesOf(cells, isUnclearNumber),
      answer: answered,
      suggested: likely,
      needed: true,
    })
  }

  const days = columns.flatMap(column =>
    column.field.form === 'day'
      ? [column]
      : column.field.form === 'days'
        ? [{ ...column, cells: daysInSpans(column.cells) }]
        : [],
  )
  const orderShown = new Map(days.map(column => [column.index, dayOrderOf(column.cells)] as const))
  const clear = [...orderShown.values()].find(order => order === 'day first' || order === 'month first')
  const suggested: DayOrder = clear === 'month first' ? 'month first' : 'day first'
  const orders = new Map<number, DayOrder>()
  for (const column of days) {
    const order = orderShown.get(column.index)
    const id = `days: ${column.header}`
    const said = answers[id] === 'day first' || answers[id] === 'month first' ? answers[id] : null
    if (order === 'day first' || order === 'month first') orders.set(column.index, order)
    else orders.set(column.index, said ?? suggested)
    if (order !== 'unclear' && order !== 'mixed') continue
    const examples = examplesOf(column.cells, isUnclearDay)
    questions.push({
      id,
      sheet,
      column: column.header,
      asks: `Does the day or the month come first in "${column.header}", as in ${examples[0]}?`,
      choices: [
        { id: 'day first', says: `the day: ${examples[0]} is ${dayIn(examples[0], 'day first', today)}` },
        {
          id: 'month first',
          says: `the month: ${examples[0]} is ${dayIn(examples[0], 'month first', today)}`,
        },
      ],
      examples,
      answer: said,
      suggested,
      needed: true,
    })
  }

  const read: CellReader = (cell, { field, header, index }) => {
    switch (field.form) {
      case 'text':
        return readText(cell)
      case 'whole':
        return readWhole(cell, mark)
      case 'number':
        return readNumber(cell, mark)
      case 'share':
        return readShare(cell, mark)
      case 'square metres':
        return readMeasure(cell, 'squareMetres', header, mark)
      case 'metres':
        return readMeasure(cell, 'metres', header, mark)
      case 'degrees':
        return readDegrees(cell, mark)
      case 'day':
        return readDay(cell, orders.get(index) ?? null, today)
      case 'days':
        return readSpans(cell, { order: orders.get(index) ?? null, mark, today })
    }
  }
  return { read, questions }
}

const dayIn = (example: string | undefined, order: DayOrder, today: string): string => {
  const reading = readDay(example ?? '', order, today)
  return reading.kind === 'value' ? reading.value : 'no day'
}
