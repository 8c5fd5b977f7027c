import { expect, test } from 'vitest'
import type { RateRow } from '../../../api/index.ts'
import { tellingRates } from './telling-rates.ts'

const row = (kind: string, step: string, sign: RateRow['sign']) =>
  ({ kind, protocol: 'p', step, sign }) as unknown as RateRow

test('of each kind the step is shown that tells whether the method worked', () => {
  const rows = [
    row('fig', 'settling', 'alive'),
    row('fig', 'bed', 'rooted'),
    row('fig', 'growing', 'alive'),
    row('plum', 'graft', 'united'),
    row('plum', 'growing', 'alive'),
  ]
  expect(tellingRates(rows).map(({ kind, step }) => [kind, step])).toEqual([
    ['fig', 'bed'],
    ['plum', 'graft'],
  ])
})

test('where no step has such a sign, the first is shown', () => {
  expect(tellingRates([row('pear', 'potted', 'alive'), row('pear', 'grown', 'saleable')])).toHaveLength(1)
  expect(tellingRates([row('pear', 'potted', 'alive'), row('pear', 'grown', 'saleable')])[0]!.step).toBe(
    'potted',
  )
})
