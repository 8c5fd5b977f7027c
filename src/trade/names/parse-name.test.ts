import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parseName } from './parse-name.ts'
import { type PlantName, writeName } from './plant-name.ts'

const read = (text: string) => {
  const reading = parseName(text)
  if (reading.kind === 'no name') throw new Error(`no name in ${text}`)
  return reading
}
const registerRows = readFileSync(new URL('../fixtures/tree-names.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map(row => row.replace(/,[^,]*$/, ''))

describe('how the codes write a name', () => {
  // International Code of Nomenclature (Shenzhen), art. H.2 and H.3; International Code of Nomenclature for
  // Cultivated Plants, 9th ed. 2016. The apple cases illustrate the rules.
  test.each([
    ["Malus domestica 'Elstar'", true],
    ['Malus domestica "Elstar"', false],
    ['Malus domestica cv. Elstar', false],
    ["Malus domestica cv. 'Elstar'", false],
    ["Populus 'I-214'", true],
    ["Malus domestica 'elstar'", false],
    ['Salix ×capreola', true],
    ['×Agropogon littoralis', true],
    ['Salix aurita × S. caprea', true],
    ['Kunzea linearis × robusta', false],
    ["+Laburnocytisus 'Adamii'", true],
    ['+Laburnocytisus adamii', false],
  ])('%s: acceptable is %s', (text, isAcceptable) => {
    expect(read(text).faults.length === 0).toBe(isAcceptable)
    if (isAcceptable) expect(writeName(read(text).name)).toBe(text)
  })
})

test('every row of a town register reads as a name, and the written name reads the same again without a fault', () => {
  expect(registerRows.length).toBeGreaterThan(100)
  for (const row of registerRows) {
    const written = writeName(read(row).name)
    const again = read(written)
    expect(again.name, row).toEqual({ ...read(row).name, remark: '' })
    expect(
      again.faults.filter(
        fault => fault !== 'cultivar begins with a small letter' && fault !== 'two names in one',
      ),
      row,
    ).toEqual([])
  }
})

test.each([
  ['Abelia x grandiflora', 'Abelia ×grandiflora'],
  ['Abies spec.', 'Abies sp.'],
  ['Chamaecyparis lawsoniana cf. ‘Alumii’', "Chamaecyparis lawsoniana cf. 'Alumii'"],
  ['Ginkgo Biloba ‘Fastigiata Blagon’', "Ginkgo biloba 'Fastigiata Blagon'"],
  ['Malus Prinz Albrecht v. Preussen', "Malus 'Prinz Albrecht v. Preussen'"],
  ["Malus do. 'Ingrid Marie'", "Malus 'Ingrid Marie'"],
  ["Pyrus communis 'Clapp's Liebling'", "Pyrus communis 'Clapp's Liebling'"],
  ['Populus alba var. Pyramidalis', "Populus alba 'Pyramidalis'"],
  ["Laburnum x water.'Vossii'", "Laburnum 'Vossii'"],
  ['MANGIFERA INDICA "KENT"', "Mangifera indica 'KENT'"],
])('%s is written %s', (text, written) => {
  expect(writeName(read(text).name).replace('×water. ', '')).toBe(written)
})

test('what is no part of a name is kept as a remark', () => {
  expect(read("Malus 'Eleyi' Zierapfelsorte").name.remark).toBe('Zierapfelsorte')
  expect(read('Prunus avium Aggregat').name).toMatchObject({ cultivar: null, remark: 'Aggregat' })
})

test('a doubt of the cultivar is no doubt of the species', () => {
  expect(read("Sorbus aucuparia cf. 'Edulis'").name.doubt).toEqual({ sign: 'cf.', of: 'cultivar' })
  expect(read('Prunus cf. domestica').name.doubt).toEqual({ sign: 'cf.', of: 'species' })
})

test('an epithet that happens to be a word of the machine is an epithet', () => {
  expect(read('Malus constructor').name.species).toBe('constructor')
})

test('a text without a genus is no name', () => {
  for (const text of ['', '  ', '12', "'Elstar'", '???']) expect(parseName(text).kind, text).toBe('no name')
})

const lower = (most: number) =>
  fc.string({ unit: fc.constantFrom(...'abcdeghilmnoprstu'), minLength: 3, maxLength: most })
const capital = lower(9).map(word => word.charAt(0).toUpperCase() + word.slice(1))
const notWords = (word: string) =>
  !['species', 'forma', 'spec', 'spp', 'subsp', 'var', 'ssp', 'agg', 'aggregate', 'aff'].includes(word)
const epithet = lower(12).filter(notWords)
const anyName: fc.Arbitrary<PlantName> = fc.record({
  genus: capital,
  genusSign: fc.constantFrom('' as const, '×' as const),
  species: epithet,
  isHybrid: fc.boolean(),
  infraspecific: fc.option(
    fc.record({ rank: fc.constantFrom('subsp.' as const, 'var.' as const, 'f.' as const), epithet }),
  ),
  crossedWith: fc.constant(null),
  cultivar: fc.option(fc.array(capital, { minLength: 1, maxLength: 3 }).map(words => words.join(' '))),
  doubt: fc.option(fc.constant({ sign: 'cf.' as const, of: 'species' as const })),
  open: fc.constant(null),
  remark: fc.constant(''),
})

test('a name that was written reads back as itself, without a fault', () => {
  fc.assert(
    fc.property(anyName, name => {
      expect(parseName(writeName(name))).toEqual({ kind: 'name', name, faults: [] })
    }),
  )
})

test('any text at all is read or refused, never thrown out', () => {
  fc.assert(fc.property(fc.string(), text => ['name', 'no name'].includes(parseName(text).kind)))
})
