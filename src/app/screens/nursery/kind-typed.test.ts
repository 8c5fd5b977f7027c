import { expect, test } from 'vitest'
import { type Entry, foldEntries } from '../../../record/index.ts'
import { fruitsWith } from '../../../trade/facts/index.ts'
import { copyProtocol, EntryId, ProtocolId } from '../../../trade/index.ts'
import { type Ground, type KindTyped, kindBodies, typedOf, waysOffered } from './kind-typed.ts'

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
