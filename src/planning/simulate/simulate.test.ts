import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { betaCdf, chanceOfAtLeast, normalCdf } from '../../science/index.ts'
import { BatchId } from '../../trade/index.ts'
import { certain, type TinySeason, tinyCourse, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import type { LiveBatch } from '../season.ts'
import { mergePartials } from './merge-partials.ts'
import { orderOutcomes, simulatedLoads } from './outcome.ts'
import { simulateSeasons, type WeekCount } from './simulate-seasons.ts'

/** Four standard errors of a chance counted in so many seasons: a false alarm once in 16,000 runs. */
const fourErrors = (chance: number, seasons: number) => 4 * Math.sqrt((chance * (1 - chance)) / seasons)

const oneOrder = (more: Partial<TinySeason> & Pick<TinySeason, 'ways'>, number: number, dueWeek: number) =>
  tinySeason({ kinds: [tinyKind('fig')], orders: [{ kind: 0, number, dueWeek }], ...more })

describe('chances against closed forms', () => {
  test('one start, one step: the chance of the order is the beta-binomial one', () => {
    const seasons = 20_000
    for (const [alpha, beta, begun, wanted] of [
      [12, 8, 200, 100],
      [3, 2, 40, 20],
      [60, 10, 120, 95],
    ] as const) {
      const season = oneOrder({ ways: [{ kind: 0, steps: [{ alpha, beta, days: 28 }] }] }, wanted, 10)
      const got = orderOutcomes(
        season,
        simulateSeasons(season, [{ way: 0, week: 2, number: begun }], { from: 0, to: seasons, seed: 5 }),
      )[0]!
      const exact = chanceOfAtLeast({ wanted, start: begun, steps: [{ kind: 'uncertain', alpha, beta }] })
      expect(Math.abs(got.chance - exact)).toBeLessThan(fourErrors(exact, seasons))
      expect(got.chanceLow).toBeLessThanOrEqual(got.chance)
      expect(got.chanceHigh).toBeGreaterThanOrEqual(got.chance)
    }
  })

  test('a chain of four steps: the chance is that of the product of four Betas', () => {
    const seasons = 20_000
    const shares = [
      [9, 3],
      [20, 5],
      [30, 2],
      [8, 1],
    ] as const
    const season = oneOrder(
      {
        ways: [
          { kind: 0, steps: shares.map(([alpha, beta]) => ({ alpha, beta, days: 14, yearShare: 0.4 })) },
        ],
      },
      100,
      20,
    )
    const got = orderOutcomes(
      season,
      simulateSeasons(season, [{ way: 0, week: 2, number: 250 }], { from: 0, to: seasons, seed: 6 }),
    )[0]!
    const steps = shares.map(([alpha, beta]) => ({ kind: 'uncertain', alpha, beta }) as const)
    const exact = chanceOfAtLeast({ wanted: 100, start: 250, steps })
    expect(Math.abs(got.chance - exact)).toBeLessThan(fourErrors(exact, seasons))
    const mean = 250 * shares.reduce((product, [alpha, beta]) => (product * alpha) / (alpha + beta), 1)
    expect(Math.abs(got.meanByDue - mean)).toBeLessThan((4 * got.sdByDue) / Math.sqrt(seasons) + 0.1)
  })

  test('days: the chance to be ready by a week is the log-normal one, of the batch and of its plants', () => {
    const seasons = 8000
    const sd = 0.12
    for (const [sdLogDays, plantSdLogDays] of [
      [sd, 0],
      [sd / Math.SQRT2, sd / Math.SQRT2],
    ] as const)
      for (const dueWeek of [24, 26, 29]) {
        const season = oneOrder(
          { ways: [{ kind: 0, steps: [{ ...certain(1), days: 180, sdLogDays, plantSdLogDays }] }] },
          100,
          dueWeek,
        )
        const got = orderOutcomes(
          season,
          simulateSeasons(season, [{ way: 0, week: 0, number: 100 }], { from: 0, to: seasons, seed: 7 }),
        )[0]!
        const ready = normalCdf(Math.log((7 * (dueWeek + 1) - 3.5) / 180) / sd)
        expect(Math.abs(got.meanByDue / 100 - ready)).toBeLessThan(
          4 * (got.sdByDue / 100 / Math.sqrt(seasons)) + 0.002,
        )
      }
  })

  test('good and bad years: what two batches of one year share is the year’s part of the variance', () => {
    const seasons = 6000
    for (const yearShare of [0, 0.5, 1]) {
      const season = tinySeason({
        kinds: [tinyKind('fig'), tinyKind('guava')],
        ways: [0, 1].map(kind => ({ kind, steps: [{ alpha: 30, beta: 20, days: 7, yearShare }] })),
        orders: [0, 1].map(kind => ({ kind, number: 1, dueWeek: 20 })),
      })
      const starts = [0, 1].map(way => ({ way, week: 3, number: 100_000 }))
      const { byDue } = simulateSeasons(season, starts, { from: 0, to: seasons, seed: 8 })
      const pairs = Array.from({ length: seasons }, (_, s) => [byDue[2 * s]!, byDue[2 * s + 1]!] as const)
      const mean = (of: (pair: readonly [number, number]) => number) =>
        pairs.reduce((sum, pair) => sum + of(pair), 0) / seasons
      const [a, b] = [mean(p => p[0]), mean(p => p[1])]
      const covariance = mean(p => (p[0] - a) * (p[1] - b))
      const correlation = covariance / Math.sqrt(mean(p => (p[0] - a) ** 2) * mean(p => (p[1] - b) ** 2))
      expect(Math.abs(correlation - yearShare)).toBeLessThan(0.05)
    }
  })

  test('a living batch: the chance is that of those standing, and what is left of its step', () => {
    const seasons = 10_000
    const course = tinyCourse([{ alpha: 12, beta: 8, days: 28, sdLogDays: 0.2, plantSdLogDays: 0.2 }])
    const batch: LiveBatch = {
      id: BatchId.parse('b1'),
      name: 'b1',
      kind: 0,
      yearGroup: 0,
      onHold: false,
      finishedWeeksAgo: 0,
      portions: [{ number: 80, step: 0, daysIn: 20, alpha: 40, beta: 10 }],
      course,
      ready: new Float64Array(104),
      area: [],
      labour: [],
    }
    const season = tinySeason({
      kinds: [tinyKind('fig')],
      batches: [batch],
      orders: [{ kind: 0, number: 62, dueWeek: 40 }],
    })
    const input = { from: 0, to: seasons, seed: 9 }
    const got = orderOutcomes(season, simulateSeasons(season, [], input))[0]!
    const exact = chanceOfAtLeast({
      wanted: 62,
      start: 80,
      steps: [{ kind: 'uncertain', alpha: 40, beta: 10 }],
    })
    expect(Math.abs(got.chance - exact)).toBeLessThan(fourErrors(exact, seasons))
    const held = tinySeason({
      ...season,
      kinds: season.kinds,
      batches: [{ ...batch, onHold: true }],
      orders: [{ kind: 0, number: 62, dueWeek: 40 }],
      ways: [],
    })
    expect(orderOutcomes(held, simulateSeasons(held, [], input))[0]!.chance).toBe(0)
  })
})

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
    expect([...tooLate.delivered]).toEqual([0])
  })

  test('trees past use do not count, but go out in their last week to an order that takes them early', () => {
    expect([
      ...run([{ kind: 0, number: 50, dueWeek: 20, earliestWeek: 19 }], [[50, 10]], 8).delivered,
    ]).toEqual([0])
    expect([
      ...run([{ kind: 0, number: 50, dueWeek: 20, earliestWeek: 15 }], [[50, 10]], 8).delivered,
    ]).toEqual([50])
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
    for (const count of counts) {
      if (count.week === 0) continue
      const earlier = counts[counts.indexOf(count) - 3]
      if (counts.indexOf(count) > 600) break
      expect(earlier!.after).toBe(count.before)
    }
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

  test('more started never lowers a chance, season by season', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 5, max: 200 }), (which, more) => {
        const season = nursery()
        const chances = (starts: typeof plan) =>
          orderOutcomes(season, simulateSeasons(season, starts, { from: 0, to: 60, seed: 4 })).map(
            o => o.chance,
          )
        const before = chances(plan)
        const after = chances(
          plan.map((start, i) => (i === which ? { ...start, number: start.number + more } : start)),
        )
        before.forEach((chance, o) => {
          expect(after[o]!).toBeGreaterThanOrEqual(chance)
        })
      }),
      { numRuns: 25 },
    )
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
      simulateSeasons(season, [{ way: 2, week: 10, number: 100 }], { from: 0, to: 800, seed: 2 }),
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

  test('the exact beta-binomial and the curve through a Beta agree on one batch’s spread', () => {
    const season = oneOrder({ ways: [{ kind: 0, steps: [{ alpha: 2, beta: 3, days: 7 }] }] }, 1, 20)
    const { byDue } = simulateSeasons(season, [{ way: 0, week: 1, number: 1_000_000 }], {
      from: 0,
      to: 20_000,
      seed: 3,
    })
    for (const share of [0.05, 0.2, 0.4, 0.6, 0.9]) {
      const below = byDue.filter(number => number < share * 1e6).length / byDue.length
      const exact = betaCdf(share, 2, 3)
      expect(Math.abs(below - exact)).toBeLessThan(fourErrors(exact, byDue.length) + 0.001)
    }
  })
})
