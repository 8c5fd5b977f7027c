import { cellText, type RawCell } from '../table/table.ts'
import { isFormulaError, saysNothing } from './blank.ts'
import { blank, type CellReading, means, wrong } from './read-cell.ts'

/** Straight marks around a whole cell are a leftover of another program; those inside a name belong to it. */
const unwrapped = (text: string): string => {
  const inside = /^["“”](.*)["“”]$/su.exec(text)?.[1]
  return inside === undefined || /["“”]/u.test(inside) ? text : inside.trim()
}

/** A line of text, without doubled blanks, line breaks and control letters. */
export function readText(cell: RawCell | undefined): CellReading<string> {
  if (saysNothing(cell)) return blank
  if (isFormulaError(cell)) return wrong('the formula in this cell failed')
  const text = unwrapped(
    cellText(cell)
      .replace(/[\p{Cc}\p{Cf}]+/gu, ' ')
      .replace(/\s+/gu, ' ')
      .trim(),
  )
  return text === '' ? blank : means(text)
}
