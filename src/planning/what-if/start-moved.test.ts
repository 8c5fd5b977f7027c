import { expect, test } from 'vitest'
import { inEnglish } from '../../trade/index.ts'
import { MONDAY, order, smallNursery } from '../fixtures/small-nursery.ts'
import { planSeason } from '../plan-season.ts'
import { startMoved } from './start-moved.ts'

test('a start left as it is changes nothing and lacks nothing; halved, or in a week in which it may not begin, it fails its order; orders that it cannot touch are not named; a hundred times as many lack room and hands', async () => {
  const nursery = smallNursery(
    order('figs', 'fig', 100, '2026-12-31'),
    order('more', 'mulberry', 50, '2027-03-31'),
  )
  const plan = await planSeason(nursery, {
    today: MONDAY,
    throughSeq: 1,
    seasons: 200,
    seed: 1,
    proveSeconds: 0.2,
  })
  const fig = plan.starts.find(({ kind }) => kind === 'fig')!
  const ask = (week: string, number: number) =>
    startMoved(nursery, plan, { start: fig.id, week, number, today: MONDAY })!
  const figs = (said: ReturnType<typeof ask>) => said.orders.find(({ order: id }) => id === 'figs')!

  const same = ask(fig.week, fig.number)
  expect(same.isOpen).toBe(true)
  expect(same.lacks).toEqual([])
  for (const { before, after } of same.orders) expect(after).toBe(before)
  expect(figs(same).before).toBeGreaterThan(0.8)
  // Half the cuttings, of which 72 in 100 are finished: no season gives a hundred.
  expect(figs(ask(fig.week, fig.number / 2)).after).toBeLessThan(0.05)
  // Figs are stuck from March on: in the first week of the year they may not be, and without them the order fails.
  const shut = ask('2026-W02', fig.number)
  expect(shut.isOpen).toBe(false)
  expect(figs(shut).after).toBe(0)
  const lacks = ask(fig.week, 100 * fig.number)
    .lacks.map(inEnglish)
    .join('; ')
  expect(lacks).toMatch(/is full in week/)
  expect(lacks).toMatch(/hands for .* are all taken/)
  expect(same.orders.map(({ order: id }) => id)).not.toContain('more')
  expect(startMoved(nursery, plan, { start: 'none', week: fig.week, number: 1, today: MONDAY })).toBeNull()
})
