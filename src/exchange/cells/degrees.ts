import { cellText, type RawCell } from '../table/table.ts'
import { type DecimalMark, readNumber } from './number.ts'
import { type CellReading, means, wrong } from './read-cell.ts'

/** Degrees of latitude or longitude: -38.2, 38,2 S, or 38°12′30″ N. South and west are below nought. */
export function readDegrees(cell: RawCell | undefined, mark: DecimalMark): CellReading<number> {
  const text = cellText(cell)
  const isBelow = /[SWO]\.?$/iu.test(text)
  const parts =
    /^([-+]?\d+)\s*°\s*(\d+(?:[.,]\d+)?)\s*['′’](?:\s*(\d+(?:[.,]\d+)?)\s*["″”'′’]+)?\s*[NSEWO]?$/iu.exec(
      text,
    )
  const reading =
    parts === null
      ? readNumber(typeof cell === 'string' ? text.replace(/[°\sNSEWO.]+$/iu, '') : cell, mark)
      : means(toDegrees(parts))
  if (reading.kind !== 'value') return reading
  const degrees = isBelow ? -Math.abs(reading.value) : reading.value
  return Math.abs(degrees) <= 180 ? means(degrees) : wrong('degrees go from -180 to 180')
}

const toDegrees = ([, whole = '0', minutes = '0', seconds = '0']: readonly (
  | string
  | undefined
)[]): number => {
  const size =
    Math.abs(Number(whole)) +
    Number(minutes.replace(',', '.')) / 60 +
    Number(seconds.replace(',', '.')) / 3600
  return whole.startsWith('-') ? -size : size
}
