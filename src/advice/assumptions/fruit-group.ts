import { commonPractice, type Figure } from '../../trade/index.ts'
import { fromMemory } from './figures.ts'

/** Fruits that bear and grow alike, for figures that are not known fruit by fruit. */
export type FruitGroup =
  | 'citrus'
  | 'pome'
  | 'stone'
  | 'nut'
  | 'large evergreen'
  | 'small subtropical'
  | 'vine'
  | 'berry bush'
  | 'bean'
  | 'olive'
  | 'cactus'
  | 'giant herb'

export interface GroupFigures {
  /** Kilograms a year from a square metre of canopy in full bearing, as it is sold. */
  readonly fullCropKgPerSquareMetre: Figure
  /** Years from the first crop to full bearing, on a full-sized tree. */
  readonly yearsFirstToFull: Figure
  /** Metres, of a full-sized tree as it is kept in an orchard. */
  readonly heightMetres: Figure
  /** What a kilogram is worth after picking. Set your own. */
  readonly fruitWorthPerKg: Figure
  /** Mean of the warmest month that ripens it. */
  readonly warmestMonthCelsius: Figure
}

const worth = (low: number, typical: number, high: number) =>
  fromMemory(low, typical, high, 'a guess in the nursery’s money: set your own')

const groups: Readonly<Record<FruitGroup, GroupFigures>> = {
  citrus: {
    fullCropKgPerSquareMetre: fromMemory(2, 3.5, 5),
    yearsFirstToFull: fromMemory(4, 6, 8),
    heightMetres: fromMemory(3, 4.5, 6),
    fruitWorthPerKg: worth(0.5, 1, 2),
    warmestMonthCelsius: fromMemory(18, 20, 23),
  },
  pome: {
    fullCropKgPerSquareMetre: fromMemory(1.5, 3, 5),
    yearsFirstToFull: fromMemory(3, 5, 8),
    heightMetres: fromMemory(4, 5.5, 8),
    fruitWorthPerKg: worth(0.5, 1.2, 2.5),
    warmestMonthCelsius: fromMemory(13, 15, 17),
  },
  stone: {
    fullCropKgPerSquareMetre: fromMemory(0.8, 1.8, 3),
    yearsFirstToFull: fromMemory(2, 4, 6),
    heightMetres: fromMemory(3.5, 5, 7),
    fruitWorthPerKg: worth(0.8, 2, 4),
    warmestMonthCelsius: fromMemory(15, 17, 19),
  },
  nut: {
    fullCropKgPerSquareMetre: fromMemory(0.1, 0.25, 0.45),
    yearsFirstToFull: fromMemory(5, 8, 12),
    heightMetres: fromMemory(6, 10, 16),
    fruitWorthPerKg: worth(2, 4, 8),
    warmestMonthCelsius: fromMemory(17, 19, 22),
  },
  'large evergreen': {
    fullCropKgPerSquareMetre: fromMemory(0.5, 1.2, 2.5),
    yearsFirstToFull: fromMemory(4, 7, 10),
    heightMetres: fromMemory(5, 8, 12),
    fruitWorthPerKg: worth(0.8, 2, 4),
    warmestMonthCelsius: fromMemory(21, 24, 26),
  },
  'small subtropical': {
    fullCropKgPerSquareMetre: fromMemory(0.8, 1.6, 3),
    yearsFirstToFull: fromMemory(2, 4, 7),
    heightMetres: fromMemory(3, 4.5, 6),
    fruitWorthPerKg: worth(1, 2.5, 5),
    warmestMonthCelsius: fromMemory(18, 20, 23),
  },
  vine: {
    fullCropKgPerSquareMetre: fromMemory(0.7, 1.5, 3),
    yearsFirstToFull: fromMemory(1, 3, 4),
    heightMetres: fromMemory(1.8, 2, 2.5, 'on its frame'),
    fruitWorthPerKg: worth(0.8, 2, 4),
    warmestMonthCelsius: fromMemory(16, 18, 21),
  },
  'berry bush': {
    fullCropKgPerSquareMetre: fromMemory(0.4, 0.9, 1.8),
    yearsFirstToFull: fromMemory(3, 4, 6),
    heightMetres: fromMemory(1.2, 1.8, 2.5),
    fruitWorthPerKg: worth(3, 6, 12),
    warmestMonthCelsius: fromMemory(14, 16, 19),
  },
  bean: {
    fullCropKgPerSquareMetre: fromMemory(0.05, 0.12, 0.25, 'dry bean'),
    yearsFirstToFull: fromMemory(2, 3, 5),
    heightMetres: fromMemory(2, 3, 5),
    fruitWorthPerKg: worth(1.5, 3.5, 7),
    warmestMonthCelsius: fromMemory(19, 22, 24),
  },
  olive: {
    fullCropKgPerSquareMetre: fromMemory(0.3, 0.7, 1.2),
    yearsFirstToFull: fromMemory(4, 7, 10),
    heightMetres: fromMemory(3.5, 5, 8),
    fruitWorthPerKg: worth(0.5, 1, 2),
    warmestMonthCelsius: fromMemory(19, 22, 25),
  },
  cactus: {
    fullCropKgPerSquareMetre: fromMemory(0.8, 2, 3.5),
    yearsFirstToFull: fromMemory(1, 2.5, 4),
    heightMetres: fromMemory(1.5, 1.8, 2.2, 'on its post'),
    fruitWorthPerKg: worth(1, 2.5, 5),
    warmestMonthCelsius: fromMemory(22, 24, 26),
  },
  'giant herb': {
    fullCropKgPerSquareMetre: fromMemory(1.5, 3, 5),
    yearsFirstToFull: commonPractice(0.5, 1, 1.5),
    heightMetres: fromMemory(2, 3.5, 5),
    fruitWorthPerKg: worth(0.4, 0.8, 2),
    warmestMonthCelsius: fromMemory(22, 25, 27),
  },
}

const groupBySpecies: Readonly<Record<string, FruitGroup>> = {
  mango: 'large evergreen',
  avocado: 'large evergreen',
  lychee: 'large evergreen',
  longan: 'large evergreen',
  sapodilla: 'large evergreen',
  jackfruit: 'large evergreen',
  wax_jambu: 'large evergreen',
  macadamia: 'nut',
  walnut: 'nut',
  pecan: 'nut',
  hazelnut: 'nut',
  orange_sweet: 'citrus',
  lemon: 'citrus',
  lime: 'citrus',
  apple: 'pome',
  pear: 'pome',
  plum: 'stone',
  peach: 'stone',
  cherry: 'stone',
  apricot: 'stone',
  grape: 'vine',
  kiwifruit: 'vine',
  passionfruit: 'vine',
  blueberry: 'berry bush',
  coffee: 'bean',
  cacao: 'bean',
  olive: 'olive',
  dragon_fruit: 'cactus',
  banana: 'giant herb',
}

/** Height differs too much within a group for some fruits. From memory. */
const heightBySpecies: Readonly<Record<string, Figure>> = {
  hazelnut: fromMemory(3, 4, 6),
  macadamia: fromMemory(5, 8, 12),
  lemon: fromMemory(3, 4, 5),
  peach: fromMemory(3, 4, 5),
  cherry: fromMemory(4, 6, 10),
}

/** The rest of the fruits are small trees of the subtropics, or grow like them. */
export const groupOf = (species: string): FruitGroup => groupBySpecies[species] ?? 'small subtropical'

export const groupFigures = (species: string): GroupFigures => {
  const figures = groups[groupOf(species)]
  const height = heightBySpecies[species]
  return height === undefined ? figures : { ...figures, heightMetres: height }
}
