import {
  celsiusFromFahrenheit,
  metresFromFeet,
  mmFromInches,
  squareMetresFromSquareFeet,
} from '../../trade/index.ts'
import { cellText, type RawCell } from '../table/table.ts'
import { type DecimalMark, readNumber } from './number.ts'
import { type CellReading, means } from './read-cell.ts'

interface Unit {
  readonly named: RegExp
  readonly toOurs: (value: number) => number
}

const same = (value: number): number => value

/** What is measured, and the units in which people write it; ours needs no naming, and wins where a cell names it. */
const units = {
  squareMetres: [
    { named: /m\s*[²2]|\bsq\.?\s*m|\bqm\b/iu, toOurs: same },
    { named: /sq\.?\s*ft|square f(oo|ee)t|ft\s*[²2]|\bsf\b/iu, toOurs: squareMetresFromSquareFeet },
    { named: /\bha\b|hectare|hektar/iu, toOurs: value => value * 10_000 },
    { named: /\bare?s?\b/iu, toOurs: value => value * 100 },
  ],
  metres: [
    { named: /\bm\b|met(er|re)/iu, toOurs: same },
    { named: /\bft\b|f(oo|ee)t|′/iu, toOurs: metresFromFeet },
    { named: /\bcm\b/iu, toOurs: value => value / 100 },
    { named: /\bmm\b/iu, toOurs: value => value / 1000 },
  ],
  mm: [
    { named: /\bmm\b/iu, toOurs: same },
    { named: /\bin\b|inch|″/iu, toOurs: mmFromInches },
    { named: /\bcm\b/iu, toOurs: value => value * 10 },
  ],
  celsius: [
    { named: /°\s*C|celsius/iu, toOurs: same },
    { named: /°\s*F|\bdeg(rees)?\.?\s*F\b|fahrenheit/iu, toOurs: celsiusFromFahrenheit },
  ],
} as const satisfies Readonly<Record<string, readonly Unit[]>>

export type Measured = keyof typeof units

/** A measure in our unit, from the unit that its cell or its header names. */
export function readMeasure(
  cell: RawCell | undefined,
  what: Measured,
  header: string,
  mark: DecimalMark,
): CellReading<number> {
  const reading = readNumber(cell, mark)
  if (reading.kind !== 'value') return reading
  const known: readonly Unit[] = units[what]
  const unit =
    known.find(({ named }) => named.test(cellText(cell))) ?? known.find(({ named }) => named.test(header))
  return unit === undefined ? reading : means(unit.toOurs(reading.value), reading.noted)
}
