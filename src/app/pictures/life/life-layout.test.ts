import { expect, test } from 'vitest'
import { layOutLife, lifeRoom } from './life-layout.ts'

const steps = [
  { entered: 1, out: 0.5, lines: 4 },
  { entered: 0.5, out: 0.5, lines: 3 },
  { entered: 0, out: 0, lines: 2 },
]

/** The four corners of a band, or the two ends of a line. */
const corners = (band: string) => [...band.matchAll(/-?\d+(\.\d+)?/g)].map(([number]) => Number(number))

test('a band is as wide as what came in at one end and what went on at the other, and the next begins there; nothing yet is a line', () => {
  const [first, second, ahead] = layOutLife(steps, 600).steps
  expect(corners(first!.band)).toEqual([0, 1, 200, 15.5, 44.5, 0, 59])
  expect(corners(second!.band).slice(0, 2)).toEqual([200, 15.5])
  expect(corners(ahead!.band)).toEqual([400, 30, 600])
})

test('on a phone the steps stand under each other, each as tall as its words, and the words have the rest of the width', () => {
  expect(lifeRoom(3, 600).isRows).toBe(false)
  expect(lifeRoom(3, 340)).toEqual({ isRows: true, letters: 37 })
  const { steps: placed, height } = layOutLife(steps, 340)
  expect(placed.map(({ x }) => x)).toEqual([76, 76, 76])
  expect(placed[1]!.y - placed[0]!.y).toBe(4 * 19 + 14)
  expect(height).toBe((4 + 3 + 2) * 19 + 3 * 14)
})
