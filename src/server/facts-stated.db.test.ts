import { afterAll, beforeAll, expect, test } from 'vitest'
import { discard, entryOf, newFolder, type ServedNursery, serveNursery } from '../../test/served-nursery.ts'
import type { EntriesPushed, NurseryView } from '../api/index.ts'
import { speciesById, starterProtocol } from '../trade/facts/index.ts'
import { type Protocol, SpeciesId } from '../trade/index.ts'

let folder: string
let nursery: ServedNursery
beforeAll(async () => {
  folder = newFolder()
  nursery = await serveNursery(folder, '2026-05-19')
})
afterAll(async () => {
  await nursery.close()
  discard(folder)
})

const figure = (typical: number) => ({
  low: typical,
  typical,
  high: typical,
  basis: 'set by the nursery',
  sources: [],
})
const stated = (fact: string, value: unknown, why = 'seen here') =>
  entryOf({ kind: 'fact-set/1', species: 'sapodilla', set: { fact, value }, why })
const push = async (...entries: unknown[]): Promise<EntriesPushed> => (await nursery.push(entries)).json
const view = async (): Promise<NurseryView> => (await nursery.ask('/api/nursery')).json

test('what is stated of a fruit is kept on disk, follows into its protocols, and is gone when struck', async () => {
  const protocol = starterProtocol('air_layer', speciesById('sapodilla')!)
  const own = stated('ways.air_layer.success', figure(0.33))
  const { refused } = await push(entryOf({ kind: 'protocol-set/1', protocol }), own)
  expect(refused).toEqual([])
  const asked = async (): Promise<Protocol> => (await nursery.ask(`/api/protocols/${protocol.id}`)).json
  const shares = async () => (await asked()).steps.map(({ survival }) => survival.typical)
  expect((await view()).factSets.map(({ entry }) => entry)).toEqual([own.id])
  expect(await shares()).not.toEqual(protocol.steps.map(({ survival }) => survival.typical))
  await nursery.push([entryOf({ kind: 'struck/1', entry: own.id, why: 'miscounted' })])
  expect((await view()).factSets).toEqual([])
  expect(await shares()).toEqual(protocol.steps.map(({ survival }) => survival.typical))
})

test('a fact that no fruit has, and a share beyond 1, are refused at the door with where and how to mend', async () => {
  const { accepted, refused } = await push(
    stated('orchard.shoeSize', figure(42)),
    stated('ways.air_layer.success', figure(33)),
    stated('orchard.chillHours', figure(10), ''),
  )
  expect(accepted).toEqual([])
  expect(refused).toHaveLength(3)
  expect(refused[0]!.refusal.where).toBe('body.set.fact')
})

test('a fruit of the nursery’s own is served with its reason', async () => {
  const medlar = { ...speciesById('pear')!, id: SpeciesId.parse('medlar'), commonName: 'Medlar' }
  const { refused } = await push(entryOf({ kind: 'species-set/1', species: medlar, why: 'asked for' }))
  expect(refused).toEqual([])
  expect((await view()).speciesSets).toMatchObject([{ why: 'asked for', species: { id: 'medlar' } }])
})
