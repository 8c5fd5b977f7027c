import { Bench, Person, Prices, Site } from '../record/index.ts'

/**
 * An invented nursery on an invented sea loch: a south slope above the water, mild enough for avocado under cover and
 * cold enough below the wall for apples. It grows a bit of everything for gardens and small orchards round about.
 */
export const site = Site.parse({
  name: 'Sallow Reach Nursery',
  latitudeDegrees: 38,
  longitudeDegrees: 0,
  heightMetres: 40,
})

/** Name, kind of place, length, width, and where its corner lies on the plan, in metres. */
const rows = [
  ['seed-house', 'Seed house', 'seed house', 6, 2.5, 2, 2],
  ['mist-1', 'Mist bed 1', 'mist bed', 5, 1.2, 12, 2],
  ['mist-2', 'Mist bed 2', 'mist bed', 4, 1.2, 12, 7],
  ['hot-bed', 'Hot bed', 'hot bed', 9, 1.2, 22, 2],
  ['healing', 'Healing tent', 'healing tent', 9, 2.4, 22, 7],
  ['cold', 'Cold store', 'cold store', 8, 6, 36, 2],
  ['tunnel', 'Harbour tunnel', 'tunnel', 18, 4.5, 48, 3],
  ['shade-1', 'Long shade', 'shade house', 36, 8, 2, 15],
  ['shade-2', 'Wall shade', 'shade house', 24, 6, 42, 15],
  ['ground-1', 'Upper ground', 'standing ground', 30, 8, 2, 28],
  ['ground-2', 'Lower ground', 'standing ground', 24, 7, 42, 28],
  ['rows', 'Field below the wall', 'field row', 60, 26, 2, 41],
] as const

export const benches: readonly Bench[] = rows.map(([id, name, place, length, width, x, y]) =>
  Bench.parse({
    id,
    name,
    place,
    areaSquareMetres: Math.round(length * width * 10) / 10,
    lengthMetres: length,
    widthMetres: width,
    position: { xMetres: x, yMetres: y },
  }),
)

export const people: readonly Person[] = [
  ['maren', 'Maren', ['grafting', 'budding', 'layering', 'general'], 32, 8, 1.25],
  ['bero', 'Bero', ['budding', 'grafting', 'cuttings', 'general'], 38, 6, 1],
  ['tamsin', 'Tamsin', ['cuttings', 'seed', 'potting', 'general'], 38, 6, 1.1],
  ['ilo', 'Ilo', ['layering', 'cuttings', 'potting', 'general'], 38, 6, 0.9],
  ['odile', 'Odile', ['seed', 'potting', 'general'], 24, 0, 1],
  ['wick', 'Wick', ['potting', 'general', 'cuttings'], 38, 6, 0.8],
  ['saffi', 'Saffi', ['budding', 'general', 'potting'], 20, 4, 0.6],
].map(([id, name, skills, hoursPerWeek, overtimeHoursPerWeek, pace]) =>
  Person.parse({ id, name, skills, hoursPerWeek, overtimeHoursPerWeek, pace }),
)

export const prices = Prices.parse({
  hour: 18,
  overtimeHour: 27,
  squareMetreWeek: 0.35,
  extraSquareMetreWeek: { 'standing ground': 0.9, 'shade house': 2.5, 'field row': 0.2 },
  latePerWeekShare: 0.05,
  shortShare: 1.5,
})
