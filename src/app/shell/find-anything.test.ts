import { expect, test } from 'vitest'
import { type Findable, findAnything } from './find-anything.ts'

const thing = (name: string, also = ''): Findable => ({ id: name, kind: 'batch', name, also })
const names = (things: readonly Findable[]) => things.map(({ name }) => name)

test('the name itself comes before a name that begins so, and that before a mention', () => {
  const things = [thing('Fig bench', '26-1'), thing('26-118', 'Fig'), thing('26-1', 'Plum')]
  expect(names(findAnything(things, '26-1'))).toEqual(['26-1', '26-118', 'Fig bench'])
})

test('accents and capitals do not matter, and every word must be there', () => {
  const things = [thing('Quétsche', 'plum'), thing('Quetsche', 'damson')]
  expect(names(findAnything(things, 'QUET plum'))).toEqual(['Quétsche'])
  expect(findAnything(things, 'apple')).toEqual([])
})

test('nothing typed shows the first things as they stand', () => {
  expect(findAnything([thing('a'), thing('b')], ' ')).toHaveLength(2)
})
