import { expect, test } from 'vitest'
import { withSaid } from './with-said.ts'

test('saying one column or answer keeps what was said of the others', () => {
  const before = {
    'orders.csv': { kind: 'orders' as const, columns: { Qty: 'number' }, answers: { dates: 'day' } },
  }
  expect(withSaid(before, 'orders.csv', { columns: { Wanted: 'due' } })['orders.csv']).toEqual({
    kind: 'orders',
    columns: { Qty: 'number', Wanted: 'due' },
    answers: { dates: 'day' },
  })
  expect(withSaid(before, 'orders.csv', { answers: { dates: 'month' } })['orders.csv']!.answers).toEqual({
    dates: 'month',
  })
})

test('another sheet is left as it was, and one can be left out', () => {
  const before = { a: { kind: 'orders' as const } }
  expect(withSaid(before, 'b', { kind: null })).toEqual({ a: { kind: 'orders' }, b: { kind: null } })
})
