import { Cultivar, EntryId, Kind, Protocol } from '../trade/index.ts'
import { Body, type Entry } from './entry.ts'
import { Bench, Mother, Order } from './register.ts'

/** The registers that histories written with `readHistory` stand on, for tests and examples. Invented. */

const exact = (typical: number) => ({ low: typical, typical, high: typical, basis: 'set by the nursery' })

const protocol = (id: string, method: string, stepIds: readonly string[]) =>
  Protocol.parse({
    id,
    name: id,
    version: 1,
    method,
    species: null,
    basedOn: null,
    window: { condition: '', northMonths: [], southMonths: [], basis: 'set by the nursery' },
    before: [],
    takes: [],
    steps: stepIds.map(step => ({
      id: step,
      name: step,
      place: 'mist bed',
      days: exact(30),
      survival: exact(0.9),
      sign: step === 'mist' ? 'rooted' : step === 'healing' ? 'united' : 'alive',
      plantsPerSquareMetre: null,
      work: [],
    })),
    tray: 1,
    smallestBatch: 1,
    usableDays: 90,
    caliper: null,
    cautions: [],
  })

const kind = (id: string, cultivars: readonly string[], form: string) =>
  Kind.parse({
    id,
    name: id,
    species: 'apple',
    cultivars,
    form,
    size: '',
    price: 10,
    holdingCostPerWeek: 0,
    ways: [],
  })

const cultivar = (id: string) => Cultivar.parse({ id, name: id, species: 'apple' })

const mother = (id: string, of: string) =>
  Mother.parse({
    id,
    name: id,
    cultivar: of,
    gives: [{ material: 'cuttings', months: [5, 6, 7], perYear: 200 }],
  })

const order = (id: string, number: number) =>
  Order.parse({
    id,
    buyer: 'a buyer',
    kind: 'tree',
    number,
    earliest: '2026-01-01',
    due: '2026-12-01',
    latest: '2027-06-01',
    sure: 0.9,
  })

const said = [
  { kind: 'cultivar-set/1', cultivar: cultivar('Amber Russet') },
  { kind: 'cultivar-set/1', cultivar: cultivar('Winter Lantern') },
  { kind: 'kind-set/1', kindOfTree: kind('tree', ['Amber Russet'], 'cutting-grown') },
  { kind: 'kind-set/1', kindOfTree: kind('stock', [], 'rootstock') },
  {
    kind: 'protocol-set/1',
    protocol: protocol('cuttings', 'softwood_cutting', ['mist', 'weaning', 'growing on']),
  },
  { kind: 'protocol-set/1', protocol: protocol('grafting', 'veneer_graft', ['healing', 'growing on']) },
  ...['mist-1', 'mist-2', 'shade-1'].map(id => ({
    kind: 'bench-set/1',
    bench: Bench.parse({ id, name: id, place: 'mist bed', areaSquareMetres: 10 }),
  })),
  { kind: 'mother-set/1', mother: mother('M1', 'Amber Russet') },
  { kind: 'mother-set/1', mother: mother('M2', 'Winter Lantern') },
  ...['O1', 'O2', 'O3'].map(id => ({ kind: 'order-placed/1', order: order(id, 100) })),
]

/** One entry each, the day before histories begin. */
export const exampleRegisters: readonly Entry[] = said.map((body, i) => ({
  id: EntryId.parse(`019a0000-0000-7000-8000-${String(i + 1).padStart(12, '0')}`),
  on: '2025-12-31',
  at: null,
  by: null,
  device: 'example',
  body: Body.parse(body) as Entry['body'],
}))
