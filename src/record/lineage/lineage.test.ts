import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { BatchId } from '../../trade/index.ts'
import { startOf, teller } from '../example-entries.ts'
import { exampleRegisters } from '../example-registers.ts'
import { foldEntries } from '../fold/fold.ts'
import { historyOfNursery } from '../fold/random-history.ts'
import { historyText, readHistory } from '../history.ts'
import type { Nursery } from '../state.ts'
import { childrenOf } from './children.ts'
import type { Ref } from './graph.ts'
import { lineageOf, type Trace } from './trace.ts'

const fold = (history: string): Nursery => foldEntries([...exampleRegisters, ...readHistory(history)])
const batch = (id: string): Ref => ({ what: 'batch', id })
const mother = (id: string): Ref => ({ what: 'mother', id })
const reached = (trace: Trace): Record<string, number> =>
  Object.fromEntries(trace.reached.map(({ ref, number }) => [ref.id, number]))

describe('lineage with quantities', () => {
  const history = 'B1[100 of M1] »100 »100 ■90 B2[40 on B1 of M2] -10→B3 B4[30 of M2] -5⇢B2'

  test('descendants of a mother are all batches that carry wood or roots of hers', () => {
    expect(reached(lineageOf(fold(history)).descendants(mother('M1')))).toEqual({ B1: 100, B2: 40, B3: 10 })
    expect(reached(lineageOf(fold(history)).descendants(mother('M2')))).toEqual({ B2: 45, B3: 10, B4: 30 })
  })

  test('ancestors of a tree are its rootstocks, its wood and where those come from', () => {
    expect(reached(lineageOf(fold(history)).ancestors(batch('B3')))).toEqual({
      B2: 10,
      B1: 40,
      M1: 100,
      M2: 40,
    })
  })

  test('what left a batch before something joined it does not carry it', () => {
    const nursery = fold('B1[50 of M1] -20→B3 B2[9 of M2] -9⇢B1 B1: -10→B4')
    expect(reached(lineageOf(nursery).descendants(mother('M2')))).toEqual({ B2: 9, B1: 9, B4: 10 })
    expect(reached(lineageOf(nursery).ancestors(batch('B3')))).toEqual({ B1: 20, M1: 50 })
  })

  test('with a first day, only what left from that day on is traced', () => {
    const nursery = fold('B1[10 of M1] B2[20 of M1] B3[30 of M1]')
    expect(reached(lineageOf(nursery).descendants(mother('M1'), '2026-01-02'))).toEqual({ B2: 20, B3: 30 })
  })

  test('a wrong date does not hide a parent', () => {
    const [start, split, ...rest] = readHistory('B1[50 of M1] -20→B2 B2: -5→B3')
    const nursery = foldEntries([...exampleRegisters, { ...start!, on: '2026-05-01' }, split!, ...rest])
    expect(reached(lineageOf(nursery).descendants(mother('M1')))).toEqual({ B1: 50, B2: 20, B3: 5 })
  })

  test('a thing of which no entry speaks has no lineage', () => {
    expect(lineageOf(fold('B1[1]')).descendants(batch('B99'))).toEqual({ reached: [], links: [] })
  })
})

test('of the same batches, other lots make another lineage, whichever is asked about first', () => {
  const say = teller()
  const collected = {
    lot: 'L1',
    mother: 'M1',
    material: 'budwood',
    number: 20,
    stored: 'cold',
    goodUntil: null,
  }
  const told = foldEntries([
    ...exampleRegisters,
    say('2026-01-20', { kind: 'material-collected/1', ...collected }),
    say('2026-02-01', startOf('B1', 40, [{ from: 'lot', lot: 'L1', number: 15 }], { bench: 'mist-1' })),
  ])
  const untold = { ...told, lots: new Map(), mothers: new Map() }
  for (let time = 0; time < 2; time++) {
    expect(reached(lineageOf(untold).descendants(mother('M1')))).toEqual({})
    expect(reached(lineageOf(told).descendants(mother('M1')))).toEqual({ L1: 20, B1: 15 })
  }
})

/**
 * The same question asked the long way: every chain of links is walked, and holds if each link left its batch on
 * or after the day on which the one before it arrived there (a link that made the batch was there from the start).
 */
function walkEveryChain(nursery: Nursery, root: Ref, way: 'down' | 'up'): Set<string> {
  interface Edge {
    readonly from: string
    readonly to: string
    readonly on: string
    readonly birth: boolean
  }
  const key = ({ what, id }: Ref) => `${what} ${id}`
  const edges: Edge[] = []
  const born = (what: string, id: string): string =>
    (what === 'batch' ? nursery.batches.get(id as never)?.startedOn : nursery.lots.get(id as never)?.on) ?? ''
  for (const { mother: tree, given } of nursery.mothers.values()) {
    for (const { lot, on } of given) {
      if (lot === null || nursery.lots.get(lot)?.mother !== tree.id) continue
      edges.push({ from: `mother ${tree.id}`, to: `lot ${lot}`, on, birth: true })
    }
  }
  for (const { id, origins } of nursery.batches.values()) {
    for (const origin of origins) {
      const first = born(origin.from, origin.id)
      const on = [origin.on, first].sort().at(-1)!
      edges.push({ from: `${origin.from} ${origin.id}`, to: `batch ${id}`, on, birth: origin.atBirth })
    }
  }
  const found = new Set<string>()
  const follows = (before: Edge, after: Edge) => before.birth || before.on <= after.on
  const seen = new Set<Edge>()
  const walk = (edge: Edge) => {
    // A chain that comes by a link a second time goes on from there as it did the first time.
    if (seen.has(edge)) return
    seen.add(edge)
    found.add(way === 'down' ? edge.to : edge.from)
    for (const next of edges) {
      if (
        way === 'down'
          ? next.from === edge.to && follows(edge, next)
          : next.to === edge.from && follows(next, edge)
      ) {
        walk(next)
      }
    }
  }
  for (const edge of edges) if ((way === 'down' ? edge.from : edge.to) === key(root)) walk(edge)
  return found
}

test('lineage agrees with walking every chain of links, both ways, on histories that no one would tell', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1 }), fc.integer({ min: 5, max: 200 }), (seed, length) => {
      const history = historyOfNursery(seed, length)
      const nursery = foldEntries(history)
      const lineage = lineageOf(nursery)
      const roots = [
        mother('M1'),
        { what: 'lot', id: 'L1' } as const,
        ...[...nursery.batches.keys()].map(batch),
      ]
      for (const root of roots) {
        for (const way of ['down', 'up'] as const) {
          const trace = way === 'down' ? lineage.descendants(root) : lineage.ancestors(root)
          const keys = new Set(trace.reached.map(({ ref }) => `${ref.what} ${ref.id}`))
          const walked = walkEveryChain(nursery, root, way)
          walked.delete(`${root.what} ${root.id}`)
          keys.delete(`${root.what} ${root.id}`)
          expect(keys, `${root.id} ${way}\n${historyText(history)}`).toEqual(walked)
        }
      }
    }),
    { numRuns: 40 },
  )
})

test('in a nursery of 10,000 batches every ancestor has its descendant, and the other way round', () => {
  const nursery = foldEntries(manyBatches(10_000))
  const lineage = lineageOf(nursery)
  expect(nursery.batches.size).toBe(10_000)
  for (const id of ['B17', 'B2500', 'B9999']) {
    for (const { ref } of lineage.ancestors(batch(id)).reached) {
      expect(lineage.descendants(ref).reached.map(({ ref: child }) => child.id)).toContain(id)
    }
  }
  const below = lineage.descendants(mother('M1')).reached
  expect(new Set(below.map(({ ref }) => `${ref.what} ${ref.id}`))).toEqual(
    walkEveryChain(nursery, mother('M1'), 'down'),
  )
})

/** Each batch is worked on one of those before it, or raised from cuttings of a mother. */
function manyBatches(number: number) {
  const signs: string[] = []
  for (let i = 0; i < number; i++) {
    signs.push(i % 5 === 0 ? `B${i}[9 of M${1 + (i % 2)}]` : `B${i}[1 on B${Math.floor(i * 0.7)}]`)
  }
  return [...exampleRegisters, ...readHistory(signs.join(' '))]
}

test('the batches that came straight from a batch are its children', () => {
  const nursery = fold('B1[100] -30→B2 B2: -10→B3 B1: »70 »70 ■70 B4[20 on B1]')
  expect(childrenOf(nursery, BatchId.parse('B1'))).toMatchObject([
    { batch: 'B2', number: 30, as: 'rest' },
    { batch: 'B4', number: 20, as: 'rootstock' },
  ])
})
