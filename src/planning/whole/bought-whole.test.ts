import fc from 'fast-check'
import { expect, test } from 'vitest'
import { boughtWhole } from './bought-whole.ts'

test('a nursery buys whole plants: what a week is over a whole one, a later week buys less', () => {
  const bought = [
    { kind: 1, week: 9, number: 9.6 },
    { kind: 1, week: 4, number: 4.3 },
    { kind: 2, week: 5, number: 0.5 },
    { kind: 1, week: 12, number: 0.1 },
    { kind: 3, week: 1, number: 7.0000000001 },
  ]
  expect(boughtWhole(bought)).toEqual([
    { kind: 3, week: 1, number: 7 },
    { kind: 1, week: 4, number: 5 },
    { kind: 2, week: 5, number: 1 },
    { kind: 1, week: 9, number: 9 },
  ])
})

test('by every week there are as many as were wanted by then, and less than one more', () => {
  const week = fc.record({
    kind: fc.nat(2),
    week: fc.nat(20),
    number: fc.double({ min: 0.01, max: 500, noNaN: true }),
  })
  fc.assert(
    fc.property(fc.array(week, { maxLength: 30 }), wanted => {
      const bought = boughtWhole(wanted)
      for (const kind of [0, 1, 2])
        for (let by = 0; by <= 20; by++) {
          const sum = (list: typeof wanted) =>
            list
              .filter(each => each.kind === kind && each.week <= by)
              .reduce((all, { number }) => all + number, 0)
          const [asked, got] = [sum([...wanted]), sum([...bought])]
          expect(Number.isInteger(got)).toBe(true)
          expect(got).toBeGreaterThan(asked - 1e-5)
          expect(got).toBeLessThan(asked + 1)
        }
    }),
  )
})
