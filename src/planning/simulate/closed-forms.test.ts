import { describe, expect, test } from 'vitest'
import { betaCdf, chanceOfAtLeast, normalCdf } from '../../science/index.ts'
import { BatchId } from '../../trade/index.ts'
import { certain, type TinySeason, tinyCourse, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import type { LiveBatch } from '../season.ts'
import { orderOutcomes } from './outcome.ts'
import { simulateSeasons } from './simulate-seasons.ts'

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
      const pairs = Array.from({ length: seasons }, (_, s) => [byDue[s]!, byDue[seasons + s]!] as const)
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

  test('a very large batch spreads as its Beta does', () => {
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
