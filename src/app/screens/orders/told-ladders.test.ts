import { expect, test } from 'vitest'
import type { Rung } from '../../../planning/index.ts'
import { toldLadders } from './told-ladders.ts'

const ladder = (...numbers: readonly number[]) => ({
  rungs: numbers.map((number): Rung => ({ step: null, name: '', number, rate: null, week: '2027-W10' })),
})

test('what gives an order less than half a tree is left out of how it is made, unless nothing gives more', () => {
  const [much, little, none] = [ladder(20, 18), ladder(0.6, 0.4), ladder(0.3, 0.2)]
  expect(toldLadders([little, much, none])).toEqual([much])
  expect(toldLadders([little, none])).toEqual([little])
})
