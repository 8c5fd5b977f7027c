import { expect, test } from 'vitest'
import type { SeasonPlan } from '../../../api/index.ts'
import type { Aftermath } from '../../data/aftermath.ts'
import { whatChanged } from './what-changed.ts'

const plan = {
  orders: [
    { order: '41', chance: 0.71, batches: [] },
    { order: '42', chance: 0.9, batches: ['b1'] },
    { order: '43', chance: 0.8, batches: [] },
    { order: '44', chance: 0.95, batches: [] },
  ],
  changes: [
    {
      sentence: 'Start 40 more figs',
      because: 'because batch b1 stands lower',
      order: null,
      start: null,
      batch: 'b1',
    },
    { sentence: 'Start fewer plums', because: 'because of another', order: '43', start: null, batch: null },
  ],
} as unknown as SeasonPlan

const count: Aftermath = {
  batch: 'b1',
  planBefore: 'p1',
  throughSeqBefore: 10,
  chances: { '41': 0.92, '42': 0.9, '43': 0.9, '44': 0.951 },
  orders: ['41'],
}

test('the orders of the batch are named, moved or not; others are counted', () => {
  const { orders, others } = whatChanged(count, plan)
  expect(orders).toEqual([
    { order: '41', before: 0.92, after: 0.71, moved: true },
    { order: '42', before: 0.9, after: 0.9, moved: false },
  ])
  expect(others).toBe(1)
})

test('the reasons are those of this batch and its orders', () => {
  expect(whatChanged(count, plan).sentences.map(({ sentence }) => sentence)).toEqual(['Start 40 more figs'])
})
