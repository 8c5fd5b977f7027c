import { expect, test } from 'vitest'
import { speciesById, starterProtocol } from '../../trade/facts/index.ts'
import { teller } from '../example-entries.ts'
import { fruitsOf } from '../fruits-of.ts'
import { nurseryFromBytes, nurseryToBytes } from '../nursery-text.ts'
import { foldEntries } from './fold.ts'

const figure = (typical: number) => ({
  low: typical,
  typical,
  high: typical,
  basis: 'set by the nursery',
  sources: [],
})
const said = teller()
const protocol = starterProtocol('air_layer', speciesById('lychee')!)
const entries = [
  said('2026-01-01', { kind: 'protocol-set/1', protocol }),
  said('2026-01-02', {
    kind: 'fact-set/1',
    species: 'lychee',
    set: { fact: 'ways.air_layer.success', value: figure(0.5) },
    why: 'three years of counts',
  }),
  said('2026-01-03', {
    kind: 'fact-set/1',
    species: 'lychee',
    set: { fact: 'ways.air_layer.success', value: figure(0.6) },
    why: 'four years',
  }),
  said('2026-01-04', {
    kind: 'species-set/1',
    species: { ...speciesById('pear')!, id: 'medlar', commonName: 'Medlar' },
    why: 'asked for',
  }),
]
const successOf = (nursery: ReturnType<typeof foldEntries>) =>
  fruitsOf(nursery)
    .byId('lychee')!
    .ways.find(({ method }) => method === 'air_layer')!.success.typical

test('of a fact the last word counts, with its reason and the entry that says it, in any order of arrival', () => {
  for (const told of [entries, [...entries].reverse()]) {
    const nursery = foldEntries(told)
    expect(nursery.factSets).toHaveLength(1)
    expect(nursery.factSets[0]).toMatchObject({ why: 'four years', on: '2026-01-03', entry: entries[2]!.id })
    expect(successOf(nursery)).toBe(0.6)
    expect(fruitsOf(nursery).byId('medlar')?.commonName).toBe('Medlar')
  }
})

test('a struck fact gives way to the one before it, and then to the built-in one; protocols follow each time', () => {
  const sharesOf = (nursery: ReturnType<typeof foldEntries>) =>
    nursery.protocols.get(protocol.id)!.steps.map(({ survival }) => survival.typical)
  const strike = (entry: string) => said('2026-01-05', { kind: 'struck/1', entry, why: 'not so' })
  const last = foldEntries(entries)
  const before = foldEntries([...entries, strike(entries[2]!.id)])
  const none = foldEntries([...entries, strike(entries[2]!.id), strike(entries[1]!.id)])
  expect([last, before].map(successOf)).toEqual([0.6, 0.5])
  expect(none.protocols.get(protocol.id)).toEqual(protocol)
  expect(sharesOf(last)).not.toEqual(sharesOf(none))
  expect(sharesOf(before)).not.toEqual(sharesOf(last))
})

test('a struck fruit is one no more, and the state with its facts is read back from its bytes', () => {
  const nursery = foldEntries(entries)
  expect(nurseryFromBytes(nurseryToBytes(nursery))).toEqual(nursery)
  const struck = foldEntries([
    ...entries,
    said('2026-01-06', { kind: 'struck/1', entry: entries[3]!.id, why: 'never sold' }),
  ])
  expect(fruitsOf(struck).byId('medlar')).toBeUndefined()
})
