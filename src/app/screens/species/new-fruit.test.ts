import { expect, test } from 'vitest'
import { Question, whichTree } from '../../../advice/index.ts'
import { allSpecies, factsOf, speciesById, starterProtocols } from '../../../trade/facts/index.ts'
import { newFruit } from './new-fruit.ts'

const pear = speciesById('pear')!
const medlar = newFruit({ commonName: 'Medlar', botanical: 'Mespilus germanica', family: '', like: pear })!

test('a fruit begun from another has its figures, each lent and none published', () => {
  expect(medlar).toMatchObject({
    id: 'medlar',
    like: 'pear',
    commonName: 'Medlar',
    taxa: ['Mespilus germanica'],
  })
  const lent = factsOf(medlar)
  expect(lent.map(({ key }) => key)).toEqual(factsOf(pear).map(({ key }) => key))
  for (const { key, value } of lent) {
    if (value === null) continue
    expect(value.basis, key).toBe('from memory')
    expect(value.note, key).toContain('as of Pear')
  }
  expect(JSON.stringify(medlar)).not.toContain('"published"')
})

test('any fruit can be begun from any, is answered for, and can be made', () => {
  for (const like of allSpecies()) {
    const fruit = newFruit({ commonName: 'Sorb ‘old’', botanical: 'Sorbus domestica', family: '', like })!
    expect(fruit.id, like.id).toBe('sorb_old')
    const climate = { kind: 'place', latitude: 25, heightMetres: 100, sea: 'near' }
    const ask = (species: string) => Question.parse({ species, climate })
    const answer = whichTree(ask(fruit.id), fruit, 20)
    expect(answer.ways.length, like.id).toBe(whichTree(ask(like.id), like, 20).ways.length)
    expect(starterProtocols(fruit).length, like.id).toBe(starterProtocols(like).length)
  }
})

test('without a name, or a botanical one, there is no fruit', () => {
  expect(newFruit({ commonName: ' ', botanical: 'Mespilus germanica', family: '', like: pear })).toBeNull()
  expect(newFruit({ commonName: 'Medlar', botanical: '', family: '', like: pear })).toBeNull()
})
