import { beforeAll, describe, expect, test } from 'vitest'
import type { Nursery } from '../../record/index.ts'
import { commonPractice, inEnglish, ProtocolId, StepId } from '../../trade/index.ts'
import { bench, MONDAY, order, protocols, smallNursery } from '../fixtures/small-nursery.ts'
import type { Plan } from '../plan.ts'
import { planSeason } from '../plan-season.ts'
import { nurseryWith, type Supposed } from './supposed.ts'
import { whatIf, whatIfMemory } from './what-if.ts'

const wish = { today: MONDAY, throughSeq: 1, seasons: 400, seed: 1, proveSeconds: 0 }
const planned = (nursery: Nursery, previous: Plan | null = null) => planSeason(nursery, { ...wish, previous })
const ask = (nursery: Nursery, plan: Plan, supposed: Supposed, memory = whatIfMemory()) =>
  whatIf({ nursery, plan, supposed, today: MONDAY, seasons: wish.seasons, seed: wish.seed }, { memory })
const bed = (squareMetres: number) => bench('mist bed', squareMetres) as Supposed
const otherwise = (nursery: Nursery, id: string, more: Record<string, unknown>): Supposed => {
  const { order: known } = [...nursery.orders.values()].find(({ order: { id: of } }) => of === id)!
  return { kind: 'order-changed/1', order: { ...known, ...more }, why: '' }
}

/** Figs may be stuck in March alone, shorter than they root, so that the bed is filled once. */
const inMarch = {
  kind: 'protocol-set/1',
  protocol: { ...protocols.cutting, window: { ...protocols.cutting.window, northMonths: [3] } },
} as const
const crowded = smallNursery(inMarch, bed(1), order('figs', 'fig', 300, '2026-12-31'))

describe('what if a capacity were another', () => {
  test('one more m² of a full mist bed is worth the trees that root on it, less what they cost: the dual by hand', async () => {
    const plan = await planned(crowded)
    const { prices } = crowded
    // 100 cuttings a m², of which 80 and then 90 in 100 live. A fig is worth 12; it lacks `shortShare` of that when it is
    // never sent. A cutting costs 0.2 and half a minute, a rooted one 0.2 and a minute.
    const trees = 100 * 0.8 * 0.9
    const minute = prices.hour / 60
    const byHand = trees * 12 * prices.shortShare - 100 * (0.2 + 0.5 * minute) - 80 * (0.2 + minute)
    const area = prices.squareMetreWeek * (6 + (80 / 20) * 12)
    const more = await ask(crowded, plan, bed(2))
    expect(more!.saves / (byHand - area)).toBeCloseTo(1, 2)
    expect(more!.weighsLess / (trees * 12 * prices.shortShare)).toBeCloseTo(1, 2)
    expect(more!.starts).toMatchObject([{ kind: 'fig', before: 100, after: 200 }])
  })

  test('asked one after another, the answers are those of each asked by itself; stopped, there is none', async () => {
    const plan = await planned(crowded)
    const memory = whatIfMemory()
    const asked = [bed(3), otherwise(crowded, 'figs', { number: 60 }), bed(0.5), bed(3)]
    const together = []
    for (const supposed of asked) together.push(await ask(crowded, plan, supposed, memory))
    for (const [i, supposed] of asked.entries()) {
      const alone = await ask(crowded, plan, supposed)
      expect(together[i]!.orders).toEqual(alone!.orders)
      expect(together[i]!.starts).toEqual(alone!.starts)
      expect(together[i]!.limits.gone.length).toBe(alone!.limits.gone.length)
      expect(together[i]!.saves).toBeCloseTo(alone!.saves, 4)
    }
    const question = { nursery: crowded, plan, supposed: bed(3), today: MONDAY, seasons: 400, seed: 1 }
    expect(await whatIf(question, { memory, isStopped: () => true })).toBeNull()
  })

  test('what is as it is changes nothing', async () => {
    const plan = await planned(crowded)
    expect(await ask(crowded, plan, bed(1))).toEqual({
      saves: 0,
      weighsLess: 0,
      orders: [],
      limits: { gone: [], added: [] },
      starts: [],
    })
  })

  test('a bed large enough loses its limit, the order becomes as sure as asked, and more is begun; taken away again, all comes back', async () => {
    const plan = await planned(crowded)
    const more = await ask(crowded, plan, bed(6))
    expect(more!.limits.gone.map(({ subject }) => inEnglish(subject))).toContain('mist bed')
    expect(more!.orders).toHaveLength(1)
    expect(more!.orders[0]!.before).toBeLessThan(0.01)
    expect(more!.orders[0]!.after).toBeGreaterThan(0.88)
    expect(more!.starts.reduce((sum, { before, after }) => sum + after - before, 0)).toBeGreaterThan(250)

    const roomy = nurseryWith(crowded, bed(6), MONDAY)!
    const back = await ask(roomy, await planned(roomy), bed(1))
    // Where there is room the order's margin is settled, and without room stays where it began: a tree of it weighs 18.
    expect(back!.saves / -more!.saves).toBeCloseTo(1, 2)
    expect(back!.limits.added.map(({ subject }) => inEnglish(subject))).toContain('mist bed')
    expect(back!.orders[0]!.after).toBeLessThan(0.01)
  })
})

const calm = smallNursery(
  order('figs', 'fig', 120, '2026-12-31', { sure: 0.8 }),
  order('berries', 'mulberry', 80, '2026-12-31'),
  order('pears', 'pear', 60, '2027-12-31'),
)

describe('what if an order or a rate were another', () => {
  const cases: readonly (readonly [string, (nursery: Nursery) => Supposed])[] = [
    ['an order of half as many again', nursery => otherwise(nursery, 'figs', { number: 180 })],
    ['an order that is to be surer', nursery => otherwise(nursery, 'figs', { sure: 0.95 })],
    ['an order that need be less sure', nursery => otherwise(nursery, 'berries', { sure: 0.6 })],
    [
      'an order due half a year later',
      nursery => otherwise(nursery, 'figs', { due: '2027-06-30', latest: '2027-06-30' }),
    ],
    ['a rate of rooting of 60 in 100', () => rooting(0.6)],
    ['a bed too small for both', () => bed(1)],
  ]
  let plan: Plan
  beforeAll(async () => {
    plan = await planned(calm)
  })

  test.for(cases)(
    '%s costs what planning anew with it does, and leaves no order less sure',
    async ([, supposed]) => {
      const said = supposed(calm)
      const answer = await ask(calm, plan, said)
      const anew = await planned(nurseryWith(calm, said, MONDAY)!)
      const within = plan.gapShare * plan.cost + anew.gapShare * anew.cost + 0.02 * plan.cost
      expect(Math.abs(answer!.saves - (plan.cost - anew.cost))).toBeLessThan(within)
      for (const { order: id, asked, after } of answer!.orders) {
        const { chance } = anew.orders.find(({ order: of }) => of === id)!
        expect(after).toBeGreaterThan(Math.min(asked, chance) - 0.03)
      }
    },
  )
})

const rooting = (typical: number): Supposed => ({
  kind: 'rate-set/1',
  protocol: ProtocolId.parse('cutting'),
  step: StepId.parse('rooting'),
  kindOfTree: null,
  survival: commonPractice(typical - 0.02, typical, typical + 0.02),
  why: 'a poor bed',
})
