import type { Units } from './shown-unit.ts'
import { shownUnit } from './shown-unit.ts'

/** What sentences call a unit, and what the facts do. Weights of a few grams stay: they are those of a recipe. */
const metric: Readonly<Record<string, string>> = {
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  'm²': 'm²',
  kg: 'kg',
  'degrees C': '°C',
  '°C': '°C',
}
/** Units of other units, by the metric one that stands for them. */
const us: Readonly<Record<string, string>> = { ft: 'm', lb: 'kg' }

const NUMBER = String.raw`\d+(?:\.\d+)?`
const measures = (units: readonly string[]): RegExp =>
  new RegExp(String.raw`(?<![\w.])(${NUMBER})(?:(-|–| to )(${NUMBER}))? (${units.join('|')})(?![\w²³/])`, 'g')
const metricMeasures = measures(Object.keys(metric))
const usMeasures = measures(Object.keys(us))

/** Whole from ten on, two figures below: a sentence is no table. */
const short = (value: number): string =>
  String(Math.abs(value) < 10 ? Number(value.toPrecision(2)) : Math.round(value))

/** Lengths, areas, weights and temperatures within a sentence, as the reader has them. */
export function measuresInWords(text: string, units: Units): string {
  const [found, unitOf] = units === 'us' ? [metricMeasures, metric] : [usMeasures, us]
  return text.replace(
    found,
    (_, low: string, to: string | undefined, high: string | undefined, unit: string) => {
      const shown = shownUnit(unitOf[unit]!, 'us')
      const own = (number: string) =>
        short(units === 'us' ? shown.to(Number(number)) : shown.from(Number(number)))
      const range = high === undefined ? own(low) : `${own(low)}${to}${own(high)}`
      return `${range} ${units === 'us' ? shown.unit : unitOf[unit]}`
    },
  )
}
