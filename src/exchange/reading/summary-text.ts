import { sheetForm } from '../sheets/sheet-forms.ts'
import type { NurseryReading, ReadCell, ReadQuestion, ReadSheet } from './reading.ts'

const CELLS_SHOWN = 200

const plural = (number: number, one: string, many = `${one}s`): string =>
  `${number} ${number === 1 ? one : many}`

const sheetLines = ({ id, kind, written, rows, columns, headerRow }: ReadSheet): string[] => [
  `${id}: ${kind === null ? 'not read' : sheetForm(kind).name} (${written}${headerRow === null ? '' : `, headers in row ${headerRow}`})`,
  ...(kind === null
    ? []
    : [
        `  ${plural(rows.all, 'row')}: ${rows.good} good, ${rows.bad} bad, ${rows.passedOver} passed over (blank, totals)`,
        ...columns.map(({ column, header, field, by }) => {
          const name = sheetForm(kind).fields.find(one => one.id === field)?.name
          return `  ${column}  ${header} ${name === undefined ? 'is not read' : `is ${name}${by === 'before' ? ', as before' : ''}`}`
        }),
      ]),
]

const questionLines = ({ id, sheet, asks, choices, answer, suggested, needed }: ReadQuestion): string[] => [
  `${asks}${needed && answer === null ? ' (must be answered)' : ''}`,
  `  "${sheet}": { "answers": { "${id}": … } }`,
  ...(choices.length > 12
    ? [
        `  one of ${choices.length}, such as ${choices
          .slice(0, 6)
          .map(one => one.id)
          .join(', ')}`,
      ]
    : choices.map(
        one =>
          `  ${one.id === answer ? '*' : one.id === suggested ? '?' : '-'} ${one.id}${one.says === one.id ? '' : `: ${one.says}`}`,
      )),
]

export const cellLine = ({ file, sheet, row, column, header, said, wrong, done }: ReadCell): string =>
  `${file}${sheet === null ? '' : `, ${sheet}`}, row ${row}${column === '' ? '' : `, column ${column}`} (${header}): ${said === '' ? 'empty' : `"${said}"`}: ${wrong}; ${done}`

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : [title, ...lines, '']

/** All that a person should see before anything is written. */
export function summaryText(reading: NurseryReading): string {
  const { sheets, questions, cells, assumptions, unread, would, known } = reading
  const more = cells.length - CELLS_SHOWN
  return [
    ...section('Sheets', sheets.flatMap(sheetLines)),
    ...section(
      'Could not be opened',
      unread.map(({ file, wrong }) => `${file}: ${wrong}`),
    ),
    ...section('To answer', questions.flatMap(questionLines)),
    ...section(`Cells that were not taken as they stand (${cells.length})`, [
      ...cells.slice(0, CELLS_SHOWN).map(cellLine),
      ...(more > 0 ? [`and ${more} more; --as json has them all`] : []),
    ]),
    ...section(
      'Taken for granted',
      assumptions.map(({ says }) => says),
    ),
    ...section(
      'Would be written',
      would.map(({ says }) => says),
    ),
    ...(known > 0 ? [`${plural(known, 'row')} say what the record has already.`, ''] : []),
  ].join('\n')
}
