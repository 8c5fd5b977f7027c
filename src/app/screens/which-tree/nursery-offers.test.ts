import { expect, test } from 'vitest'
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
  const [offer, ...rest] = nurseryOffers({ species: 'apple', trees: 1, cultivar: '' }, kinds, [batch(4, 0)])
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
    nurseryOffers({ species: 'apple', trees: 5, cultivar: '' }, kinds, batches)[0]!.waitYears
  expect(waits(batch(5, 0))).toBe(0)
  expect(waits(batch(2, 10))).toBe(1)
  expect(waits(batch(2, 0))).toBe(2)
  expect(waits(batch(50, 50, true))).toBe(2)
})

test('kinds that differ only in cultivar are one offer at the lowest price; a name picks among them', () => {
  const two = [kind('pippin'), kind('russet', { price: 19 })]
  const ask = (cultivar: string) => nurseryOffers({ species: 'apple', trees: 1, cultivar }, two, [])
  expect(ask('')).toHaveLength(1)
  expect(ask('')[0]).toMatchObject({ label: 'pippin, russet', price: 19 })
  expect(ask('Pippin')[0]).toMatchObject({ label: 'pippin', price: 24 })
})
