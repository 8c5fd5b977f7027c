import * as z from 'zod'
import { Figure } from '../figure.ts'
import { MethodId } from '../vocabulary.ts'
import { Window } from '../window.ts'
import { quantityByKey } from './quantity.ts'
import { timingByKey } from './timing.ts'

/** What is stated of a fruit in the orchard, its seed and its stocks, and when and how long: name and unit of each. */
export const measureByKey = {
  'orchard.yearsToFruitSeedling': { name: 'first fruit of a seedling', unit: 'years' },
  'orchard.yearsToFruitClonal': { name: 'first fruit of a worked or layered tree', unit: 'years' },
  'orchard.yearsFirstToFull': { name: 'from first to full crop', unit: 'years' },
  'orchard.fullCropKgPerSquareMetre': { name: 'full crop of the canopy', unit: 'kg a m²' },
  'orchard.rowSpacingMetres': { name: 'room between rows', unit: 'm' },
  'orchard.inRowSpacingMetres': { name: 'room in the row', unit: 'm' },
  'orchard.heightMetres': { name: 'height of a full-sized tree', unit: 'm' },
  'orchard.minYoungCelsius': { name: 'cold that a young tree bears', unit: '°C' },
  'orchard.minMatureCelsius': { name: 'cold that a grown tree bears', unit: '°C' },
  'orchard.chillHours': { name: 'chill that it needs', unit: 'hours' },
  'orchard.warmestMonthCelsius': { name: 'mean of the warmest month that it needs', unit: '°C' },
  'orchard.trueFromSeedShare': { name: 'seedlings that come true', unit: 'share' },
  'orchard.worthKeepingShare': { name: 'seedlings worth keeping', unit: 'share' },
  'orchard.cropAloneShare': { name: 'crop without a partner near', unit: 'share' },
  'orchard.fruitWorthPerKg': { name: 'worth of a kilogram', unit: 'money' },
  'seed.viabilityDays': { name: 'seed keeps', unit: 'days' },
  'seed.daysToGerminate': { name: 'until it germinates', unit: 'days' },
  'seed.germination': { name: 'germination', unit: 'share' },
  'seed.coldStratificationDays': { name: 'cold and moist before sowing', unit: 'days' },
  'seed.seedsPerFruit': { name: 'seeds in a fruit', unit: '' },
  'seed.seedsPerKilogram': { name: 'seeds in a kilogram', unit: '' },
  'reproduction.embryosPerSeed': { name: 'embryos in a seed', unit: '' },
  'reproduction.femalesPerMale': { name: 'females to a male', unit: '' },
  'rootstocks.monthsSowToWorkable': { name: 'rootstock from sowing to workable', unit: 'months' },
  'rootstocks.stemDiameterMm': { name: 'rootstock stem when worked', unit: 'mm' },
} as const

const wayParts: Readonly<Record<string, object>> = {
  timing: timingByKey,
  materials: quantityByKey,
  environment: quantityByKey,
}

/** The unit and the name of the figure that a key means, or undefined where it means none. A window has no unit. */
export function measureOf(key: string): { readonly name: string; readonly unit: string } | undefined {
  if (key in measureByKey) return measureByKey[key as keyof typeof measureByKey]
  const [ways, method, part, measure, ...more] = key.split('.')
  if (ways !== 'ways' || !MethodId.safeParse(method).success || more.length > 0) return undefined
  if (measure === undefined)
    return part === 'success'
      ? { name: 'share that succeeds', unit: 'share' }
      : part === 'window'
        ? { name: 'when it may begin', unit: '' }
        : undefined
  const measures = wayParts[part ?? ''] as typeof quantityByKey | undefined
  return measures !== undefined && Object.hasOwn(measures, measure)
    ? measures[measure as keyof typeof quantityByKey]
    : undefined
}

const isWindowKey = (key: string): boolean => /^ways\.\w+\.window$/.test(key)
const isShare = ({ low, high }: Figure): boolean => low >= 0 && high <= 1

/** A figure or a window of a fruit, by the path to it in the facts: `orchard.chillHours`, `ways.air_layer.success`. */
export const FactSaid = z
  .object({
    fact: z.string().refine(key => measureOf(key) !== undefined, 'no fact of a fruit is called so'),
    value: z.union([Figure, Window]),
  })
  .readonly()
  .refine(
    ({ fact, value }) => isWindowKey(fact) === 'northMonths' in value,
    'a window takes months, and every other fact a figure',
  )
  .refine(
    ({ fact, value }) => 'northMonths' in value || measureOf(fact)?.unit !== 'share' || isShare(value),
    'a share lies between 0 and 1',
  )
export type FactSaid = z.infer<typeof FactSaid>
