import { cellText, type RawCell } from '../table/table.ts'
import { isFormulaError, saysNothing } from './blank.ts'
import { blank, type CellReading, means, wrong } from './read-cell.ts'

export type DecimalMark = 'point' | 'comma'

/** Blanks of any width and apostrophes only ever part thousands. */
const partsThousands = /(?<=\d)[\s'’´`](?=\d{3}(\D|$))/gu
const about = /^(ca\.?|circa|approx\.?|about|etwa|env\.?|~|≈|±|>|<|min\.?|max\.?)\s*/iu
const unitAfter = /\s*(\p{L}[\p{L}.²³]*|%|°\p{L}?|€|\$|£)+\.?$/iu
const moneyBefore = /^[€$£¥]\s*/u

interface Shape {
  readonly digits: string
  readonly noted: string | undefined
}

/** The digits and marks of a number, free of what stands around them. */
const shapeOf = (cell: RawCell | undefined): Shape | null => {
  let text = cellText(cell).replace(/−|‒|–/gu, '-')
  const roughly = about.exec(text)
  text = text.replace(about, '').replace(moneyBefore, '').replace(unitAfter, '').replace(partsThousands, '')
  if (/^\((\d.*)\)$/.test(text)) text = `-${text.slice(1, -1)}`
  if (!/^[-+]?\d[\d.,]*$|^[-+]?[.,]\d+$/.test(text)) return null
  return { digits: text, noted: roughly === null ? undefined : `"${roughly[0].trim()}" was passed over` }
}

/** `1.234` or `1,234`: one mark before exactly three digits may part thousands or be the decimal mark. */
const isEither = (digits: string): boolean => /^[-+]?[1-9]\d{0,2}[.,]\d{3}$/.test(digits)

/**
 * Which mark is the decimal one, as a column's cells show it beyond doubt; null where none does.
 * @example decimalMarkOf(['1.234,5', '12']) // 'comma'
 */
export function decimalMarkOf(cells: Iterable<RawCell>): DecimalMark | null {
  let points = 0
  let commas = 0
  for (const cell of cells) {
    if (typeof cell !== 'string') continue
    const digits = shapeOf(cell)?.digits
    if (digits === undefined || isEither(digits)) continue
    const point = digits.lastIndexOf('.')
    const comma = digits.lastIndexOf(',')
    const pointsIn = digits.split('.').length - 1
    const commasIn = digits.split(',').length - 1
    if (point >= 0 && comma >= 0) point > comma ? points++ : commas++
    else if (pointsIn === 1) points++
    else if (commasIn === 1) commas++
    else if (pointsIn > 1) commas++
    else if (commasIn > 1) points++
  }
  if (points === 0 && commas === 0) return null
  return points >= commas ? 'point' : 'comma'
}

/** Whether a cell needs to be told which mark is the decimal one. */
export const isUnclearNumber = (cell: RawCell): boolean => {
  const digits = typeof cell === 'string' ? shapeOf(cell)?.digits : undefined
  return digits !== undefined && isEither(digits)
}

const notANumber = (cell: RawCell | undefined): string =>
  /^[-+]?[\d.,]+\s*(-|–|to|bis|à|a|\/)\s*[\d.,]+$/iu.test(cellText(cell))
    ? 'it is two numbers; write one'
    : /\d\s*[,;+&]\s+\d/.test(cellText(cell))
      ? 'it is several numbers; write one'
      : 'it is not a number'

/** A number with decimals, written with the decimal mark of its column. */
export function readNumber(cell: RawCell | undefined, mark: DecimalMark): CellReading<number> {
  if (typeof cell === 'number') return Number.isFinite(cell) ? means(cell) : wrong('it is not a number')
  if (saysNothing(cell)) return blank
  if (isFormulaError(cell)) return wrong('the formula in this cell failed')
  const shape = shapeOf(cell)
  if (shape === null) return wrong(notANumber(cell))
  const parsed = parseDigits(shape.digits, mark)
  return parsed === null ? wrong('its points and commas do not fit a number') : means(parsed, shape.noted)
}

/** Where the column's mark does not fit the cell, and the cell leaves no doubt, the cell is right: `12.5` among commas. */
const parseDigits = (digits: string, mark: DecimalMark): number | null =>
  withMark(digits, mark) ?? withMark(digits, mark === 'comma' ? 'point' : 'comma')

function withMark(digits: string, mark: DecimalMark): number | null {
  const [decimal, thousand] = mark === 'comma' ? [',', '.'] : ['.', ',']
  const [whole = '', ...fractions] = digits.split(decimal)
  const groups = whole.replace(/^[-+]/, '').split(thousand)
  if (fractions.length > 1 || fractions[0]?.includes(thousand)) return null
  if (groups.length > 1 && !isGrouped(groups)) return null
  return Number(`${whole.replaceAll(thousand, '')}.${fractions[0] ?? ''}0`)
}

/** Thousands in threes, or as in India: the last three, and twos before. */
const isGrouped = (groups: readonly string[]): boolean =>
  /^\d{1,3}$/.test(groups[0]!) &&
  groups.slice(1, -1).every(group => /^\d{2,3}$/.test(group)) &&
  /^\d{3}$/.test(groups.at(-1)!)

/**
 * A whole number of plants, trees or minutes. One mark before three digits parts thousands here, whatever the column
 * does elsewhere: nobody orders 1.25 trees.
 * @example readWhole('1.250', 'point') // 1250
 */
export function readWhole(cell: RawCell | undefined, mark: DecimalMark): CellReading<number> {
  const shape = typeof cell === 'string' ? shapeOf(cell) : null
  if (shape !== null && isEither(shape.digits))
    return means(Number(shape.digits.replace(/[.,]/, '')), shape.noted)
  const reading = readNumber(cell, mark)
  if (reading.kind !== 'value') return reading
  const nearest = Math.round(reading.value)
  if (Math.abs(reading.value - nearest) > 1e-9) return wrong('it is not a whole number')
  return means(nearest, reading.noted)
}
