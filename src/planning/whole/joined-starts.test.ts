import { describe, expect, test } from 'vitest'
import { bench, MONDAY, order, type Said, smallNursery } from '../fixtures/small-nursery.ts'
import { planSeason } from '../plan-season.ts'

const planned = (...said: readonly Said[]) =>
  planSeason(smallNursery(...said), { today: MONDAY, throughSeq: 1, seasons: 200, seed: 1, proveSeconds: 0.5 })
const figs = (id: string, due: string) => order(id, 'fig', 60, due, { earliest: '2026-09-07', sure: 0.8 })
const closely = [figs('A', '2026-09-27'), figs('B', '2026-10-04'), figs('C', '2026-10-11')]

describe('one batch or several', () => {
  test('figs for three buyers within three weeks are stuck together: a batch less is worth more than holding some for a week or two', async () => {
    // A batch less is worth half an hour at 20, 10 in all; 60 figs held for two weeks cost a few units.
    const { starts, orders } = await planned(bench('mist bed', 10), ...closely)
    expect(starts).toHaveLength(1)
    for (const { chance, asked } of orders) expect(chance).toBeGreaterThanOrEqual(asked - 0.015)
  })

  test('where the mist bed holds not half of them they are stuck in turn, each batch as large as the bed', async () => {
    // 1 m² roots 100 cuttings in six weeks, and March to May holds that twice, with a few weeks over.
    const { starts } = await planned(bench('mist bed', 1), ...closely)
    expect(starts.length).toBeGreaterThanOrEqual(2)
    expect(starts.length).toBeLessThanOrEqual(4)
    for (const { number } of starts) expect(number).toBeLessThanOrEqual(101)
  })

  test('that a batch less is worth something is weighed and not paid: the cost is that of its parts', async () => {
    const { cost, costParts } = await planned(bench('mist bed', 10), ...closely)
    expect(Object.values(costParts).reduce((sum, part) => sum + part, 0)).toBeCloseTo(cost, 0)
  })
})
