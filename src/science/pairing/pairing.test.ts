import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cheapestAssignment } from './assignment.ts'
import { pairByCaliper } from './caliper-pairs.ts'

/** The cheapest way by trying all. */
function byTrying(costs: readonly (readonly number[])[], row = 0, taken: readonly number[] = []): number {
  if (row === costs.length) return 0
  let best = Number.POSITIVE_INFINITY
  costs[row]!.forEach((cost, column) => {
    if (!taken.includes(column)) best = Math.min(best, cost + byTrying(costs, row + 1, [...taken, column]))
  })
  return best
}

describe('the cheapest assignment', () => {
  test('is as cheap as the best of all, and gives no column twice', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 0, max: 2 }),
        fc.infiniteStream(fc.integer({ min: -20, max: 50 })),
        (rows, more, stream) => {
          const costs = Array.from({ length: rows }, () =>
            Array.from({ length: rows + more }, () => stream.next().value as number),
          )
          const { columns, cost } = cheapestAssignment(costs)
          expect(cost).toBe(byTrying(costs))
          expect(new Set(columns).size).toBe(rows)
        },
      ),
    )
  })

  test('with more rows than columns some rows go without', () => {
    const { columns, cost } = cheapestAssignment([[5], [2], [9]])
    expect(columns).toEqual([-1, 0, -1])
    expect(cost).toBe(2)
  })

  test('nothing to assign costs nothing', () => {
    expect(cheapestAssignment([])).toEqual({ columns: [], cost: 0 })
  })
})

describe('scions to stocks by caliper', () => {
  const calipers = fc.array(
    fc.integer({ min: 40, max: 120 }).map(tenths => tenths / 10),
    { maxLength: 7 },
  )

  test('as many pairs as an assignment finds, and no larger sum of gaps', () => {
    fc.assert(
      fc.property(
        calipers,
        calipers,
        fc.integer({ min: 0, max: 20 }).map(tenths => tenths / 10),
        (scions, stocks, tolerance) => {
          const pairs = pairByCaliper(scions, stocks, tolerance)
          // A pair within tolerance is worth 1,000 less its gap; leaving out costs nothing.
          const gain = scions.map(scion =>
            stocks.map(stock => {
              const gap = Math.abs(scion - stock)
              return gap <= tolerance + 1e-9 ? gap - 1000 : 0
            }),
          )
          const best = scions.length > 0 && stocks.length > 0 ? cheapestAssignment(gain).cost : 0
          const got = pairs.reduce((sum, { gapMm }) => sum + gapMm - 1000, 0)
          expect(got).toBeCloseTo(best, 6)
          for (const { scion, stock, gapMm } of pairs) {
            expect(gapMm).toBeCloseTo(Math.abs(scions[scion]! - stocks[stock]!), 12)
            expect(gapMm).toBeLessThanOrEqual(tolerance + 1e-8)
          }
          expect(new Set(pairs.map(pair => pair.scion)).size).toBe(pairs.length)
          expect(new Set(pairs.map(pair => pair.stock)).size).toBe(pairs.length)
        },
      ),
    )
  })

  test('more pairs go before better pairs', () => {
    // 6.0 fits 6.0 exactly, but then 5.6 has no stock.
    expect(pairByCaliper([6, 5.6], [6, 6.4], 0.5)).toEqual([
      { scion: 1, stock: 0, gapMm: expect.closeTo(0.4, 9) },
      { scion: 0, stock: 1, gapMm: expect.closeTo(0.4, 9) },
    ])
  })

  test('trays come in the order of rising stock', () => {
    const pairs = pairByCaliper([9, 7, 8], [8, 9, 7], 0.1)
    expect(pairs.map(pair => pair.stock)).toEqual([2, 0, 1])
  })
})
