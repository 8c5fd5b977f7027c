import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { type Entry, foldEntries, observations } from '../../record/index.ts'
import { BatchId, EntryId, KindId, MotherId, OrderId } from '../../trade/index.ts'
import { writeCsv } from '../table/write-table.ts'
import { readNursery } from './read-nursery.ts'
import type { Mapping, NurseryReading } from './reading.ts'

const today = '2026-11-24'
const fixture = (path: string) => readFileSync(new URL(`../fixtures/${path}`, import.meta.url))
const folder = (name: string) =>
  readdirSync(new URL(`../fixtures/${name}`, import.meta.url)).map(file => ({
    name: file,
    bytes: fixture(`${name}/${file}`),
  }))

const none = foldEntries([])
const read = (
  files: readonly { name: string; bytes: Uint8Array }[],
  {
    said = {},
    remembered = {},
    nursery = none,
  }: { said?: Mapping; remembered?: Mapping; nursery?: typeof none } = {},
) => readNursery({ files, said, remembered, nursery, today })
const csv = (name: string, ...rows: (string | number | null)[][]) => ({
  name,
  bytes: new TextEncoder().encode(writeCsv(rows)),
})

let made = 0
const entriesOf = (reading: NurseryReading): Entry[] =>
  reading.told.map(({ on, body }) => {
    made += 1
    const id = EntryId.parse(`019e0000-0000-7000-8000-${String(made).padStart(12, '0')}`)
    return { id, on, at: null, by: null, device: 'test', body }
  })
const nurseryOf = (...readings: NurseryReading[]) => foldEntries(readings.flatMap(entriesOf))
const inShort = ({ cells }: NurseryReading) =>
  cells.map(({ row, column, said, rowLost }) => `${row}${column} ${said}${rowLost ? ' lost' : ''}`)
const orderIn = (nursery: typeof none, id: string) => nursery.orders.get(OrderId.parse(id))?.order

describe('a workbook as a spreadsheet program saved it', () => {
  test('its sheets are known by their headers, with titles, blank rows and totals around them, every row accounted for', async () => {
    const { sheets } = await read(folder('english'))
    expect(
      sheets.map(({ sheet, kind, headerRow, rows }) => [
        sheet,
        kind,
        headerRow,
        rows.all,
        rows.good,
        rows.bad,
        rows.passedOver,
      ]),
    ).toEqual([
      ['Order book', 'orders', 3, 8, 4, 2, 2],
      ['Mother trees', 'mothers', 1, 4, 4, 0, 0],
      ['Benches', 'benches', 1, 9, 9, 0, 0],
      ['Staff', 'people', 1, 3, 3, 0, 0],
      ['Stock', 'batches', 1, 3, 3, 0, 0],
      ['Past results', 'history', 1, 4, 3, 1, 0],
      ['Site', 'nursery', 1, 1, 1, 0, 0],
    ])
  })

  test('every cell that is not taken as it stands is named, and no good row is lost for it', async () => {
    const reading = await read(folder('english'))
    expect(inShort(reading).filter(text => !/ 20\d\d$/.test(text))).toEqual([
      '8E about forty lost',
      '9G 100 %',
      '10C Wonderberry ‘Nobody’ lost',
      '5F 130 lost',
      '3B cuttings & potting, juggling',
    ])
    for (const cell of reading.cells)
      expect(cell).toMatchObject({
        file: 'nursery.xlsx',
        wrong: expect.stringMatching(/\w/),
        done: expect.stringMatching(/\w/),
      })
  })

  test('what it says stands in the record: orders by name and day, what stands where, what can be learnt', async () => {
    const reading = await read(folder('english'))
    expect(reading.ready).toBe(true)
    const nursery = nurseryOf(reading)
    expect(nursery.queries).toEqual([])
    expect(nursery.site?.latitudeDegrees).toBe(38)
    expect(orderIn(nursery, 'P-1')).toMatchObject({
      buyer: 'Gull Lane orchard',
      kind: 'fig-brown-pilgrim',
      number: 120,
      due: '2028-03-01',
      sure: 0.9,
    })
    expect(orderIn(nursery, 'P-2 apple-evening-bell-on-layer-nine')?.number).toBe(1250)
    expect(nursery.kinds.get(KindId.parse('apple-evening-bell-on-layer-nine'))).toMatchObject({
      form: 'worked',
      rootstock: 'apple-rootstock-layer-nine',
      size: 'bare root',
    })
    expect(nursery.kinds.get(KindId.parse('apple-rootstock-layer-nine'))?.buyIn).not.toBeNull()
    expect(
      nursery.batches.get(BatchId.parse('26-041'))?.portions.reduce((sum, { number }) => sum + number, 0),
    ).toBe(210)
    expect(nursery.batches.get(BatchId.parse('26-050'))?.portions[0]).toMatchObject({
      step: 'rooting',
      number: 90,
      bench: 'mist-1',
    })
    expect(nursery.batches.get(BatchId.parse('25-017'))?.finished).toBe(88)
    expect(nursery.batches.get(BatchId.parse('24-003'))?.finished).toBe(0)
    const rooted = observations(nursery).filter(row => row.batch === '24-003' && row.step === 'rooting')
    expect(rooted).toMatchObject([{ entered: 300, survived: 240, grafter: 'ilo' }])
    const through = observations(nursery).filter(row => row.batch === '25-009')
    expect([through[0]?.entered, through.at(-1)?.survived]).toEqual([200, 96])
  })

  test('read once more, it says nothing new', async () => {
    const nursery = nurseryOf(await read(folder('english')))
    const again = await read(folder('english'), { nursery })
    expect(again.told).toEqual([])
    expect(again.ready).toBe(false)
    expect(again.known).toBe(again.sheets.reduce((sum, { rows }) => sum + rows.good, 0))
  })
})

describe('files of other countries', () => {
  test('semicolons, decimal commas, points in thousands, days as 01.03.2028 and Windows-1252', async () => {
    const reading = await read(folder('german'))
    expect(reading.questions).toEqual([])
    expect(reading.sheets.every(({ rows }) => rows.bad === 0)).toBe(true)
    const nursery = nurseryOf(reading)
    expect(orderIn(nursery, 'B-1')).toMatchObject({
      buyer: 'Gärtnerei Möwengasse',
      number: 1250,
      due: '2028-03-01',
      price: 9.5,
    })
    expect(
      [...nursery.benches.values()].map(({ place, areaSquareMetres }) => [place, areaSquareMetres]),
    ).toEqual([
      ['mist bed', 18.5],
      ['hot bed', 24.75],
      ['cold store', 30],
      ['tunnel', 1160.25],
      ['shade house', 320],
      ['standing ground', 1250.5],
      ['field row', 2400],
    ])
    expect([...nursery.people.values()].map(({ name, hoursPerWeek }) => [name, hoursPerWeek])).toEqual([
      ['Jörg', 38.5],
      ['Änne', 30],
    ])
    expect(nursery.mothers.get(MotherId.parse('M1'))?.mother).toMatchObject({
      planted: '2014-03-10',
      gives: [{ material: 'cuttings', perYear: 1400 }],
    })
  })

  test('month before day is told by one day that cannot be otherwise; square feet become square metres', async () => {
    const files = folder('american').filter(({ name }) => name !== 'orders-unclear.csv')
    const nursery = nurseryOf(await read(files))
    expect(orderIn(nursery, '1001')?.due).toBe('2028-03-04')
    expect(nursery.benches.get('greenhouse-1' as never)?.areaSquareMetres).toBeCloseTo(160, 2)
  })

  test('where every day could be either, it is asked, nothing can be accepted, and the answer is remembered', async () => {
    const files = folder('american').filter(({ name }) => name === 'orders-unclear.csv')
    const asked = await read(files)
    expect(asked.questions).toMatchObject([
      { id: 'days: Date Required', needed: true, answer: null, examples: ['03/04/2028', '05/06/2028'] },
    ])
    expect(asked.ready).toBe(false)
    for (const [answer, due] of [
      ['month first', '2028-03-04'],
      ['day first', '2028-04-03'],
    ] as const) {
      const said = { 'orders-unclear.csv': { answers: { 'days: Date Required': answer } } }
      const answered = await read(files, { said })
      expect(answered.ready).toBe(true)
      expect(orderIn(nurseryOf(answered), '1003')?.due).toBe(due)
      const later = await read([{ name: 'next-month.csv', bytes: files[0]!.bytes }], {
        remembered: answered.mapping,
      })
      expect(later.ready).toBe(true)
      expect(orderIn(nurseryOf(later), '1003')?.due).toBe(due)
    }
  })
})

describe('headers', () => {
  const rows: (string | number)[][] = [
    ['Wat', 'Hoeveel', 'Klaar'],
    ['Fig ‘Brown Pilgrim’', 40, '2028-03-01'],
  ]

  test('come in any order', async () => {
    const forward = await read([csv('orders.csv', ['Tree', 'Number', 'Due'], ['Fig ‘A’', 5, '2028-03-01'])])
    const backward = await read([csv('orders.csv', ['Due', 'Number', 'Tree'], ['2028-03-01', 5, 'Fig ‘A’'])])
    expect(forward.told).toEqual(backward.told)
  })

  test('that no one knows are mapped once by the user, and known the next time by another file', async () => {
    const said: Mapping = {
      'x.csv': { kind: 'orders', columns: { Wat: 'tree', Hoeveel: 'number', Klaar: 'due' } },
    }
    const first = await read([csv('x.csv', ...rows)])
    expect(first.sheets[0]?.kind).toBeNull()
    expect(first.questions).toMatchObject([{ id: 'kind', needed: false }])
    const mapped = await read([csv('x.csv', ...rows)], { said })
    expect(mapped.sheets[0]?.rows.good).toBe(1)
    const later = await read([csv('y.csv', ...rows)], { remembered: mapped.mapping })
    expect(later.sheets[0]?.columns.map(({ field, by }) => [field, by])).toEqual([
      ['tree', 'before'],
      ['number', 'before'],
      ['due', 'before'],
    ])
    expect(later.told).toEqual(mapped.told)
  })

  test('that come again among the rows are passed over', async () => {
    const header = ['Tree', 'Number', 'Due']
    const { sheets } = await read([
      csv('orders.csv', header, ['Fig ‘A’', 5, '2028-03-01'], header, ['Fig ‘A’', 6, '2028-04-01']),
    ])
    expect(sheets[0]?.rows).toEqual({ all: 3, good: 2, bad: 0, passedOver: 1 })
  })

  test('without the one that every row needs, its column is asked for', async () => {
    const reading = await read([
      csv('orders.csv', ['Tree', 'Number', 'Buyer', 'Gone'], ['Fig ‘A’', 5, 'Q', '2028-03-01']),
    ])
    expect(reading.questions).toMatchObject([{ id: 'column: due', needed: true }])
    expect(reading.ready).toBe(false)
    const said = { 'orders.csv': { answers: { 'column: due': 'Gone' } } }
    expect(
      (
        await read(
          [csv('orders.csv', ['Tree', 'Number', 'Buyer', 'Gone'], ['Fig ‘A’', 5, 'Q', '2028-03-01'])],
          { said },
        )
      ).ready,
    ).toBe(true)
  })
})

describe('kinds', () => {
  const order = (tree: string, due = '1.3.28') =>
    csv('orders.csv', ['Tree', 'Number', 'Due'], [tree, 120, due])

  test('an order for a fig of its own name makes fruit, cultivar, kind and protocol, and says so', async () => {
    const reading = await read([order("Fig 'Brown Pilgrim'")])
    expect(reading.would.map(({ says }) => says)).toEqual([
      '1 protocol',
      '1 cultivar',
      '1 kind of tree',
      '1 order placed',
    ])
    expect(reading.assumptions.map(({ says }) => says).join()).toMatch(
      /New kind "Fig ‘Brown Pilgrim’".*hardwood cutting/,
    )
    const nursery = nurseryOf(reading)
    expect(nursery.kinds.get(KindId.parse('fig-brown-pilgrim'))).toMatchObject({
      species: 'fig',
      form: 'cutting-grown',
      rootstock: null,
    })
    expect([...nursery.orders.values()][0]?.order.due).toBe('2028-03-01')
  })

  test('are found again whatever their spelling', async () => {
    const nursery = nurseryOf(await read([order("Fig 'Brown Pilgrim'")]))
    for (const tree of [
      'FIG - BROWN PILGRIM',
      'Ficus carica “Brown Pilgrim”',
      'Brown Pilgrim',
      'Feige Brown-Pilgrim',
      'fig-brown-pilgrim',
    ]) {
      const reading = await read([order(tree)], { nursery })
      expect(
        reading.would.filter(({ kind }) => kind === 'kind-set/1'),
        tree,
      ).toEqual([])
    }
  })

  test('spelt almost alike are asked about, and joined only when the user says so', async () => {
    const nursery = nurseryOf(await read([order("Fig 'Brown Pilgrim'")]))
    const reading = await read([order("Fig 'Brown Pilgirm'", '1.4.28')], { nursery })
    expect(reading.questions).toMatchObject([
      { id: 'spelt: fig brown pilgirm', needed: false, suggested: 'fig-brown-pilgrim' },
    ])
    const said = { 'orders.csv': { answers: { 'spelt: fig brown pilgirm': 'fig-brown-pilgrim' } } }
    const answered = await read([order("Fig 'Brown Pilgirm'", '1.4.28')], { nursery, said })
    expect(answered.would.map(({ kind }) => kind)).toEqual(['order-placed/1'])
  })

  test('of a fruit that no one knows wait for an answer; the other rows do not', async () => {
    const file = csv(
      'orders.csv',
      ['Tree', 'Number', 'Due'],
      ['Wonderberry ‘Nobody’', 5, '2028-03-01'],
      ['Fig ‘A’', 6, '2028-03-01'],
    )
    const reading = await read([file])
    expect(reading.ready).toBe(true)
    expect(reading.sheets[0]?.rows).toMatchObject({ good: 1, bad: 1 })
    const said = { 'orders.csv': { answers: { 'fruit: wonderberry nobody': 'blueberry' } } }
    expect((await read([file], { said })).sheets[0]?.rows).toMatchObject({ good: 2, bad: 0 })
  })
})

test('a cell that no row needs costs no row: it is named, and taken as if nothing were said', async () => {
  const reading = await read([
    csv(
      'orders.csv',
      ['Tree', 'Number', 'Due', 'Price', 'Not before'],
      ['Fig ‘A’', 5, '2028-03-01', 'ask', '31.2.2028'],
    ),
  ])
  expect(inShort(reading)).toEqual(['2D ask', '2E 31.2.2028'])
  expect(reading.sheets[0]?.rows).toMatchObject({ good: 1, bad: 0 })
  const [placed] = [...nurseryOf(reading).orders.values()]
  expect(placed?.order).toMatchObject({ price: null, earliest: '2028-01-19' })
})

test('an order that changed in the list is changed, not placed twice', async () => {
  const file = (number: number) =>
    csv('orders.csv', ['Order', 'Tree', 'Number', 'Due'], ['A1', 'Fig ‘A’', number, '2028-03-01'])
  const nursery = nurseryOf(await read([file(5)]))
  const changed = await read([file(8)], { nursery })
  expect(changed.told.map(({ body }) => body)).toMatchObject([
    { kind: 'order-changed/1', order: { id: 'A1', number: 8 } },
  ])
})

describe('lists that others published', () => {
  test('a mother with a father beside her is a parent, not a tree to cut from', async () => {
    const header = ['variety', 'genotype', 'origin_country', 'mother', 'father']
    const { sheets, ready } = await read([
      csv('parents.csv', header, ['Long Vigil', 'S3S12', 'TR', 'A', 'B']),
    ])
    expect([sheets[0]?.kind, ready]).toEqual([null, false])
  })

  test('every row of a list of cultivar names is accounted for, signs and all', async () => {
    const { sheets, would } = await read([
      { name: 'cultivar-names.csv', bytes: fixture('trial/cultivar-names.csv') },
    ])
    const { rows } = sheets[0]!
    expect(rows.good + rows.bad + rows.passedOver).toBe(rows.all)
    expect([rows.bad, sheets[0]?.kind]).toEqual([0, 'cultivars'])
    expect(would[0]?.number).toBeGreaterThan(45)
  })

  test('a list of one fruit’s synonyms asks once for the fruit, and then finds them', async () => {
    const file = { name: 'cherry-synonyms.csv', bytes: fixture('trial/cherry-synonyms.csv') }
    const asked = await read([file])
    expect(asked.questions).toMatchObject([{ id: 'fruit of the sheet', suggested: 'cherry' }])
    const said = { 'cherry-synonyms.csv': { answers: { 'fruit of the sheet': 'cherry' } } }
    const nursery = nurseryOf(await read([file], { said }))
    // genotype_syn.csv, first row.
    const first = [...nursery.cultivars.values()].find(({ name }) => name === 'Allmän gulröd bigarrå')
    expect(first).toMatchObject({ species: 'cherry', synonyms: ['Gemeine Marmorkirsche', 'Allmän Gulröd'] })
  })

  test('passport data by the standard’s descriptors come in as mother trees, with all that they say', async () => {
    const file = csv(
      'accessions.csv',
      ['INSTCODE', 'ACCENUMB', 'GENUS', 'SPECIES', 'ACCENAME', 'ORIGCTY', 'Shelf'],
      ['ABC001', 'F-17', 'Ficus', 'carica', 'Brown Pilgrim', 'PRT', '3b'],
      ['ABC001', 'A-3', 'Arachis', 'hypogaea', '', 'ISR', ''],
      ['ABC001', '', '', '', '', 'ISR', ''],
    )
    const reading = await read([file])
    expect(reading.sheets[0]).toMatchObject({
      kind: 'passport',
      rows: { all: 3, good: 2, bad: 1, passedOver: 0 },
    })
    const nursery = nurseryOf(reading)
    expect(nursery.mothers.get(MotherId.parse('F-17'))?.mother).toMatchObject({
      cultivar: 'fig-brown-pilgrim',
      provenance: 'Shelf 3b',
      passport: {
        INSTCODE: 'ABC001',
        ACCENUMB: 'F-17',
        GENUS: 'Ficus',
        SPECIES: 'carica',
        ACCENAME: 'Brown Pilgrim',
        ORIGCTY: 'PRT',
      },
    })
    expect(nursery.mothers.get(MotherId.parse('A-3'))?.mother.cultivar).toBe('arachis-hypogaea-a-3')
  })

  test('a number given to two mother trees is named, and neither row takes the place of the other', async () => {
    const file = csv(
      'mother trees.csv',
      ['Mother tree', 'Tree', 'Block', 'Cuttings a year'],
      ['10', 'Fig ‘Brown Pilgrim’', 'Wall', '100'],
      ['10', 'Fig ‘Green Pilgrim’', 'Wall', '100'],
      ['11', 'Fig ‘Green Pilgrim’', 'Wall', '100'],
      ['11', 'Fig ‘Green Pilgrim’', 'Wall', '120'],
    )
    const reading = await read([file])
    expect(reading.sheets[0]?.rows).toMatchObject({ all: 4, good: 3, bad: 1 })
    expect(reading.cells).toMatchObject([{ row: 3, wrong: expect.stringContaining('comes twice') }])
    const { mothers } = nurseryOf(reading)
    expect(mothers.get(MotherId.parse('10'))?.mother.cultivar).toBe('fig-brown-pilgrim')
    expect(mothers.get(MotherId.parse('11'))?.mother.gives[0]?.perYear).toBe(120)
  })

  test('genus and species written as one are its genus and species; with an author, they are kept as they stand', async () => {
    const file = csv(
      'accessions.csv',
      ['ACCENUMB', 'Botanical name', 'ACCENAME'],
      ['F-17', 'Ficus carica', 'Brown Pilgrim'],
      ['F-18', 'Ficus carica L.', 'Green Pilgrim'],
    )
    const { mothers } = nurseryOf(await read([file]))
    const passportOf = (id: string) => mothers.get(MotherId.parse(id))?.mother
    expect(passportOf('F-17')).toMatchObject({
      passport: { ACCENUMB: 'F-17', GENUS: 'Ficus', SPECIES: 'carica' },
      provenance: '',
    })
    expect(passportOf('F-18')).toMatchObject({ provenance: 'botanical Ficus carica L.' })
  })
})
