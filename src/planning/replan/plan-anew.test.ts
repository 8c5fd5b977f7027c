import { expect, test } from 'vitest'
import { tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { BATCH_MINUTES } from '../reading/batch-minutes.ts'
import { orderChances } from '../simulate/outcome.ts'
import { planAnew } from './plan-anew.ts'

/** Batches fare differently: in nine cases of ten between 45 and 90 in 100 live. Two or three batches vary less than one. */
const seasonWhereABatchIsWorth = (batch: number) => {
  // What a batch less is worth follows from the price of a minute.
  const minute = batch / BATCH_MINUTES
  return tinySeason({
    weeks: 70,
    kinds: [tinyKind('own-rooted', { usableWeeks: 20 })],
    ways: [
      {
        kind: 0,
        steps: [{ alpha: 7, beta: 3, days: 90 }],
        costPerPlant: 1,
        openWeeks: [20, 24, 28, 32],
      },
    ],
    orders: [{ kind: 0, number: 200, earliestWeek: 46, dueWeek: 50, sure: 0.9, price: 40 }],
    more: {
      prices: { minute, overtimeMinute: minute + 1, missedShare: 3, latePerWeekShare: 0.05, shortShare: 4 },
    },
  })
}
const planned = async (batch: number) => {
  const season = seasonWhereABatchIsWorth(batch)
  const input = { season, seasons: 2000, seed: 1, proveSeconds: 0, isStopped: () => false }
  const { starts, fresh } = await planAnew(input)
  const [order] = orderChances(season, fresh)
  return {
    batches: starts.length,
    begun: starts.reduce((sum, { number }) => sum + number, 0),
    chance: order!.chance,
  }
}

test('few orders whose batches fare very differently are begun in several batches of fewer plants, unless a batch more is dearer than the plants', async () => {
  const cheap = await planned(0)
  const dear = await planned(200)
  expect(dear.batches).toBe(1)
  expect(cheap.batches).toBeGreaterThan(1)
  expect(cheap.begun).toBeLessThan(0.95 * dear.begun)
  for (const { chance } of [cheap, dear]) expect(chance).toBeGreaterThan(0.9 - 0.015)
})
