import {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  inchesFromMm,
  kilogramsFromPounds,
  litresFromUsGallons,
  metresFromFeet,
  mmFromInches,
  poundsFromKilograms,
  squareFeetFromSquareMetres,
} from '../../trade/index.ts'
import type { Units } from './format.ts'

/** How a measure of the facts is shown and typed: its unit, and the way there and back. */
export interface Shown {
  readonly unit: string
  readonly to: (value: number) => number
  readonly from: (value: number) => number
}

const FEET = 1 / metresFromFeet(1)
const SQUARE_FEET = squareFeetFromSquareMetres(1)
const LITRES_IN_GALLON = litresFromUsGallons(1)
const QUARTS_IN_GALLON = 4
const OUNCES_IN_GALLON = 128
const plain = (unit: string): Shown => ({ unit, to: value => value, from: value => value })

const inUs: Readonly<Record<string, Shown>> = {
  '°C': { unit: '°F', to: fahrenheitFromCelsius, from: celsiusFromFahrenheit },
  mm: { unit: 'in', to: inchesFromMm, from: mmFromInches },
  'mm a plant': { unit: 'in a plant', to: inchesFromMm, from: mmFromInches },
  kg: { unit: 'lb', to: poundsFromKilograms, from: kilogramsFromPounds },
  'l a plant': {
    unit: 'US qt a plant',
    to: value => (value * QUARTS_IN_GALLON) / LITRES_IN_GALLON,
    from: value => (value * LITRES_IN_GALLON) / QUARTS_IN_GALLON,
  },
  'ml a plant': {
    unit: 'US fl oz a plant',
    to: value => (value / 1000 / LITRES_IN_GALLON) * OUNCES_IN_GALLON,
    from: value => (value * 1000 * LITRES_IN_GALLON) / OUNCES_IN_GALLON,
  },
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
