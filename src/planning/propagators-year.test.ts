import { describe, expect, test } from 'vitest'
import { type Body, type BodyOf, foldEntries } from '../record/index.ts'
import { BatchId, BenchId, inEnglish, KindId, MotherId, ProtocolId, StepId } from '../trade/index.ts'
import {
  bench,
  cultivar,
  kind,
  MONDAY,
  mother,
  order,
  person,
  type Said,
  smallEntries,
} from './fixtures/small-nursery.ts'
import type { Plan } from './plan.ts'
import { planSeason } from './plan-season.ts'
import { supplyOfPlan } from './promise/starts-of-plan.ts'
import { readSeason } from './reading/read-season.ts'
import { orderChances } from './simulate/outcome.ts'
import { simulateSeasons } from './simulate/simulate-seasons.ts'

/** Ten situations from a propagator's year. What is right is argued in each; the plan must find it. */

/** Three standard deviations of a chance of 0.9 counted in 200 seasons, on which it was settled and again when it is shown. */
const BY_CHANCE = 3 * Math.sqrt((2 * 0.9 * 0.1) / 200)

/** The plan of a day; what is said after the last plan accepted is the news. */
function planned(today: string, ...said: readonly Said[]): Promise<Plan> {
  const entries = smallEntries(...said)
  const accepting = entries.findLastIndex(({ body }) => body.kind === 'plan-accepted/1')
  const news = accepting < 0 ? [] : entries.slice(accepting + 1)
  return planSeason(foldEntries(entries), {
    today,
    throughSeq: 1,
    seasons: 200,
    seed: 1,
    proveSeconds: 0.5,
    news,
  })
}

const begun = (plan: Plan, kindId: string) =>
  plan.starts.filter(start => start.kind === kindId).reduce((sum, { number }) => sum + number, 0)
const weekOf = (week: string) => Number(week.slice(6))
const forecast = (plan: Plan, id: string) => plan.orders.find(({ order: of }) => of === id)!

/** The plan accepted as it is, on a day. */
const accepted = (plan: Plan, on: string): Said => ({
  on,
  body: {
    kind: 'plan-accepted/1',
    plan: plan.id,
    starts: plan.starts.map(({ id, kind: kindOfTree, protocol: by, week, number, bench: on0 }) => ({
      start: id,
      kindOfTree,
      protocol: by,
      week,
      number,
      bench: on0,
    })),
    chances: Object.fromEntries(plan.orders.map(({ order: of, chance }) => [of, chance])),
  },
})

const started = (
  batch: string,
  of: string,
  by: string,
  number: number,
  on: string,
  more: Partial<Extract<Body, { kind: 'batch-started/1' }>> = {},
): Said => ({
  on,
  body: {
    kind: 'batch-started/1',
    batch: BatchId.parse(batch),
    name: batch,
    kindOfTree: KindId.parse(of),
    protocol: ProtocolId.parse(by),
    number,
    sources: [],
    bench: null,
    workedBy: [],
    candidates: [],
    ...more,
  } as Body,
})

test('1. the mist bed is full in spring: the dearer trees get it, and the plan says what another m² is worth', async () => {
  // 1 m² roots 100 cuttings for six weeks; March to May holds it twice over. Figs are worth twice the mulberries.
  const plan = await planned(
    MONDAY,
    bench('mist bed', 1),
    order('figs', 'fig', 130, '2026-12-31'),
    order('mulberries', 'mulberry', 130, '2026-12-31'),
  )
  expect(forecast(plan, 'figs').short).toBeLessThan(10)
  expect(forecast(plan, 'mulberries').short).toBeGreaterThan(50)
  const limit = plan.limits.find(({ rule }) => rule === 'space')!
  expect(inEnglish(limit.sentence)).toMatch(
    /^Mist bed, weeks? \d+( to \d+)?: 1 m² more is worth \d+( a week)?\.$/,
  )
  expect(forecast(plan, 'mulberries').why.map(inEnglish).join(' ')).toContain('the mist bed is full')
})

test('2. rootstocks are thin when the scions are ready: the grafts wait for the later window, for to graft now would give no tree', async () => {
  // Stems of 5 mm in March grow 0.05 mm a week in summer and reach the 6 mm of the cut in August. There is no seed to raise
  // others, so an order that is due in spring is grafted on these in summer. Stems of 7 mm can be cut at once: then the order
  // for November is filled, which thin ones cannot serve at all.
  const stocks: Said[] = [
    started('stocks', 'seedling', 'sowing', 200, '2025-06-02'),
    {
      on: '2025-07-07',
      body: {
        kind: 'advanced/1',
        batch: BatchId.parse('stocks'),
        from: StepId.parse('germinating'),
        to: StepId.parse('growing to pencil'),
        number: 200,
        bench: null,
      },
    },
    {
      on: '2026-02-23',
      body: { kind: 'finished/1', batch: BatchId.parse('stocks'), number: 200, grade: '' },
    },
    mother('seed tree', 'seedling', [{ material: 'seed', months: [1], perYear: 0 }], {
      rootstockKind: 'seedling',
    }),
  ]
  const measured = (mm: number): Said => ({
    on: '2026-02-24',
    body: {
      kind: 'measured/1',
      batch: BatchId.parse('stocks'),
      step: StepId.parse('growing to pencil'),
      calipersMm: [mm - 0.1, mm, mm + 0.1],
    },
  })
  const [spring, november] = [
    order('pears', 'pear', 60, '2027-04-30'),
    order('pears', 'pear', 60, '2026-11-30'),
  ]
  const today = '2026-03-02'
  const grafts = (plan: Plan) => plan.starts.filter(({ kind: of }) => of === 'pear')
  const thin = await planned(today, ...stocks, measured(5), spring)
  expect(grafts(thin).length).toBeGreaterThan(0)
  for (const { week, rootstocks } of grafts(thin)) {
    expect(weekOf(week)).toBeGreaterThan(26)
    expect(rootstocks.map(({ batch }) => batch)).toEqual(['stocks'])
  }
  expect(forecast(thin, 'pears').chance).toBeGreaterThan(0.9 - BY_CHANCE)

  // The alternatives: the same grafts in week 12, when the scions are ready; and for an order of November what stems of 7 mm
  // allow, which thin ones cannot serve at all.
  const chanceOf = ({ starts: planned, bought }: Plan, week?: string, due = spring) => {
    const season = readSeason(foldEntries(smallEntries(...stocks, measured(5), due)), today)
    const starts = planned.map(start => ({ ...start, week: week ?? start.week }))
    const supply = supplyOfPlan(season, { starts, bought })
    const simulated = simulateSeasons(season, supply.starts, { ...supply, from: 200, to: 400, seed: 1 })
    return orderChances(season, simulated)[0]!.chance
  }
  expect(chanceOf(thin)).toBe(forecast(thin, 'pears').chance)
  expect(chanceOf(thin, '2026-W12')).toBe(0)
  const thick = await planned(today, ...stocks, measured(7), november)
  expect(grafts(thick).length).toBeGreaterThan(0)
  expect(grafts(thick).every(({ week }) => weekOf(week) < 19)).toBe(true)
  expect(forecast(thick, 'pears').chance).toBeGreaterThan(0.9 - BY_CHANCE)
  expect(chanceOf(thick, undefined, november)).toBe(0)
})

test('3. a heat wave halves a take: what is lacking is begun again, and the plan says since when', async () => {
  const orders = [order('figs', 'fig', 144, '2026-12-31')]
  const before = await planned(MONDAY, ...orders)
  const first = before.starts[0]!
  const struck: Said[] = [
    accepted(before, '2026-01-05'),
    started('118', 'fig', 'cutting', first.number, '2026-03-02', { bench: BenchId.parse('mist bed') }),
    {
      on: '2026-04-06',
      body: {
        kind: 'counted/1',
        batch: BatchId.parse('118'),
        step: StepId.parse('rooting'),
        sign: 'alive',
        taken: Math.round(first.number * 0.4),
        dead: first.number - Math.round(first.number * 0.4),
        undecided: 0,
      },
    },
  ]
  const after = await planned('2026-04-06', ...orders, ...struck)
  // Half of the trees are lost, so about half of the cuttings are stuck again while May is still open.
  expect(begun(after, 'fig')).toBeGreaterThan(first.number * 0.4)
  expect(forecast(after, 'figs').chance).toBeGreaterThan(0.8)
  expect(after.changes.map(({ sentence }) => inEnglish(sentence)).join(' ')).toContain(
    `since batch 118 counted ${Math.round(first.number * 0.4)} where ${Math.round(first.number * 0.8)} were expected`,
  )
})

test('4. a mother tree is lost in mid-season: the other gives what she may, and the order is short by the rest', async () => {
  const orders = [order('pears', 'pear', 200, '2027-04-30')]
  const both = await planned(MONDAY, ...orders)
  const sticks = (plan: Plan, id: string) =>
    plan.starts
      .flatMap(({ mothers }) => mothers)
      .filter(({ mother: of }) => of === id)
      .reduce((sum, { number }) => sum + number, 0)
  // 280 grafts or more take 70 sticks or more: both are asked, evenly.
  expect(Math.abs(sticks(both, 'pear tree 1') - sticks(both, 'pear tree 2'))).toBeLessThanOrEqual(2)
  const lost = await planned('2026-02-02', ...orders, accepted(both, MONDAY), {
    on: '2026-01-20',
    body: { kind: 'mother-retired/1', mother: MotherId.parse('pear tree 1'), why: 'felled by a storm' },
  })
  expect(sticks(lost, 'pear tree 1')).toBe(0)
  expect(sticks(lost, 'pear tree 2')).toBeLessThanOrEqual(60)
  // 60 sticks are 240 grafts: 172 trees of the 200.
  expect(begun(lost, 'pear')).toBeLessThanOrEqual(240)
  expect(forecast(lost, 'pears').chance).toBeLessThan(0.2)
  expect(
    lost.limits.some(({ sentence }) => inEnglish(sentence).startsWith('Pear, scion sticks, season of 2026')),
  ).toBe(true)
  expect(
    lost.changes.some(({ sentence }) =>
      inEnglish(sentence).includes('mother tree pear tree 1 is lost (felled by a storm)'),
    ),
  ).toBe(true)
})

test('5. an order is doubled: the accepted starts stay in their weeks and grow, none is moved', async () => {
  // There is room for twice the trees: what is accepted is under way and stays, and as much again is put beside it. People
  // have agreed on two weeks earlier than is cheapest; holding the trees so much longer costs less than upsetting them.
  const inDecember = { earliest: '2026-12-01' }
  const first = order('figs', 'fig', 100, '2026-12-31', inDecember)
  const cheapest = await planned(MONDAY, first)
  const earlier = (week: string) => `2026-W${weekOf(week) - 2}`
  const before: Plan = {
    ...cheapest,
    starts: cheapest.starts.map(start => ({
      ...start,
      id: start.id.replace(start.week, earlier(start.week)),
      week: earlier(start.week),
    })),
  }
  const { order: doubled } = order('figs', 'fig', 200, '2026-12-31', inDecember) as BodyOf<'order-placed/1'>
  const after = await planned('2026-01-12', first, accepted(before, MONDAY), {
    on: '2026-01-10',
    body: { kind: 'order-changed/1', order: doubled, why: 'a second orchard' },
  })
  expect(begun(after, 'fig')).toBeGreaterThan(1.8 * begun(before, 'fig'))
  expect(before.starts.length).toBeGreaterThan(0)
  for (const start of before.starts) {
    const same = after.starts.find(({ id }) => id === start.id)
    expect(same?.number ?? 0).toBeGreaterThanOrEqual(start.number)
  }
  expect(after.moved).toEqual({ starts: 0, saved: 0 })
  expect(after.changes.length).toBeGreaterThan(0)
  for (const { sentence } of after.changes)
    expect(inEnglish(sentence)).toContain('since order figs was changed')
})

test('6. the one good grafter is away for three weeks: the grafts are done in the weeks beside, within her hours; away all summer, they cannot be', async () => {
  // Seed sown by March gives stocks for July and August alone, and 175 days after August is still in time. Nobody else
  // grafts. 290 grafts of 4 minutes are half of a week of hers: whichever of the other weeks she has, they suffice. Away
  // through both months, there is no other week, and to keep to the weeks of the plan would be to graft with nobody there.
  const orders = [order('pears', 'pear', 200, '2027-01-31')]
  const grafts = (plan: Plan) => plan.starts.filter(({ kind: of }) => of === 'pear')
  const monday = (week: number) =>
    new Date(Date.UTC(2025, 11, 29) + (week - 1) * 7 * 86_400_000).toISOString().slice(0, 10)
  const withAdaAway = (from: string, to: string) =>
    planned(MONDAY, ...orders, person('Ada', ['grafting', 'general', 'potting'], { away: [{ from, to }] }))
  const here = await planned(MONDAY, ...orders)
  const busiest = weekOf(grafts(here).toSorted((a, b) => b.number - a.number)[0]!.week)
  const away = await withAdaAway(monday(busiest - 1), monday(busiest + 2))
  const isAway = (week: string) => Math.abs(weekOf(week) - busiest) <= 1
  expect(grafts(here).some(({ week }) => isAway(week))).toBe(true)
  expect(grafts(away).some(({ week }) => isAway(week))).toBe(false)
  expect(begun(away, 'pear')).toBeGreaterThan(200 / 0.72)
  expect(forecast(away, 'pears').chance).toBeGreaterThan(0.9 - BY_CHANCE)
  expect(away.cost).toBeLessThan(1.05 * here.cost)
  const grafting = away.loads.find(({ what, id }) => what === 'skill' && id === 'grafting')!
  grafting.expected.forEach((hours, w) => {
    expect(hours).toBeLessThanOrEqual(grafting.capacity[w]! + 0.01)
  })

  const allSummer = await withAdaAway('2026-06-29', '2026-09-06')
  expect(forecast(allSummer, 'pears').chance).toBe(0)
  expect(allSummer.cost).toBeGreaterThan(2 * here.cost)
})

test('7. the seed comes late: rootstocks that cannot be raised in time are bought in where that saves the order', async () => {
  // Sown by March, seedlings are fit in August. With seed only in September, they are fit the next spring: too late.
  const orders = [order('pears', 'pear', 60, '2027-02-28')]
  const seedling = kind('seedling', {
    cultivars: [],
    form: 'rootstock',
    price: 1,
    ways: [{ protocol: 'sowing' }],
    buyIn: { price: 4, weeksNotice: 6, mostPerWeek: 500 },
  })
  const seedFrom = (months: number[]) =>
    mother('seed tree', 'seedling', [{ material: 'seed', months, perYear: 5000 }], {
      rootstockKind: 'seedling',
    })
  const inTime = await planned(MONDAY, ...orders, seedling, seedFrom([1, 2, 3]))
  expect(begun(inTime, 'seedling')).toBeGreaterThan(80)
  expect(inTime.costParts['buying in'] ?? 0).toBeLessThan(20)
  const late = await planned(MONDAY, ...orders, seedling, seedFrom([9, 10]))
  expect(begun(late, 'seedling')).toBe(0)
  expect(late.costParts['buying in']).toBeGreaterThan(4 * 60)
  expect(forecast(late, 'pears').chance).toBeGreaterThan(0.85)
  expect(late.assumed.some(says => /\d+ of seedling are bought in/.test(inEnglish(says)))).toBe(true)
})

test('8. a bench is rebuilt for a month: nothing is set on it that would have to stand through it', async () => {
  // Figs for the end of the year are best stuck late, in May. With the mist bed closed all of May, what is stuck after the
  // middle of March would still stand in it, for rooting takes six weeks: the first weeks of March are left, and suffice.
  const figs = order('figs', 'fig', 100, '2026-12-31', { earliest: '2026-12-01' })
  const open = await planned(MONDAY, figs)
  expect(open.starts.some(({ week }) => weekOf(week) >= 18)).toBe(true)
  const closed = bench('mist bed', 20, {
    closed: [{ from: '2026-05-01', to: '2026-05-31', areaSquareMetres: 20, why: 'new pipes' }],
  })
  const plan = await planned(MONDAY, closed, figs)
  expect(plan.starts.length).toBeGreaterThan(0)
  for (const { week } of plan.starts) expect(weekOf(week)).toBeLessThanOrEqual(12)
  expect(forecast(plan, 'figs').chance).toBeGreaterThan(0.85)
})

describe('9. two orders for the same few trees', () => {
  const stock: Said[] = [
    started('ready', 'fig', 'cutting', 60, '2025-03-03'),
    {
      on: '2025-09-01',
      body: {
        kind: 'advanced/1',
        batch: BatchId.parse('ready'),
        from: StepId.parse('rooting'),
        to: StepId.parse('growing on'),
        number: 60,
        bench: null,
      },
    },
    { on: '2025-12-15', body: { kind: 'finished/1', batch: BatchId.parse('ready'), number: 60, grade: '' } },
  ]

  test('of the same date, the one that pays more is filled, and the other is told why not', async () => {
    const plan = await planned(
      MONDAY,
      ...stock,
      order('cheap', 'fig', 50, '2026-02-28', { price: 8 }),
      order('dear', 'fig', 50, '2026-02-28', { price: 20 }),
    )
    expect(forecast(plan, 'dear').chance).toBe(1)
    expect(forecast(plan, 'cheap').chance).toBe(0)
    expect(forecast(plan, 'cheap').why.map(inEnglish).join(' ')).toContain('cannot be made in time')
  })

  test('of other dates, the earlier is filled from stock and for the later new ones are begun', async () => {
    const plan = await planned(
      MONDAY,
      ...stock,
      order('now', 'fig', 50, '2026-02-28'),
      order('later', 'fig', 50, '2026-12-31'),
    )
    expect(forecast(plan, 'now').chance).toBe(1)
    expect(forecast(plan, 'later').chance).toBeGreaterThan(0.85)
    expect(begun(plan, 'fig')).toBeGreaterThan(45)
  })
})

test('10. a protected cultivar at the end of its licence: what may be begun is begun before, and no more than allowed', async () => {
  const licensed = (treesPerYear: number | null, until: string | null) =>
    cultivar('fig', { licence: { owner: 'its breeder', treesPerYear, until, feePerTree: 0.5 } })
  const orders = [order('figs', 'fig', 100, '2026-12-31')]
  const ended = await planned(MONDAY, licensed(null, '2026-04-05'), ...orders)
  expect(begun(ended, 'fig')).toBeGreaterThan(100)
  for (const { week } of ended.starts) expect(weekOf(week)).toBeLessThanOrEqual(14)
  const few = await planned(MONDAY, licensed(90, null), ...orders)
  expect(begun(few, 'fig')).toBe(90)
  expect(few.limits.map(({ sentence }) => inEnglish(sentence)).join(' ')).toMatch(
    /Licence of fig, 2026: one more plant begun is worth \d/,
  )
  expect(forecast(few, 'figs').why.map(inEnglish).join(' ')).toContain('the licence of fig is used up')
})

test('a hold on a mother tree stops everything from her at once', async () => {
  const plan = await planned('2026-02-02', order('pears', 'pear', 40, '2027-04-30'), {
    on: '2026-01-30',
    body: {
      kind: 'hold-placed/1',
      on: { what: 'mother', mother: MotherId.parse('pear tree 1') },
      why: 'virus test pending',
    },
  })
  expect(plan.starts.flatMap(({ mothers }) => mothers).some(({ mother: of }) => of === 'pear tree 1')).toBe(
    false,
  )
  expect(begun(plan, 'pear')).toBeGreaterThan(40)
})
