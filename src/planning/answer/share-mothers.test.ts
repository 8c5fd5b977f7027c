import fc from 'fast-check'
import { expect, test } from 'vitest'
import { evenShares } from './share-mothers.ts'

test('wood is shared evenly, and what one cannot give the others do', () => {
  expect(evenShares(10, [2, 9, 9])).toEqual([2, 4, 4])
  expect(evenShares(9, [9, 9])).toEqual([4, 5])
  expect(evenShares(0, [5])).toEqual([0])
})

test('no share is above its bound, and together they are what is wanted as far as there is', () => {
  fc.assert(
    fc.property(fc.nat(500), fc.array(fc.nat(100), { minLength: 1, maxLength: 8 }), (wanted, bounds) => {
      const shares = evenShares(wanted, bounds)
      const all = bounds.reduce((sum, bound) => sum + bound, 0)
      expect(shares.every((share, i) => share >= 0 && share <= bounds[i]!)).toBe(true)
      expect(shares.reduce((sum, share) => sum + share, 0)).toBe(Math.min(wanted, all))
      // Of those below their bound, none gives two more than another.
      const free = shares.filter((share, i) => share < bounds[i]!)
      if (free.length > 0) expect(Math.max(...free) - Math.min(...free)).toBeLessThanOrEqual(1)
    }),
  )
})
