import { expect, test } from 'vitest'
import { nearestMark } from './nearest-mark.ts'

const disc = (x: number, y: number, r: number) => ({ left: x - r, right: x + r, top: y - r, bottom: y + r })

test('a small mark alone is 48 pixels wide and high for a finger, and no more', () => {
  const marks = [disc(100, 100, 5)]
  expect(nearestMark(marks, 124, 76)).toBe(0)
  expect(nearestMark(marks, 124.5, 100)).toBeNull()
  expect(nearestMark(marks, 100, 75.5)).toBeNull()
})

test('between marks that stand closer the nearest is taken; one that the finger is on comes before one beside it', () => {
  const marks = [disc(100, 100, 5), disc(120, 100, 5)]
  expect(nearestMark(marks, 109, 100)).toBe(0)
  expect(nearestMark(marks, 111, 100)).toBe(1)
  const wide = [{ left: 0, right: 100, top: 0, bottom: 20 }, disc(104, 10, 3)]
  expect(nearestMark(wide, 99, 10)).toBe(0)
})

test('of marks that lie over each other the one whose middle is nearest is taken, whichever was drawn last', () => {
  const marks = [disc(100, 100, 11), disc(106, 100, 11)]
  expect(nearestMark(marks, 102, 100)).toBe(0)
  expect(nearestMark(marks, 104, 100)).toBe(1)
})
