import { expect, test } from 'vitest'
import type { BatchView } from '../../../api/index.ts'
import type { StepId } from '../../../trade/index.ts'
import { bodyOfDeed, type DeedDraft } from './batch-deed.ts'

const view = { row: { id: 'b1' }, steps: [{ step: 'mist' }, { step: 'wean' }] } as unknown as BatchView
const draft: DeedDraft = { step: 'mist' as StepId, number: '20', bench: '', words: '' }

test('plants move on to the next step, and past the last they are finished', () => {
  expect(bodyOfDeed(view, 'advance', draft)).toMatchObject({
    kind: 'advanced/1',
    from: 'mist',
    to: 'wean',
    bench: null,
  })
  expect(bodyOfDeed(view, 'advance', { ...draft, step: 'wean' as StepId })).toMatchObject({
    kind: 'finished/1',
    number: 20,
  })
})

test('a loss needs a cause, a move needs a bench, and a number is whole and from 1', () => {
  expect(bodyOfDeed(view, 'lost', draft)).toBeNull()
  expect(bodyOfDeed(view, 'lost', { ...draft, words: ' mice ' })).toMatchObject({
    kind: 'lost/1',
    cause: 'mice',
  })
  expect(bodyOfDeed(view, 'move', draft)).toBeNull()
  expect(bodyOfDeed(view, 'move', { ...draft, bench: 'm2', number: '0' })).toBeNull()
  expect(bodyOfDeed(view, 'move', { ...draft, bench: 'm2', number: '1.5' })).toBeNull()
})
