import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { certain, type TinySeason, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { mergePartials } from './merge-partials.ts'
import { orderOutcomes, simulatedLoads } from './outcome.ts'
import type { WeekCount } from './run-unit.ts'
import { nothingKept, simulateLoads, simulateSeasons } from './simulate-seasons.ts'

describe('rootstocks', () => {
  const worked = (minMm: number, maxMm: number, stocks: number, graftWeek: number) => {
    const caliper = { meanMmWhenReady: 8, mmPerWeek: 0.1, spreadShare: 0.125 }
    const season = tinySeason({
      kinds: [tinyKind('seedling rootstock', { isRootstock: true, usableWeeks: 40 }), tinyKind('worked fig')],
      ways: [
        { kind: 0, steps: [{ ...certain(1), days: 14 }], course: { caliper } },
        {
          kind: 1,
          steps: [{ ...certain(1), days: 28 }],
          course: { rootstock: { kinds: [0], offset: 0, perPlant: 1, minMm, maxMm } },
        },
      ],
      orders: [{ kind: 1, number: 100, dueWeek: 40 }],
    })
    const starts = [
      { way: 0, week: 1, number: stocks },
      { way: 1, week: graftWeek, number: 100 },
    ]
    return orderOutcomes(season, simulateSeasons(season, starts, { from: 0, to: 4, seed: 1 }))[0]!.meanByDue
  }

  test('grafts are cut down to the rootstocks that are there', () => {
    expect(worked(1, 100, 60, 10)).toBe(60)
    expect(worked(1, 100, 160, 10)).toBe(100)
    // Worked before the rootstocks are ready, in week 3 (1 + (3.5 + 14) ÷ 7), there are none.
    expect(worked(1, 100, 160, 2)).toBe(0)
  })

  test('only stems inside the workable caliper can be worked, and they grow out of it', () => {
    // Mean 8 mm, sd 1 mm when ready in week 3. Week 3: 7 to 9 mm is one sd to either side, 68.3 %.
    expect(worked(7, 9, 100, 3)).toBe(68)
    // Twenty weeks later the mean is 10 mm: 7 to 9 mm is three to one sd below it, 15.7 %.
    expect(worked(7, 9, 100, 23)).toBe(16)
  })
})

describe('deliveries', () => {
  const ready = (number: number, week: number) => ({ way: 0, week: week - 1, number })
  const season = (orders: TinySeason['orders'], usableWeeks = 100) =>
    tinySeason({
      kinds: [tinyKind('fig', { usableWeeks }), tinyKind('guava')],
      ways: [0, 1].map(kind => ({ kind, steps: [{ ...certain(1), days: 7 }] })),
      orders: orders!,
    })
  const run = (orders: TinySeason['orders'], starts: Parameters<typeof ready>[], usableWeeks?: number) => {
    const all = season(orders, usableWeeks)
    const plan = starts.map(([number, week]) => ready(number, week))
    return simulateSeasons(all, plan, { from: 0, to: 1, seed: 1 })
  }

  test('the order that is due first is served first, also where a later one could have been served before', () => {
    const got = run(
      [
        { kind: 0, number: 60, dueWeek: 30, earliestWeek: 0 },
        { kind: 0, number: 60, dueWeek: 20, earliestWeek: 18 },
      ],
      [
        [70, 10],
        [50, 25],
      ],
    )
    expect([...got.weeksLate]).toEqual([0, 0])
  })

  test('what comes late is delivered late until the latest week, and then no more', () => {
    const got = run([{ kind: 0, number: 50, dueWeek: 20, latestWeek: 24 }], [[50, 23]])
    expect([...got.weeksLate]).toEqual([3])
    expect([...got.late]).toEqual([50])
    const tooLate = run([{ kind: 0, number: 50, dueWeek: 20, latestWeek: 24 }], [[50, 25]])
    expect([...tooLate.weeksLate]).toEqual([255])
    expect([...tooLate.late]).toEqual([0])
  })

  test('trees past use do not count, but go out in their last week to an order that takes them early', () => {
    expect([...run([{ kind: 0, number: 50, dueWeek: 20, earliestWeek: 19 }], [[50, 10]], 8).byDue]).toEqual([
      0,
    ])
    expect([...run([{ kind: 0, number: 50, dueWeek: 20, earliestWeek: 15 }], [[50, 10]], 8).byDue]).toEqual([
      50,
    ])
  })

  test('another kind fills the order where it is accepted', () => {
    const kinds = [
      { kind: 0, lessWorth: 0 },
      { kind: 1, lessWorth: 2 },
    ]
    const all = season([{ kind: 0, kinds, number: 50, dueWeek: 20 }])
    const starts = [
      { way: 0, week: 3, number: 30 },
      { way: 1, week: 3, number: 30 },
    ]
    const got = simulateSeasons(all, starts, { from: 0, to: 1, seed: 1 })
    expect([...got.weeksLate]).toEqual([0])
    expect([...got.byDue]).toEqual([60])
  })
})

describe('what can be promised more', () => {
  test('is what is on hand and not needed later, outgrown trees not counted as needed', () => {
    const season = tinySeason({
      weeks: 40,
      kinds: [tinyKind('fig', { usableWeeks: 10 })],
      ways: [{ kind: 0, steps: [{ ...certain(1), days: 7 }] }],
      orders: [{ kind: 0, number: 30, dueWeek: 20, earliestWeek: 20 }],
    })
    const starts = [
      { way: 0, week: 4, number: 100 },
      { way: 0, week: 14, number: 40 },
    ]
    const { promisable } = simulateSeasons(season, starts, { from: 0, to: 1, seed: 1, watch: [0] })
    // Ready: 100 in week 5, outgrown after week 15; 40 in week 15, of which the order takes 30 in week 20.
    expect(promisable[4]).toBe(0)
    expect(promisable[5]).toBe(100)
    expect(promisable[15]).toBe(110)
    expect(promisable[16]).toBe(10)
    expect(promisable[25]).toBe(10)
    expect(promisable[26]).toBe(0)
  })
})

/** A small nursery with rootstocks, grafts, own-rooted plants, ageing, a living batch and several orders. */
const nursery = (wanted = 60) =>
  tinySeason({
    weeks: 80,
    kinds: [
      tinyKind('rootstock', { isRootstock: true, usableWeeks: 12 }),
      tinyKind('worked fig', { usableWeeks: 6 }),
      tinyKind('own-rooted fig', { usableWeeks: 9, standsAt: { place: 0, squareMetres: 0.02 } }),
    ],
    ways: [
      {
        kind: 0,
        steps: [{ alpha: 12, beta: 4, days: 60, sdLogDays: 0.1, plantSdLogDays: 0.15 }],
        course: { caliper: { meanMmWhenReady: 8, mmPerWeek: 0.1, spreadShare: 0.2 } },
      },
      {
        kind: 1,
        steps: [
          {
            alpha: 9,
            beta: 3,
            days: 30,
            sdLogDays: 0.1,
            plantSdLogDays: 0.1,
            yearShare: 0.3,
            place: 0,
            squareMetres: 0.01,
          },
          { alpha: 30, beta: 3, days: 60, sdLogDays: 0.1, plantSdLogDays: 0.1, yearShare: 0.3 },
        ],
        course: { rootstock: { kinds: [0], offset: 0, perPlant: 1, minMm: 6, maxMm: 10 } },
      },
      {
        kind: 2,
        steps: [
          {
            alpha: 5,
            beta: 5,
            days: 50,
            sdLogDays: 0.2,
            plantSdLogDays: 0.1,
            yearShare: 0.3,
            place: 0,
            squareMetres: 0.01,
          },
        ],
      },
    ],
    orders: [
      {
        kind: 1,
        number: wanted,
        dueWeek: 34,
        kinds: [
          { kind: 1, lessWorth: 0 },
          { kind: 2, lessWorth: 1 },
        ],
      },
      { kind: 1, number: wanted, dueWeek: 38 },
      { kind: 2, number: wanted, dueWeek: 36 },
    ],
    places: [
      {
        place: 'mist bed',
        benches: [],
        squareMetres: new Float64Array(80).fill(100),
        extraPricePerSquareMetreWeek: null,
        pricePerSquareMetreWeek: 0,
      },
    ],
  })
const plan = [
  { way: 0, week: 2, number: 300 },
  { way: 1, week: 14, number: 120 },
  { way: 1, week: 18, number: 110 },
  { way: 2, week: 22, number: 260 },
]

describe('the whole', () => {
  test('every week of every line closes: before + ready = used + delivered + outgrown + after', () => {
    const counts: WeekCount[] = []
    simulateSeasons(nursery(), plan, { from: 0, to: 30, seed: 3, ledger: week => counts.push(week) })
    expect(counts.length).toBe(30 * 80 * 3)
    for (const { before, ready, used, delivered, outgrown, after } of counts)
      expect(before + ready).toBe(used + delivered + outgrown + after)
    const sum = (of: (count: WeekCount) => number) => counts.reduce((total, count) => total + of(count), 0)
    expect(sum(c => c.used)).toBeGreaterThan(0)
    expect(sum(c => c.outgrown)).toBeGreaterThan(0)
    expect(sum(c => c.delivered)).toBeGreaterThan(0)
    // What one week leaves is what the next one finds.
    const nameOf = (line: number, season: number, week: number) => `${line} ${season} ${week}`
    const after = new Map(counts.map(count => [nameOf(count.line, count.season, count.week), count.after]))
    for (const { line, season, week, before } of counts)
      if (week > 0) expect(after.get(nameOf(line, season, week - 1))).toBe(before)
  })

  test('what an order had by its due week, up to its number, and what came late are all that left the stock for it', () => {
    const asked = nursery()
    // Weeks sooner, and some weeks longer waited for.
    const sooner = asked.orders.map(order => ({
      ...order,
      dueWeek: order.dueWeek - 8,
      latestWeek: order.dueWeek + 8,
    }))
    const season = { ...asked, orders: sooner }
    const left = new Float64Array(200)
    const { byDue, late, orders } = simulateSeasons(season, plan, {
      from: 0,
      to: 200,
      seed: 7,
      ledger: ({ season: row, delivered }) => {
        left[row]! += delivered
      },
    })
    const got = Float64Array.from(left, (_, row) =>
      season.orders.reduce(
        (sum, { number }, o) => sum + Math.min(number, byDue[o * 200 + row]! + late[o * 200 + row]!),
        0,
      ),
    )
    expect(orders).toBeGreaterThan(1)
    expect(late.some(number => number > 0)).toBe(true)
    expect([...got]).toEqual([...left])
  })

  test('the same seed gives the same seasons, however they are shared out', () => {
    const season = nursery()
    const part = (from: number, to: number) =>
      simulateSeasons(season, plan, { from, to, seed: 11, watch: [1, 2] })
    const whole = part(0, 60)
    for (const cuts of [
      [0, 60],
      [0, 1, 60],
      [0, 7, 8, 31, 60],
    ]) {
      const parts = cuts.slice(1).map((to, i) => part(cuts[i]!, to))
      expect(mergePartials(parts.reverse())).toEqual(whole)
    }
    expect(simulateSeasons(season, plan, { from: 0, to: 60, seed: 12 }).byDue).not.toEqual(whole.byDue)
  })

  test('parts that do not join are refused', () => {
    const part = (from: number, to: number) => simulateSeasons(nursery(), plan, { from, to, seed: 1 })
    expect(() => mergePartials([part(0, 2), part(3, 4)])).toThrow('mergePartials: partials must join')
  })

  test('what is in time stays in time, season by season, where more is started that takes no rootstocks from a later graft', () => {
    const season = nursery()
    const weeksLate = (starts: typeof plan) =>
      simulateSeasons(season, starts, { from: 0, to: 60, seed: 4 }).weeksLate
    const before = weeksLate(plan)
    // The first graft of the two would leave the second one fewer.
    fc.assert(
      fc.property(fc.constantFrom(0, 2, 3), fc.integer({ min: 1, max: 200 }), (which, more) => {
        const after = weeksLate(
          plan.map((start, i) => (i === which ? { ...start, number: start.number + more } : start)),
        )
        expect(before.findIndex((late, at) => late === 0 && after[at] !== 0)).toBe(-1)
      }),
      { numRuns: 25 },
    )
    expect(before).toContain(0)
  })

  test('what is ready on average is what the reading expects of the course', () => {
    const season = tinySeason({
      kinds: [tinyKind('fig')],
      ways: [
        {
          kind: 0,
          steps: [
            { alpha: 9, beta: 3, days: 40, sdLogDays: 0.15, plantSdLogDays: 0.1, yearShare: 0.3 },
            { alpha: 20, beta: 5, days: 100, sdLogDays: 0.1, plantSdLogDays: 0.12, yearShare: 0.3 },
          ],
        },
      ],
      orders: Array.from({ length: 60 }, (_, w) => ({ kind: 0, number: 0, dueWeek: w })),
    })
    const seasons = 6000
    const simulated = simulateSeasons(season, [{ way: 0, week: 3, number: 1000 }], {
      from: 0,
      to: seasons,
      seed: 2,
    })
    const { ready } = season.ways[0]!.courses[0]!
    let expected = 0
    orderOutcomes(season, simulated).forEach(({ meanByDue, sdByDue }, week) => {
      expected += 1000 * (ready[week - 3] ?? 0)
      expect(Math.abs(meanByDue - expected)).toBeLessThan((4 * sdByDue) / Math.sqrt(seasons) + 1.5)
    })
  })

  test('area in use is what stands in the step, and what is finished and kept', () => {
    const season = nursery(0)
    const { squareMetres } = simulatedLoads(
      season,
      simulateLoads(
        season,
        [{ way: 2, week: 10, number: 100 }],
        { from: 0, to: 800, seed: 2 },
        nothingKept(2),
      ),
    )
    const { expected, badYear } = squareMetres[0]!
    // Begun mid-week on 0.01 m² each: half a m²·week in week 10, one in week 11; nothing before.
    expect(expected[9]).toBe(0)
    expect(expected[10]).toBeCloseTo(0.5, 6)
    expect(expected[11]).toBeCloseTo(1, 6)
    // Week 22: about half of a hundred stand finished on 0.02 m² each.
    expect(expected[22]).toBeGreaterThan(0.8)
    expect(expected[22]).toBeLessThan(1.1)
    expect(badYear[22]!).toBeGreaterThan(expected[22]!)
  })
})
