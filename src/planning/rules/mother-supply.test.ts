import { expect, test } from 'vitest'
import { MotherId } from '../../trade/index.ts'
import { everyWeek, solved } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import type { MotherPool } from '../season.ts'
import { givesInSeason } from './mother-supply.ts'

const pool = (more: Partial<MotherPool> = {}): MotherPool => ({
  cultivar: null,
  rootstockKind: null,
  material: 'scion sticks',
  name: 'Anna, scion sticks',
  mothers: [],
  perWeek: everyWeek(30, 40),
  perYear: [{ fromWeek: 0, toWeek: 29, most: 1000 }],
  stored: [],
  keepsWeeks: 0,
  young: null,
  ...more,
})
/** One stick makes five plants; open in weeks 5 and 6; trees are worth 15 when short, and a plant costs 1. */
const apple = (pools: readonly MotherPool[], openWeeks = [5, 6]) =>
  tinySeason({
    weeks: 30,
    kinds: [tinyKind('apple')],
    ways: [
      {
        kind: 0,
        steps: [{ ...certain(0.8), days: 14 }],
        openWeeks,
        course: { material: [{ pool: 0, offset: 0, perPlant: 0.2 }] },
      },
    ],
    orders: [{ kind: 0, number: 400, dueWeek: 12, price: 10 }],
    pools,
  })

test('a mother tree exhausted for the year: what is short is what her wood does not make, and one more stick is worth its trees', async () => {
  const { starts, short, objective, dual } = await solved(
    apple([pool({ perYear: [{ fromWeek: 0, toWeek: 29, most: 60 }] })]),
  )
  // 60 sticks make 300 plants, 240 trees.
  expect(starts.reduce((sum, { number }) => sum + number, 0)).toBeCloseTo(300, 4)
  expect(short[0]).toBeCloseTo(160, 4)
  expect(objective).toBeCloseTo(300 * 1 + 160 * 15, 3)
  // A stick more: 5 plants at 1, 4 trees at 15.
  expect(dual('motherYear/Anna, scion sticks/0')).toBeCloseTo(-55, 5)
})

test('what she may give in a week limits the week, not the year', async () => {
  const { short, objective, dual } = await solved(
    apple([pool({ perWeek: everyWeek(30, week => (week === 5 ? 20 : 40)) })]),
  )
  // 20 and 40 sticks: 300 plants, 240 trees.
  expect(short[0]).toBeCloseTo(400 - 60 * 4, 4)
  expect(objective).toBeCloseTo(300 * 1 + 160 * 15, 3)
  expect(dual('motherWeek/Anna, scion sticks/5')).toBeCloseTo(-55, 5)
  expect(dual('motherYear/Anna, scion sticks/0')).toBeCloseTo(0, 6)
})

test('a mother who is spent after a week does not give in the next: two of 20 a week, 20 and 100 a year, give 60 in two weeks', async () => {
  const mother = (id: string, perYear: number) => ({
    id: MotherId.parse(id),
    perWeek: everyWeek(30, 20),
    perYear: [perYear],
  })
  const { starts, short, objective, dual } = await solved(
    apple([
      pool({
        mothers: [mother('first', 20), mother('second', 100)],
        perYear: [{ fromWeek: 0, toWeek: 29, most: 120 }],
      }),
    ]),
  )
  // Weeks 5 and 6: 20 from the first in all, 20 from the second in each: 60 sticks, 300 plants, 240 trees; 160 short at 15.
  expect(starts.reduce((sum, { number }) => sum + number, 0)).toBeCloseTo(300, 4)
  expect(short[0]).toBeCloseTo(160, 4)
  expect(objective).toBeCloseTo(300 * 1 + 160 * 15, 3)
  // The first is bound by her year alone, the second by each of her weeks: a stick more makes 4 trees at 15, less 5 plants.
  expect(dual('motherYear/Anna, scion sticks (1)/0')).toBeCloseTo(-55, 5)
  expect(dual('motherWeek/Anna, scion sticks (2)/5')).toBeCloseTo(-55, 5)
})

test('air layers: no more branches are ringed than the tree may give, and one more is worth its tree', async () => {
  // Each layer is a branch of its own; 9 of 10 root. The tree gives 30 branches a year, 12 a week.
  const branches = pool({
    material: 'branches',
    name: 'Kohala, branches',
    perWeek: everyWeek(30, 12),
    perYear: [{ fromWeek: 0, toWeek: 29, most: 30 }],
  })
  const layered = tinySeason({
    weeks: 30,
    kinds: [tinyKind('litchi, layered')],
    ways: [
      {
        kind: 0,
        steps: [{ ...certain(0.9), days: 70 }],
        openWeeks: [3, 4, 5],
        costPerPlant: 2,
        course: { material: [{ pool: 0, offset: 0, perPlant: 1 }] },
      },
    ],
    orders: [{ kind: 0, number: 40, dueWeek: 20, price: 20 }],
    pools: [branches],
  })
  const { starts, short, objective, dual } = await solved(layered)
  // 30 layers in all, no more than 12 in one week: 27 trees of 40, 13 short at 1.5 · 20.
  expect(starts.every(({ number }) => number <= 12 + 1e-6)).toBe(true)
  expect(starts.reduce((sum, { number }) => sum + number, 0)).toBeCloseTo(30, 6)
  expect(short[0]).toBeCloseTo(13, 6)
  expect(objective).toBeCloseTo(30 * 2 + 13 * 30, 4)
  // A branch more: 0.9 of a tree at 30, less the layer at 2.
  expect(dual('motherYear/Kohala, branches/0')).toBeCloseTo(-25, 6)
})

test('fresh seed keeps for two weeks: what falls in week 8 is sown by week 10, and of later sowings there are none', async () => {
  const fresh = (sowing: number[]) =>
    tinySeason({
      weeks: 30,
      kinds: [tinyKind('mango seedling')],
      ways: [
        {
          kind: 0,
          steps: [{ ...certain(0.5), days: 70 }],
          openWeeks: sowing,
          course: { material: [{ pool: 0, offset: 0, perPlant: 1 }] },
        },
      ],
      orders: [{ kind: 0, number: 40, dueWeek: 25, price: 20 }],
      pools: [
        pool({
          material: 'seed',
          name: 'Mango, seed',
          perWeek: everyWeek(30, week => (week === 8 ? 60 : 0)),
          keepsWeeks: 2,
        }),
      ],
    })
  // 60 seeds make 30 trees, ten are short at 1.5 · 20; a seed more is half a tree at 30, less its sowing at 1.
  const inTime = await solved(fresh([10]))
  expect(inTime.short[0]).toBeCloseTo(10, 6)
  expect(inTime.objective).toBeCloseTo(60 + 10 * 30, 4)
  expect(inTime.dual('motherWeek/Mango, seed/8')).toBeCloseTo(-14, 6)
  expect((await solved(fresh([11]))).short[0]).toBeCloseTo(40, 6)
})

test('wood that keeps may be cut before it is used, but not longer before than it keeps', async () => {
  const cutInTwoAndThree = everyWeek(30, week => (week === 2 || week === 3 ? 50 : 0))
  const shortOf = async (keepsWeeks: number) =>
    (await solved(apple([pool({ perWeek: cutInTwoAndThree, keepsWeeks })], [5]))).short[0]
  expect(await shortOf(1)).toBeCloseTo(400, 4)
  // Two weeks: only what was cut in week 3 is fresh in week 5. Three weeks: both.
  expect(await shortOf(2)).toBeCloseTo(200, 4)
  expect(await shortOf(3)).toBeCloseTo(0, 4)
})

test('a mother that gives in winter cannot stand in for one that gives in summer', async () => {
  const mother = (id: string, weeks: number[], perYear: number) => ({
    id: MotherId.parse(id),
    perWeek: everyWeek(30, week => (weeks.includes(week) ? perYear : 0)),
    perYear: [perYear],
  })
  const mothers = [mother('early', [5], 30), mother('late', [20], 1000)]
  const perWeek = everyWeek(30, week => mothers.reduce((sum, m) => sum + m.perWeek[week]!, 0))
  const { short } = await solved(
    apple([pool({ mothers, perWeek, perYear: [{ fromWeek: 0, toWeek: 29, most: 1030 }] })], [5]),
  )
  // 30 sticks make 150 plants, 120 trees of 400.
  expect(short[0]).toBeCloseTo(280, 4)
})

test('collected wood is used while it is good, and no longer', async () => {
  const none = everyWeek(30, 0)
  const shortOf = async (untilWeek: number) =>
    (await solved(apple([pool({ perWeek: none, stored: [{ number: 50, untilWeek }] })], [5]))).short[0]
  expect(await shortOf(5)).toBeCloseTo(200, 4)
  expect(await shortOf(4)).toBeCloseTo(400, 4)
})

test('a young mother gives nothing in her first year, then more each year', () => {
  const byAge = [0, 10, 40]
  expect(givesInSeason(byAge, 30, 20)).toBe(0)
  expect(givesInSeason(byAge, 0, 51)).toBe(0)
  expect(givesInSeason(byAge, 0, 60)).toBe(10)
  expect(givesInSeason(byAge, 0, 110)).toBe(40)
  expect(givesInSeason(byAge, 0, 210)).toBe(40)
})

/** An order of 400 new apples due in week 150, worked in week 140 only; the mothers that stand give 20 sticks a year. */
const buildingUp = (groundForMothers?: number) => {
  const weeks = 170
  const wood = everyWeek(weeks, 1000)
  return tinySeason({
    weeks,
    kinds: [tinyKind('new apple')],
    ways: [
      {
        kind: 0,
        steps: [{ ...certain(0.8), days: 14 }],
        openWeeks: [140],
        course: { material: [{ pool: 0, offset: 0, perPlant: 0.2 }] },
      },
    ],
    orders: [{ kind: 0, number: 400, dueWeek: 150, price: 10 }],
    ...(groundForMothers === undefined ? {} : { more: { groundForMothers } }),
    pools: [
      pool({
        perWeek: wood,
        perYear: [0, 52, 104, 156].map(fromWeek => ({ fromWeek, toWeek: fromWeek + 51, most: 20 })),
        young: { costEach: 25, perSeasonByAge: [0, 16, 40] },
      }),
    ],
  })
}

test('building up: mothers are planted two years before a large order, as many as its wood asks, and no more', async () => {
  const { planted, starts, objective } = await solved(buildingUp())
  // 400 trees ← 500 plants ← 100 sticks; 20 stand; 80 more are those of two mothers in their third year.
  expect(planted.reduce((sum, { number }) => sum + number, 0)).toBeCloseTo(2, 6)
  // The season in which they are cut begins in week 104: planted by week 0 they are two years old.
  expect(planted.every(({ week }) => week === 0)).toBe(true)
  expect(starts[0]!.number).toBeCloseTo(500, 4)
  expect(objective).toBeCloseTo(500 + 2 * 25, 4)
})

test('building up needs ground: with room for one mother the order is short by what the other would give, and that is its worth', async () => {
  const { planted, short, dual } = await solved(buildingUp(1))
  // 20 + 40 sticks make 300 plants, 240 trees of 400.
  expect(planted.reduce((sum, { number }) => sum + number, 0)).toBeCloseTo(1, 6)
  expect(short[0]).toBeCloseTo(160, 4)
  // One more tree: 40 sticks, 200 plants at 1, 160 trees at 15 not lost, less the 25 that it costs.
  expect(dual('motherGround/mother block')).toBeCloseTo(-(160 * 15 - 200 - 25), 4)
})
