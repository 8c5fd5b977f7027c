import { expect, test } from 'vitest'
import { inEnglish, KindId } from '../../trade/index.ts'
import { bench, MONDAY, order, person, type Said, smallNursery } from '../fixtures/small-nursery.ts'
import { planSeason } from '../plan-season.ts'
import { couldBePromised } from './could-be-promised.ts'

const asked = (number: number, sure = 0.9) => ({ kind: KindId.parse('fig'), number, sure, today: MONDAY })
const after = async (...said: Said[]) => {
  const nursery = smallNursery(...said)
  const plan = await planSeason(nursery, {
    today: MONDAY,
    throughSeq: 1,
    seasons: 200,
    seed: 1,
    proveSeconds: 0.2,
  })
  return { nursery, plan }
}

test('beside the orders little is left of what is planned; what is asked beyond is begun in the first open week', async () => {
  const { nursery, plan } = await after(order('figs', 'fig', 100, '2026-12-31'))
  const said = couldBePromised(nursery, plan, asked(50))!
  expect(said.fromPlan).toBeNull()
  // Figs are stuck from March on, 126 days: ready in July.
  expect(said.ifBegun).toMatchObject({ protocol: 'cutting', week: '2026-W10' })
  expect(said.ifBegun!.number).toBeGreaterThanOrEqual(50 / 0.72)
  expect(said.ifBegun!.chance).toBeGreaterThanOrEqual(0.9)
  expect(said.numbers).toHaveLength(plan.weeks)
  for (const [week, number] of said.numbers.entries()) expect(number).toBeLessThanOrEqual(said.middle[week]!)
  expect(couldBePromised(nursery, plan, { ...asked(50), kind: KindId.parse('plum') })).toBeNull()
})

test('where the mist bed is full of what is planned, a promise waits until it has room, and says so', async () => {
  // One square metre roots 100 cuttings; the orders take all of it in spring.
  const { nursery, plan } = await after(
    bench('mist bed', 1),
    person('Ben', ['cuttings', 'seed', 'general', 'potting']),
    order('figs', 'fig', 200, '2026-12-31'),
  )
  const said = couldBePromised(nursery, plan, asked(50))!
  expect(said.lack && inEnglish(said.lack)).toMatch(/^the mist bed is full in week \d+$/)
  expect(said.ifBegun === null || said.ifBegun.week > '2026-W18').toBe(true)
})
