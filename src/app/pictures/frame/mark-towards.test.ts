import { expect, test } from 'vitest'
import { markTowards } from './mark-towards.ts'

const at = (x: number, y: number) => ({ left: x - 5, right: x + 5, top: y - 5, bottom: y + 5 })

test('an arrow key goes to the next mark of the row or column, and to the nearest of the next row where that one is short', () => {
  //  0   1   2
  //  3   4
  const block = [at(0, 0), at(100, 0), at(200, 0), at(0, 50), at(100, 50)]
  expect(markTowards(block, 0, 'ArrowRight')).toBe(1)
  expect(markTowards(block, 1, 'ArrowLeft')).toBe(0)
  expect(markTowards(block, 1, 'ArrowDown')).toBe(4)
  expect(markTowards(block, 4, 'ArrowUp')).toBe(1)
  expect(markTowards(block, 2, 'ArrowDown')).toBe(4)
  expect(markTowards(block, 2, 'ArrowRight')).toBeNull()
  expect(markTowards(block, 0, 'ArrowUp')).toBeNull()
})
