import { describe, expect, test } from 'vitest'
import { observations } from '../../record/index.ts'
import { BatchId, KindId, MotherId } from '../../trade/index.ts'
import { csv, folder, inShort, nurseryOf, orderIn, read } from '../fixtures/read-files.ts'
import type { Mapping } from './reading.ts'

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
