import { expect, test } from 'vitest'
import { FactSaid } from './fact-key.ts'
import {
  allSpecies,
  factsOf,
  followFacts,
  fruitsWith,
  speciesById,
  starterProtocol,
  withFact,
} from './index.ts'

const own = (low: number, typical: number, high: number) => ({
  low,
  typical,
  high,
  basis: 'set by the nursery' as const,
  sources: [],
})
const window = {
  condition: 'bark slips',
  northMonths: [3],
  southMonths: [9],
  basis: 'set by the nursery' as const,
  sources: [],
}
const set = (species: string, fact: string, value: FactSaid['value']) => ({ species, fact, value })

test('every figure and window of every fruit has a name, can be stated otherwise, and is then the one stated', () => {
  const saidOf = (key: string) => (key.endsWith('.window') ? window : own(0.1, 0.2, 0.3))
  for (const species of allSpecies()) {
    const facts = factsOf(species)
    expect(new Set(facts.map(({ key }) => key)).size, species.id).toBe(facts.length)
    let changed = species
    for (const { key, name } of facts) {
      expect(name, key).not.toBe('')
      expect(FactSaid.safeParse({ fact: key, value: saidOf(key) }).success, key).toBe(true)
      changed = withFact(changed, key, saidOf(key))!
    }
    for (const { key, value } of factsOf(changed)) expect(value, `${species.id} ${key}`).toEqual(saidOf(key))
    expect(factsOf(species)).toEqual(facts)
  }
})

test('no figure of a fruit is left out of its table', () => {
  const count = (value: unknown): number => {
    if (typeof value !== 'object' || value === null) return 0
    if ('typical' in value || 'northMonths' in value) return 1
    return Object.values(value).reduce((sum: number, part) => sum + count(part), 0)
  }
  for (const species of allSpecies())
    expect(factsOf(species).filter(({ value }) => value !== null).length, species.id).toBe(count(species))
})

test('a fact is refused that no fruit has, a share beyond 1, months where a figure stands and a figure where months do', () => {
  const said = (fact: string, value: unknown) => FactSaid.safeParse({ fact, value }).success
  expect(said('orchard.chillHours', own(200, 300, 400))).toBe(true)
  expect(said('orchard.shoeSize', own(1, 2, 3))).toBe(false)
  expect(said('ways.juggling.success', own(0.1, 0.2, 0.3))).toBe(false)
  expect(said('ways.air_layer.timing.toString', own(1, 2, 3))).toBe(false)
  expect(said('ways.air_layer.success', own(0.5, 0.8, 1.2))).toBe(false)
  expect(said('ways.air_layer.success', window)).toBe(false)
  expect(said('ways.air_layer.window', own(1, 2, 3))).toBe(false)
  expect(said('orchard.chillHours', own(3, 2, 1))).toBe(false)
})

test('what a nursery states goes before the facts, for its fruit alone, and the facts themselves stay', () => {
  const fruits = fruitsWith({ fruits: [], sets: [set('fig', 'orchard.chillHours', own(50, 60, 70))] })
  expect(fruits.byId('fig')!.orchard.chillHours?.typical).toBe(60)
  expect(fruits.byId('apple')).toBe(speciesById('apple'))
  expect(fruits.asGiven('fig')).toBe(speciesById('fig'))
  expect(fruits.all).toHaveLength(allSpecies().length)
})

test('a success stated of a method that the facts do not know for a fruit makes it a way of the fruit, in whatever order', () => {
  const sets = [
    set('fig', 'ways.tissue_culture.environment.airCelsius', own(22, 24, 26)),
    set('fig', 'ways.tissue_culture.success', own(0.6, 0.8, 0.9)),
  ]
  expect(speciesById('fig')!.ways.some(({ method }) => method === 'tissue_culture')).toBe(false)
  const way = fruitsWith({ fruits: [], sets })
    .byId('fig')!
    .ways.find(one => one.method === 'tissue_culture')!
  expect(way.success.typical).toBe(0.8)
  expect(way.environment.airCelsius?.typical).toBe(24)
})

test('a fruit that the nursery adds is one of all; a fact of a fruit that nobody knows changes nothing', () => {
  const medlar = { ...speciesById('pear')!, id: 'medlar' as never, commonName: 'Medlar' }
  const fruits = fruitsWith({
    fruits: [medlar],
    sets: [
      set('medlar', 'orchard.chillHours', own(400, 500, 600)),
      set('no-such', 'orchard.chillHours', own(1, 2, 3)),
    ],
  })
  expect(fruits.all).toHaveLength(allSpecies().length + 1)
  expect(fruits.byId('medlar')!.orchard.chillHours?.typical).toBe(500)
  expect(fruits.byId('no-such')).toBeUndefined()
})

test('a protocol follows the facts in what it still holds of them, and keeps what the nursery wrote into it', () => {
  const starter = starterProtocol('air_layer', speciesById('lychee')!)
  const fruits = fruitsWith({
    fruits: [],
    sets: [
      set('lychee', 'ways.air_layer.window', window),
      set('lychee', 'ways.air_layer.success', own(0.4, 0.5, 0.6)),
    ],
  })
  const followed = followFacts(starter, fruits)
  expect(followed.window.northMonths).toEqual([3])
  const rooting = starter.steps.findIndex(
    ({ survival }, i) => survival.typical !== followed.steps[i]!.survival.typical,
  )
  expect(rooting).toBeGreaterThanOrEqual(0)
  expect(followed.steps[rooting]!.survival.basis).toBe('set by the nursery')

  const mine = own(0.9, 0.95, 0.99)
  const copied = {
    ...starter,
    id: 'ours' as never,
    name: 'Our way',
    version: 4,
    steps: starter.steps.map((step, i) => (i === rooting ? { ...step, survival: mine } : step)),
  }
  const kept = followFacts(copied, fruits)
  expect(kept.steps[rooting]!.survival).toEqual(mine)
  expect(kept.window.northMonths).toEqual([3])
  expect([kept.id, kept.name, kept.version]).toEqual(['ours', 'Our way', 4])
  expect(followFacts(starter, fruitsWith({ fruits: [], sets: [] }))).toBe(starter)
})
