import { describe, expect, test } from 'vitest'
import type { BatchView } from '../../../api/index.ts'
import type { BatchId, MotherId, StepId } from '../../../trade/index.ts'
import {
  bodiesOfDeed,
  type DeedDraft,
  type DeedKind,
  isStopped,
  nameForPart,
  possible,
  readCalipers,
  readGrades,
} from './batch-deed.ts'

const mist = 'mist' as StepId
const wean = 'wean' as StepId
const view = {
  row: { id: 'b1', standing: 40, finished: 10, onHold: true },
  steps: [{ step: mist }, { step: wean }],
  sent: [],
  candidates: [],
} as unknown as BatchView
const draft: DeedDraft = {
  step: mist,
  number: '20',
  bench: '',
  words: '',
  name: '',
  into: null,
  litres: '',
  calipers: '',
  grades: [],
  order: '',
  kind: null,
  wood: null,
  sticks: '',
  cultivar: '',
}
const bodies = (deed: DeedKind, change: Partial<DeedDraft> = {}) =>
  bodiesOfDeed(view, deed, { ...draft, ...change }, () => 'new' as BatchId)

test('plants move on to the next step, and past the last they are finished', () => {
  expect(bodies('advance')).toMatchObject([{ kind: 'advanced/1', from: mist, to: wean, bench: null }])
  expect(bodies('advance', { step: wean, words: 'first' })).toMatchObject([
    { kind: 'finished/1', number: 20, grade: 'first' },
  ])
})

test('a loss needs a cause, a move needs a bench, and a number is whole and from 1', () => {
  expect(bodies('lost')).toBeNull()
  expect(bodies('lost', { words: ' mice ' })).toMatchObject([{ kind: 'lost/1', cause: 'mice' }])
  expect(bodies('move')).toBeNull()
  expect(bodies('move', { bench: 'm2', number: '0' })).toBeNull()
  expect(bodies('move', { bench: 'm2', number: '1.5' })).toBeNull()
})

test('a batch is not put with itself, and a part that is split off has a name', () => {
  expect(bodies('join', { into: 'b1' as BatchId })).toBeNull()
  expect(bodies('join', { into: 'b2' as BatchId })).toMatchObject([{ kind: 'joined/1', into: 'b2' }])
  expect(bodies('split')).toBeNull()
  expect(bodies('split', { name: 'b1a' })).toMatchObject([{ kind: 'split/1', into: 'new', name: 'b1a' }])
})

describe('working over', () => {
  const wood = { from: 'mother', mother: 'M1' as MotherId, material: 'budwood' } as const
  const over = { kind: 'quince', wood, sticks: '5', name: 'b1a' }

  test('all living plants: the batch itself is of the new kind', () => {
    expect(bodies('rework', { ...over, number: '50' })).toEqual([
      {
        kind: 'reworked/1',
        batch: 'b1',
        step: mist,
        number: 50,
        kindOfTree: 'quince',
        sources: [{ ...wood, number: 5 }],
      },
    ])
  })

  test('a part is split off first, so that each batch keeps its right name', () => {
    expect(bodies('rework', over)).toMatchObject([
      { kind: 'split/1', batch: 'b1', into: 'new', number: 20 },
      { kind: 'reworked/1', batch: 'new', number: 20 },
    ])
    expect(bodies('rework', { ...over, name: '' })).toBeNull()
    expect(bodies('rework', { ...over, sticks: '' })).toBeNull()
  })
})

test('stems are read with spaces, semicolons and either decimal sign; what is no size is not kept', () => {
  expect(readCalipers('6.5 7  8.25')).toEqual([6.5, 7, 8.25])
  expect(readCalipers('6,5 7,0; 8')).toEqual([6.5, 7, 8])
  expect(readCalipers('6.5, 7.0, 8')).toEqual([6.5, 7, 8])
  expect(readCalipers('6, 7, 8')).toEqual([6, 7, 8])
  expect(readCalipers('6 thick')).toBeNull()
  expect(readCalipers(' ')).toBeNull()
})

test('grades without a number are left out; a number without a grade, or a grade twice, is not kept', () => {
  expect(
    readGrades([
      { grade: '1', number: '30' },
      { grade: '2', number: '' },
    ]),
  ).toEqual({ '1': 30 })
  expect(readGrades([{ grade: '', number: '3' }])).toBeNull()
  expect(
    readGrades([
      { grade: '1', number: '3' },
      { grade: '1', number: '4' },
    ]),
  ).toBeNull()
  expect(readGrades([{ grade: '1', number: '' }])).toBeNull()
})

test('a hold stops what goes out and what becomes fit to go out, and nothing else', () => {
  expect(isStopped(view, 'send', null)).toBe(true)
  expect(isStopped(view, 'advance', wean)).toBe(true)
  expect(isStopped(view, 'advance', mist)).toBe(false)
  expect(isStopped(view, 'split', mist)).toBe(false)
})

test('what cannot have happened is not offered', () => {
  expect(possible(view, 'send')).toBe(true)
  expect(possible(view, 'back')).toBe(false)
  expect(possible(view, 'settle')).toBe(false)
})

test('what is split off is called after its batch with the first free letter', () => {
  expect(nameForPart('26-100', new Set(['26-100a']))).toBe('26-100b')
})

// 1 in = 25.4 mm and 1 US gallon = 3.785411784 l, exactly (NIST SP 811, appendix B).
test('sizes typed in US units are kept in millimetres and litres', () => {
  const inUs = (deed: DeedKind, change: Partial<DeedDraft>) =>
    bodiesOfDeed(view, deed, { ...draft, ...change }, () => 'new' as BatchId, 'us')
  expect(inUs('measure', { calipers: '0.25 0.5' })).toMatchObject([{ calipersMm: [6.35, 12.7] }])
  expect(inUs('pot', { litres: '1' })).toMatchObject([{ potLitres: 3.7854118 }])
})
