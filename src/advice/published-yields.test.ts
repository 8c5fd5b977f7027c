import { describe, expect, test } from 'vitest'
import { speciesById } from '../trade/facts/index.ts'
import {
  kilogramsFromPounds,
  metresFromFeet,
  poundsFromKilograms,
  squareMetresFromSquareFeet,
} from '../trade/index.ts'
import { Question } from './question.ts'
import { whichTree } from './which-tree.ts'

/** Yields that others published, against what a tree of ours bears at the room that theirs had. */

const place = (coldestNight: number, coldestMonth: number, warmestMonth: number) => ({
  kind: 'normals',
  coldestNightCelsius: coldestNight,
  coldestMonthCelsius: coldestMonth,
  warmestMonthCelsius: warmestMonth,
})
const grown = (species: string, way: string, climate: object, set: Record<string, number> = {}) => {
  const question = Question.parse({ species, climate, set, partner: 'near', yearsAhead: 25 })
  return whichTree(question, speciesById(species)!).ways.find(one => one.way.id === way)!
}

/** Kilograms from a square metre in a year of full bearing, from five years so that one good one does not speak. */
const aYear = ({ stand }: { readonly stand: { readonly canopyEach: number } }, so: readonly number[]) =>
  (so[20]! - so[15]!) / 5 / stand.canopyEach

describe('a tree in full bearing gives what a table of a university gives, within our eight of ten', () => {
  // University of Arizona Cooperative Extension, Master Gardener Manual, ch. 11, table 1: feet apart, bushels, first crop.
  // A bushel of apples is 42 lb and of apricots 48 lb by the usual legal weights, from memory.
  test.each([
    ['apple', 'worked/vigorous', 25, 8 * 42, [6, 10]],
    ['apple', 'worked/semi-dwarfing', 18, 4 * 42, [4, 6]],
    ['apple', 'worked/dwarfing', 12, 1 * 42, [2, 3]],
    ['apricot', 'worked/seedling', 18, 2 * 48, [4, 4]],
    ['fig', 'cutting-grown', 15, 25, [2, 2]],
  ] as const)('%s, %s, at %i feet: %i pounds', (species, way, feet, pounds, [early, late]) => {
    const tree = grown(species, way, species === 'fig' ? place(2, 10, 28) : place(-6, 3, 24))
    const published = kilogramsFromPounds(pounds) / metresFromFeet(feet) ** 2
    expect(aYear(tree, tree.cropSoFar.low)).toBeLessThan(published)
    expect(aYear(tree, tree.cropSoFar.high)).toBeGreaterThan(published)
    // Bearing age to within the spread that we give and half a year.
    expect(tree.firstFruit.low - 0.5).toBeLessThan(late)
    expect(tree.firstFruit.high + 0.5).toBeGreaterThan(early)
  })
})

const tonsAnAcre = (tons: number) => kilogramsFromPounds(2000 * tons) / squareMetresFromSquareFeet(43_560)
const tonnesAHectare = (tonnes: number) => tonnes / 10
const temperate = place(-5, 3, 24)
const mild = place(2, 10, 27)
const warm = place(9, 16, 28)
const tropical = place(18, 24, 28)

describe('a planting in full bearing gives what others measured or found usual, within our eight of ten', () => {
  // Each source stands in the facts under its id; a ton is the short ton of 2000 lb, an acre 43,560 square feet.
  test.each([
    ['WOLSTENHOLME1991: 20 t/ha from the sixth year', 'avocado', 'worked/clonal', warm, tonnesAHectare(20)],
    ['BALLY2006: can reach 20 t/ha', 'mango', 'worked/usual', warm, tonnesAHectare(20)],
    ['LITCHI_SA: 4 to 8 t/ha', 'lychee', 'layered', place(5, 12, 27), tonnesAHectare(8)],
    ['GUAVA_NAMBOUR: 36.23 t/ha of five clones', 'guava', 'cutting-grown', warm, tonnesAHectare(36.23)],
    ['UC21277: 5 tons an acre', 'persimmon', 'worked/usual', temperate, tonsAnAcre(5)],
    ['POMEGRANATE_SA: 30 t/ha', 'pomegranate', 'cutting-grown', mild, tonnesAHectare(30)],
    ['UC_OLIVE2016: 5 tons an acre', 'olive', 'cutting-grown', place(0, 8, 27), tonsAnAcre(5)],
    ['WINCH2006: up to 27.6 t/ha', 'banana', 'divided', tropical, tonnesAHectare(27.6)],
    [
      'ICCO2003: 1,265,000 t from 2,350,000 ha',
      'cacao',
      'worked/usual',
      tropical,
      tonnesAHectare(1265 / 2350),
    ],
    ['EXTENSION_GRAPE: 8 tons an acre', 'grape', 'cutting-grown', temperate, tonsAnAcre(8)],
    ['THORP2011: 36 t/ha', 'kiwifruit', 'cutting-grown', place(0, 6, 24), tonnesAHectare(36)],
    ['RAMOS_WALNUT: 2.31 tons an acre', 'walnut', 'worked/usual', temperate, tonsAnAcre(2.31)],
  ] as const)('%s: %s, %s', (_, species, way, climate, published) => {
    const tree = grown(species, way, climate)
    expect(aYear(tree, tree.cropSoFar.low)).toBeLessThan(published)
    expect(aYear(tree, tree.cropSoFar.high)).toBeGreaterThan(published)
  })
})

test('a bush of blueberry at 4 feet in rows of 3 m gives 2 to 10 pounds (MSU_BLUEBERRY)', () => {
  const bush = grown('blueberry', 'cutting-grown', temperate)
  const pounds = (so: readonly number[]) => poundsFromKilograms(aYear(bush, so) * metresFromFeet(4) * 3)
  expect(pounds(bush.cropSoFar.low)).toBeGreaterThan(1.5)
  expect(pounds(bush.cropSoFar.mean)).toBeGreaterThan(4)
  expect(pounds(bush.cropSoFar.mean)).toBeLessThan(6)
  expect(pounds(bush.cropSoFar.high)).toBeLessThan(10)
})

test('stocks hold trees as small as trials found: cherry on a hybrid 50 to 55 in 100 of mazzard, pear on a clone 70', () => {
  // NC-140 western sweet cherry, seven seasons; T. Einhorn in "Promising pear rootstocks": see the rootstocks.
  const room = (species: string, stock: string) =>
    grown(species, `worked/${stock}`, place(-8, 2, 22)).stand.canopyEach /
    grown(species, 'worked/seedling', place(-8, 2, 22)).stand.canopyEach
  expect(room('cherry', 'semi-dwarfing')).toBeGreaterThan(0.5)
  expect(room('cherry', 'semi-dwarfing')).toBeLessThan(0.55)
  expect(room('pear', 'clonal-pear')).toBeCloseTo(0.7, 6)
  // Trunks on two quinces, from crops of six harvests and crop by trunk (Acta Horticulturae 475, article 17):
  // 80 kg at 1.5 and 97 kg at 1.5 kg/cm², against 71 kg at 0.64 on seedling. Trees stood close; a garden table has a
  // dwarf at 12 and a standard tree at 25 feet.
  const trunk = [80, 97].map(kilograms => kilograms / 1.5 / (71 / 0.64))
  expect(room('pear', 'quince')).toBeGreaterThan((12 / 25) ** 2)
  expect(room('pear', 'quince')).toBeLessThan(Math.max(...trunk))
})

test('an apple has the room of the table by its stock: about 12, 18 and 25 feet each way', () => {
  const apart = ['worked/dwarfing', 'worked/semi-dwarfing', 'worked/vigorous'].map(way =>
    Math.sqrt(grown('apple', way, place(-6, 3, 24)).stand.spaceEach),
  )
  for (const [i, feet] of [12, 18, 25].entries())
    expect(Math.abs(apart[i]! - metresFromFeet(feet))).toBeLessThan(0.3)
})

test('the first six crops of an orange on a citrange: 574 to 615 kg from 28.8 m², planted 1991 near Immokalee', () => {
  // Proc. Fla. State Hort. Soc., article 87364, abstract: 14 to 15 boxes of 41 kg at 4.3 by 6.7 m; best two of 19 stocks.
  const tree = grown('orange_sweet', 'worked/trifoliate', place(1, 16, 28))
  const first = Math.ceil(tree.firstFruit.middle)
  const sixCrops = (so: readonly number[]) => (so[first + 6]! - so[first]!) / tree.stand.canopyEach
  const published = 615 / (4.3 * 6.7)
  expect(sixCrops(tree.cropSoFar.low)).toBeLessThan(published)
  expect(sixCrops(tree.cropSoFar.high)).toBeGreaterThan(published)
})

test('a semi-dwarf apple gives some hundreds of kilograms in fifteen years, and no more than a ton (common practice)', () => {
  const kilograms = grown('apple', 'worked/semi-dwarfing', place(-8, 2, 20)).cropSoFar.mean[15]!
  expect(kilograms).toBeGreaterThan(250)
  expect(kilograms).toBeLessThan(1000)
})
