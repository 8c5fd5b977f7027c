import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { newestOfEach } from './newest-counts.ts'

const row = (group: string, year: number, month = 1) => ({ group, year, month })
const groupOf = ({ group }: { readonly group: string }) => group

test('where there are too many counts, each group gives its newest, as many as fit, and a small group gives all', () => {
  const often = [2020, 2021, 2022, 2023, 2024].map(year => row('often', year))
  const rare = [row('rare', 2001)]
  const kept = newestOfEach([...rare, ...often], groupOf, 4)
  // One rare row leaves room for three of the others.
  expect(kept).toEqual([rare[0], often[2], often[3], often[4]])
})

test('of one year the later months are the newer ones', () => {
  const rows = [row('a', 2024, 11), row('a', 2024, 2), row('a', 2023, 12)]
  expect(newestOfEach(rows, groupOf, 2)).toEqual([rows[0], rows[1]])
})

test('counts that fit are all kept', () => {
  const rows = [row('a', 2024), row('b', 2023)]
  expect(newestOfEach(rows, groupOf, 2)).toBe(rows)
})

test('no more than asked are kept, in their order, and one row more of every larger group would be too many', () => {
  const rows = fc.array(
    fc.record({
      group: fc.constantFrom('a', 'b', 'c', 'd'),
      year: fc.integer({ min: 2000, max: 2030 }),
      month: fc.integer({ min: 1, max: 12 }),
    }),
    { maxLength: 60 },
  )
  fc.assert(
    fc.property(rows, fc.integer({ min: 4, max: 60 }), (all, most) => {
      const kept = newestOfEach(all, groupOf, most)
      expect(kept.length).toBeLessThanOrEqual(most)
      expect(kept).toEqual(all.filter(one => kept.includes(one)))
      if (kept.length === all.length) return
      const keptOf = (group: string) => kept.filter(one => one.group === group).length
      const larger = [...new Set(all.map(groupOf))].filter(
        group => keptOf(group) < all.filter(one => one.group === group).length,
      )
      expect(kept.length + larger.length).toBeGreaterThan(most)
      for (const group of larger) {
        const dates = (of: typeof all) =>
          of.filter(one => one.group === group).map(one => 12 * one.year + one.month)
        const left = all.filter(one => !kept.includes(one))
        expect(Math.max(...dates(left))).toBeLessThanOrEqual(Math.min(...dates([...kept]), Infinity))
      }
    }),
  )
})
