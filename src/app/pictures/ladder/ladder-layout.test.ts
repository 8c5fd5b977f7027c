import { expect, test } from 'vitest'
import { layOutLadder } from './ladder-layout.ts'

const numbers = [226, 181, 160, 120]

test('a rung is as wide as its number, the widest leaving room for the rates beside it', () => {
  const { rungs } = layOutLadder(numbers, 800)
  expect(rungs[0]!.width).toBeCloseTo(800 - 2 - 260)
  expect(rungs[3]!.width / rungs[0]!.width).toBeCloseTo(120 / 226)
})

test('the narrowing says how many are lost on the way down, and the last rung has none', () => {
  const { rungs } = layOutLadder(numbers, 800)
  expect(rungs.map(({ taper }) => taper?.lost ?? null)).toEqual([45, 21, 40, null])
})

test('what was before is drawn on the same scale, and the wider of the two fills the width', () => {
  const { rungs } = layOutLadder([100, 50], 320, [200, null])
  expect(rungs.map(({ was }) => was)).toEqual([318, null])
  expect(rungs[0]!.width).toBeCloseTo(159)
})

test('a name of two lines has room over its rung, and what comes below moves down by that line', () => {
  const one = layOutLadder(numbers, 320)
  const two = layOutLadder(numbers, 320, [], [1, 2, 1, 1])
  const down = (at: number) => two.rungs[at]!.y - one.rungs[at]!.y
  expect([down(0), down(1), down(2), down(3), two.height - one.height]).toEqual([0, 15, 15, 15, 15])
})

test('on a phone the bars use the whole width', () => {
  expect(layOutLadder(numbers, 320).rungs[0]!.width).toBeCloseTo(318)
})
