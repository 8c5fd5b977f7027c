import {
  celsiusFromFahrenheit,
  type Figure,
  fahrenheitFromCelsius,
  inchesFromMm,
  kilogramsFromPounds,
  metresFromFeet,
  mmFromInches,
  poundsFromKilograms,
  squareFeetFromSquareMetres,
} from '../../../trade/index.ts'
import type { Units } from '../../text/format.ts'

/** How a measure of the facts is shown and typed: its unit, and the way there and back. */
export interface Shown {
  readonly unit: string
  readonly to: (value: number) => number
  readonly from: (value: number) => number
}

const FEET = 1 / metresFromFeet(1)
const SQUARE_FEET = squareFeetFromSquareMetres(1)
const plain = (unit: string): Shown => ({ unit, to: value => value, from: value => value })

const inUs: Readonly<Record<string, Shown>> = {
  '°C': { unit: '°F', to: fahrenheitFromCelsius, from: celsiusFromFahrenheit },
  mm: { unit: 'in', to: inchesFromMm, from: mmFromInches },
  m: { unit: 'ft', to: value => value * FEET, from: metresFromFeet },
  'a m²': { unit: 'a ft²', to: value => value / SQUARE_FEET, from: value => value * SQUARE_FEET },
  'kg a m²': {
    unit: 'lb a ft²',
    to: value => poundsFromKilograms(value) / SQUARE_FEET,
    from: value => kilogramsFromPounds(value) * SQUARE_FEET,
  },
}

export function shownUnit(unit: string, units: Units): Shown {
  if (unit === 'share') return { unit: '%', to: share => 100 * share, from: percent => percent / 100 }
  if (unit === 'money') return plain('')
  return (units === 'us' ? inUs[unit] : undefined) ?? plain(unit)
}

/** As it is read and typed: three figures, without the dust of conversion. */
export const typed = (value: number): string => String(Number(value.toPrecision(3)))

/** Three typed numbers that rise, as a figure of the nursery's own in the units of the facts; null where they do not. */
export function figureTyped(
  typedIn: { readonly low: string; readonly typical: string; readonly high: string },
  { from }: Shown,
): Figure | null {
  const read = (text: string) =>
    text.trim() === '' ? Number.NaN : Number(text.trim().replace(',', '.').replace('−', '-'))
  const [low, typical, high] = [typedIn.low, typedIn.typical, typedIn.high]
    .map(read)
    .map(value => from(value))
  if (low === undefined || typical === undefined || high === undefined) return null
  if (![low, typical, high].every(Number.isFinite) || low > typical || typical > high) return null
  return { low, typical, high, basis: 'set by the nursery', sources: [] }
}
