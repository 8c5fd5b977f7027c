import { describe, expect, test } from 'vitest'
import type { ProtocolSummary } from '../../../api/index.ts'
import type { PlannedStart, Task } from '../../../planning/index.ts'
import { type DeedGround, deedOf, nextBatchName } from './deed.ts'

const task = (given: Partial<Record<keyof Task, unknown>>): Task =>
  ({
    id: 't1',
    number: 100,
    batch: null,
    order: null,
    step: null,
    bench: null,
    person: null,
    ...given,
  }) as Task

const ground = {
  start: {
    kind: 'fig',
    protocol: 'hardwood',
    number: 100,
    mothers: [{ mother: 'm7', material: 'cuttings', number: 100 }],
    rootstocks: [
      { kind: 'r', batch: 'b9', start: null, number: 100 },
      { kind: 'r', batch: null, start: 's', number: 5 },
    ],
    bench: 'mist-1',
  } as unknown as PlannedStart,
  protocol: { steps: [{ id: 'mist' }, { id: 'wean' }] } as unknown as ProtocolSummary,
  finished: [
    { id: 'old', finished: 30 },
    { id: 'young', finished: 50 },
  ],
  by: 'ana',
  newBatch: () => ({ id: 'new', name: '26-119' }),
  noteOf: (_: Task, number: number) => `${number} instead`,
} as unknown as DeedGround

describe('what a ticked task says', () => {
  test('a start says the batch with the number that really happened, its sources in proportion', () => {
    const [started, done] = deedOf(task({ kindOfTask: 'start', bench: 'mist-2' }), 80, ground)
    expect(started).toMatchObject({
      kind: 'batch-started/1',
      number: 80,
      bench: 'mist-2',
      workedBy: ['ana'],
      sources: [
        { from: 'mother', mother: 'm7', number: 80 },
        { from: 'batch', batch: 'b9', as: 'rootstock', number: 80 },
      ],
    })
    expect(done).toEqual({ kind: 'task-done/2', task: 't1', number: 80, minutes: null })
  })

  test('plants advance to the next step of the protocol', () => {
    expect(
      deedOf(task({ kindOfTask: 'advance', batch: 'b1', step: 'mist', bench: 'shade' }), 90, ground)[0],
    ).toEqual({
      kind: 'advanced/1',
      batch: 'b1',
      from: 'mist',
      to: 'wean',
      number: 90,
      bench: 'shade',
    })
  })

  test('dispatch names the order', () => {
    expect(deedOf(task({ kindOfTask: 'dispatch', batch: 'b1', order: 'o1' }), 40, ground)[0]).toMatchObject({
      kind: 'dispatched/1',
      order: 'o1',
      number: 40,
    })
  })

  test('trees for an order leave the oldest finished batches first', () => {
    const from = (number: number) =>
      deedOf(task({ kindOfTask: 'dispatch', order: 'o1' }), number, ground).flatMap(body =>
        body.kind === 'dispatched/1' ? [[body.batch, body.number]] : [],
      )
    expect(from(20)).toEqual([['old', 20]])
    expect(from(60)).toEqual([
      ['old', 30],
      ['young', 30],
    ])
    expect(from(100)).toEqual([
      ['old', 30],
      ['young', 70],
    ])
  })

  test('work without an entry of its own is said done, and noted when the number was another', () => {
    expect(deedOf(task({ kindOfTask: 'work', batch: 'b1' }), 100, ground)).toHaveLength(1)
    expect(deedOf(task({ kindOfTask: 'work', batch: 'b1' }), 60, ground)[0]).toEqual({
      kind: 'noted/1',
      about: 'b1',
      text: '60 instead',
    })
  })

  test('none at all starts no batch', () => {
    expect(deedOf(task({ kindOfTask: 'start' }), 0, ground)).toMatchObject([
      { kind: 'noted/1' },
      { kind: 'task-done/2', number: 0 },
    ])
  })
})

test('the next name of a batch follows the greatest of this year', () => {
  expect(nextBatchName(['26-118', '26-009', '25-400', 'odd'], '2026-11-25')).toBe('26-119')
  expect(nextBatchName([], '2027-01-02')).toBe('27-001')
})
