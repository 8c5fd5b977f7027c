import { expect, test } from 'vitest'
import { inEnglish } from '../trade/index.ts'
import { cultivar, kind, MONDAY, mother, order, type Said, smallNursery } from './fixtures/small-nursery.ts'
import { planSeason } from './plan-season.ts'
import { readSeason } from './reading/read-season.ts'
import { shownPlan } from './replan/shown-plan.ts'
import { orderChances } from './simulate/outcome.ts'
import { simulateSeasons } from './simulate/simulate-seasons.ts'
import { withPlanted } from './simulate/wood.ts'

const planned = (...said: readonly Said[]) =>
  planSeason(smallNursery(...said), {
    today: MONDAY,
    throughSeq: 1,
    seasons: 200,
    seed: 1,
    proveSeconds: 0.5,
  })

test('building up a new cultivar: a large order three years away is answered with when and how many mothers to plant', async () => {
  const newcomer: Said[] = [
    cultivar('newcomer'),
    kind('newcomer', { price: 18, ways: [{ protocol: 'cutting' }] }),
    mother('newcomer tree', 'newcomer', [{ material: 'cuttings', months: [3, 4, 5], perYear: 100 }]),
  ]
  const few = await planned(...newcomer, order('few', 'newcomer', 30, '2026-12-31'))
  expect(few.plantings).toEqual([])
  const many = await planned(
    ...newcomer,
    order('many', 'newcomer', 600, '2029-12-31', { earliest: '2029-10-01' }),
  )
  // 600 trees take 840 cuttings or so; one mother gives 100 a season, so eight more that are grown by 2029.
  const trees = many.plantings.reduce((sum, { number }) => sum + number, 0)
  expect(trees).toBeGreaterThanOrEqual(7)
  expect(trees).toBeLessThanOrEqual(12)
  expect(many.plantings[0]!.week < '2027').toBe(true)
  expect(inEnglish(many.plantings[0]!.sentence)).toMatch(
    /^Plant \d+ mother trees of newcomer by week \d+ of 2026/,
  )
  expect(many.starts.every(({ week }) => week.startsWith('2029'))).toBe(true)
  expect(many.orders[0]!.chance).toBeGreaterThan(0.85)
  expect(many.orders[0]!.chance).toBeLessThan(1)

  // Shown again with a mother tree fewer to be planted than it takes, the order is seen not to have the wood.
  const fewer = {
    ...many,
    plantings: many.plantings.map((planting, p) => (p === 0 ? { ...planting, number: 1 } : planting)),
  }
  const season = readSeason(
    smallNursery(...newcomer, order('many', 'newcomer', 600, '2029-12-31', { earliest: '2029-10-01' })),
    MONDAY,
  )
  const chance = (plan: typeof many) => {
    const { starts, bought, planted } = shownPlan(smallNursery(...newcomer), season, plan)
    const input = { from: 200, to: 400, seed: 1, bought }
    return orderChances(season, simulateSeasons(withPlanted(season, planted), starts, input))[0]!.chance
  }
  expect(chance(many)).toBe(many.orders[0]!.chance)
  expect(chance(fewer)).toBeLessThan(0.2)
})
