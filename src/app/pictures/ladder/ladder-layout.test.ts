import { expect, test } from 'vitest'
import { layOutLadder } from './ladder-layout.ts'

const rungs = [226, 181, 160, 120].map(number => ({ name: String(number), number, week: '2026-W12' }))

test('a rung is as wide as its number, the widest filling the room between names and notes', () => {
  const { rungs: placed, left } = layOutLadder(rungs, 800)
  expect(left + placed[0]!.width).toBeCloseTo(800 - 190)
  expect(placed[3]!.width / placed[0]!.width).toBeCloseTo(120 / 226)
})

test('the narrowing says how many are lost on the way down, and the last rung has none', () => {
  const { rungs: placed } = layOutLadder(rungs, 800)
  expect(placed.map(({ taper }) => taper?.lost ?? null)).toEqual([45, 21, 40, null])
})

test('on a phone the bars begin at the edge and reach to the other', () => {
  const { rungs: placed, left, isNarrow } = layOutLadder(rungs, 320)
  expect(isNarrow).toBe(true)
  expect(left + placed[0]!.width).toBeLessThanOrEqual(320)
})
