import { describe, expect, test } from 'vitest'
import { bench, MONDAY, order, type Said, smallNursery } from '../fixtures/small-nursery.ts'
import { planSeason } from '../plan-season.ts'

const planned = (...said: readonly Said[]) =>
  planSeason(smallNursery(...said), {
    today: MONDAY,
    throughSeq: 1,
    seasons: 200,
    seed: 1,
    proveSeconds: 0.5,
  })
const figs = (id: string, number: number, due: string) =>
  order(id, 'fig', number, due, { earliest: '2026-09-07', sure: 0.8 })
const closely = (number: number) => [
  figs('A', number, '2026-09-27'),
  figs('B', number, '2026-10-04'),
  figs('C', number, '2026-10-11'),
]

describe('one batch or several', () => {
  test('figs for three buyers within three weeks are stuck together: a batch less is worth more than holding some for a week or two', async () => {
    // A batch less is worth half an hour at 20, 10 in all; two dozen figs held for two weeks cost less.
    const { starts, orders } = await planned(bench('mist bed', 10), ...closely(24))
    expect(starts).toHaveLength(1)
    for (const { chance, asked } of orders) expect(chance).toBeGreaterThanOrEqual(asked - 0.015)
  })

  test('where the mist bed holds not half of them they are stuck in turn, each batch as large as the bed', async () => {
    // 1 m² roots 100 cuttings in six weeks, and March to May holds that twice, with a few weeks over.
    const { starts } = await planned(bench('mist bed', 1), ...closely(60))
    expect(starts.length).toBeGreaterThanOrEqual(2)
    expect(starts.length).toBeLessThanOrEqual(4)
    for (const { number } of starts) expect(number).toBeLessThanOrEqual(101)
  })

  test('that a batch less is worth something is weighed and not paid: the cost is that of its parts', async () => {
    const { cost, costParts } = await planned(bench('mist bed', 10), ...closely(24))
    expect(Object.values(costParts).reduce((sum, part) => sum + part, 0)).toBeCloseTo(cost, 0)
  })
})
