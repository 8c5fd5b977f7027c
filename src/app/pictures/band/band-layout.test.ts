import { describe, expect, test } from 'vitest'
import { layOutBand, rangeOn, standingOf } from './band-layout.ts'

const points = [
  { day: 0, low: 200, middle: 200, high: 200 },
  { day: 50, low: 100, middle: 150, high: 180 },
]

describe('a count against the band', () => {
  test('is judged between two points of the band by the straight line between them', () => {
    // At day 25 the band runs from 150 to 190.
    expect(standingOf(points, 25, 149)).toBe('below')
    expect(standingOf(points, 25, 150)).toBe('within')
    expect(standingOf(points, 25, 191)).toBe('above')
  })

  test('after the last day of the band nothing is said', () => {
    expect(standingOf(points, 51, 1)).toBeNull()
    expect(standingOf([], 1, 1)).toBeNull()
  })
})

test('the drawing holds every count, also one above and after the band', () => {
  const { x, y, height } = layOutBand(points, [{ day: 80, alive: 260 }], 600)
  expect(x(80)).toBeLessThanOrEqual(600)
  expect(y(260)).toBeGreaterThanOrEqual(0)
  expect(y(0)).toBeLessThan(height)
})

test('between two days of the band its range runs straight, and past its last day there is none', () => {
  const points = [
    { day: 0, low: 100, middle: 100, high: 100 },
    { day: 20, low: 60, middle: 80, high: 90 },
  ]
  expect(rangeOn(points, 10)).toEqual({ low: 80, high: 95 })
  expect(rangeOn(points, 21)).toBeNull()
})
