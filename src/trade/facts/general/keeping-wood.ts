import { commonPractice, type Figure } from '../../figure.ts'
import { fromMemory, published } from './published.ts'

/** How many days a fruit's scion wood keeps, and how it must be kept. */
export interface Keeping {
  readonly how: string
  readonly days: Figure
}

export const dormantWood: Keeping = {
  how: '0 to 2 °C, sealed, away from ripening fruit',
  days: fromMemory(60, 100, 150),
}
const citrus: Keeping = {
  how: 'sealed bag, refrigerator at 4 to 8 °C',
  days: published(14, 42, 90, ['RFS_SA', 'SAULS_TX'], {
    rangeBasis: 'from memory',
    note: '"several weeks" in the second',
  }),
}
const stoneFruit: Keeping = { how: '0 to 2 °C, sealed', days: fromMemory(40, 75, 120) }

const bySpecies: Readonly<Record<string, Keeping>> = {
  mango: {
    how: 'damp, in plastic, at room temperature, in the cooler months',
    days: published(6, 8, 9, ['ACTA24_MANGO']),
  },
  orange_sweet: citrus,
  lemon: citrus,
  lime: citrus,
  avocado: { how: '4 to 7 °C, sealed', days: fromMemory(3, 10, 28) },
  pecan: {
    how: '−1 to 3 °C in moist shavings',
    days: fromMemory(30, 75, 120, 'temperature from UCANR_PECAN'),
  },
  peach: stoneFruit,
  apricot: stoneFruit,
}

const evergreenWood: Keeping = { how: 'cool, damp, shaded', days: commonPractice(1, 3, 7) }
export const summerBudsticks: Keeping = {
  how: 'leaf blades off, wet, cool',
  days: commonPractice(0, 1, 4),
}
export const leafyCuttings: Keeping = {
  how: 'damp, shaded, stuck the same day',
  days: commonPractice(0, 0, 1),
}
export const bananaSuckers: Keeping = { how: 'shade, dry', days: commonPractice(2, 5, 10) }

/** Scion wood of a fruit: its own figure, else that of dormant or of evergreen wood. */
export const scionKeeping = (species: {
  readonly id: string
  readonly evergreen: boolean | 'semi'
}): Keeping => bySpecies[species.id] ?? (species.evergreen === true ? evergreenWood : dormantWood)
