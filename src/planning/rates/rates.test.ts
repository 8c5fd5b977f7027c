import { describe, expect, test } from 'vitest'
import { betaFromLowTypicalHigh, normalCdf, rateFromCounts } from '../../science/index.ts'
import { KindId, Protocol, ProtocolId, StepId } from '../../trade/index.ts'
import { daysToReady, shareReadyByWeek } from './days-to-ready.ts'
import { pooledShare } from './pooled-share.ts'
import { rateBook } from './rate-book.ts'

const total = (shares: Float64Array) => shares.reduce((sum, share) => sum + share, 0)

describe('days to ready', () => {
  test('of one step is that step: its mean, and the spread between batches and between plants', () => {
    const days = daysToReady([{ medianDays: 100, sdLogDays: 0.2, plantSdLogDays: 0.1 }])
    expect(days.meanDays).toBeCloseTo(100 * Math.exp(0.025), 9)
    expect(days.batchSdLog).toBeCloseTo(0.2, 9)
    expect(days.plantSdLog).toBeCloseTo(0.1, 9)
  })

  test('of two equal independent steps spreads, relative to its mean, by the root of two less', () => {
    const step = { medianDays: 100, sdLogDays: 0.1, plantSdLogDays: 0 }
    const days = daysToReady([step, step])
    const relative = Math.sqrt(Math.expm1(days.batchSdLog ** 2))
    expect(relative).toBeCloseTo(Math.sqrt(Math.expm1(0.01) / 2), 9)
  })

  test('what is left of a step already begun is the mean of its tail, summed day by day', () => {
    const step = { medianDays: 60, sdLogDays: 0.3, plantSdLogDays: 0.2 }
    const sd = Math.hypot(0.3, 0.2)
    // By hand: E[D − 70 | D > 70] = ∫ P(D > x) dx / P(D > 70), from 70 upwards in steps of a tenth of a day.
    const above = (x: number) => normalCdf(-(Math.log(x) - Math.log(60)) / sd)
    let area = 0
    for (let x = 70.05; x < 1500; x += 0.1) area += 0.1 * above(x)
    expect(daysToReady([step], 70).meanDays).toBeCloseTo(area / above(70), 2)
  })

  test('a step that is far overdue still takes a little longer, and never less than no time', () => {
    const step = { medianDays: 30, sdLogDays: 0.1, plantSdLogDays: 0.1 }
    const days = daysToReady([step], 300)
    expect(days.meanDays).toBeGreaterThan(0)
    expect(days.meanDays).toBeLessThan(5)
  })

  test('ready by week: 28 certain days after a mid-week start fall into the fifth week', () => {
    const shares = shareReadyByWeek({ meanDays: 28, batchSdLog: 0, plantSdLog: 0 })
    expect([...shares]).toEqual([0, 0, 0, 0, 1])
  })

  test('ready by week sums to one, with the mean where the days say', () => {
    const shares = shareReadyByWeek(daysToReady([{ medianDays: 200, sdLogDays: 0.1, plantSdLogDays: 0.1 }]))
    expect(total(shares)).toBeCloseTo(1, 12)
    const mean = shares.reduce((sum, share, week) => sum + share * (7 * week + 3.5), 0)
    expect(mean).toBeCloseTo(200 * Math.exp(0.01) + 3.5, 0)
  })
})

describe('pooled share', () => {
  const before = { alpha: 12, beta: 8 }
  test('without batches is what was believed', () => {
    expect(pooledShare(before, [])).toEqual(before)
  })

  test('stays within 0.03 in the mean of the exact mixture over the unknown mean and spread', () => {
    const cases = [
      [{ entered: 50, survived: 45 }],
      [
        { entered: 80, survived: 20 },
        { entered: 100, survived: 35 },
        { entered: 60, survived: 12 },
      ],
      Array.from({ length: 12 }, (_, i) => ({ entered: 100, survived: 60 + 3 * (i % 4) })),
    ]
    for (const counts of cases) {
      const exact = rateFromCounts({ prior: before, counts })
      const quick = pooledShare(before, counts)
      const mean = (share: { alpha: number; beta: number }) => share.alpha / (share.alpha + share.beta)
      const sd = (share: { alpha: number; beta: number }) =>
        Math.sqrt((mean(share) * (1 - mean(share))) / (share.alpha + share.beta + 1))
      expect(Math.abs(mean(quick) - mean(exact))).toBeLessThan(0.03)
      expect(sd(quick) / sd(exact)).toBeGreaterThan(0.75)
      expect(sd(quick) / sd(exact)).toBeLessThan(1.35)
    }
  })

  test('many batches of one share outweigh what was believed', () => {
    const seen = Array.from({ length: 60 }, () => ({ entered: 200, survived: 170 }))
    const { alpha, beta } = pooledShare(before, seen)
    expect(alpha / (alpha + beta)).toBeCloseTo(0.85, 2)
  })
})

describe('rate book', () => {
  const protocol = Protocol.parse({
    id: 'mist-cuttings',
    name: 'Cuttings under mist',
    version: 1,
    method: 'softwood_cutting',
    species: null,
    basedOn: null,
    window: {
      condition: 'soft shoots',
      northMonths: [5, 6],
      southMonths: [11, 12],
      basis: 'common practice',
    },
    before: [],
    takes: [],
    steps: [
      {
        id: 'mist',
        name: 'Under mist',
        place: 'mist bed',
        days: { low: 28, typical: 42, high: 63, basis: 'common practice' },
        survival: { low: 0.4, typical: 0.6, high: 0.8, basis: 'common practice' },
        sign: 'rooted',
        plantsPerSquareMetre: null,
        work: [],
      },
    ],
    tray: 1,
    smallestBatch: 1,
    usableDays: 90,
    caliper: null,
    cautions: [],
  })
  const fig = KindId.parse('fig')
  const guava = KindId.parse('guava')
  const row = (kind: KindId, entered: number, survived: number, closed = true) => ({
    protocol: ProtocolId.parse('mist-cuttings'),
    step: StepId.parse('mist'),
    kind,
    closed,
    entered,
    survived,
  })
  const asked = { kind: fig, startMonth: 5 }

  test('without records the protocol’s own figure is the rate, and says so', () => {
    const book = rateBook({ steps: [], days: [], set: [] })
    const rate = book.survival(protocol, 0, asked)
    const figure = betaFromLowTypicalHigh(0.4, 0.6, 0.8)
    expect(rate.alpha).toBe(figure.alpha)
    expect(rate.used).toMatchObject({ from: 'facts', basis: 'common practice', batches: 0 })
  })

  test('own batches move the rate further than batches of another kind, and open batches not at all', () => {
    const good = (kind: KindId) => [row(kind, 100, 90), row(kind, 100, 88), row(kind, 100, 93)]
    const mean = (steps: ReturnType<typeof row>[]) =>
      rateBook({ steps, days: [], set: [] }).survival(protocol, 0, asked).used.mean
    const nothing = mean([])
    expect(mean([row(fig, 100, 95, false)])).toBe(nothing)
    expect(mean(good(guava))).toBeGreaterThan(nothing + 0.05)
    expect(mean([...good(fig), ...good(guava)])).toBeGreaterThan(mean(good(guava)) + 0.02)
  })

  test('what the nursery sets overrules facts and records, for the very kind before all kinds, the last one said', () => {
    const set = (typical: number, kind: KindId | null) => ({
      protocol: protocol.id,
      step: StepId.parse('mist'),
      kind,
      survival: { low: typical - 0.05, typical, high: typical + 0.05 },
      on: '2026-03-01',
      why: 'trial of last year',
    })
    const book = rateBook({
      steps: [row(fig, 100, 95)],
      days: [],
      set: [set(0.3, fig), set(0.4, fig), set(0.7, null)],
    })
    const rate = book.survival(protocol, 0, asked)
    expect(rate.used).toMatchObject({ from: 'set by the nursery', basis: 'trial of last year' })
    expect(rate.used.mean).toBeCloseTo(0.4, 1)
    expect(book.survival(protocol, 0, { kind: guava, startMonth: 5 }).used.mean).toBeCloseTo(0.7, 1)
  })

  test('days are the figure’s own until batches have been through, then between the two', () => {
    const plain = rateBook({ steps: [], days: [], set: [] }).days(protocol, 0)
    expect(plain.medianDays).toBeCloseTo(42, 9)
    expect(Math.hypot(plain.sdLogDays, plain.plantSdLogDays)).toBeCloseTo(Math.log(63 / 28) / 3.2897, 4)
    const slow = [70, 72, 68].map(days => ({ protocol: protocol.id, step: StepId.parse('mist'), days }))
    const learnt = rateBook({ steps: [], days: slow, set: [] }).days(protocol, 0)
    expect(learnt.medianDays).toBeGreaterThan(54)
    expect(learnt.medianDays).toBeLessThan(68)
  })
})
