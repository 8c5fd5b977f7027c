import { describe, expect, test } from 'vitest'
import { MotherId } from '../../trade/index.ts'
import { csv, fixture, nurseryOf, read } from '../fixtures/read-files.ts'

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
