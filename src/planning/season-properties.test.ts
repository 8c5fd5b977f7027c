import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { weekNumber } from '../science/index.ts'
import { inventedNursery } from './fixtures/invented-nursery.ts'
import { MONDAY, mother, order, protocols, type Said, smallNursery } from './fixtures/small-nursery.ts'
import { tinyKind, tinySeason } from './fixtures/tiny-season.ts'
import { buildSeasonModel, withoutMargins } from './model/build-season-model.ts'
import { rowName } from './model/drafting.ts'
import { addRows, loadSolver, openModel } from './model/open-model.ts'
import type { Margins, SeasonModel } from './model/season-model.ts'
import { openSolver } from './model/solve.ts'
import { planSeason } from './plan-season.ts'
import { readSeason } from './reading/read-season.ts'
import { planJoined } from './replan/plan-anew.ts'
import type { Season } from './season.ts'
import { firstMargins } from './sureness/first-margins.ts'

async function costOf(season: Season, margins: Margins = withoutMargins(season)) {
  const model = buildSeasonModel(season, margins)
  const solver = await openSolver(model)
  try {
    const solution = solver.solve()
    expect(solution.outcome).toBe('optimal')
    return { model, ...solution }
  } finally {
    solver.dispose()
  }
}

const invented = (seed: number, room: number) =>
  readSeason(
    inventedNursery({ kinds: 8, ordersPerKind: 1.5, treesPerOrder: 60, today: MONDAY, seed, room }),
    MONDAY,
  )

const seeds = fc.integer({ min: 1, max: 10_000 })

describe('properties of any season', () => {
  test('more area, hours or wood never cost more', async () => {
    await fc.assert(
      fc.asyncProperty(seeds, fc.constantFrom('area', 'hours', 'wood'), async (seed, what) => {
        const tight = invented(seed, 0.3)
        const more = 1.25
        const roomy: Season = {
          ...tight,
          places:
            what === 'area'
              ? tight.places.map(place => ({ ...place, squareMetres: place.squareMetres.map(m => m * more) }))
              : tight.places,
          people:
            what === 'hours'
              ? tight.people.map(person => ({ ...person, minutes: person.minutes.map(m => m * more) }))
              : tight.people,
          pools:
            what === 'wood'
              ? tight.pools.map(pool => ({
                  ...pool,
                  perWeek: pool.perWeek.map(m => m * more),
                  perYear: pool.perYear.map(year => ({ ...year, most: year.most * more })),
                  mothers: pool.mothers.map(m => ({
                    ...m,
                    perWeek: m.perWeek.map(each => each * more),
                    perYear: m.perYear.map(each => each * more),
                  })),
                }))
              : tight.pools,
        }
        const [before, after] = [await costOf(tight), await costOf(roomy)]
        expect(after.objective).toBeLessThanOrEqual(before.objective * (1 + 1e-7))
      }),
      { numRuns: 6 },
    )
  })

  test('capacities that are written down only where they fill give the optimum of the model with all of them', async () => {
    await fc.assert(
      fc.asyncProperty(seeds, async seed => {
        const season = invented(seed, 0.2)
        const { model, objective } = await costOf(season)
        expect(await costWithAllRows(model)).toBeCloseTo(objective, 3)
      }),
      { numRuns: 3 },
    )
  })

  test('an order planned with more trees never makes fewer to be begun or bought in, and never costs less', async () => {
    await fc.assert(
      fc.asyncProperty(seeds, fc.double({ min: 1.01, max: 1.5, noNaN: true }), async (seed, factor) => {
        const season = invented(seed, 1)
        const margins = withoutMargins(season)
        const before = await costOf(season, margins)
        const after = await costOf(season, {
          ...margins,
          plannedNumber: margins.plannedNumber.map(n => n * factor),
        })
        expect(after.objective).toBeGreaterThanOrEqual(before.objective * (1 - 1e-7))
        const delivered = ({ deliveries }: typeof before) =>
          deliveries.reduce((sum, { number }) => sum + number, 0)
        expect(delivered(after)).toBeGreaterThanOrEqual(delivered(before) - 1e-6)
      }),
      { numRuns: 4 },
    )
  })

  test('a surer order never starts fewer, whatever its batches do: the same seasons, a surer wish, no fewer plants and no less cost', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.record({
          alpha: fc.integer({ min: 4, max: 40 }),
          beta: fc.integer({ min: 2, max: 20 }),
          days: fc.integer({ min: 28, max: 90 }),
          number: fc.integer({ min: 20, max: 200 }),
          sure: fc.constantFrom(0.6, 0.75, 0.88),
        }),
        async ({ alpha, beta, days, number, sure }) => {
          const begun = async (asked: number) => {
            const season = tinySeason({
              weeks: 50,
              kinds: [tinyKind('plum')],
              ways: [{ kind: 0, steps: [{ alpha, beta, days }] }],
              orders: [{ kind: 0, number, dueWeek: 40, sure: asked, price: 60 }],
            })
            const input = { season, seasons: 400, seed: 1, proveSeconds: 0, isStopped: () => false }
            const { starts, whole } = await planJoined(input)
            return { plants: starts.reduce((sum, start) => sum + start.number, 0), cost: whole.cost }
          }
          const [less, more] = [await begun(sure), await begun(sure + 0.08)]
          expect(more.plants).toBeGreaterThanOrEqual(less.plants)
          expect(more.cost).toBeGreaterThanOrEqual(less.cost - 1e-6)
        },
      ),
      { numRuns: 5 },
    )
  })

  test('a surer order is planned with no fewer trees', () => {
    fc.assert(
      fc.property(seeds, fc.double({ min: 0.5, max: 0.9, noNaN: true }), (seed, sure) => {
        const season = invented(seed, 1)
        const asked = (share: number) =>
          firstMargins({ ...season, orders: season.orders.map(of => ({ ...of, sure: share })) }).plannedNumber
        const [less, more] = [asked(sure), asked(sure + 0.08)]
        const sum = (numbers: Float64Array) => numbers.reduce((total, n) => total + n, 0)
        expect(sum(more)).toBeGreaterThanOrEqual(sum(less) - 1e-9)
      }),
      { numRuns: 10 },
    )
  })
})

async function costWithAllRows(model: SeasonModel): Promise<number> {
  const highs = await loadSolver()
  const opened = openModel(highs, model, true)
  try {
    const all = model.capacities.flatMap(capacity => capacity.all())
    expect(new Set(all.map(rowName)).size).toBe(all.length)
    addRows(opened, all)
    opened.run()
    return opened.getObjectiveValue()
  } finally {
    opened.dispose()
  }
}

describe('properties of time and place', () => {
  const wish = { throughSeq: 1, seasons: 200, seed: 1, proveSeconds: 0.3 }
  const said = (years: number): Said[] => [
    order('figs', 'fig', 100, `${2026 + years}-12-31`, { earliest: `${2026 + years}-01-05` }),
    order('pears', 'pear', 60, `${2027 + years}-04-30`, { earliest: `${2026 + years}-01-05` }),
  ]
  /** Without the search for cheaper trays, which does not look at months and takes most of the time. */
  const startsOf = async (nursery: ReturnType<typeof smallNursery>, today: string) => {
    const plan = await planSeason(nursery, { ...wish, proveSeconds: 0, today })
    return plan.starts.map(({ kind: of, protocol: by, number, bench }) => ({ of, by, number, bench }))
  }

  test('shifting every date by 28 years, after which the calendar repeats, changes nothing but the dates', async () => {
    const now = readSeason(smallNursery(...said(0)), MONDAY)
    const then = readSeason(smallNursery(...said(28)), '2054-01-05')
    expect(then.firstWeek - now.firstWeek).toBe((28 * 1461) / 4 / 7)
    const { firstWeek: _, ...sameNow } = now
    const { firstWeek: __, ...sameThen } = then
    expect(sameThen).toEqual(sameNow)
    const [before, after] = [await costOf(now), await costOf(then)]
    expect(after.starts).toEqual(before.starts)
    expect(after.objective).toBe(before.objective)
  })

  test('shifting every date by 52 weeks begins the same numbers 52 weeks later, but for the week by which months have moved', async () => {
    const later = (years: number) => [
      order('figs', 'fig', 100, years === 0 ? '2026-12-31' : '2027-12-30', {
        earliest: years === 0 ? '2026-12-25' : '2027-12-24',
      }),
    ]
    const [now, then] = [
      await planSeason(smallNursery(...later(0)), { ...wish, today: MONDAY }),
      await planSeason(smallNursery(...later(1)), { ...wish, today: '2027-01-04' }),
    ]
    expect(now.starts.length).toBeGreaterThan(0)
    expect(then.starts.map(({ number }) => number)).toHaveLength(now.starts.length)
    now.starts.forEach(({ week, number, protocol, bench }, s) => {
      expect(then.starts[s]).toMatchObject({ protocol, bench })
      expect(Math.abs(then.starts[s]!.number - number)).toBeLessThanOrEqual(2)
      expect(Math.abs(weekNumber(then.starts[s]!.week) - weekNumber(week) - 52)).toBeLessThanOrEqual(1)
    })
    expect(then.cost / now.cost).toBeCloseTo(1, 1)
  })

  test('at a southern site the southern months count: the same months under the other name give the same plan', async () => {
    const northern = smallNursery(...said(0))
    const swapped = Object.values(protocols).map(
      (each): Said => ({
        kind: 'protocol-set/1',
        protocol: {
          ...each,
          window: {
            ...each.window,
            northMonths: each.window.southMonths,
            southMonths: each.window.northMonths,
          },
        },
      }),
    )
    const southern = smallNursery(
      ...said(0),
      {
        kind: 'site-set/1',
        site: { name: 'Small', latitudeDegrees: -47, longitudeDegrees: 9, heightMetres: 400 },
      },
      ...swapped,
    )
    expect(await startsOf(southern, MONDAY)).toEqual(await startsOf(northern, MONDAY))
  })

  test('half a year later in the other hemisphere, with everything 26 weeks later, the same is begun 26 weeks later', async () => {
    // All windows and months of giving moved by six months; 1 January and 2 July are 26 weeks apart in 2026.
    const later = (month: number) => ((month + 5) % 12) + 1
    const moved: Said[] = [
      {
        kind: 'site-set/1',
        site: { name: 'Small', latitudeDegrees: -47, longitudeDegrees: 9, heightMetres: 400 },
      },
      mother('fig tree', 'fig', [{ material: 'cuttings', months: [3, 4, 5].map(later), perYear: 2000 }]),
      order('figs', 'fig', 100, '2027-07-01', { earliest: '2027-06-25' }),
    ]
    const north = await planSeason(
      smallNursery(order('figs', 'fig', 100, '2026-12-31', { earliest: '2026-12-25' })),
      { ...wish, today: MONDAY },
    )
    const south = await planSeason(smallNursery(...moved), { ...wish, today: '2026-07-06' })
    const begun = (plan: typeof north) => plan.starts.reduce((sum, { number }) => sum + number, 0)
    expect(begun(south)).toBeGreaterThan(0)
    expect(Math.abs(begun(south) - begun(north))).toBeLessThanOrEqual(3)
    expect(south.starts.map(({ kind: of, protocol: by, bench }) => [of, by, bench])).toEqual(
      north.starts.map(({ kind: of, protocol: by, bench }) => [of, by, bench]),
    )
    expect(Math.abs(south.cost / north.cost - 1)).toBeLessThan(0.03)
    // Counted in 200 seasons each: three standard deviations of their difference.
    expect(Math.abs(south.orders[0]!.chance - north.orders[0]!.chance)).toBeLessThan(0.09)
    // Months are not of one length: a week's difference at the edge of the window is theirs.
    const weekOf = (plan: typeof north) => Number(plan.starts[0]!.week.slice(6))
    expect(Math.abs(weekOf(south) - weekOf(north) - 26)).toBeLessThanOrEqual(2)
  })
})
