import { expect, test } from 'vitest'
import type { AnyEntry } from './entry.ts'
import { restedOn } from './what-rests.ts'

let number = 0
const said = (body: object, by: string | null = null): AnyEntry =>
  ({ id: `e${++number}`, on: '2026-05-04', at: null, by, device: 'test', body }) as unknown as AnyEntry

const bench = said({ kind: 'bench-set/1', bench: { id: 'mist', name: 'Mist' } })
const ana = said({ kind: 'person-set/1', person: { id: 'ana', name: 'Ana' } })
const fig = said({ kind: 'kind-set/1', kindOfTree: { id: 'fig', species: 'fig', cultivars: ['brown'] } })
const brown = said({ kind: 'cultivar-set/1', cultivar: { id: 'brown', species: 'fig' } })
const pear = said({ kind: 'kind-set/1', kindOfTree: { id: 'pear', species: 'pear', cultivars: [] } })
const order = said({ kind: 'order-placed/1', order: { id: 'O1', kind: 'fig', instead: [] } })
const begun = said({ kind: 'batch-started/1', batch: 'B1', kindOfTree: 'fig', bench: 'mist', sources: [] })
const wentOn = said({ kind: 'advanced/1', batch: 'B1', from: 'mist', to: 'pear', number: 80, bench: null })
const brought = [bench, ana, fig, brown, pear, order, begun, wentOn]

const stays = (later: readonly AnyEntry[], earlier: readonly AnyEntry[] = []) =>
  [...restedOn(brought, later, () => earlier)].map(([id]) => id).sort()
const ids = (...entries: readonly AnyEntry[]) => entries.map(({ id }) => id).sort()

test('where nothing was said since, nothing rests on what was brought in, whatever it says of itself', () => {
  expect(stays([])).toEqual([])
})

test('on a batch that was counted since rest its beginning and its numbers, and on them its kind, its bench and its cultivar', () => {
  const count = said({ kind: 'counted/1', batch: 'B1', step: 'mist', taken: 70, dead: 10, undecided: 0 })
  expect(stays([count])).toEqual(ids(begun, wentOn, bench, fig, brown))
  const why = restedOn(brought, [count], () => [])
  expect(why.get(begun.id)).toBe(count)
  expect(why.get(brown.id)).toBe(fig)
})

test('a bench that a batch is moved to, a person who said something, an order in an accepted plan, and a note about a thing are named too', () => {
  expect(stays([said({ kind: 'moved/1', batch: 'B9', step: 'mist', number: 3, to: 'mist' })])).toEqual(
    ids(bench),
  )
  expect(stays([said({ kind: 'settings-set/1', settings: {} }, 'ana')])).toEqual(ids(ana))
  const plan = said({ kind: 'plan-accepted/1', plan: 'p', starts: [], chances: { O1: 0.9 } })
  expect(stays([plan])).toEqual(ids(order, fig, brown))
  expect(stays([said({ kind: 'noted/1', about: 'O1', text: 'called' })])).toEqual(ids(order, fig, brown))
})

test('the fruit, or a step, of the same name is another thing than the kind', () => {
  expect(stays([said({ kind: 'fact-set/1', species: 'pear', set: { fact: 'x' } })])).toEqual([])
  expect(stays([said({ kind: 'lost/1', batch: 'B9', step: 'pear', number: 1, cause: 'mice' })])).toEqual([])
})

test('a bench that others had set before stands as it was then, so that nothing rests on its having been set anew', () => {
  const move = said({ kind: 'moved/1', batch: 'B9', step: 'mist', number: 3, to: 'mist' })
  const before = said({ kind: 'bench-set/1', bench: { id: 'mist', name: 'Old mist' } })
  expect(stays([move], [before])).toEqual([])
})
