import { expect, test } from 'vitest'
import { speciesById } from '../../../trade/facts/index.ts'
import { Kind } from '../../../trade/index.ts'
import { nurseryOffers } from './nursery-offers.ts'

const kind = (id: string, more: Record<string, unknown> = {}) =>
  Kind.parse({
    id,
    name: id,
    species: 'apple',
    cultivars: [],
    form: 'worked',
    size: '5 l pot',
    price: 24,
    holdingCostPerWeek: 0,
    ways: [],
    ...more,
  })
const kinds = [
  kind('pippin', { rootstock: 'half' }),
  kind('half', { form: 'rootstock', name: 'semi-dwarfing stock' }),
  kind('fig', { species: 'fig' }),
]
const batch = (finished: number, standing: number, onHold = false) => ({
  kind: kinds[0]!.id,
  finished,
  standing,
  onHold,
})

test('only kinds of the fruit that are sold as trees are offered, with price and stock', () => {
  const [offer, ...rest] = nurseryOffers({ species: speciesById('apple')!, trees: 1, cultivar: '' }, kinds, [
    batch(4, 0),
  ])
  expect(rest).toEqual([])
  expect(offer).toMatchObject({
    form: 'worked',
    rootstock: 'semi-dwarfing',
    price: 24,
    waitYears: 0,
    chance: 1,
  })
})

test('what still grows is promised for later, what is not begun later still, and what is on hold not at all', () => {
  const waits = (...batches: ReturnType<typeof batch>[]) =>
    nurseryOffers({ species: speciesById('apple')!, trees: 5, cultivar: '' }, kinds, batches)[0]!.waitYears
  expect(waits(batch(5, 0))).toBe(0)
  expect(waits(batch(2, 10))).toBe(1)
  expect(waits(batch(2, 0))).toBe(2)
  expect(waits(batch(50, 50, true))).toBe(2)
})

test('kinds that differ only in cultivar are one offer at the lowest price; a name picks among them', () => {
  const two = [kind('pippin'), kind('russet', { price: 19 })]
  const ask = (cultivar: string) =>
    nurseryOffers({ species: speciesById('apple')!, trees: 1, cultivar }, two, [])
  expect(ask('')).toHaveLength(1)
  expect(ask('')[0]).toMatchObject({ label: 'pippin, russet', price: 19 })
  expect(ask('Pippin')[0]).toMatchObject({ label: 'pippin', price: 24 })
})

test('what the plan could promise goes before the guess: by its week and chance, or as if it were begun now', () => {
  const promise = { kind: kinds[0]!.id, firstWeek: '2026-W10', fromPlan: null, ifBegun: null }
  const ask = (more: object) =>
    nurseryOffers(
      { species: speciesById('apple')!, trees: 5, cultivar: '' },
      kinds,
      [batch(9, 0)],
      [{ ...promise, ...more }],
    )[0]!
  const soon = ask({ fromPlan: { week: '2026-W36', chance: 0.93 } })
  expect(soon.chance).toBe(0.93)
  expect(soon.waitYears).toBeCloseTo(26 / 52.18, 6)
  const begun = { protocol: 'p', week: '2026-W12', number: 9, readyWeek: '2027-W38', chance: 0.8 }
  expect(ask({ ifBegun: begun }).waitYears).toBeGreaterThan(1.4)
  expect(ask({})).toMatchObject({ waitYears: 0, chance: 1 })
})
