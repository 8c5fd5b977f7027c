import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fillBench } from './fill-layout.ts'

const areas = fc.array(fc.double({ min: 0.01, max: 5, noNaN: true }), { minLength: 1, maxLength: 30 })

test('every block is as large as its area, inside the bench, and none lies on another', () => {
  fc.assert(
    fc.property(areas, given => {
      const total = given.reduce((sum, area) => sum + area, 0)
      const [length, width] = [total / 3 + 1, 3]
      const { blocks, over } = fillBench(
        given.map((area, index) => ({ id: String(index), area })),
        length,
        width,
      )
      expect(over).toBe(0)
      for (const block of blocks) {
        expect(block.width * block.height).toBeCloseTo(given[Number(block.id)]!, 6)
        expect(block.x + block.width).toBeLessThanOrEqual(length + 1e-9)
        expect(block.y + block.height).toBeLessThanOrEqual(width + 1e-9)
      }
      const overlap = blocks.some((a, at) =>
        blocks
          .slice(at + 1)
          .some(
            b =>
              a.x + a.width > b.x + 1e-9 &&
              b.x + b.width > a.x + 1e-9 &&
              a.y + a.height > b.y + 1e-9 &&
              b.y + b.height > a.y + 1e-9,
          ),
      )
      expect(overlap).toBe(false)
    }),
  )
})

test('what is too much is said, and the drawing ends at the end of the bench', () => {
  const { over, filledTo } = fillBench(
    [
      { id: 'a', area: 18 },
      { id: 'b', area: 10 },
    ],
    8,
    3,
  )
  expect(over).toBeCloseTo(4)
  expect(filledTo).toBeCloseTo(8)
})
