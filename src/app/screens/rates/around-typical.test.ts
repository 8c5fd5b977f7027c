import fc from 'fast-check'
import { expect, test } from 'vitest'
import { aroundTypical } from './around-typical.ts'

test('odds of 1 to 3, 1 to 1 and 3 to 1 become 1 to 1, 3 to 1 and 9 to 1 when the typical share rises from a half to three quarters', () => {
  const { low, typical, high } = aroundTypical({ low: 0.25, typical: 0.5, high: 0.75 }, 0.75)
  expect([low, typical, high].map(share => share / (1 - share))).toEqual(
    [1, 3, 9].map(odds => expect.closeTo(odds)),
  )
})

const share = fc.double({ min: 0.01, max: 0.99, noNaN: true })

test('whatever the typical share, the three stay in order and within 0 and 1; moved there and back they are as before', () => {
  fc.assert(
    fc.property(fc.tuple(share, share, share), share, (three, to) => {
      const [low, typical, high] = [...three].sort((a, b) => a - b) as [number, number, number]
      const moved = aroundTypical({ low, typical, high }, to)
      expect(moved.low).toBeLessThanOrEqual(moved.typical)
      expect(moved.typical).toBeLessThanOrEqual(moved.high)
      expect(moved.low).toBeGreaterThanOrEqual(0)
      expect(moved.high).toBeLessThanOrEqual(1)
      const back = aroundTypical(moved, typical)
      expect(back.low).toBeCloseTo(low)
      expect(back.high).toBeCloseTo(high)
    }),
  )
})
