import { expect, test } from 'vitest'
import { makeDemoEntries } from '../../demo/index.ts'
import { Bench, type Body, foldEntries, type Nursery, Person } from '../../record/index.ts'
import { CultivarId } from '../../trade/index.ts'
import { csv, entriesOf, none, nurseryOf, read } from '../fixtures/read-files.ts'
import { tableCsv } from './data-package.ts'
import { tablesOf } from './tables.ts'

const today = '2026-11-24'
let told = 0
/** The invented nursery with more said of it. */
const withSaid = (...bodies: Body[]): Nursery =>
  foldEntries([
    ...makeDemoEntries({ seed: 1, today }),
    ...bodies.map(body => {
      told += 1
      const id = `019f0000-0000-7000-8000-${String(told).padStart(12, '0')}` as never
      return { id, on: today, at: null, by: null, device: 'test', body }
    }),
  ])
const written = (nursery: Nursery, name: string) => ({
  name: `${name}.csv`,
  bytes: new TextEncoder().encode(tableCsv(tablesOf(nursery).find(table => table.name === name)!)),
})

const base = foldEntries(makeDemoEntries({ seed: 1, today }))
const closed = [
  { from: '2027-06-01', to: '2027-06-05', areaSquareMetres: 2, why: 'new heating; and paint, green' },
  { from: '2027-07-01', to: '2027-07-01', areaSquareMetres: 6, why: '' },
]
const away = [
  { from: '2027-08-02', to: '2027-08-13' },
  { from: '2027-12-24', to: '2027-12-31' },
]
const bench = Bench.parse({ ...[...base.benches.values()].find(({ name }) => name === 'Mist bed 1'), closed })
const person = Person.parse({ ...[...base.people.values()][1], away })
const nursery = withSaid({ kind: 'bench-set/1', bench }, { kind: 'person-set/1', person })

test('closed days of a place and days away of a person go out and come in again: read into a new nursery they are the same', async () => {
  const reading = await read([written(nursery, 'benches'), written(nursery, 'people')])
  expect(reading.questions).toEqual([])
  expect(reading.cells).toEqual([])
  const again = nurseryOf(reading)
  expect([...again.benches.values()].find(({ name }) => name === bench.name)!.closed).toEqual(closed)
  expect([...again.people.values()].find(({ name }) => name === person.name)).toEqual(person)
})

test('benches and people written out and read in again change nothing', async () => {
  const reading = await read([written(nursery, 'benches'), written(nursery, 'people')], { nursery })
  expect(reading.told).toEqual([])
})

const supplies = [
  { material: 'cuttings', perYear: 300, perWeek: 30, months: [5, 6] },
  { material: 'cuttings', perYear: 40, perWeek: null, months: [11, 12, 1] },
  { material: 'scion sticks', perYear: 60, perWeek: null, months: [] },
] as const
const { mother: first } = [...base.mothers.values()][0]!
const giving = withSaid(
  { kind: 'mother-set/1', mother: { ...first, gives: supplies } },
  { kind: 'mother-retired/1', mother: [...base.mothers.keys()][1]!, why: '' },
)

test('what mother trees give, in which months and how much in a week, goes out and comes in again with their names, places and cultivars', async () => {
  const tables = [written(giving, 'cultivars'), written(giving, 'mothers')]
  const reading = await read(tables)
  expect(reading.questions).toEqual([])
  expect(reading.cells).toEqual([])
  const again = nurseryOf(reading)
  expect(again.mothers.get(first.id)!.mother).toEqual({ ...first, gives: supplies })
  const trees = (of: Nursery) =>
    [...of.mothers.values()].map(({ mother, retired }) => [mother.id, mother.gives, retired?.on ?? null])
  expect(trees(again)).toEqual(trees(giving))
  expect((await read(tables, { nursery: giving })).told).toEqual([])
})

test('months typed beside what a mother gives are taken; those that are no months are named, and the usual ones stand', async () => {
  const trees = (...rows: (string | number | null)[][]) =>
    csv('mothers.csv', ['Mother tree', 'Tree', 'Cuttings a year', 'Gives in', 'What it gives'], ...rows)
  const reading = await read([
    trees(
      ['M1', 'Fig ‘Amber Jar’', 300, 'Nov to Feb', null],
      ['M2', 'Fig ‘Amber Jar’', 300, 'whenever', null],
      ['M3', 'Fig ‘Amber Jar’', null, null, '100 cuttings in Jan, at most 20 a week; 50 scion sticks'],
    ),
  ])
  const gives = [...nurseryOf(reading).mothers.values()].map(({ mother }) => mother.gives)
  expect(gives[0]).toMatchObject([{ material: 'cuttings', perYear: 300, months: [11, 12, 1, 2] }])
  expect(reading.cells).toMatchObject([{ row: 3, column: 'D', said: 'whenever', rowLost: false }])
  expect(gives[1]![0]!.months).not.toEqual(gives[0]![0]!.months)
  expect(gives[2]).toMatchObject([
    { material: 'cuttings', perYear: 100, perWeek: 20, months: [1] },
    { material: 'scion sticks', perYear: 50, perWeek: null },
  ])
})

const evening = [...base.kinds.values()].find(({ name }) => name === 'Apple ‘Evening Bell’')!
const abbot = CultivarId.parse('pear-grey-abbot')
const grown = withSaid({ kind: 'kind-set/1', kindOfTree: { ...evening, interstem: abbot } })
const kindsOf = (of: Nursery) => [...of.kinds.values()]

test('kinds of tree go out and come in again with all their cultivars, interstems, stocks, prices and ways', async () => {
  expect(kindsOf(grown).some(({ cultivars }) => cultivars.length > 1)).toBe(true)
  const tables = [written(grown, 'cultivars'), written(grown, 'kinds')]
  const reading = await read(tables)
  expect(reading.questions).toEqual([])
  expect(reading.cells).toEqual([])
  const again = nurseryOf(reading)
  expect(kindsOf(again)).toEqual(kindsOf(grown))
  const ways = kindsOf(again).flatMap(kind => kind.ways.map(({ protocol }) => protocol))
  expect(ways.filter(id => !again.protocols.has(id))).toEqual([])
})

test('all tables of things that stay, and of orders, written out and read in again change nothing', async () => {
  const names = ['benches', 'people', 'cultivars', 'kinds', 'mothers', 'orders']
  const reading = await read(
    names.map(name => written(grown, name)),
    { nursery: grown },
  )
  expect(reading.questions).toEqual([])
  expect(reading.told).toEqual([])
})

test('an order that was cancelled, and one that is sent, go out as such and do not come alive in a new nursery', async () => {
  const [over, gone] = [...base.orders.values()].map(({ order }) => order)
  const { orders } = withSaid(
    { kind: 'order-cancelled/1', order: over!.id, why: 'no room' },
    {
      kind: 'dispatched/1',
      batch: [...base.batches.keys()][0]!,
      order: gone!.id,
      number: gone!.number,
      to: '',
    },
  )
  const reading = await read([written({ ...base, orders }, 'kinds'), written({ ...base, orders }, 'orders')])
  const again = nurseryOf(reading).orders
  const isThere = (id: typeof over) => again.has(id!.id)
  expect([isThere(over), isThere(gone)]).toEqual([false, false])
  const open = [...orders.values()].filter(one => !one.cancelled && one.dispatched < one.order.number)
  expect([...again.keys()].sort()).toEqual(open.map(({ order }) => order.id).sort())
})

test('closed days typed in a spreadsheet are taken, all of a place where nothing else is said; a blank cell leaves them as they were', async () => {
  const places = (closedDays: string | null) =>
    csv(
      'benches.csv',
      ['Bench', 'Kind of place', 'Square metres', 'Closed days'],
      ['Mist 1', 'mist', 8, closedDays],
    )
  const first = await read([places('3/4/2027 to 5/4/2027')])
  expect(first.questions.map(({ id }) => id)).toEqual(['days: Closed days'])
  const said = { 'benches.csv': { answers: { 'days: Closed days': 'month first' } } }
  const entries = entriesOf(await read([places('3/4/2027 to 3/6/2027; 2027-05-01: 2 m², paint')], { said }))
  const once = foldEntries(entries)
  const closedThen = [
    { from: '2027-03-04', to: '2027-03-06', areaSquareMetres: 8, why: '' },
    { from: '2027-05-01', to: '2027-05-01', areaSquareMetres: 2, why: 'paint' },
  ]
  expect([...once.benches.values()][0]!.closed).toEqual(closedThen)
  const later = await read([places(null)], { nursery: once })
  expect(later.told).toEqual([])
  const wrong = await read([places('all summer')], { nursery: none })
  expect(wrong.cells).toMatchObject([
    { column: 'D', said: 'all summer', done: 'taken as if nothing were said' },
  ])
})
