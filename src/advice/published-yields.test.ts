import { describe, expect, test } from 'vitest'
import { speciesById } from '../trade/facts/index.ts'
import { kilogramsFromPounds, metresFromFeet } from '../trade/index.ts'
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
    // A year in full bearing, from five so that one good year does not speak.
    const ours = (so: readonly number[]) => (so[20]! - so[15]!) / 5 / tree.stand.canopyEach
    expect(ours(tree.cropSoFar.low)).toBeLessThan(published)
    expect(ours(tree.cropSoFar.high)).toBeGreaterThan(published)
    // Bearing age to within the spread that we give and half a year.
    expect(tree.firstFruit.low - 0.5).toBeLessThan(late)
    expect(tree.firstFruit.high + 0.5).toBeGreaterThan(early)
  })
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
