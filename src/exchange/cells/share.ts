import type { RawCell } from '../table/table.ts'
import { cellText } from '../table/table.ts'
import { type DecimalMark, readNumber } from './number.ts'
import { type CellReading, means, wrong } from './read-cell.ts'

/** A share of one, said as 0.9, 90 or 90 %. Above one it is taken as per cent. */
export function readShare(cell: RawCell | undefined, mark: DecimalMark): CellReading<number> {
  const reading = readNumber(cell, mark)
  if (reading.kind !== 'value') return reading
  const isPercent = cellText(cell).endsWith('%')
  const share = isPercent || reading.value > 1 ? reading.value / 100 : reading.value
  return share >= 0 && share <= 1
    ? means(share, reading.noted)
    : wrong('it is not a share between 0 and 100 %')
}
