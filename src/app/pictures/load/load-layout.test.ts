import { expect, test } from 'vitest'
import { layOutStrip, STRIP_LEFT } from '../season-strip/strip-layout.ts'
import { fullest, layOutLoad } from './load-layout.ts'

const load = { expected: [10, 30, 50], badYear: [12, 36, 60], capacity: [40, 40, 40] }

test('what goes over the line is a part of its own, as tall as it is over', () => {
  const { bars, y } = layOutLoad(load, 344)
  expect(bars.map(({ over }) => over > 0)).toEqual([false, false, true])
  expect(bars[2]!.over).toBeCloseTo(y(40) - y(50))
  expect(bars[2]!.height).toBeCloseTo(y(0) - y(40))
})

test('the fullest week is the greatest share, and a closed place that carries anything is over', () => {
  expect(fullest(load)).toEqual({ index: 2, share: 1.25, weeksOver: 1 })
  expect(fullest({ expected: [0, 1], badYear: [], capacity: [5, 0] }).weeksOver).toBe(1)
  expect(fullest({ expected: [0, 0], badYear: [], capacity: [5, 0] })).toEqual({
    index: 0,
    share: 0,
    weeksOver: 0,
  })
})

test('the line is taken where it is tried otherwise, and as far as a pixel is it moves', () => {
  const asItIs = layOutLoad({ ...load, capacity: [40, 40, 0] }, 344)
  expect(asItIs.end).toBe(asItIs.y(40))
  const { end, y, perPixel } = layOutLoad({ ...load, tried: [40, 15, 40] }, 344)
  expect(end).toBe(y(15))
  expect(y(15) - y(15 + 7 * perPixel)).toBeCloseTo(7)
})

test('under the strip a week stands where it does there', () => {
  const weeks = 26
  const strip = layOutStrip([], '2026-W48', weeks, 1100)
  const series = {
    expected: Array(weeks).fill(1),
    badYear: Array(weeks).fill(1),
    capacity: Array(weeks).fill(2),
  }
  const { x } = layOutLoad(series, 1100, STRIP_LEFT)
  for (const week of [0, 1, 13, 26]) expect(x(week)).toBeCloseTo(strip.x(week))
})
