import { expect, test } from 'vitest'
import { readShares } from './read-shares.ts'

test('three rising shares and a reason, decimal comma or point', () => {
  expect(readShares({ low: '40', typical: '62,5', high: '80', why: 'new mist' })).toEqual({
    low: 0.4,
    typical: 0.625,
    high: 0.8,
  })
  expect(readShares({ low: '70', typical: '60', high: '80', why: 'x' })).toBeNull()
  expect(readShares({ low: '40', typical: '60', high: '101', why: 'x' })).toBeNull()
  expect(readShares({ low: '', typical: '60', high: '80', why: 'x' })).toBeNull()
  expect(readShares({ low: '40', typical: '60', high: '80', why: ' ' })).toBeNull()
})
