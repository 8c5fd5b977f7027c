import { beforeAll, describe, expect, test } from 'vitest'
import type { Nursery } from '../../record/index.ts'
import { OrderId } from '../../trade/index.ts'
import { inventedNursery } from '../fixtures/invented-nursery.ts'
import { bench, MONDAY, order, smallNursery } from '../fixtures/small-nursery.ts'
import type { Plan } from '../plan.ts'
import { planMemory } from '../plan-memory.ts'
import { type PlanJobHooks, planSeason } from '../plan-season.ts'

const nursery = inventedNursery({
  kinds: 40,
  ordersPerKind: 1,
  treesPerOrder: 80,
  today: MONDAY,
  seed: 4,
  room: 2,
})
const wish = { today: MONDAY, throughSeq: 0, seasons: 200, seed: 1, proveSeconds: 0 }
const memory = planMemory()
const planned = (of: Nursery, previous: Plan | null = null, hooks: PlanJobHooks = { memory }) =>
  planSeason(of, { ...wish, previous }, hooks)

let first: Plan
beforeAll(async () => {
  first = await planned(nursery)
})

/** One order, with so many of its trees sent out already. */
const smallerBy = (trees: number, which = 5): Nursery => {
  const [id, state] = [...nursery.orders][which]!
  return { ...nursery, orders: new Map(nursery.orders).set(id, { ...state, dispatched: trees }) }
}
const numbers = ({ starts }: Plan) => new Map(starts.map(({ id, number }) => [id, number]))
/** Starts of either plan that are not in the other with the same number. */
const different = (a: Plan, b: Plan) => {
  const [of, other] = [numbers(a), numbers(b)]
  return [...new Set([...of.keys(), ...other.keys()])].filter(id => of.get(id) !== other.get(id))
}

describe('a plan made after another', () => {
  test('changes nothing where nothing has happened', async () => {
    const again = await planned(nursery, first)
    expect(again.starts).toEqual(first.starts)
    expect(again.orders.map(({ chance }) => chance)).toEqual(first.orders.map(({ chance }) => chance))
    expect(again.cost).toBeCloseTo(first.cost, 0)
  })

  test('after one order became smaller, changes only starts of kinds that touch it, and each order keeps its sureness', async () => {
    const trees = Math.round(first.orders[5]!.wanted / 2)
    const after = await planned(smallerBy(trees), first)
    const changed = different(first, after)
    expect(changed.length).toBeGreaterThan(0)
    expect(changed.length).toBeLessThan(0.1 * first.starts.length)
    after.orders.forEach(({ chance, asked }, o) => {
      expect(chance).toBeGreaterThanOrEqual(Math.min(asked, first.orders[o]!.chance) - 0.015)
    })
    expect(after.cost).toBeLessThan(first.cost)
  })

  test('after a new order, begins what it needs and leaves the rest', async () => {
    const [, state] = [...nursery.orders][3]!
    const id = OrderId.parse('newly come')
    const placed = { ...state.order, id, number: 40 }
    const more = { ...nursery, orders: new Map(nursery.orders).set(id, { ...state, order: placed }) }
    const after = await planned(more, first)
    const changed = different(first, after)
    expect(changed.length).toBeGreaterThan(0)
    expect(changed.length).toBeLessThan(0.15 * first.starts.length)
    const made = after.orders.find(({ order: of }) => of === id)!
    expect(made.chance).toBeGreaterThanOrEqual(made.asked - 0.05)
  })

  test('has what was shown give way to a dearer order that lacks the room, and only then', async () => {
    // One square metre of mist roots 100 cuttings at a time; figs are worth twice the mulberries.
    const said = [bench('mist bed', 1), order('berries', 'mulberry', 130, '2026-12-31')]
    const before = await planned(smallNursery(...said))
    const after = await planned(smallNursery(...said, order('figs', 'fig', 130, '2026-12-31')), before)
    const [berries, figs] = after.orders
    expect(figs!.short).toBeLessThan(10)
    expect(berries!.short).toBeGreaterThan(30)
  })

  test('keeps its starts, and is not made anew, though their whole plants are a little more than the full bed holds', async () => {
    // 1.005 m² holds 100.5 cuttings at a time; counted in whole plants a start may be shown as 101.
    const full = smallNursery(bench('mist bed', 1.0052), order('figs', 'fig', 300, '2026-12-31'))
    const made = await planned(full)
    const starts = made.starts.map(start => (start.number === 100 ? { ...start, number: 101 } : start))
    expect(starts.map(({ number }) => number)).toContain(101)
    const stages = new Set<string>()
    const after = await planned(
      full,
      { ...made, starts },
      { onProgress: ({ stage }) => void stages.add(stage) },
    )
    expect(numbers(after)).toEqual(numbers({ ...made, starts }))
    expect(stages).not.toContain('margins')
  })

  test('is the same with and without what the thread remembers', async () => {
    const fresh = await planned(smallerBy(20), first, {})
    const remembered = await planned(smallerBy(20), first)
    expect(remembered).toEqual(fresh)
  })

  test('is made anew where what is registered has changed, and starts still stand where moving them saves little', async () => {
    const dearer = { ...nursery, prices: { ...nursery.prices, hour: nursery.prices.hour * 1.05 } }
    const after = await planned(dearer, first)
    expect(different(first, after).length).toBeLessThan(0.35 * first.starts.length)
  })
})
