import {
  type Figure,
  fahrenheitFromCelsius,
  inchesFromMm,
  type Setting,
  squareFeetFromSquareMetres,
} from '../../../trade/index.ts'
import type { Units } from '../../text/format.ts'

/** A measure as the reader's units have it. */
export function inUnits({ name, unit, figure }: Setting, units: Units): Setting {
  const change =
    units === 'us' && unit === '°C'
      ? ({ to: fahrenheitFromCelsius, unit: '°F' } as const)
      : units === 'us' && unit === 'mm'
        ? ({ to: inchesFromMm, unit: 'in' } as const)
        : units === 'us' && unit === 'a m²'
          ? ({ to: (each: number) => each / squareFeetFromSquareMetres(1), unit: 'a ft²' } as const)
          : null
  if (change === null) return { name, unit, figure }
  const { low, typical, high } = figure
  return {
    name,
    unit: change.unit,
    figure: { ...figure, low: change.to(low), typical: change.to(typical), high: change.to(high) },
  }
}

const SIGNIFICANT = 2

/** Numbers short enough for the hand: whole from ten on, two figures below. */
export function measureWords({ low, typical, high }: Figure, locale: string) {
  const short = new Intl.NumberFormat(locale, { maximumSignificantDigits: SIGNIFICANT })
  const whole = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 })
  const words = Math.abs(high) < 10 ? short : whole
  return {
    typical: words.format(typical),
    range: low === high ? words.format(low) : words.formatRange(low, high),
  }
}
