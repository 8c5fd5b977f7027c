import { expect, test } from 'vitest'
import { type Entry, foldEntries } from '../../../record/index.ts'
import { fruitsWith, starterProtocol } from '../../../trade/facts/index.ts'
import { Cultivar, copyProtocol, EntryId, ProtocolId } from '../../../trade/index.ts'
import { type KindTyped, kindBodies, typedOf, unionsOf } from './kind-typed.ts'
import { type Ground, waysOffered } from './ways-offered.ts'

const empty: Ground = {
  fruits: fruitsWith({ fruits: [], sets: [] }),
  cultivars: [],
  kinds: [],
  protocols: [],
}
const typed: KindTyped = {
  product: 'tree',
  species: 'fig',
  cultivar: 'Green Purse',
  others: [],
  interstem: '',
  name: '',
  size: '3 l pot',
  price: 9,
  ways: ['fig-hardwood-cutting'],
  rootstock: 'new',
  boughtAt: null,
  weeksNotice: 8,
}
const folded = (bodies: readonly Entry['body'][]) =>
  foldEntries(
    bodies.map((body, at) => ({
      id: EntryId.parse(`019e0000-0000-7000-8000-${String(at).padStart(12, '0')}`),
      on: '2026-11-26',
      at: null,
      by: null,
      device: 'office',
      body,
    })),
  )
const groundOf = (bodies: readonly Entry['body'][]): Ground => {
  const { cultivars, kinds, protocols } = folded(bodies)
  return {
    ...empty,
    cultivars: [...cultivars.values()],
    kinds: [...kinds.values()],
    protocols: [...protocols.values()],
  }
}

test('a fruit typed into an empty nursery brings its cultivar and the protocol of its way along', () => {
  const { cultivars, kinds, protocols } = folded(kindBodies(empty, typed, null)!)
  const [kind] = kinds.values()
  expect([...cultivars.values()].map(({ name }) => name)).toEqual(['Green Purse'])
  expect([...protocols.keys()]).toEqual(['fig-hardwood-cutting'])
  expect(kind).toMatchObject({ name: 'Fig ‘Green Purse’', form: 'cutting-grown', price: 9, size: '3 l pot' })
  expect(kind!.ways.map(({ protocol }) => protocol)).toEqual(['fig-hardwood-cutting'])
})

test('a worked tree without any rootstock brings one that is raised, or bought in', () => {
  const way = waysOffered(empty, 'apple', 'tree').find(({ onRootstock }) => onRootstock)!
  const bodies = kindBodies(empty, { ...typed, species: 'apple', ways: [way.protocol] }, null)!
  const { kinds, protocols } = folded(bodies)
  const tree = [...kinds.values()].find(({ form }) => form === 'worked')!
  const stock = kinds.get(tree.rootstock!)!
  expect(stock).toMatchObject({ form: 'rootstock', species: 'apple', buyIn: { price: 3, weeksNotice: 8 } })
  expect(tree.ways[0]!.rootstocks).toEqual([stock.id])
  for (const { protocol } of [...tree.ways, ...stock.ways]) expect(protocols.has(protocol)).toBe(true)
})

test('a protocol that the nursery copied is offered for its fruit, and a kind given it is made by the copy', () => {
  const before = groundOf(kindBodies(empty, typed, null)!)
  const copy = copyProtocol(folded(kindBodies(empty, typed, null)!).protocols.get(typed.ways[0] as never)!, {
    id: ProtocolId.parse('our-own'),
    name: 'Our own way',
  })
  const ground = { ...before, protocols: [...before.protocols, copy] }
  expect(waysOffered(ground, 'fig', 'tree').map(({ name }) => name)).toContain('Our own way')
  expect(waysOffered(ground, 'apple', 'tree').map(({ name }) => name)).not.toContain('Our own way')
  const [kind] = ground.kinds
  const bodies = kindBodies(ground, { ...typedOf(kind!, ground.cultivars), ways: ['our-own'] }, kind!)!
  expect(bodies).toEqual([
    { kind: 'kind-set/1', kindOfTree: { ...kind, ways: [{ protocol: 'our-own', rootstocks: [] }] } },
  ])
})

test('a kind that is opened and kept unchanged says the kind as it was, and nothing else', () => {
  const way = waysOffered(empty, 'apple', 'tree').find(({ onRootstock }) => onRootstock)!
  const ground = groundOf(kindBodies(empty, { ...typed, species: 'apple', ways: [way.protocol] }, null)!)
  for (const kind of ground.kinds)
    expect(kindBodies(ground, typedOf(kind, ground.cultivars), kind)).toEqual([
      { kind: 'kind-set/1', kindOfTree: kind },
    ])
})

test('nothing is said while the fruit, a way or the price lacks', () => {
  for (const lacking of [{ species: '' }, { ways: [] }, { price: null }])
    expect(kindBodies(empty, { ...typed, ...lacking }, null)).toBeNull()
})

const apple = { ...typed, species: 'apple', cultivar: 'Amber Russet', size: '' }
const ONE = 'apple-whip-tongue-graft'

test('three cultivars on one tree: the two further ones come along, and the way is written for three unions', () => {
  const several = { ...apple, others: ['Winter Lantern', ' ', 'Early Bell'], ways: [`${ONE}-x3`] }
  expect(unionsOf(several)).toEqual({ cultivars: 3, hasInterstem: false })
  const { cultivars, kinds, protocols } = folded(kindBodies(empty, several, null)!)
  const tree = [...kinds.values()].find(({ form }) => form === 'multi-worked')!
  expect(tree.name).toBe('Apple ‘Amber Russet’, ‘Winter Lantern’, ‘Early Bell’')
  expect(tree.cultivars.map(id => cultivars.get(id)!.name)).toEqual([
    'Amber Russet',
    'Winter Lantern',
    'Early Bell',
  ])
  expect(tree.ways).toEqual([{ protocol: `${ONE}-x3`, rootstocks: [tree.rootstock] }])
  expect(protocols.get(tree.ways[0]!.protocol)!.basedOn).toBe(ONE)
})

test('an interstem is a cultivar of the nursery’s, of another fruit too, or a new one; its piece is taken with the scion', () => {
  const quince = { id: 'quince-provence', name: 'Provence', species: 'quince', synonyms: [] }
  const ground = { ...empty, cultivars: [Cultivar.parse(quince)] }
  const between = (interstem: string) => {
    const bodies = kindBodies(ground, { ...apple, interstem, ways: [`${ONE}-interstem`] }, null)!
    const { kinds, protocols, cultivars } = folded(bodies)
    const tree = [...kinds.values()].find(({ form }) => form === 'worked')!
    expect(
      protocols
        .get(tree.ways[0]!.protocol)!
        .takes.flatMap(one => (one.what === 'material' ? [one.part] : [])),
    ).toEqual(['scion', 'interstem'])
    expect(tree.cultivars).toHaveLength(1)
    return [tree.interstem, cultivars.get(tree.interstem!)?.species]
  }
  expect(between('provence')).toEqual(['quince-provence', undefined])
  expect(between('Old Abbot')).toEqual(['apple-old-abbot', 'apple'])
})

test('a tree of several cultivars is read back as it was typed, and keeps its way whatever way that is', () => {
  const several = {
    ...apple,
    others: ['Winter Lantern'],
    interstem: 'Old Abbot',
    ways: [`${ONE}-x2-interstem`],
  }
  const ground = groundOf(kindBodies(empty, several, null)!)
  const kind = ground.kinds.find(({ form }) => form === 'multi-worked')!
  expect(typedOf(kind, ground.cultivars)).toMatchObject({
    cultivar: 'Amber Russet',
    others: ['Winter Lantern'],
    interstem: 'Old Abbot',
  })
  expect(kindBodies(ground, typedOf(kind, ground.cultivars), kind)).toEqual([
    { kind: 'kind-set/1', kindOfTree: kind },
  ])
  const plain = starterProtocol('whip_tongue_graft', ground.fruits.byId('apple')!)
  const byPlain = { ...kind, ways: [{ protocol: plain.id, rootstocks: kind.ways[0]!.rootstocks }] }
  const own = { ...ground, protocols: [...ground.protocols, plain] }
  expect(kindBodies(own, typedOf(byPlain, own.cultivars), byPlain)).toEqual([
    { kind: 'kind-set/1', kindOfTree: byPlain },
  ])
})

test('a name that came of fruit and cultivar follows a further cultivar; one that was given stays', () => {
  const before = groundOf(kindBodies(empty, { ...apple, ways: [ONE] }, null)!)
  const plain = before.kinds.find(({ form }) => form === 'worked')!
  const renamed = (kind: typeof plain) => {
    const more = { ...typedOf(kind, before.cultivars), others: ['Winter Lantern'], ways: [`${ONE}-x2`] }
    return folded(kindBodies(before, more, kind)!).kinds.get(kind.id)!.name
  }
  expect(plain.name).toBe('Apple ‘Amber Russet’')
  expect(renamed(plain)).toBe('Apple ‘Amber Russet’, ‘Winter Lantern’')
  expect(renamed({ ...plain, name: 'Our best' })).toBe('Our best')
})

test('ways for several unions are offered for so many alone, and an interstem is grafted, not budded', () => {
  const ids = (cultivars: number, hasInterstem: boolean, ground = empty) =>
    waysOffered(ground, 'apple', 'tree', { cultivars, hasInterstem }).map(
      ({ protocol }) => protocol as string,
    )
  expect(ids(1, false)).toContain('apple-chip-bud')
  expect(ids(2, false)).toContain('apple-chip-bud-x2')
  expect(ids(1, true)).toContain(`${ONE}-interstem`)
  expect(ids(1, true)).not.toContain('apple-chip-bud-interstem')
  const has = groundOf(
    kindBodies(empty, { ...apple, others: ['Winter Lantern'], ways: [`${ONE}-x2`] }, null)!,
  )
  expect(ids(1, false, has)).not.toContain(`${ONE}-x2`)
  expect(ids(2, false, has).filter(id => id === `${ONE}-x2`)).toHaveLength(1)
})
