import { expect, test } from 'vitest'
import { BatchId, inEnglish } from '../../trade/index.ts'
import type { BodyOf, Entry } from '../entry.ts'
import { startOf, teller } from '../example-entries.ts'
import { exampleRegisters } from '../example-registers.ts'
import { foldEntries } from '../fold/fold.ts'
import { identityOf, identityPhrase } from './identity.ts'

const say = teller()
const cuttings = (mother: string) => ({ from: 'mother', mother, material: 'cuttings', number: 10 })
const seed = (mother: string) => ({ from: 'mother', mother, material: 'seed', number: 10 })
const scions = (mother: string) => ({ from: 'mother', mother, material: 'scion sticks', number: 10 })
const on = (batch: string) => ({ from: 'batch', batch, as: 'rootstock', number: 10 })

const nameOf = (batch: string, ...entries: Entry[]): string => {
  const nursery = foldEntries([...exampleRegisters, ...entries])
  return inEnglish(identityPhrase(identityOf(nursery, BatchId.parse(batch)), nursery))
}
const start = (batch: string, sources: object[], more: object = {}) =>
  say('2026-02-01', startOf(batch, 10, sources, more))

test('cuttings are true to the mother that they were cut from', () => {
  expect(nameOf('B1', start('B1', [cuttings('M1')]))).toBe('Amber Russet, true to type')
})

test('seed breaks identity: its plants are seedlings of the mother, and of no cultivar', () => {
  expect(nameOf('B1', start('B1', [seed('M1')]))).toBe('Seedling of Amber Russet')
})

test('nucellar seedlings are true to the mother, and say that they are seedlings', () => {
  expect(nameOf('B1', start('B1', [seed('M1')], { nucellar: true }))).toBe(
    'Nucellar seedling of Amber Russet, true to type',
  )
})

test('a worked tree is named by its wood, whatever its rootstock is', () => {
  expect(nameOf('B2', start('B1', [seed('M2')]), start('B2', [on('B1'), scions('M1')]))).toBe(
    'Amber Russet, true to type',
  )
})

test('a multi-worked tree carries the name of every scion', () => {
  expect(nameOf('B1', start('B1', [scions('M1'), scions('M2')], { kindOfTree: 'family tree' }))).toBe(
    'Amber Russet + Winter Lantern, true to type',
  )
})

test('wood of an interstem is no wrong wood, and gives the tree no name', () => {
  const tree = exampleRegisters
    .map(({ body }) => body)
    .find(body => body.kind === 'kind-set/1' && body.kindOfTree.id === 'tree')
  const kindOfTree = { ...(tree as BodyOf<'kind-set/1'>).kindOfTree, interstem: 'Winter Lantern' }
  const between = say('2026-01-02', { kind: 'kind-set/1', kindOfTree })
  const begun = start('B1', [scions('M1'), scions('M2')])
  expect(nameOf('B1', between, begun)).toBe('Amber Russet, true to type')
  const asked = (...entries: Entry[]) =>
    foldEntries([...exampleRegisters, ...entries]).queries.filter(({ kind }) => kind === 'wrong-wood').length
  expect([asked(begun), asked(between, begun)]).toEqual([1, 0])
})

test('wood from the lot of a mother is true to her', () => {
  const lot = {
    kind: 'material-collected/1',
    lot: 'L1',
    mother: 'M1',
    material: 'budwood',
    number: 20,
    stored: 'cold',
    goodUntil: null,
  }
  expect(nameOf('B1', say('2026-01-20', lot), start('B1', [{ from: 'lot', lot: 'L1', number: 10 }]))).toBe(
    'Amber Russet, true to type',
  )
})

test('wood cut from a batch in doubt passes the doubt on, until the name is settled', () => {
  const doubtful = start('B1', [], { candidates: ['Winter Lantern', 'Amber Russet'] })
  const worked = start('B2', [{ from: 'batch', batch: 'B1', as: 'scion', number: 10 }])
  expect(nameOf('B2', doubtful, worked)).toBe('Name in doubt: Amber Russet or Winter Lantern')
  const settled = say('2026-05-01', {
    kind: 'name-settled/1',
    batch: 'B1',
    cultivar: 'Winter Lantern',
    how: 'by its leaves',
  })
  expect(nameOf('B2', doubtful, worked, settled)).toBe('Winter Lantern, true to type')
})

test('two names put together in one batch are a doubt; one name from two batches is not', () => {
  const join = say('2026-03-01', { kind: 'joined/1', batch: 'B2', step: 'mist', number: 5, into: 'B1' })
  expect(nameOf('B1', start('B1', [cuttings('M1')]), start('B2', [cuttings('M2')]), join)).toBe(
    'Name in doubt: Amber Russet or Winter Lantern',
  )
  expect(nameOf('B1', start('B1', [cuttings('M1')]), start('B2', [cuttings('M1')]), join)).toBe(
    'Amber Russet, true to type',
  )
})

test('plants split off and put back change no name', () => {
  const split = say('2026-03-01', {
    kind: 'split/1',
    batch: 'B1',
    step: 'mist',
    number: 4,
    into: 'B2',
    name: 'B2',
    why: '',
  })
  const back = say('2026-03-02', { kind: 'joined/1', batch: 'B2', step: 'mist', number: 4, into: 'B1' })
  expect(nameOf('B1', start('B1', [cuttings('M1')]), split, back)).toBe('Amber Russet, true to type')
  expect(nameOf('B2', start('B1', [cuttings('M1')]), split, back)).toBe('Amber Russet, true to type')
})

test('a tree worked over to another cultivar is named by the new wood', () => {
  const kind = say('2025-12-31', {
    kind: 'kind-set/1',
    kindOfTree: {
      id: 'lantern',
      name: 'lantern',
      species: 'apple',
      cultivars: ['Winter Lantern'],
      form: 'reworked',
      size: '',
      price: 1,
      holdingCostPerWeek: 0,
      ways: [],
    },
  })
  const rework = say('2026-04-01', {
    kind: 'reworked/1',
    batch: 'B1',
    step: 'mist',
    number: 10,
    kindOfTree: 'lantern',
    sources: [scions('M2')],
  })
  expect(nameOf('B1', kind, start('B1', [scions('M1')]), rework)).toBe('Winter Lantern, true to type')
})

test('without any source, only the kind under which it was entered can be told', () => {
  expect(nameOf('B1', start('B1', []))).toBe('Amber Russet, as entered')
})
