import { methodById } from '../facts/method.ts'
import { type QuantityKey, quantityByKey } from '../facts/quantity.ts'
import type { Figure } from '../figure.ts'
import type { Setting } from '../protocol.ts'
import type { MethodId } from '../vocabulary.ts'
import { guideOf } from './guide-by-method.ts'

/** Shares are shown as per cent. */
const shown = (key: QuantityKey, figure: Figure): Setting => {
  const { name, unit } = quantityByKey[key]
  if (unit !== 'share') return { name, unit, figure }
  const percent = (share: number) => Math.round(share * 1000) / 10
  return {
    name,
    unit: '%',
    figure: {
      ...figure,
      low: percent(figure.low),
      typical: percent(figure.typical),
      high: percent(figure.high),
    },
  }
}

/** What is ordered and booked before the work: no measure for the hand at the bench. */
const supplies: ReadonlySet<string> = new Set(
  (
    ['mediaLitresPerPlant', 'tapeMmPerPlant', 'tiesPerPlant', 'coverBagsPerPlant', 'waxMlPerPlant'] as const
  ).map(key => quantityByKey[key].name),
)
const HOURLY = / by one person in an hour$/

/** Every measure of a method that the program assumes, those of the hand first; each says where it comes from. */
export function guideFigures(id: MethodId): readonly Setting[] {
  const method = methodById(id)
  const { measures } = guideOf(id)
  const isLimb = method.daysOnBench === null
  const saysHormone = measures.some(({ unit }) => unit === 'ppm')
  return [
    ...measures,
    ...[method.materials, method.environment].flatMap(some =>
      (Object.entries(some) as [QuantityKey, Figure][])
        .filter(([key]) => !(saysHormone && key === 'ibaPpm'))
        .map(([key, figure]) => shown(key, figure)),
    ),
    ...(method.daysOnBench === null
      ? []
      : [{ name: 'days until it can move on', unit: 'days', figure: method.daysOnBench }]),
    {
      name: isLimb ? 'limbs by one person in an hour' : 'plants by one person in an hour',
      unit: '',
      figure: method.perPersonHour,
    },
  ]
}

/** The measures that the bench card carries: sizes, strengths, warmth and days. */
export const benchFigures = (id: MethodId): readonly Setting[] =>
  guideFigures(id).filter(({ name }) => !supplies.has(name) && !HOURLY.test(name))

export const guideName = (id: MethodId): string => methodById(id).label
