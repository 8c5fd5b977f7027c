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

export type Units = 'metric' | 'us'

/** How a measure of the facts is shown and typed: its unit, and the way there and back. */
export interface Shown {
  readonly unit: string
  readonly to: (value: number) => number
  readonly from: (value: number) => number
}

const FEET = 1 / metresFromFeet(1)
const SQUARE_FEET = squareFeetFromSquareMetres(1)
const LITRES_IN_GALLON = litresFromUsGallons(1)
/** A step of one degree Celsius, as a difference. */
const FAHRENHEIT_STEPS = 1.8
const QUARTS_IN_GALLON = 4
const OUNCES_IN_GALLON = 128
const same = (value: number): number => value
const asItIs = new Map<string, Shown>()
/** One for each unit, so that it can be told whether a unit changed. */
function plain(unit: string): Shown {
  const shown = asItIs.get(unit) ?? { unit, to: same, from: same }
  asItIs.set(unit, shown)
  return shown
}
const percent: Shown = { unit: '%', to: share => 100 * share, from: per => per / 100 }

const inUs: Readonly<Record<string, Shown>> = {
  '°C': { unit: '°F', to: fahrenheitFromCelsius, from: celsiusFromFahrenheit },
  mm: { unit: 'in', to: inchesFromMm, from: mmFromInches },
  'mm a plant': { unit: 'in a plant', to: inchesFromMm, from: mmFromInches },
  kg: { unit: 'lb', to: poundsFromKilograms, from: kilogramsFromPounds },
  'a kg': { unit: 'a lb', to: kilogramsFromPounds, from: poundsFromKilograms },
  litres: {
    unit: 'US gallons',
    to: value => value / LITRES_IN_GALLON,
    from: value => value * LITRES_IN_GALLON,
  },
  '± °C': { unit: '°F', to: value => value * FAHRENHEIT_STEPS, from: value => value / FAHRENHEIT_STEPS },
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
  cm: { unit: 'in', to: value => inchesFromMm(10 * value), from: value => mmFromInches(value) / 10 },
  m: { unit: 'ft', to: value => value * FEET, from: metresFromFeet },
  'm²': { unit: 'ft²', to: value => value * SQUARE_FEET, from: value => value / SQUARE_FEET },
  'a m a year': { unit: 'a ft a year', to: value => value / FEET, from: value => value * FEET },
  'a m²': { unit: 'a ft²', to: value => value / SQUARE_FEET, from: value => value * SQUARE_FEET },
  'kg a m²': {
    unit: 'lb a ft²',
    to: value => poundsFromKilograms(value) / SQUARE_FEET,
    from: value => kilogramsFromPounds(value) * SQUARE_FEET,
  },
}

export function shownUnit(unit: string, units: Units): Shown {
  if (unit === 'share') return percent
  if (unit === 'money') return plain('')
  return (units === 'us' ? inUs[unit] : undefined) ?? plain(unit)
}
