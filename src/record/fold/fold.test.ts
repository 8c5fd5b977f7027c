import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { BatchId, BenchId, type EntryId, StepId } from '../../trade/index.ts'
import type { AnyEntry, Body, Entry, LaterEntry } from '../entry.ts'
import { exampleRegisters } from '../example-registers.ts'
import { historyText, readHistory } from '../history.ts'
import { canonicalNursery } from '../nursery-text.ts'
import { Bench } from '../register.ts'
import type { Batch, Nursery } from '../state.ts'
import { aliveIn } from './batch-draft.ts'
import { createFold, foldEntries } from './fold.ts'
import { historyOfNursery } from './random-history.ts'

const fold = (history: string): Nursery => foldEntries([...exampleRegisters, ...readHistory(history)])
const batchOf = (nursery: Nursery, id: string): Batch => nursery.batches.get(BatchId.parse(id))!
const kindsOfQuery = (nursery: Nursery): string[] => nursery.queries.map(query => query.kind)

/** Living plants by step, and those finished. */
function standing(nursery: Nursery, id: string): Record<string, number> {
  const batch = batchOf(nursery, id)
  const steps: Record<string, number> = {}
  for (const { step, number } of batch.portions) steps[step] = (steps[step] ?? 0) + number
  return batch.finished > 0 ? { ...steps, finished: batch.finished } : steps
}

describe('what each entry does', () => {
  const cases: readonly (readonly [history: string, batch: string, stands: Record<string, number>])[] = [
    ['B7[120]', 'B7', { mist: 120 }],
    ['B7[120] -14†', 'B7', { mist: 106 }],
    ['B7[120] -14† -30→B9', 'B7', { mist: 76 }],
    ['B7[120] -14† -30→B9', 'B9', { mist: 30 }],
    ['B7[100] »80', 'B7', { mist: 20, weaning: 80 }],
    ['B7[100] ✓80†15?5', 'B7', { mist: 85 }],
    ['B7[100] »100 »90 ■60', 'B7', { weaning: 10, 'growing on': 30, finished: 60 }],
    ['B7[100] »100 »100 ■60 -12✉O3', 'B7', { 'growing on': 40, finished: 48 }],
    ['B7[100] »100 »100 ■60 -12✉O3 +2✉O3', 'B7', { 'growing on': 40, finished: 50 }],
    ['B7[100] »100 »100 ■60 B9[40 on B7]', 'B7', { 'growing on': 40, finished: 20 }],
    ['B7[100] B9[50] -20⇢B7', 'B7', { mist: 120 }],
    ['B7[100] B9[50] -20⇢B7', 'B9', { mist: 30 }],
    ['B7[100] -40→B9 B9: -40⇢B7', 'B7', { mist: 100 }],
    ['B7[100] -10† ~', 'B7', { mist: 100 }],
  ]
  test.each(cases)('%s leaves in %s %o and nothing to ask', (history, batch, stands) => {
    const nursery = fold(history)
    expect(standing(nursery, batch)).toEqual(stands)
    expect(kindsOfQuery(nursery)).toEqual([])
  })

  test('plants seen to have taken go on first, and those that die are first the undecided', () => {
    const [portion] = batchOf(fold('B7[100] ✓80†0?20 -5†'), 'B7').portions
    expect(portion).toMatchObject({ number: 95, taken: 80 })
    expect(batchOf(fold('B7[100] ✓80†0?20 »70'), 'B7').portions).toMatchObject([
      { step: 'mist', number: 30, taken: 10 },
      { step: 'weaning', number: 70, taken: 0, countedOn: null },
    ])
  })

  test('the dead of a count are losses with their cause', () => {
    expect(batchOf(fold('B7[100] ✓80†15?5'), 'B7').losses).toMatchObject([
      { number: 15, cause: 'found dead at count' },
    ])
  })

  test('a batch split off keeps kind, protocol and first day, and says where it is from', () => {
    const child = batchOf(fold('B7[100 of M1] -30→B9'), 'B9')
    expect(child).toMatchObject({
      kind: 'tree',
      protocol: 'cuttings',
      startedOn: '2026-01-01',
      splitFrom: 'B7',
    })
    expect(child.origins).toMatchObject([{ from: 'batch', id: 'B7', as: 'rest', number: 30, atBirth: true }])
  })

  test('a move takes plants from other benches before those that stand on the bench already', () => {
    expect(batchOf(fold('B7[100] @40:mist-1 @50:mist-1'), 'B7').portions).toMatchObject([
      { bench: null, number: 10 },
      { bench: 'mist-1', number: 90 },
    ])
  })

  test('a stay on a bench ends on the day on which the last plant leaves it', () => {
    expect(batchOf(fold('B7[100] @100:mist-1 @60:mist-2 @40:mist-2'), 'B7').stays).toEqual([
      { bench: 'mist-1', from: '2026-01-01', to: '2026-01-04' },
      { bench: 'mist-2', from: '2026-01-01', to: null },
    ])
  })
})

describe('what does not add up is kept and asked about', () => {
  const cases: readonly (readonly [
    history: string,
    query: string,
    batch: string,
    stands: Record<string, number>,
  ])[] = [
    ['B7[100] ✓80†15?9', 'count-does-not-close', 'B7', { mist: 89 }],
    ['B7[100] ✓60†15?5', 'count-does-not-close', 'B7', { mist: 65 }],
    ['B7[100] »130', 'more-than-stood', 'B7', { weaning: 130 }],
    ['B7[100] »60 »80', 'more-than-stood', 'B7', { mist: 20, 'growing on': 80 }],
    ['B7[100] »100:potting', 'unknown-step', 'B7', { potting: 100 }],
    ['B7[100] -5✉O1', 'not-finished-yet', 'B7', { mist: 95 }],
    ['B7[100] B9[40 on B7]', 'not-finished-yet', 'B7', { mist: 60 }],
    ['B7[100] -10⇢B7', 'into-itself', 'B7', { mist: 100 }],
    ['B7[100] B7[20]', 'started-twice', 'B7', { mist: 120 }],
    ['B7[100] @5:nowhere', 'unknown-bench', 'B7', { mist: 100 }],
    ['B7[150] »150 »150 ■150 -120✉O1', 'order-overfilled', 'B7', { finished: 30 }],
    ['B7[9] »9 »9 ■9 +2✉O1', 'returned-more', 'B7', { finished: 11 }],
    ['B7[300 of M1]', 'mother-over-supply', 'B7', { mist: 300 }],
    ['B7[30 of M2]', 'wrong-wood', 'B7', { mist: 30 }],
    ['B7[30 of M9]', 'unknown-mother', 'B7', { mist: 30 }],
  ]
  test.each(cases)('%s asks: %s', (history, query, batch, stands) => {
    const nursery = fold(history)
    expect(kindsOfQuery(nursery)).toContain(query)
    expect(standing(nursery, batch)).toEqual(stands)
  })

  test('entries of a batch that no one started wait, and count when its start arrives', () => {
    const [start, loss] = readHistory('B7[120] -14†') as [Entry, Entry]
    const growing = createFold()
    growing.add([...exampleRegisters, loss])
    expect(kindsOfQuery(growing.nursery())).toEqual(['unknown-batch'])
    growing.add([start])
    expect(standing(growing.nursery(), 'B7')).toEqual({ mist: 106 })
    expect(growing.nursery().queries).toEqual([])
  })

  test('a loss dated before the start counts from the start', () => {
    const [start, loss] = readHistory('B7[120] -14†') as [Entry, Entry]
    const nursery = foldEntries([...exampleRegisters, start, { ...loss, on: '2025-12-31' }])
    expect(standing(nursery, 'B7')).toEqual({ mist: 106 })
    expect(kindsOfQuery(nursery)).toEqual(['before-start'])
  })

  test('a query that someone settled is kept with the answer', () => {
    const before = fold('B7[100] ✓80†15?9')
    const settling = told('2026-03-01', {
      kind: 'query-settled/1',
      query: before.queries[0]!.id,
      how: 'four came from B6',
    })
    const after = foldEntries([...exampleRegisters, ...readHistory('B7[100] ✓80†15?9'), settling])
    expect(after.queries).toEqual([])
    expect(after.settledQueries).toMatchObject([
      { kind: 'count-does-not-close', settled: { how: 'four came from B6' } },
    ])
  })
})

let made = 0
const told = (on: string, body: Body): Entry => {
  made += 1
  const id = `019c0000-0000-7000-8000-${String(made).padStart(12, '0')}` as EntryId
  return { id, on, at: null, by: null, device: 'test', body }
}

describe('struck entries', () => {
  const entries = readHistory('B7[120] -14†')
  const loss = entries[1]!
  const strike = told('2026-02-01', { kind: 'struck/1', entry: loss.id, why: 'wrong batch' })

  test('count no more, stay among the entries of the batch, and say what struck them', () => {
    const nursery = foldEntries([...exampleRegisters, ...entries, strike])
    expect(standing(nursery, 'B7')).toEqual({ mist: 120 })
    expect(batchOf(nursery, 'B7').entries).toContain(loss.id)
    expect(nursery.struck.get(loss.id)).toEqual({ by: strike.id, on: '2026-02-01', why: 'wrong batch' })
  })

  test('are struck even if the striking arrives first', () => {
    const growing = createFold()
    growing.add([...exampleRegisters, strike, entries[0]!])
    expect(kindsOfQuery(growing.nursery())).toEqual(['strikes-nothing'])
    growing.add([loss])
    expect(standing(growing.nursery(), 'B7')).toEqual({ mist: 120 })
    expect(growing.nursery().queries).toEqual([])
  })

  test('count again when the striking is struck by a later one', () => {
    const again = told('2026-02-02', { kind: 'struck/1', entry: strike.id, why: 'it was right' })
    expect(standing(foldEntries([...exampleRegisters, again, strike, ...entries]), 'B7')).toEqual({
      mist: 106,
    })
  })

  test('two strikings of each other do not chase one another', () => {
    const first = told('2026-02-01', { kind: 'noted/1', about: '', text: 'x' })
    const second = told('2026-02-02', { kind: 'struck/1', entry: first.id, why: 'a' })
    const a: Entry = { ...first, body: { kind: 'struck/1', entry: second.id, why: 'b' } }
    const nursery = foldEntries([a, second])
    expect([...nursery.struck.keys()]).toEqual([a.id])
  })
})

describe('entries of a newer version', () => {
  const later: LaterEntry = {
    ...told('2026-02-01', { kind: 'noted/1', about: '', text: 'x' }),
    body: { kind: 'roots-washed/1', batch: 'B7' },
  }
  test('wait, are asked about, and change nothing else', () => {
    const nursery = foldEntries([...exampleRegisters, ...readHistory('B7[120]'), later])
    expect(nursery.waiting).toEqual([later])
    expect(kindsOfQuery(nursery)).toEqual(['not-understood'])
    expect(standing(nursery, 'B7')).toEqual({ mist: 120 })
  })
})

describe('things said anew', () => {
  const bench = (id: string, areaSquareMetres: number) => ({
    kind: 'bench-set/1' as const,
    bench: Bench.parse({ id, name: id, place: 'mist bed', areaSquareMetres }),
  })
  const [first, second, third] = ['2026-01-01', '2026-01-02', '2026-01-03'].map((on, i) =>
    told(on, bench(`b${i + 1}`, 10)),
  ) as [Entry, Entry, Entry]
  const b1 = BenchId.parse('b1')
  const changed = told('2026-02-01', bench('b1', 12))
  const removed = told('2026-02-02', { kind: 'bench-removed/1', bench: b1, why: '' })
  const brought = told('2026-02-03', { kind: 'struck/1', entry: removed.id, why: 'still here' })

  test('a changed bench, and one that was taken away and brought back, stay in their place in the list, whatever arrived first', () => {
    const growing = createFold()
    const listAfter = (...entries: Entry[]) => {
      growing.add(entries)
      return [...growing.nursery().benches.values()].map(({ id, areaSquareMetres }) => [id, areaSquareMetres])
    }
    expect(listAfter(third, changed, second, first)).toEqual([
      ['b1', 12],
      ['b2', 10],
      ['b3', 10],
    ])
    expect(listAfter(removed).map(([id]) => id)).toEqual(['b2', 'b3'])
    expect(listAfter(brought).map(([id]) => id)).toEqual(['b1', 'b2', 'b3'])
  })
})

describe('laws of the log', () => {
  const random = fc.integer({ min: 1, max: 2 ** 31 - 1 })

  test('the same entries in any order of arrival, by any two phones, some of them twice, give the same nursery', () => {
    fc.assert(
      fc.property(
        random,
        fc.integer({ min: 1, max: 60 }),
        fc.infiniteStream(fc.nat()),
        (seed, length, dice) => {
          const history = historyOfNursery(seed, length)
          const inOrder = canonicalNursery(foldEntries(history))
          const growing = createFold()
          for (const part of shuffledParts(history, dice)) {
            growing.add(part)
            growing.nursery()
          }
          expect(canonicalNursery(growing.nursery()), historyText(history)).toBe(inOrder)
        },
      ),
      { numRuns: 100 },
    )
  })

  test('plants are conserved: all that came into a batch stand in it, are finished, or left it by a way that is named', () => {
    fc.assert(
      fc.property(random, fc.integer({ min: 1, max: 120 }), (seed, length) => {
        const history = historyOfNursery(seed, length)
        for (const batch of foldEntries(history).batches.values()) {
          const out = batch.losses.reduce((sum, loss) => sum + loss.number, 0)
          const sent = batch.dispatched.reduce((sum, { number }) => sum + number, 0)
          const used = batch.usedAsRootstock + batch.usedWhole
          const gone = out + sent + used + batch.splitOff + batch.joinedAway + batch.missing
          const came = batch.number + batch.joinedIn + batch.returned + batch.found
          expect(came, historyText(history)).toBe(aliveIn(batch) + gone)
          for (const outcome of batch.outcomes) {
            const stands = batch.portions
              .filter(p => p.step === outcome.step)
              .reduce((sum, p) => sum + p.number, 0)
            expect(outcome.entered + outcome.found, historyText(history)).toBe(
              outcome.left + outcome.lost + outcome.missing + stands,
            )
          }
          for (const { number, taken } of batch.portions) {
            expect(number).toBeGreaterThan(0)
            expect(taken).toBeGreaterThanOrEqual(0)
            expect(taken).toBeLessThanOrEqual(number)
          }
          const finished = batch.finishedPortions.reduce((sum, portion) => sum + portion.number, 0)
          expect(finished).toBe(batch.finished)
        }
      }),
      { numRuns: 150 },
    )
  })

  test('plants split off and joined anywhere arrive somewhere, or wait for a batch that no one started', () => {
    fc.assert(
      fc.property(random, fc.integer({ min: 1, max: 120 }), (seed, length) => {
        const nursery = foldEntries(historyOfNursery(seed, length))
        fc.pre(!nursery.queries.some(({ kind }) => kind === 'unknown-batch' || kind === 'started-twice'))
        let away = 0
        let arrived = 0
        for (const batch of nursery.batches.values()) {
          away += batch.splitOff + batch.joinedAway
          arrived += batch.joinedIn + (batch.splitFrom === null ? 0 : batch.number)
        }
        expect(arrived).toBe(away)
      }),
      { numRuns: 100 },
    )
  })

  test('a nursery handed out never changes afterwards', () => {
    const growing = createFold()
    const history = historyOfNursery(7, 80)
    growing.add(history.slice(0, 60))
    const before = growing.nursery()
    const text = canonicalNursery(before)
    growing.add(history.slice(60))
    growing.nursery()
    expect(canonicalNursery(before)).toBe(text)
  })

  test('two entries of one id fold to the same state whichever came first', () => {
    const [start, loss] = readHistory('B7[120] -14†') as [Entry, Entry]
    const other: Entry = {
      ...loss,
      body: {
        kind: 'lost/1',
        batch: BatchId.parse('B7'),
        step: StepId.parse('mist'),
        number: 20,
        cause: 'rot',
      },
    }
    const one = foldEntries([...exampleRegisters, start, loss, other])
    const two = foldEntries([...exampleRegisters, start, other, loss])
    expect(canonicalNursery(one)).toBe(canonicalNursery(two))
  })
})

/** The entries in an order made of the dice, some twice, in parts. */
function shuffledParts(entries: readonly AnyEntry[], dice: Iterator<number>): AnyEntry[][] {
  const next = (below: number) => (dice.next().value as number) % below
  const all = [...entries, ...entries.filter(() => next(4) === 0)]
  for (let i = all.length - 1; i > 0; i--) {
    const j = next(i + 1)
    const held = all[i]!
    all[i] = all[j]!
    all[j] = held
  }
  const parts: AnyEntry[][] = []
  while (all.length > 0) parts.push(all.splice(0, 1 + next(20)))
  return parts
}
