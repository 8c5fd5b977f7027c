import { cellText, type RawCell } from '../table/table.ts'
import { isFormulaError, saysNothing } from './blank.ts'
import { type DayOrder, readDay } from './day.ts'
import { readMeasure } from './measure.ts'
import type { DecimalMark } from './number.ts'
import { blank, type CellReading, means, wrong } from './read-cell.ts'

/** Days from one to another, both among them; of how much of a place, and why, where that is said. */
export interface Span {
  readonly from: string
  readonly to: string
  /** Null: of all of it. */
  readonly squareMetres: number | null
  readonly why: string
}

/** As spans are written out: `2026-06-01 to 2026-06-05: 2 m², new heating; 2026-07-01 to 2026-07-01`. */
export const spansText = (spans: readonly Span[]): string =>
  spans
    .map(({ from, to, squareMetres, why }) => {
      const rest = [squareMetres === null ? '' : `${squareMetres} m²`, why].filter(Boolean).join(', ')
      return `${from} to ${to}${rest === '' ? '' : `: ${rest}`}`
    })
    .join('; ')

const between = /\s+(?:to|until|till|through|bis|au|à|a|al|hasta|até|tot|t\/m|-)\s+|\s*[–—→]\s*|\s*\.\.\s*/iu
const isoInterval = /^(\d{4}-\d{2}-\d{2})\s*\/\s*(\d{4}-\d{2}-\d{2})$/u
const areaFirst =
  /^([\d.,\s]+)(m\s?[²2]|sq\.?\s?m|qm|ft\s?[²2]|sq\.?\s?ft|square\s\w+)(?:\s*[,:]\s*|\s+|$)(.*)$/iu

interface Piece {
  readonly days: readonly string[]
  readonly rest: string
}

const pieceOf = (text: string): Piece => {
  const [, head = '', rest = ''] =
    /^(.*?)\s*\((.*)\)$/su.exec(text) ?? /^(.*?)\s*:\s+(.*)$/su.exec(text) ?? ([text, text, ''] as const)
  const interval = isoInterval.exec(head.trim())
  const days = interval ? [interval[1]!, interval[2]!] : head.trim().split(between)
  const [first = '', last] = days
  // "3 to 9 March 2027": the first day has the month and the year of the last one.
  const ofLast = last === undefined ? null : /^\d{1,2}(.*\d{4}.*|\.\d{1,2}\.\d{2,4})$/u.exec(last)
  const isBare = /^\d{1,2}\.?$/u.test(first)
  return { days: isBare && ofLast ? [first.replace(/\.$/, '') + ofLast[1]!, last!] : days, rest }
}

/** Spans stand apart by semicolons or lines; what begins with no day belongs to the reason before it. */
const piecesOf = (cell: RawCell): Piece[] => {
  const pieces: Piece[] = []
  for (const text of cellText(cell).split(/\s*[;\n]\s*/u)) {
    const last = pieces.at(-1)
    if (text === '') continue
    if (last !== undefined && last.rest !== '' && !/^\D{0,12}\d/u.test(text))
      pieces[pieces.length - 1] = { ...last, rest: `${last.rest}; ${text}` }
    else pieces.push(pieceOf(text))
  }
  return pieces
}

/** Every day in the cells of a column of spans, to tell the order of day and month from. */
export const daysInSpans = (cells: readonly RawCell[]): RawCell[] =>
  cells.flatMap(cell => (saysNothing(cell) ? [] : piecesOf(cell).flatMap(({ days }) => days)))

/**
 * Days on which something is not there, as many spans as there are, in one cell.
 * @returns them as `spansText` writes them
 */
export function readSpans(
  cell: RawCell | undefined,
  { order, mark, today }: { order: DayOrder | null; mark: DecimalMark; today: string },
): CellReading<string> {
  if (saysNothing(cell) || cell === undefined) return blank
  if (isFormulaError(cell)) return wrong('the formula in this cell failed')
  const spans: Span[] = []
  for (const { days, rest } of piecesOf(cell)) {
    const read = days.slice(0, 2).map(day => readDay(day, order, today))
    const [from, to = from] = read.map(one =>
      one.kind === 'value' && one.noted === undefined ? one.value : undefined,
    )
    if (days.length > 2 || from === undefined || to === undefined)
      return wrong(`"${days.join(' to ')}" are no days: write the first day, "to", and the last one`)
    if (to < from) return wrong(`the last day, ${to}, lies before the first, ${from}`)
    const [, area = '', unit = '', why = ''] = areaFirst.exec(rest.trim()) ?? []
    const measured = readMeasure(area, 'squareMetres', unit, mark)
    const isArea = measured.kind === 'value'
    spans.push({
      from,
      to,
      squareMetres: isArea ? measured.value : null,
      why: isArea ? why.trim() : rest.trim(),
    })
  }
  return spans.length === 0 ? blank : means(spansText(spans))
}

/** What `readSpans` read. */
export const spansIn = (text: string): Span[] =>
  piecesOf(text).map(({ days: [from = '', to = from], rest }) => {
    const [, area, why] = /^([\d.e+-]+) m²(?:, (.*))?$/su.exec(rest) ?? []
    return {
      from,
      to,
      squareMetres: area === undefined ? null : Number(area),
      why: area === undefined ? rest : (why ?? ''),
    }
  })
