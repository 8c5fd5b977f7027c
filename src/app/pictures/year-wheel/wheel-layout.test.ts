import { expect, test } from 'vitest'
import {
  arcPath,
  layOutLegend,
  monthArcs,
  monthOfDay,
  onWheel,
  warmthPath,
  weekArcs,
} from './wheel-layout.ts'

test('a window over the new year is one arc', () => {
  expect(monthArcs([12, 1, 2])).toEqual([{ from: 11, to: 14 }])
  expect(monthArcs([3, 4, 9])).toEqual([
    { from: 2, to: 4 },
    { from: 8, to: 9 },
  ])
  expect(monthArcs([])).toEqual([])
  expect(monthArcs([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])).toEqual([{ from: 0, to: 12 }])
})

test('a window is drawn by its weeks: March 2026 from Monday 2 March to the end of Sunday 29 March', () => {
  const [arc, ...others] = weekArcs([3], '2026-11-25')
  expect(others).toEqual([])
  expect(arc!.from).toBeCloseTo(2 + 1 / 31)
  expect(arc!.to).toBeCloseTo(2 + 29 / 31)
})

test('a window over the new year goes on past December; one that begins in the week of the new year begins before January', () => {
  // 30 November 2026 to 31 January 2027; January 2026 from Monday 29 December 2025 to Sunday 1 February.
  const [winter] = weekArcs([12, 1], '2026-11-25')
  expect(winter!.from).toBeCloseTo(10 + 29 / 30)
  expect(winter!.to).toBeCloseTo(13)
  const [january] = weekArcs([1], '2026-11-25')
  expect(january!.from).toBeCloseTo(11 + 28 / 31)
  expect(january!.to).toBeCloseTo(13 + 1 / 28)
  expect(weekArcs([], '2026-11-25')).toEqual([{ from: 0, to: 12 }])
})

test('January begins at the top and April stands at the right', () => {
  const [topX, topY] = onWheel(0, 100, 150)
  expect([Math.round(topX), Math.round(topY)]).toEqual([150, 50])
  const [rightX, rightY] = onWheel(3, 100, 150)
  expect([Math.round(rightX), Math.round(rightY)]).toEqual([250, 150])
})

test('an arc of more than half a year goes the long way round, a whole year is drawn in two', () => {
  expect(arcPath({ from: 0, to: 8 }, 100, 150)).toContain('0 1 1')
  expect(arcPath({ from: 0, to: 12 }, 100, 150).match(/A/g)).toHaveLength(2)
})

test('the hand is at its share of the month', () => {
  expect(monthOfDay('2026-11-16')).toBe(10.5)
  expect(monthOfDay('2026-01-01')).toBe(0)
})

test('the legend stands below the wheel, in columns, and no two of its lines share a place', () => {
  for (const width of [300, 620, 1000]) {
    const { groups, height } = layOutLegend([4, 6, 45], width, 640)
    const places = groups.flat()
    expect(places).toHaveLength(55)
    expect(new Set(places.map(({ x, y }) => `${x} ${y}`)).size).toBe(55)
    for (const { x, y } of places) {
      expect(y).toBeGreaterThan(640)
      expect(y).toBeLessThanOrEqual(height)
      expect(x).toBeLessThan(width)
    }
  }
})

test('the warmer a month the farther from the hub: at the coldest of the scale on it, at the warmest on the ring', () => {
  const path = warmthPath([-5, 30, ...Array.from({ length: 10 }, () => 12.5)], 58, 100)
  const far = path
    .slice(1, -1)
    .split('L')
    .map(point => {
      const [x, y] = point.split(' ').map(Number) as [number, number]
      return Math.hypot(x - 100, y - 100)
    })
  expect(far).toHaveLength(12)
  expect(far[0]).toBeCloseTo(8, 0)
  expect(far[1]).toBeCloseTo(58, 0)
  for (const others of far.slice(2)) expect(others).toBeCloseTo(33, 0)
})
