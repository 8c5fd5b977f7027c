import type { Fact } from '../../../trade/facts/index.ts'
import { type Figure, type Hemisphere, type Window, windowMonths } from '../../../trade/index.ts'
import type { Format } from '../../text/format.ts'
import type { Shown } from '../../text/shown-unit.ts'
import { measureWords } from '../methods/measure-words.ts'

export const isWindow = (value: Fact['value']): value is Window => value !== null && 'northMonths' in value
export const isFigure = (value: Fact['value']): value is Figure => value !== null && 'typical' in value

/** A figure in the reader's units: short for the hand. */
export function figureWords(figure: Figure, shown: Shown, locale: string) {
  const { low, typical, high } = figure
  return measureWords(
    { ...figure, low: shown.to(low), typical: shown.to(typical), high: shown.to(high) },
    locale,
  )
}

/** The typical value with its range and unit, in a line. */
export function figureLine(figure: Figure, unit: string, { locale, shown: shownIn }: Format): string {
  const shown = shownIn(unit)
  const { typical, range } = figureWords(figure, shown, locale)
  // Of a hormone only the range is said: the label decides.
  const said = unit === 'ppm' || typical === range ? range : `${typical} (${range})`
  return `${said} ${shown.unit}`.trim()
}

/** Months of a window at the site, and the condition that goes before them. */
export const monthsOf = (window: Window, hemisphere: Hemisphere): readonly number[] =>
  windowMonths(window, hemisphere)
