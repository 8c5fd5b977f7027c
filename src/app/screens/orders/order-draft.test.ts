import { expect, test } from 'vitest'
import { nextOrderId, type OrderDraft, readDraft } from './order-draft.ts'

const draft: OrderDraft = {
  id: '42',
  kind: 'fig',
  number: '120',
  due: '2027-03-12',
  earliest: '',
  latest: '',
  buyer: ' Hill Farm ',
  surePercent: '90',
  price: '4,5',
}
const kept = { instead: [], placed: '2026-11-25', note: '' }

test('dates left empty lie two weeks before and four after the due day', () => {
  expect(readDraft(draft, kept)).toEqual({
    order: {
      id: '42',
      kind: 'fig',
      number: 120,
      due: '2027-03-12',
      earliest: '2027-02-26',
      latest: '2027-04-09',
      buyer: 'Hill Farm',
      sure: 0.9,
      price: 4.5,
      ...kept,
    },
  })
})

test('everything wrong is said at once', () => {
  const bad = { ...draft, kind: null, number: '1.5', latest: '2027-01-01', surePercent: '100' }
  expect(readDraft(bad, kept)).toEqual({ wrong: { kind: true, number: true, dates: true, sure: true } })
})

test('the next number follows the greatest, in its own form', () => {
  expect(nextOrderId(['O-0007', 'O-0041', 'special'])).toBe('O-0042')
  expect(nextOrderId([])).toBe('1')
})
