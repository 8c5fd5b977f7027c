import type { Figure, Setting } from '../../../trade/index.ts'
import type { Units } from '../../text/shown-unit.ts'
import { shownUnit } from '../../text/shown-unit.ts'

/** A measure as the reader's units have it. */
export function inUnits({ name, unit, figure }: Setting, units: Units): Setting {
  const shown = shownUnit(unit, units)
  const { low, typical, high } = figure
  return {
    name,
    unit: shown.unit,
    figure: { ...figure, low: shown.to(low), typical: shown.to(typical), high: shown.to(high) },
  }
}

const SIGNIFICANT = 2

/** A hyphen before a number is lost beside the dash of a range. */
const signed = (number: string) => number.replaceAll('-', '\u2212')

/** Numbers short enough for the hand: whole from ten on, two figures below. */
export function measureWords({ low, typical, high }: Figure, locale: string) {
  const short = new Intl.NumberFormat(locale, { maximumSignificantDigits: SIGNIFICANT })
  const whole = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 })
  const words = Math.abs(high) < 10 ? short : whole
  return {
    typical: signed(words.format(typical)),
    range: signed(low === high ? words.format(low) : words.formatRange(low, high)),
  }
}
