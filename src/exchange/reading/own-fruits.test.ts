import { expect, test } from 'vitest'
import { foldEntries } from '../../record/index.ts'
import { speciesById, starterProtocol } from '../../trade/facts/index.ts'
import { EntryId, SpeciesId } from '../../trade/index.ts'
import { csv, nurseryOf, read } from '../fixtures/read-files.ts'

const medlar = {
  ...speciesById('pear')!,
  id: SpeciesId.parse('medlar'),
  like: SpeciesId.parse('pear'),
  commonName: 'Medlar',
  botanical: 'Crataegus germanica',
  taxa: ['Crataegus germanica', 'Mespilus germanica'],
}
/** A nursery that added the medlar, and nothing else. */
const nursery = foldEntries([
  {
    id: EntryId.parse('019e0000-0000-7000-8000-00000000fa01'),
    on: '2026-01-05',
    at: null,
    by: null,
    device: 'test',
    body: { kind: 'species-set/1', species: medlar, why: 'we grow it' },
  },
])

test.each(["Medlar 'Slow Sunday'", 'Slow Sunday medlar', "Mespilus germanica 'Slow Sunday'"])(
  '%s is of a fruit that the nursery added',
  async tree => {
    const reading = await read([csv('orders.csv', ['Item', 'Qty', 'Due'], [tree, 20, '2027-11-02'])], {
      nursery,
    })
    expect(reading.cells).toEqual([])
    const made = [...nurseryOf(reading).kinds.values()].filter(({ form }) => form !== 'rootstock')
    expect(made.map(({ name, species }) => [name, species])).toEqual([['Medlar ‘Slow Sunday’', 'medlar']])
  },
)

test('its kind is made by its own ways, with protocols as the nursery has the fruit', async () => {
  const reading = await read([csv('kinds.csv', ['Tree', 'Price'], ["Medlar 'Slow Sunday'", 24])], { nursery })
  const { kinds, protocols } = nurseryOf(reading)
  const kind = [...kinds.values()].find(({ form }) => form === 'worked')!
  for (const { protocol } of kind.ways) {
    const { method, ...rest } = protocols.get(protocol)!
    expect({ method, ...rest }).toEqual(starterProtocol(method, medlar))
  }
  expect(kind.ways.length).toBeGreaterThan(0)
})

test('a name without a fruit may be answered by a fruit that the nursery added', async () => {
  const file = csv('orders.csv', ['Item', 'Qty', 'Due'], ['Slow Sunday', 20, '2027-11-02'])
  const { questions } = await read([file], { nursery })
  expect(questions.flatMap(({ choices }) => choices.map(({ says }) => says))).toContain('Medlar')
})

test('without the fruit the same list asks which fruit is meant', async () => {
  const { questions } = await read([
    csv('orders.csv', ['Item', 'Qty', 'Due'], ["Medlar 'Slow Sunday'", 20, '2027-11-02']),
  ])
  expect(questions.map(({ asks }) => asks)).toEqual([expect.stringContaining('Which fruit is')])
})
