import { expect, test } from 'vitest'
import type { BenchStand } from '../../../api/index.ts'
import { BatchId, BenchId, KindId, StepId } from '../../../trade/index.ts'
import {
  bodiesOfCount,
  countedIn,
  emptyCount,
  type LineSaid,
  nothingSaid,
  seenIn,
} from './bench-count-draft.ts'

const bench = BenchId.parse('mist-1')
const step = StepId.parse('mist')
const line = (batch: string, number: number): BenchStand['lines'][number] => ({
  batch: BatchId.parse(batch),
  name: batch,
  kind: KindId.parse('fig'),
  kindName: 'Fig',
  mark: 'cutting',
  step,
  stepName: 'Mist',
  number,
  behind: [],
  onHold: false,
})
const stand: BenchStand = {
  bench,
  name: 'Mist 1',
  lastCounted: null,
  lines: [line('B1', 40), line('B2', 12), line('B3', 5)],
  holds: [],
}
const say = (said: Readonly<Record<string, Partial<LineSaid>>>) =>
  bodiesOfCount(
    bench,
    countedIn(stand, {
      ...emptyCount,
      said: Object.fromEntries(
        Object.entries(said).map(([batch, some]) => [`${batch} mist`, { ...nothingSaid, ...some }]),
      ),
    }),
    cause => `because ${cause}`,
  )

test('a line that was left empty is not counted; one that agrees needs no cause', () => {
  expect(say({ B1: { seen: '40' } })).toEqual([
    {
      kind: 'bench-counted/1',
      bench,
      lines: [{ batch: 'B1', step: 'mist', stood: 40, counted: 40, cause: '' }],
    },
  ])
})

test('nothing is written while a difference has no cause, or a cause lacks its words or its bench', () => {
  expect(say({})).toBeNull()
  expect(say({ B1: { seen: '30' } })).toBeNull()
  expect(say({ B1: { seen: '30', cause: 'words', words: ' ' } })).toBeNull()
  expect(say({ B1: { seen: '30', cause: 'moved' } })).toBeNull()
})

test('plants that stand on another bench are moved before the bench is counted; all is written at once', () => {
  expect(
    say({
      B1: { seen: '30', cause: 'moved', onto: 'mist-2' },
      B2: { seen: '10', cause: 'dead' },
      B3: { seen: '6', cause: 'words', words: 'found under B2' },
    }),
  ).toEqual([
    { kind: 'moved/1', batch: 'B1', step: 'mist', number: 10, to: 'mist-2' },
    {
      kind: 'bench-counted/1',
      bench,
      lines: [
        { batch: 'B1', step: 'mist', stood: 30, counted: 30, cause: '' },
        { batch: 'B2', step: 'mist', stood: 12, counted: 10, cause: 'because dead' },
        { batch: 'B3', step: 'mist', stood: 5, counted: 6, cause: 'found under B2' },
      ],
    },
  ])
})

test('only whole numbers from nought are numbers of plants', () => {
  expect(['', ' ', '0', '12', '1.5', '-3', 'ten'].map(seenIn)).toEqual([
    null,
    null,
    0,
    12,
    undefined,
    undefined,
    undefined,
  ])
})
