import { expect, test } from 'vitest'
import { tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import type { SeasonPlace } from '../season.ts'
import type { SeasonLoads } from './loads.ts'
import { orderChances, orderOutcomes, simulatedLoads } from './outcome.ts'
import type { SimulatedSeasons } from './simulate-seasons.ts'

const WEEKS = 2
const place = (name: SeasonPlace['place']): SeasonPlace => ({
  place: name,
  squareMetres: new Float64Array(WEEKS).fill(100),
  benches: [],
  pricePerSquareMetreWeek: 0,
  extraPricePerSquareMetreWeek: null,
})
const season = tinySeason({
  weeks: WEEKS,
  kinds: [tinyKind('fig')],
  ways: [],
  orders: [
    { kind: 0, number: 10, dueWeek: 1 },
    { kind: 0, number: 20, dueWeek: 1 },
  ],
  more: { places: [place('mist bed'), place('shade house')] },
})
/** Twenty seasons written out by hand: in the second place 1 m² to 20 m² in week 0, 7 m² in week 1. */
const seasons = Array.from({ length: 20 }, (_, s) => s)
const simulated: SimulatedSeasons = {
  from: 0,
  to: 20,
  orders: 2,
  weeks: WEEKS,
  byDue: Int32Array.from([...seasons.map(s => s + 1), ...seasons.map(() => 20)]),
  weeksLate: Uint8Array.from([...seasons.map(s => (s < 9 ? 255 : 0)), ...seasons.map(() => 0)]),
  late: new Int32Array(40),
  watched: [],
  promisable: new Int32Array(0),
}
const loads: SeasonLoads = {
  weeks: WEEKS,
  places: [1],
  skills: ['grafting'],
  squareMetres: Float32Array.from(seasons.flatMap(s => [20 - s, 7])),
  minutes: Float32Array.from(seasons.flatMap(s => [60, s === 3 ? 600 : 0])),
}

test('of each place and skill the mean is shown, and what nine seasons of ten do not exceed', () => {
  const { squareMetres, minutes } = simulatedLoads(season, loads)
  // The mean of 1 to 20 is 10.5; 18 of 20 seasons take 18 m² or less.
  expect([...squareMetres[1]!.expected]).toEqual([10.5, 7])
  expect([...squareMetres[1]!.badYear]).toEqual([18, 7])
  expect(minutes[0]!.skill).toBe('grafting')
  expect([...minutes[0]!.expected]).toEqual([60, 30])
  // One season in twenty is no bad year of ten.
  expect([...minutes[0]!.badYear]).toEqual([60, 0])
})

test('where nothing ever stands, the load is nothing', () => {
  const { squareMetres } = simulatedLoads(season, loads)
  expect([...squareMetres[0]!.expected, ...squareMetres[0]!.badYear]).toEqual([0, 0, 0, 0])
})

test('each order is counted over its own seasons', () => {
  const [first, second] = orderChances(season, simulated)
  expect(first).toEqual({ chance: 11 / 20, meanByDue: 10.5 })
  expect(second).toEqual({ chance: 1, meanByDue: 20 })
  const [outcome] = orderOutcomes(season, simulated)
  // Ready by the due week, 1 to 20: two of twenty have 2 or fewer, eighteen 18 or fewer; short 9 + 8 + … + 1 over 20 seasons.
  expect(outcome).toMatchObject({ chance: 11 / 20, lowByDue: 2, highByDue: 18, short: 45 / 20 })
})
