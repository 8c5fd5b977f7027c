import { expect, test } from 'vitest'
import { startOf, teller } from './example-entries.ts'
import { exampleRegisters } from './example-registers.ts'
import { foldEntries } from './fold/fold.ts'
import { historyOfNursery } from './fold/random-history.ts'
import { readHistory } from './history.ts'
import { type QueryKind, queryKinds, queryText } from './query-text.ts'

const say = teller()
const told = (...bodies: (readonly [on: string, body: object])[]) =>
  foldEntries([...exampleRegisters, ...bodies.map(([on, body]) => say(on, body))]).queries

/** Queries that a random history comes upon too seldom. */
const seldom = [
  ...told(
    ['2026-01-01', { kind: 'advanced/1', batch: 'B1', from: 'mist', to: 'mist', number: 3, bench: null }],
    ['2026-01-01', startOf('B1', 9, [{ from: 'mother', mother: 'M1', material: 'cuttings', number: 500 }])],
    ['2026-01-02', { kind: 'lost/1', batch: 'B1', step: 'no such step', number: 1, cause: 'rot' }],
    ['2026-01-03', startOf('B2', 9, [], { candidates: ['Amber Russet'] })],
    ['2026-01-04', { kind: 'name-settled/1', batch: 'B2', cultivar: 'Winter Lantern', how: 'by fruit' }],
  ),
  ...told(
    [
      '2026-01-05',
      {
        kind: 'material-collected/1',
        lot: 'L1',
        mother: 'M1',
        material: 'budwood',
        number: 5,
        stored: '',
        goodUntil: '2026-01-20',
      },
    ],
    ['2026-01-06', { kind: 'mother-observed/1', mother: 'M1', bbch: 'full bloom', health: 'well' }],
    ['2026-01-06', startOf('B3', 9, [{ from: 'lot', lot: 'L1', number: 3 }])],
    ['2026-02-06', startOf('B4', 9, [{ from: 'lot', lot: 'L1', number: 3 }])],
    ['2026-01-02', startOf('B5', 9, [{ from: 'lot', lot: 'L1', number: 3 }])],
  ),
  ...foldEntries([...exampleRegisters, ...readHistory('B7[150] »150 »150 ■150 -120✉O1')]).queries,
  ...foldEntries([{ ...exampleRegisters[0]!, body: { kind: 'roots-washed/1' } }]).queries,
  ...told(['2026-02-01', { kind: 'struck/1', entry: '019f0000-0000-7000-8000-000000000001', why: 'wrong' }]),
  ...strikingItself(),
]

function strikingItself() {
  const strike = say('2026-02-01', { kind: 'struck/1', entry: exampleRegisters[0]!.id, why: 'wrong' })
  return foldEntries([{ ...strike, body: { kind: 'struck/1', entry: strike.id, why: 'wrong' } }]).queries
}

test('every kind of query can come up, and says what and what to do in one whole sentence', () => {
  const seen = new Map<QueryKind, string>()
  const queries = [
    ...seldom,
    ...Array.from({ length: 40 }, (_, i) => foldEntries(historyOfNursery(i + 1, 250)).queries).flat(),
  ]
  for (const query of queries) {
    const text = queryText(query)
    expect(text).toMatch(/^[A-Z0-9].*: .+\.$/)
    expect(text).not.toMatch(/undefined|NaN|\[object/)
    seen.set(query.kind, text)
  }
  expect(queryKinds.filter(kind => !seen.has(kind))).toEqual([])
})

test('the sentence of a count that does not close', () => {
  const [query] = foldEntries([...exampleRegisters, ...readHistory('B7[100] ✓80†15?9')]).queries
  expect(queryText(query!)).toBe(
    'Batch B7, mist: the record had 100, the count found 80 taken, 15 dead and 9 not yet to tell, which is 4 more; ' +
      'the count stands, so enter the move or loss that was not written down.',
  )
})
