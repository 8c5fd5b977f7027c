import { expect, test } from 'vitest'
import { inRows, layOutBlock } from './block-layout.ts'

test('trees stand to scale and their rings do not touch', () => {
  const { trees, scale, radius } = layOutBlock(
    [
      { id: 'a', xMetres: 4, yMetres: 4 },
      { id: 'b', xMetres: 10, yMetres: 4 },
      { id: 'c', xMetres: 58, yMetres: 9 },
    ],
    660,
  )
  expect(scale).toBeCloseTo(600 / 54)
  expect(trees[1]!.x - trees[0]!.x).toBeCloseTo(6 * scale)
  expect(trees[2]!.y - trees[0]!.y).toBeCloseTo(5 * scale)
  expect(2 * radius).toBeLessThan(6 * scale)
})

test('one tree alone stands in the middle', () => {
  expect(layOutBlock([{ id: 'a', xMetres: 9, yMetres: 9 }], 400).trees[0]!.x).toBe(200)
})

test('trees without a place are in rows of ten', () => {
  expect(inRows(Array.from({ length: 11 }, (_, index) => String(index))).at(-1)).toEqual({
    id: '10',
    xMetres: 0,
    yMetres: 4,
  })
})
