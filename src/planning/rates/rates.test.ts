import { describe, expect, test } from 'vitest'
import { betaFromLowTypicalHigh, normalCdf } from '../../science/index.ts'
import { CultivarId, KindId, PersonId, Protocol, ProtocolId, SpeciesId, StepId } from '../../trade/index.ts'
import { daysToReady, shareReadyByWeek } from './days-to-ready.ts'
import { rateBook } from './rate-book.ts'
import type { SeenStep } from './seen-step.ts'

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
  const row = (kind: KindId, entered: number, survived: number, more: Partial<SeenStep> = {}): SeenStep => ({
    protocol: ProtocolId.parse('mist-cuttings'),
    method: 'softwood_cutting',
    step: StepId.parse('mist'),
    species: SpeciesId.parse('ficus-carica'),
    kind,
    month: 5,
    year: 2025,
    person: null,
    rootstock: null,
    cultivar: null,
    entered,
    survived,
    ...more,
  })
  const asked = { kind: fig, startMonth: 5 }
  const nothing = { steps: [], protocols: new Map([[protocol.id, protocol]]), days: [], set: [] }
  const rateAfter = (
    steps: readonly SeenStep[],
    of: Parameters<ReturnType<typeof rateBook>['survival']>[2] = asked,
  ) => rateBook({ ...nothing, steps }).survival(protocol, 0, of)
  const logit = (share: number) => Math.log(share / (1 - share))

  test('without records the protocol’s own figure is the rate, and says so', () => {
    const rate = rateAfter([])
    const figure = betaFromLowTypicalHigh(0.4, 0.6, 0.8)
    expect(rate.alpha).toBe(figure.alpha)
    expect(rate.yearShare).toBe(0.3)
    expect(rate.used).toMatchObject({ from: 'facts', basis: 'common practice', batches: 0 })
  })

  test('methods of a fruit stand beside each other by what took, whatever their protocols expected; what died later says nothing', () => {
    const [rooting] = protocol.steps
    const grafts = Protocol.parse({
      ...protocol,
      id: 'wedge',
      method: 'top_wedge_graft',
      steps: [
        {
          ...rooting,
          id: 'unite',
          sign: 'united',
          survival: { ...rooting!.survival, low: 0.8, typical: 0.9, high: 0.95 },
        },
        { ...rooting, id: 'grow', sign: 'alive' },
      ],
    })
    const graft = (step: string, survived: number) =>
      row(fig, 100, survived, {
        protocol: grafts.id,
        method: grafts.method,
        step: grafts.steps.find(({ id }) => id === step)!.id,
      })
    const steps = [78, 80, 82, 80].flatMap(rooted => [
      row(fig, 100, rooted),
      graft('unite', rooted - 30),
      graft('grow', 99),
    ])
    const protocols = new Map([protocol, grafts].map(one => [one.id, one]))
    const [compared, ...others] = rateBook({ ...nothing, protocols, steps })
      .compared()
      .compareMethods()
    expect(others).toEqual([])
    expect(compared).toMatchObject({
      of: { species: 'ficus-carica' },
      share: 0.65,
      members: [
        { member: 'softwood_cutting', batches: 4, entered: 400, survived: 320 },
        { member: 'top_wedge_graft', batches: 4, entered: 400, survived: 200 },
      ],
      finding: { kind: 'hardly-chance' },
    })
    // Counted: 80 and 50 of 100; the model draws each a little towards the other.
    expect(Math.abs(compared!.members[0]!.share - 0.8)).toBeLessThan(0.04)
    expect(Math.abs(compared!.members[1]!.share - 0.5)).toBeLessThan(0.04)
  })

  test('cultivars stand beside each other within a method of their fruit; a batch of several says nothing of one', () => {
    const of = (name: string) => ({ cultivar: CultivarId.parse(name) })
    const steps = [
      ...[84, 86, 85].map(survived => row(fig, 100, survived, of('early'))),
      ...[56, 54, 55].map(survived => row(guava, 100, survived, of('late'))),
      row(fig, 100, 10),
      row(fig, 100, 90, { ...of('other'), species: SpeciesId.parse('psidium-guajava') }),
    ]
    const compared = rateBook({ ...nothing, steps })
      .compared()
      .compareCultivars()
    expect(compared).toHaveLength(1)
    expect(compared[0]).toMatchObject({
      of: { species: 'ficus-carica', method: 'softwood_cutting' },
      members: [
        { member: 'early', batches: 3, survived: 255 },
        { member: 'late', batches: 3, survived: 165 },
      ],
    })
  })

  test('own batches move the rate further than batches of another kind', () => {
    const good = (kind: KindId) => [row(kind, 100, 90), row(kind, 100, 88), row(kind, 100, 93)]
    const mean = (steps: readonly SeenStep[]) => rateAfter(steps).used.mean
    expect(mean(good(guava))).toBeGreaterThan(mean([]) + 0.05)
    expect(mean([...good(fig), ...good(guava)])).toBeGreaterThan(mean(good(guava)) + 0.02)
  })

  test('the figure counts as about two batches: one batch of another share moves the rate a third of the way on the logit scale', () => {
    const figure = betaFromLowTypicalHigh(0.4, 0.6, 0.8)
    const figureMean = figure.alpha / (figure.alpha + figure.beta)
    const moved =
      (logit(rateAfter([row(fig, 1000, 900)]).used.mean) - logit(figureMean)) /
      (logit(0.9) - logit(figureMean))
    expect(moved).toBeGreaterThan(0.2)
    expect(moved).toBeLessThan(0.55)
  })

  test('many batches of one share outweigh the figure, and leave the rate as sure as they are alike', () => {
    const rate = rateAfter(Array.from({ length: 60 }, (_, i) => row(fig, 200, 168 + (i % 5))))
    expect(rate.used.mean).toBeCloseTo(0.85, 2)
    expect(rate.used.high - rate.used.low).toBeLessThan(0.15)
    expect(rate.used.basis).toBe(
      '60 batches of this kind, 0 batches of other kinds by this protocol; 60 of them begun in May; the protocol’s own figure counts as 2 more',
    )
  })

  test('where months differ, the month asked for has its own rate, and one never tried is less sure', () => {
    const months = [3, 4, 5, 6].flatMap(month =>
      Array.from({ length: 8 }, (_, i) => row(fig, 100, (month === 5 ? 80 : 50) + (i % 4), { month })),
    )
    const inMonth = (startMonth: number) => rateAfter(months, { kind: fig, startMonth }).used
    expect(inMonth(5).mean).toBeGreaterThan(inMonth(4).mean + 0.2)
    expect(inMonth(9).high - inMonth(9).low).toBeGreaterThan(inMonth(5).high - inMonth(5).low)
  })

  test('where people differ, one who is known has their own rate', () => {
    const people = ['ana', 'ben', 'cleo', 'dan'].map(id => PersonId.parse(id))
    const seen = people.flatMap((person, p) =>
      Array.from({ length: 10 }, (_, i) => row(fig, 100, 40 + 12 * p + (i % 4), { person })),
    )
    const by = (people_: readonly PersonId[]) => rateAfter(seen, { ...asked, people: people_ }).used
    expect(by([people[3]!]).mean).toBeGreaterThan(by([people[0]!]).mean + 0.2)
    expect(by([people[3]!]).basis).toContain('10 by the same person')
    expect(by([]).high - by([]).low).toBeGreaterThan(by([people[0]!]).high - by([people[0]!]).low)
  })

  test('the year’s part of the spread is learnt from three seasons on', () => {
    const seasons = (shares: readonly number[]) =>
      shares.flatMap((share, s) =>
        Array.from({ length: 12 }, (_, i) =>
          row(fig, 100, Math.round(100 * share) + 6 * ((i % 5) - 2), { year: 2020 + s }),
        ),
      )
    expect(rateAfter(seasons([0.4, 0.7])).yearShare).toBe(0.3)
    const wild = rateAfter(seasons([0.35, 0.7, 0.45, 0.8, 0.6])).yearShare
    const calm = rateAfter(seasons([0.6, 0.6, 0.6, 0.6, 0.6])).yearShare
    expect(wild).toBeGreaterThan(0.5)
    expect(calm).toBeLessThan(0.3)
  })

  test('a step that its protocol no longer has teaches nothing and breaks nothing', () => {
    const old = row(fig, 100, 99, { step: StepId.parse('before') })
    expect(rateAfter([old])).toEqual(rateAfter([]))
  })

  test('what the nursery sets overrules facts and records, for the very kind before all kinds, the last one said', () => {
    const set = (typical: number, kind: KindId | null) => ({
      entry: null,
      protocol: protocol.id,
      step: StepId.parse('mist'),
      kind,
      survival: { low: typical - 0.05, typical, high: typical + 0.05 },
      on: '2026-03-01',
      why: 'trial of last year',
    })
    const book = rateBook({
      ...nothing,
      steps: [row(fig, 100, 95)],
      set: [set(0.3, fig), set(0.4, fig), set(0.7, null)],
    })
    const rate = book.survival(protocol, 0, asked)
    expect(rate.used).toMatchObject({ from: 'set by the nursery', basis: 'trial of last year' })
    expect(rate.used.mean).toBeCloseTo(0.4, 1)
    expect(book.survival(protocol, 0, { kind: guava, startMonth: 5 }).used.mean).toBeCloseTo(0.7, 1)
  })

  test('days are the figure’s own until batches have been through, then between the two', () => {
    const plain = rateBook(nothing).days(protocol, 0)
    expect(plain.medianDays).toBeCloseTo(42, 9)
    expect(Math.hypot(plain.sdLogDays, plain.plantSdLogDays)).toBeCloseTo(Math.log(63 / 28) / 3.2897, 4)
    const slow = [70, 72, 68].map(days => ({ protocol: protocol.id, step: StepId.parse('mist'), days }))
    const learnt = rateBook({ ...nothing, days: slow }).days(protocol, 0)
    expect(learnt.medianDays).toBeGreaterThan(54)
    expect(learnt.medianDays).toBeLessThan(68)
  })
})
