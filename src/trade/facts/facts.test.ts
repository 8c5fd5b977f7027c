import { describe, expect, test } from 'vitest'
import { MethodId } from '../vocabulary.ts'
import {
  allMethods,
  allSources,
  allSpecies,
  citation,
  fruitsWith,
  methodById,
  quantityByKey,
  sourceById,
  speciesById,
  speciesByName,
  wayOf,
} from './index.ts'

/** Every object in the facts that names sources, with the path to it. */
const stated: { at: string; basis: string; sources: readonly string[] }[] = []
const walk = (at: string, value: unknown): void => {
  if (value === null || typeof value !== 'object') return
  const { basis, sources } = value as { basis?: unknown; sources?: unknown }
  if (typeof basis === 'string') stated.push({ at, basis, sources: Array.isArray(sources) ? sources : [] })
  for (const [key, part] of Object.entries(value)) walk(`${at}.${key}`, part)
}
for (const species of allSpecies()) walk(species.id, species)
for (const method of allMethods()) walk(method.method, method)

describe('the facts', () => {
  test('know forty fruits, each method of the vocabulary, and 162 sources', () => {
    expect(allSpecies()).toHaveLength(40)
    expect(allMethods().map(method => method.method)).toEqual(expect.arrayContaining([...MethodId.options]))
    expect(allMethods()).toHaveLength(MethodId.options.length)
    expect(allSources()).toHaveLength(162)
  })

  test('name no source that is not listed', () => {
    expect(stated.length).toBeGreaterThan(1800)
    expect(stated.filter(fact => fact.sources.some(id => sourceById(id) === undefined))).toEqual([])
    const measured = allSpecies().flatMap(species => species.ways.flatMap(way => way.measured))
    expect(measured.length).toBeGreaterThan(150)
    expect(measured.filter(result => sourceById(result.source) === undefined)).toEqual([])
  })

  test('call nothing published without its document', () => {
    expect(stated.filter(fact => fact.basis === 'published' && fact.sources.length === 0)).toEqual([])
  })

  test('let a source that was not read stand only beside a figure from memory', () => {
    const unread = new Set(
      allSources()
        .filter(source => source.readAs.startsWith('not read'))
        .map(source => source.id),
    )
    expect(unread.size).toBeGreaterThan(0)
    expect(
      stated.filter(fact => fact.basis !== 'from memory' && fact.sources.some(id => unread.has(id))),
    ).toEqual([])
  })

  test('have a name and a unit for each measure', () => {
    for (const { name } of Object.values(quantityByKey)) expect(name).not.toBe('')
  })

  test('agree with themselves: seed and seed bed, young and old tree, seedling and worked tree', () => {
    for (const species of allSpecies()) {
      const sown = wayOf(species, 'seed')
      if (species.seed !== null && sown !== undefined)
        expect(species.seed.germination.typical, species.id).toBe(sown.success.typical)
      const { minYoungCelsius, minMatureCelsius, yearsToFruitClonal, yearsToFruitSeedling } = species.orchard
      expect(minMatureCelsius.typical, species.id).toBeLessThanOrEqual(minYoungCelsius.typical)
      // Common practice, no source: a worked, layered or cutting-grown tree never fruits later than a seedling.
      if (yearsToFruitSeedling !== null)
        expect(yearsToFruitClonal.typical, species.id).toBeLessThanOrEqual(yearsToFruitSeedling.typical)
    }
  })

  test('shift a window of the north by six months for the south, unless the south is stated', () => {
    for (const species of allSpecies())
      for (const way of species.ways) {
        if (way.window === null) continue
        expect(way.window.southMonths.length, `${species.id} ${way.method}`).toBe(
          way.window.northMonths.length,
        )
        expect(new Set(way.window.southMonths), `${species.id} ${way.method}`).toEqual(
          new Set(way.window.northMonths.map(month => ((month + 5) % 12) + 1)),
        )
      }
  })
})

describe('published points stand in the facts as they are printed', () => {
  const of = (species: string, method: Parameters<typeof wayOf>[1]) => wayOf(speciesById(species)!, method)!

  test('mango scions from non-flowering shoots took in 90 of 100, from flowering ones in 70', () => {
    // ACTA24_MANGO
    const measured = of('mango', 'veneer_graft').measured
    expect(measured.filter(({ source }) => source === 'ACTA24_MANGO').map(({ share }) => share)).toEqual([
      0.9, 0.7,
    ])
  })
  test('at least 80 of 100 lychee air layers root', () => {
    // MENZEL2002
    expect(of('lychee', 'air_layer').success).toMatchObject({ typical: 0.8, sources: ['MENZEL2002'] })
  })
  test('hazelnut softwood rooted in 26.7 to 43.3 of 100', () => {
    // OZDEMIR2018
    expect(of('hazelnut', 'softwood_cutting').success).toMatchObject({ low: 0.267, high: 0.433 })
  })
  test('pecan patch buds: 75 of 100 is normal', () => {
    expect(of('pecan', 'patch_bud').success).toMatchObject({ typical: 0.75, basis: 'published' })
  })
  test('walnut shield buds hardly ever take, patch buds do', () => {
    expect(of('walnut', 't_bud').success.high).toBeLessThan(of('walnut', 'patch_bud').success.low)
  })
})

describe('a fruit is found by its name', () => {
  const builtIn = fruitsWith({ fruits: [], sets: [] })
  test.each([
    ['Mango', 'mango'],
    ['mangifera indica', 'mango'],
    ["Malus domestica 'Elstar'", 'apple'],
    ['Malus Prinz Albrecht v. Preussen', 'apple'],
    ['Citrus x latifolia', 'lime'],
    ['Citrus ×aurantiifolia', 'lime'],
    ['Prunus cerasus', 'cherry'],
    ['orange_sweet', 'orange_sweet'],
    ['Feijoa', 'feijoa'],
  ])('%s is %s', (text, id) => expect(speciesByName(text, builtIn)?.id).toBe(id))

  test.each(['Abienus festuschristus', 'Prunus', "Citrus 'Unknown'", 'Malus sylvestris', '', 'x'])(
    '%s is none that can be named',
    text => expect(speciesByName(text, builtIn)).toBeUndefined(),
  )
})

test('a source is cited by author, year, title and publisher', () => {
  expect(citation(sourceById('SAULS1994')!)).toBe(
    'Sauls, J.W.; Campbell, C.W. 1994. Mango Propagation, Fact Sheet HS-58. University of Florida, IFAS Extension',
  )
})

test('a method that needs slipping bark is one that lifts the bark', () => {
  // Common practice, no source.
  expect(methodById('t_bud').needsBarkSlipping).toBe(true)
  expect(methodById('patch_bud').needsBarkSlipping).toBe(true)
  expect(methodById('chip_bud').needsBarkSlipping).toBe(false)
  expect(methodById('whip_tongue_graft').needsBarkSlipping).toBe(false)
})
