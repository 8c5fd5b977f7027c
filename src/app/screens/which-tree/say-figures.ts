import type { TFunction } from 'i18next'
import type { Answer, AssumptionKey, Spread, Taken, TurningInput, WayAnswer } from '../../../advice/index.ts'
import type { Format } from '../../text/format.ts'
import type { Shown } from '../../text/shown-unit.ts'

/** Figures of an answer in words. */
export interface Says {
  readonly t: TFunction<'text'>
  readonly format: Format
}

/** Years with one decimal; more than the years looked at where it may not come within them. */
export const sayYears = ({ t, format }: Says, value: number, ahead: number): string =>
  Number.isFinite(value) ? format.amount(value) : t('whichTree.orMore', { years: format.number(ahead) })

export const sayLikely = (
  says: Says,
  { low, high }: Pick<Spread, 'low' | 'high'>,
  of: (value: number) => string,
): string => says.t('whichTree.likely', { low: of(low), high: of(high) })

export const sayMoney = ({ format }: Says, value: number): string =>
  format.number(Math.abs(value) < 0.5 ? 0 : value)

/** The share that an input stands for, or its number, with its unit. */
const percentInputs: ReadonlySet<TurningInput> = new Set<TurningInput>([
  'trueFromSeedShare',
  'worthKeepingShare',
  'cropAloneShare',
  'reworkTakeShare',
  'interest',
])
/** What the rest are measured in; years, hours and money have no unit here. */
const unitOf: Partial<Readonly<Record<TurningInput | AssumptionKey, string>>> = {
  coldestNight: '°C',
  minMatureCelsius: '°C',
  minYoungCelsius: '°C',
  warmestMonthCelsius: '°C',
  litres: 'litres',
  squareMetres: 'm²',
  heightMetres: 'm',
  'heightMetres above sea': 'm',
  rowSpacingMetres: 'm',
  inRowSpacingMetres: 'm',
  fullCropKgPerSquareMetre: 'kg a m²',
  fruitWorthPerKg: 'a kg',
  carePerSquareMetre: 'a m²',
}

/** How a figure is shown and typed. */
export const shownInput = ({ shown }: Format, input: TurningInput | AssumptionKey): Shown =>
  shown(unitOf[input] ?? '')

export function sayInput({ format }: Says, input: TurningInput | AssumptionKey, value: number): string {
  if (percentInputs.has(input)) return format.share(value)
  const { to, unit } = shownInput(format, input)
  const own = to(value)
  const text =
    Math.abs(own) < 1 ? Number(own.toPrecision(2)).toLocaleString(format.locale) : format.amount(own)
  return `${text} ${unit}`.trim()
}

/** What is taken alike of every fruit, with its unit. */
export function sayTaken({ t, format }: Says, { value, unit }: Taken): string {
  switch (unit) {
    case 'years':
      return t('whichTree.years', { years: format.amount(value) })
    case 'share':
      return value < 0.02
        ? value.toLocaleString(format.locale, { style: 'percent', maximumFractionDigits: 1 })
        : format.share(value)
    case 'times':
      return t('whichTree.times', { times: value.toLocaleString(format.locale) })
    case 'm²':
      return format.area(value)
    case 'm':
      return format.length(value)
    case '± °C': {
      const { to, unit: degree } = format.shown(unit)
      return `${format.amount(to(value))} ${degree.replace('± ', '')}`
    }
  }
}

/** The best of each column of the table, as ids of ways; a column where all are alike has none. */
export function bestOfColumns(answer: Answer): Readonly<Record<string, ReadonlySet<string>>> {
  const measures: Readonly<Record<string, (way: WayAnswer) => number>> = {
    first: way => -way.firstFruit.middle,
    true: way => way.trueShare,
    lives: way => way.survives,
    crop: way => way.cropSoFar.mean.at(-1)!,
    height: way => -way.stand.heightMetres,
    spend: way => -way.spend,
    worth: way => way.presentValue.mean,
    payback: way => -(way.payback ?? Number.POSITIVE_INFINITY),
  }
  return Object.fromEntries(
    Object.entries(measures).map(([column, measure]) => {
      // A tree that never gives the wanted fruit is best at nothing.
      const able = answer.ways.filter(({ cropSoFar }) => cropSoFar.mean.at(-1)! > 0)
      const best = Math.max(...able.map(measure))
      const near = (value: number) => Number.isFinite(best) && value >= best - 1e-6 * Math.abs(best)
      const ids = able.filter(way => near(measure(way))).map(({ way }) => way.id)
      return [column, new Set(ids.length === able.length ? [] : ids)]
    }),
  )
}
