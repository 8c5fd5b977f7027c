import { expect, test } from 'vitest'
import { everyWeek, solved, tinyPlace } from '../fixtures/solved.ts'
import { certain, finishedBatch, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'

/** Cuttings stand two weeks on the mist bed, 0.01 m² each, and are then ready: 8 of 10. */
const bed = (squareMetres: Float64Array, more = {}) =>
  tinySeason({
    weeks: 20,
    kinds: [tinyKind('fig')],
    ways: [{ kind: 0, steps: [{ ...certain(0.8), days: 14 }], openWeeks: [5], course: onBed }],
    orders: [{ kind: 0, number: 400, dueWeek: 10, price: 10 }],
    places: [tinyPlace('mist bed', squareMetres, more)],
  })
const onBed = { area: [{ place: 0, squareMetres: Float64Array.of(0.01, 0.01, 0.005) }] }

test('a full mist bed limits the season: what is short is what does not fit, and one more m² saves its trees', async () => {
  const { starts, short, objective, dual } = await solved(bed(everyWeek(20, week => (week === 6 ? 3 : 100))))
  // 3 m² in week 6 hold 300 cuttings, 240 trees; 160 are short at 15 each.
  expect(starts[0]!.number).toBeCloseTo(300, 4)
  expect(short[0]).toBeCloseTo(160, 4)
  expect(objective).toBeCloseTo(300 + 160 * 15, 3)
  // One m² more: 100 cuttings at 1 each, 80 trees at 15: 1200 − 100 saved.
  expect(dual('space/mist bed/6')).toBeCloseTo(-1100, 4)
  expect(dual('space/mist bed/5')).toBeCloseTo(0, 6)
})

test('extra area is lent when it costs less than the trees it saves', async () => {
  const tight = everyWeek(20, week => (week === 6 ? 3 : 100))
  const lent = await solved(bed(tight, { extraPricePerSquareMetreWeek: 900 }))
  expect(lent.short[0]).toBeCloseTo(0, 4)
  // 500 cuttings, and 2 m² lent for one week.
  expect(lent.objective).toBeCloseTo(500 + 2 * 900, 3)
  expect(lent.dual('space/mist bed/6')).toBeCloseTo(-900, 4)
  const dear = await solved(bed(tight, { extraPricePerSquareMetreWeek: 1200 }))
  expect(dear.short[0]).toBeCloseTo(160, 4)
})

test('area has its price: it is part of what a cutting costs', async () => {
  const { objective } = await solved(bed(everyWeek(20, 100), { pricePerSquareMetreWeek: 4 }))
  // 500 cuttings at 1 + 0.025 m² weeks at 4.
  expect(objective).toBeCloseTo(500 * 1.1, 4)
})

test('what stands on the bed already comes first, and where it takes more than there is nothing more is set', async () => {
  const season = bed(everyWeek(20, 3))
  const standing = (squareMetres: number) => ({
    ...season,
    batches: [finishedBatch(0, 0, { area: [{ place: 0, squareMetres: everyWeek(8, squareMetres) }] })],
  })
  expect((await solved(standing(2))).starts[0]!.number).toBeCloseTo(100, 4)
  const full = await solved(standing(5))
  expect(full.outcome).toBe('optimal')
  expect(full.short[0]).toBeCloseTo(400, 4)
})

test('finished trees that are held take their own area', async () => {
  const season = tinySeason({
    weeks: 20,
    kinds: [tinyKind('fig', { standsAt: { place: 0, squareMetres: 0.1 } })],
    ways: [{ kind: 0, steps: [{ ...certain(0.5), days: 14 }], openWeeks: [3] }],
    orders: [{ kind: 0, number: 100, dueWeek: 10, earliestWeek: 10, price: 10 }],
    places: [tinyPlace('standing ground', everyWeek(20, 4))],
  })
  const { short, dual } = await solved(season)
  // 4 m² hold 40 trees from week 5 to week 9.
  expect(short[0]).toBeCloseTo(60, 4)
  // One more m² in each of the five weeks holds 10 more trees: 150 less 20 for cuttings, whatever week gets the dual.
  const worth = [5, 6, 7, 8, 9].reduce((sum, week) => sum + dual(`space/standing ground/${week}`), 0)
  expect(worth).toBeCloseTo(-130, 4)
})
