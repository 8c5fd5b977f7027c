import { expect, test } from 'vitest'
import { normalCdf } from '../../science/index.ts'
import { solved } from '../fixtures/solved.ts'
import { certain, finishedBatch, tinyCourse, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import type { Course } from '../season.ts'
import { workableByAge } from './rootstocks-in-time.ts'

const takes = (kinds: number[], minMm = 6, maxMm = 10): Partial<Course> => ({
  rootstock: { kinds, offset: 0, perPlant: 1, minMm, maxMm },
})
const noSpread = { meanMmWhenReady: 6, mmPerWeek: 0.5, spreadShare: 0 }

/** Seedling rootstocks sown in week `sown`, ready 7 weeks later; grafted in week `grafted`, ready 4 weeks later. */
const grafted = (sown: number[], graft: number[], caliper: Course['caliper'], usableWeeks = 1000) =>
  tinySeason({
    weeks: 40,
    kinds: [tinyKind('mango on seedling'), tinyKind('mango seedling', { isRootstock: true, usableWeeks })],
    ways: [
      {
        kind: 0,
        steps: [{ ...certain(0.5), days: 28 }],
        openWeeks: graft,
        costPerPlant: 2,
        course: takes([1]),
      },
      { kind: 1, steps: [{ ...certain(0.8), days: 49 }], openWeeks: sown, course: { caliper } },
    ],
    orders: [{ kind: 0, number: 100, dueWeek: 30, price: 40 }],
  })

test('rootstocks are sown in time and in number for the grafts that need them', async () => {
  const { starts, objective, dual } = await solved(grafted([3], [10], null))
  // 100 trees ← 200 grafts at 2 ← 250 seeds at 1.
  expect(starts).toMatchObject([
    { way: 0, week: 10 },
    { way: 1, week: 3 },
  ])
  expect(starts.map(({ number }) => Math.round(number * 1000) / 1000)).toEqual([200, 250])
  expect(objective).toBeCloseTo(650, 4)
  // One more tree: two grafts and two and a half seeds.
  expect(dual('ordersByTheirDate/order-0')).toBeCloseTo(6.5, 6)
})

test('a rootstock too thick for the cut is of no use: ready at 6 mm, growing half a millimetre a week, it serves 8 weeks', async () => {
  // Ready in week 10 at 6 mm: 10 mm in week 18, 10.5 mm in week 19.
  const at18 = await solved(grafted([3], [18], noSpread))
  expect(at18.short[0]).toBeCloseTo(0, 4)
  expect((await solved(grafted([3], [19], noSpread))).short[0]).toBeCloseTo(100, 4)
})

test('a rootstock too old for use is of no use, whatever its caliper', async () => {
  expect((await solved(grafted([3], [15], null, 5))).short[0]).toBeCloseTo(0, 4)
  expect((await solved(grafted([3], [16], null, 5))).short[0]).toBeCloseTo(100, 4)
})

test('stocks on hand that age out: those still fit are worked, the rest of the order is short, and one stem more is worth half a tree', async () => {
  // 120 stems on hand, usable for 5 weeks of which one is gone: grafts in week 4 still find them, in week 5 no more.
  const only = (graft: number) => ({
    ...grafted([], [graft], null, 5),
    batches: [finishedBatch(120, 1, { kind: 1, course: tinyCourse([]) })],
  })
  const fit = await solved(only(4))
  // 120 grafts at 2 make 60 trees; 40 are short at 1.5 · 40.
  expect(fit.starts).toMatchObject([{ way: 0, week: 4 }])
  expect(fit.short[0]).toBeCloseTo(40, 4)
  expect(fit.objective).toBeCloseTo(120 * 2 + 40 * 60, 3)
  expect(fit.dual('ordersByTheirDate/order-0')).toBeCloseTo(60, 6)
  // One stem more: half a tree at 60, less a graft at 2.
  const stems = fit.duals.filter(({ rule }) => rule === 'stockOfFinished' || rule === 'rootstocksInTime')
  expect(stems.map(({ dual }) => Math.abs(dual))).toContainEqual(expect.closeTo(28, 6))
  const aged = await solved(only(5))
  expect(aged.starts).toEqual([])
  expect(aged.objective).toBeCloseTo(100 * 60, 3)
  expect(aged.dual('ordersByTheirDate/order-0')).toBeCloseTo(60, 6)
})

test('only the share of stems inside the window counts, so more are sown', async () => {
  // Mean 8 mm, sd 1 mm, not growing: between 6 and 10 mm lie 95.45 % of the stems.
  const caliper = { meanMmWhenReady: 8, mmPerWeek: 0, spreadShare: 1 / 8 }
  const { starts } = await solved(grafted([3], [12], caliper))
  const inside = normalCdf(2) - normalCdf(-2)
  expect(starts[1]!.number).toBeCloseTo(250 / inside, 2)
})

test('stems enter the window as they thicken and leave it later', () => {
  const { enters, leaves } = workableByAge({ meanMmWhenReady: 6, mmPerWeek: 1, spreadShare: 1 / 6 }, 7, 9)
  // sd 1 mm: week 0 P(z ≥ 1) (over 9 mm are fewer than half a per cent, counted as none); week 1 P(0 ≤ z < 1).
  expect(enters[0]).toBeCloseTo(0.15866, 4)
  expect(enters[1]).toBeCloseTo(0.34134, 4)
  // Thicker than 9 mm: week 1 P(z > 2), week 2 P(z > 1), week 3 P(z > 0).
  expect(leaves[1]).toBeCloseTo(0.02275, 4)
  expect(leaves[2]).toBeCloseTo(0.13591, 4)
  expect(leaves[3]).toBeCloseTo(0.34134, 4)
  expect(enters.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 6)
})

test('stems that are too thick from the first are never workable', () => {
  const { enters, leaves } = workableByAge({ meanMmWhenReady: 8, mmPerWeek: 0, spreadShare: 1 / 8 }, 7, 9)
  expect([...enters]).toHaveLength(1)
  expect(enters[0]).toBeCloseTo(0.68269, 4)
  expect(leaves[0]).toBe(0)
})

test('a graft takes either of two rootstocks, the cheaper one first', async () => {
  const season = tinySeason({
    weeks: 40,
    kinds: [
      tinyKind('pear'),
      tinyKind('quince', { isRootstock: true }),
      tinyKind('seedling', { isRootstock: true }),
    ],
    ways: [
      {
        kind: 0,
        steps: [{ ...certain(1), days: 28 }],
        openWeeks: [10],
        costPerPlant: 2,
        course: takes([1, 2]),
      },
      { kind: 2, steps: [{ ...certain(1), days: 28 }], openWeeks: [3], costPerPlant: 3 },
    ],
    orders: [{ kind: 0, number: 100, dueWeek: 30, price: 40 }],
    batches: [finishedBatch(60, 0, { kind: 1, course: tinyCourse([]) })],
  })
  const { rootstockUses, objective } = await solved(season)
  expect(rootstockUses.map(({ kind, number }) => [kind, Math.round(number)])).toEqual([
    [1, 60],
    [2, 40],
  ])
  expect(objective).toBeCloseTo(100 * 2 + 40 * 3, 4)
})

test('two cuts with windows of their own share the stems of one kind', async () => {
  // 100 stems of 8 mm: both cuts could take each of them, but no stem is worked twice.
  const season = tinySeason({
    weeks: 40,
    kinds: [tinyKind('a'), tinyKind('b'), tinyKind('seedling', { isRootstock: true })],
    ways: [
      { kind: 0, steps: [{ ...certain(1), days: 28 }], openWeeks: [10], course: takes([2], 6, 9) },
      { kind: 1, steps: [{ ...certain(1), days: 28 }], openWeeks: [10], course: takes([2], 7, 12) },
    ],
    orders: [
      { kind: 0, number: 80, dueWeek: 30, price: 40 },
      { kind: 1, number: 80, dueWeek: 30, price: 40 },
    ],
    batches: [
      finishedBatch(100, 0, {
        kind: 2,
        course: tinyCourse([], { caliper: { meanMmWhenReady: 8, mmPerWeek: 0, spreadShare: 0 } }),
      }),
    ],
  })
  const { short } = await solved(season)
  expect(short[0]! + short[1]!).toBeCloseTo(60, 4)
})

test('three storeys: an interstem is worked on a seedling before it is worked itself', async () => {
  const season = tinySeason({
    weeks: 60,
    kinds: [
      tinyKind('tree'),
      tinyKind('interstem', { isRootstock: true }),
      tinyKind('seedling', { isRootstock: true }),
    ],
    ways: [
      { kind: 0, steps: [{ ...certain(0.5), days: 28 }], openWeeks: [40], course: takes([1]) },
      { kind: 1, steps: [{ ...certain(0.5), days: 28 }], openWeeks: [25], course: takes([2]) },
      { kind: 2, steps: [{ ...certain(0.5), days: 28 }], openWeeks: [10] },
    ],
    orders: [{ kind: 0, number: 10, dueWeek: 50, price: 40 }],
  })
  const { starts } = await solved(season)
  expect(starts.map(({ way, number }) => [way, Math.round(number)])).toEqual([
    [0, 20],
    [1, 40],
    [2, 80],
  ])
})

test('stems stand still in winter: of 8 weeks of growth two are before it and six after', async () => {
  // Ready in week 10 at 6 mm, half a millimetre a week, fit for the cut to 10 mm: 8 weeks of growth. Weeks 12 to 19 are
  // still, so they are 10 mm in week 26 and too thick in week 27.
  const still = (graft: number) => ({
    ...grafted([3], [graft], noSpread),
    growing: Uint8Array.from({ length: 40 }, (_, week) => (week >= 12 && week <= 19 ? 0 : 1)),
  })
  expect((await solved(still(26))).short[0]).toBeCloseTo(0, 4)
  expect((await solved(still(27))).short[0]).toBeCloseTo(100, 4)
})

test('a batch that lives and is ready later is worked then; beyond it seed is sown, and one stem more saves a seed', async () => {
  // 60 stems are ready in week 6, when they can be cut until week 14; worked in week 12. 100 trees ← 200 grafts: 140 stems
  // of own seed, 175 seeds at 1.
  const season = grafted([3], [12], noSpread)
  const ready = new Float64Array(40)
  ready[6] = 60
  const living = finishedBatch(60, 0, {
    kind: 1,
    ready,
    portions: [{ number: 60, step: 0, daysIn: 0, alpha: 1e9, beta: 1 }],
    course: tinyCourse([{ ...certain(1), days: 42 }], { caliper: noSpread }),
  })
  const { starts, objective, dual } = await solved({ ...season, batches: [living] })
  expect(starts.find(({ way }) => way === 1)!.number).toBeCloseTo(175, 3)
  expect(objective).toBeCloseTo(200 * 2 + 175, 3)
  expect(dual('ordersByTheirDate/order-0')).toBeCloseTo(6.5, 6)
  // Ready in week 6 and worked in week 16: grown too thick by then, so all are raised anew.
  const late = await solved({ ...grafted([3], [16], noSpread), batches: [living] })
  expect(late.starts.find(({ way }) => way === 1)!.number).toBeCloseTo(250, 3)
})
