import { expect, test } from 'vitest'
import { fruitsWith, severalUnions, starterProtocol } from '../../../trade/facts/index.ts'
import { Cultivar, Kind } from '../../../trade/index.ts'
import { givenIn, motherMade, usualGives } from './mother-typed.ts'

const fruits = fruitsWith({ fruits: [], sets: [] })
const way = starterProtocol('hardwood_cutting', fruits.byId('fig')!)
const cultivar = Cultivar.parse({ id: 'fig-a', name: 'Green Purse', species: 'fig' })
const kind = (form: string, cultivars: readonly string[]) =>
  Kind.parse({
    id: form,
    name: `a ${form}`,
    species: 'fig',
    cultivars,
    form,
    size: '',
    price: 1,
    holdingCostPerWeek: 0,
    ways: [{ protocol: way.id }],
  })
const ground = {
  cultivars: [cultivar],
  kinds: [kind('cutting-grown', ['fig-a']), kind('rootstock', [])],
  protocols: [
    { ...way, takes: [...way.takes], window: { condition: '', months: [1, 12], basis: way.window.basis } },
  ],
}
const said = { name: 'Green Purse 1', block: '', provenance: '' }
const rest = { position: null, planted: null, gives: [] }

test('a mother gives what the ways of its kinds take, in the months of their starts and the one before', () => {
  expect(usualGives(ground, givenIn(ground)[0]!)).toEqual([
    { material: 'cuttings', perYear: 200, perWeek: null, months: [1, 11, 12] },
  ])
})

test('a mother of an interstem gives the sticks that its trees take of it, and no scions of them', () => {
  const graft = starterProtocol('whip_tongue_graft', fruits.byId('apple')!)
  const double = severalUnions(graft, { cultivars: 1, hasInterstem: true })
  const between = Cultivar.parse({ id: 'between', name: 'Old Abbot', species: 'apple' })
  const tree = {
    ...kind('worked', ['fig-a']),
    interstem: between.id,
    ways: [{ protocol: double.id, rootstocks: [] }],
  }
  const of = { cultivar: between, stock: null }
  const protocols = [
    { ...double, takes: [...double.takes], window: { ...ground.protocols[0]!.window, months: [3] } },
  ]
  expect(usualGives({ kinds: [tree], protocols }, of)).toMatchObject([
    { material: 'scion sticks', months: [2, 3] },
  ])
  const plain = [{ ...protocols[0]!, takes: [...graft.takes] }]
  expect(usualGives({ kinds: [tree], protocols: plain }, of)).toEqual([])
})

test('a mother of a rootstock stands under a cultivar of its name, made once', () => {
  const of = givenIn(ground)[1]!
  const made = motherMade(said, of, rest, { mothers: [], cultivars: ground.cultivars })
  expect(made.cultivar).toMatchObject({ name: 'a rootstock', species: 'fig' })
  expect(made.mother).toMatchObject({ cultivar: made.cultivar!.id, rootstockKind: 'rootstock' })
  const again = motherMade(said, of, rest, {
    mothers: [made.mother.id],
    cultivars: [...ground.cultivars, made.cultivar!],
  })
  expect(again.cultivar).toBeNull()
  expect(again.mother.cultivar).toBe(made.mother.cultivar)
  expect(again.mother.id).not.toBe(made.mother.id)
  // Asked of which she is, the rootstock is offered once: its cultivar is the same thing.
  const both = givenIn({ ...ground, cultivars: [...ground.cultivars, made.cultivar!] })
  expect(both.filter(({ name }) => name === 'a rootstock')).toEqual([of])
})
