import { expect, test } from 'vitest'
import { batchFinder } from './find-batches.ts'

const rows = [
  { name: '2026-001', kindName: 'Pear, Abaté', stage: 'healing', benches: ['b1'] },
  { name: '2026-002', kindName: 'Quince', stage: 'growing on', benches: [] },
  { name: '2026-011', kindName: 'Pear', stage: 'finished', benches: ['b2'] },
]
const find = batchFinder(
  id => (id === 'b1' ? 'Mist bed north' : 'Ground'),
  step => step,
)
const found = (said: string) => find(rows, said).map(({ name }) => name)

test('a batch is found when it has every word, wherever it stands: in name, kind, stage or bench', () => {
  expect(found('pear')).toEqual(['2026-001', '2026-011'])
  expect(found('  pear   ground ')).toEqual(['2026-011'])
  expect(found('2026-00 growing')).toEqual(['2026-002'])
  expect(found('pear quince')).toEqual([])
})

test('accents and capitals do not matter, in what is typed and in what is looked through', () => {
  expect(found('ABATE')).toEqual(['2026-001'])
  expect(found('abaté')).toEqual(['2026-001'])
  expect(found('quíncé')).toEqual(['2026-002'])
})

test('without a word all are shown, in their order', () => {
  expect(found(' ')).toEqual(rows.map(({ name }) => name))
})

test('what batches have in common is looked at once for each word, and each is found by its own name all the same', () => {
  let asked = 0
  const many = Array.from({ length: 50 }, (_, n) => ({
    name: `Ñ${n}`,
    kindName: n % 2 === 0 ? 'Pêche' : 'Quince',
    stage: 'healing',
    benches: ['b1'],
  }))
  const find = batchFinder(
    id => id,
    step => {
      asked += 1
      return step
    },
  )
  expect(find(many, 'n7 quince').map(({ name }) => name)).toEqual(['Ñ7'])
  expect(find(many, 'peche b1')).toHaveLength(25)
  expect(asked).toBeLessThanOrEqual(4)
})
