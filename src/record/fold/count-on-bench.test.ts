import { expect, test } from 'vitest'
import { BatchId } from '../../trade/index.ts'
import type { Entry } from '../entry.ts'
import { startOf, teller } from '../example-entries.ts'
import { exampleRegisters } from '../example-registers.ts'
import { queryText } from '../query-text.ts'
import { foldEntries } from './fold.ts'

const say = teller()
const onBench = (batch: string, number: number, bench: string) =>
  say('2026-03-01', startOf(batch, number, [], { bench }))
const counted = (
  ...lines: readonly (readonly [batch: string, stood: number, counted: number, cause: string])[]
) =>
  say('2026-03-05', {
    kind: 'bench-counted/1',
    bench: 'mist-1',
    lines: lines.map(([batch, stood, seen, cause]) => ({ batch, step: 'mist', stood, counted: seen, cause })),
  })
const fold = (...entries: readonly Entry[]) => foldEntries([...exampleRegisters, ...entries])
const batchOf = (nursery: ReturnType<typeof fold>, id: string) => nursery.batches.get(BatchId.parse(id))!

test('a bench that holds what the record has changes nothing, and the day of the count is kept', () => {
  const nursery = fold(onBench('B1', 40, 'mist-1'), counted(['B1', 40, 40, '']))
  expect(batchOf(nursery, 'B1')).toMatchObject({ found: 0, missing: 0, losses: [] })
  expect([...nursery.benchCounts]).toMatchObject([['mist-1', { on: '2026-03-05' }]])
  expect(nursery.queries).toEqual([])
})

test('fewer on a bench are lost by the cause that was said, and the batch keeps what stands elsewhere', () => {
  const move = say('2026-03-02', { kind: 'moved/1', batch: 'B1', step: 'mist', number: 15, to: 'mist-2' })
  const nursery = fold(onBench('B1', 40, 'mist-1'), move, counted(['B1', 25, 18, 'dried out']))
  expect(batchOf(nursery, 'B1')).toMatchObject({
    portions: [
      { bench: 'mist-1', number: 18 },
      { bench: 'mist-2', number: 15 },
    ],
    losses: [{ number: 7, cause: 'dried out' }],
    missing: 0,
  })
  expect(nursery.queries).toEqual([])
})

test('more on a bench came from the batch’s other benches, and the rest is found', () => {
  const move = say('2026-03-02', { kind: 'moved/1', batch: 'B1', step: 'mist', number: 15, to: 'mist-2' })
  const nursery = fold(
    onBench('B1', 40, 'mist-1'),
    move,
    counted(['B1', 25, 44, 'moved back, not written down']),
  )
  expect(batchOf(nursery, 'B1')).toMatchObject({ portions: [{ bench: 'mist-1', number: 44 }], found: 4 })
  expect(nursery.queries).toEqual([])
})

test('a difference without a cause is missing, and asked about', () => {
  const nursery = fold(onBench('B1', 40, 'mist-1'), counted(['B1', 40, 37, '']))
  expect(batchOf(nursery, 'B1')).toMatchObject({ missing: 3, losses: [] })
  expect(nursery.queries.map(({ kind }) => kind)).toEqual(['bench-count-does-not-close'])
})

test('what arrives late changes what the count means: only what was said to be fewer is lost, and a query asks', () => {
  const late = say('2026-03-03', { kind: 'moved/1', batch: 'B1', step: 'mist', number: 10, to: 'mist-2' })
  const nursery = fold(onBench('B1', 40, 'mist-1'), counted(['B1', 40, 30, 'stolen']), late)
  expect(batchOf(nursery, 'B1')).toMatchObject({
    portions: [
      { bench: 'mist-1', number: 30 },
      { bench: 'mist-2', number: 10 },
    ],
    losses: [],
  })
  expect(nursery.queries.map(queryText)).toEqual([
    'Batch B1, mist: on bench mist-1 the record had 30, and 30 were counted against 40 that it was said to have; ' +
      'the count stands, so enter the move or loss that was not written down.',
  ])
})

test('a person who is named and not entered is asked about once, by the first entry that counts', () => {
  const by = (entry: Entry): Entry => ({ ...entry, by: 'P9' as never })
  const [first, second] = [by(onBench('B1', 9, 'mist-1')), by(onBench('B2', 9, 'mist-1'))]
  const asked = (...entries: readonly Entry[]) =>
    fold(first, second, ...entries).queries.map(({ entry, facts }) => [entry, facts.person, facts.number])
  expect(asked()).toEqual([[first.id, 'P9', 2]])
  const struck = say('2026-03-02', { kind: 'struck/1', entry: first.id, why: 'wrong' })
  expect(asked(struck)).toEqual([[second.id, 'P9', 1]])
  const person = { id: 'P9', name: 'Ada', skills: [], hoursPerWeek: 20 }
  expect(asked(say('2026-03-02', { kind: 'person-set/1', person }))).toEqual([])
})
