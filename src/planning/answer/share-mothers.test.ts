import fc from 'fast-check'
import { expect, test } from 'vitest'
import { MotherId } from '../../trade/index.ts'
import { everyWeek } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { shareMothers, sharesByReserve } from './share-mothers.ts'

const reserve = (left: number, perWeek = left) => ({ mayGive: Math.min(left, perWeek), perWeek, left })

test('wood is taken in proportion to what the mothers have left, and what one cannot give the others do', () => {
  expect(sharesByReserve(9, [reserve(30), reserve(60)])).toEqual([3, 6])
  expect(sharesByReserve(9, [reserve(50), reserve(50)])).toEqual([5, 4])
  expect(sharesByReserve(0, [reserve(5)])).toEqual([0])
  expect(sharesByReserve(40, [reserve(5), reserve(9)])).toEqual([5, 9])
})

test('she whose year lasts longer gives first: of 30, 20 by the one with five weeks left, 10 by the one with one', () => {
  expect(sharesByReserve(30, [reserve(20, 20), reserve(100, 20)])).toEqual([10, 20])
})

test('no share is above its bound, and together they are what is wanted as far as there is', () => {
  const anyReserve = fc.record({ left: fc.nat(200), perWeek: fc.integer({ min: 1, max: 100 }) })
  fc.assert(
    fc.property(fc.nat(500), fc.array(anyReserve, { minLength: 1, maxLength: 8 }), (wanted, of) => {
      const mothers = of.map(({ left, perWeek }) => reserve(left, perWeek))
      const shares = sharesByReserve(wanted, mothers)
      const all = mothers.reduce((sum, { mayGive }) => sum + mayGive, 0)
      expect(shares.every((share, m) => share >= 0 && share <= mothers[m]!.mayGive)).toBe(true)
      expect(shares.reduce((sum, share) => sum + share, 0)).toBe(Math.min(wanted, all))
    }),
  )
})

/** Sticks by the week, one for each graft, from two mothers: 20 a week each, 20 and 100 a year. */
const grafted = (begun: readonly { readonly week: number; readonly number: number }[]) => {
  const mother = (id: string, perYear: number) => ({
    id: MotherId.parse(id),
    perWeek: everyWeek(30, 20),
    perYear: [perYear],
  })
  const season = tinySeason({
    weeks: 30,
    kinds: [tinyKind('pear')],
    ways: [
      {
        kind: 0,
        steps: [{ ...certain(0.8), days: 14 }],
        course: { material: [{ pool: 0, offset: 0, perPlant: 1 }] },
      },
    ],
    orders: [],
    pools: [
      {
        cultivar: null,
        rootstockKind: null,
        material: 'scion sticks',
        name: 'Pear, scion sticks',
        mothers: [mother('first', 20), mother('second', 100)],
        perWeek: everyWeek(30, 40),
        perYear: [{ fromWeek: 0, toWeek: 29, most: 120 }],
        stored: [],
        keepsWeeks: 0,
        young: null,
      },
    ],
  })
  const [course] = season.ways[0]!.courses
  return shareMothers(season, begun.map(start => ({ way: 0, ...start, course: course! })) as never)
}

test('a mother who is soon spent is kept for the week in which both are needed', () => {
  // Ten from each in week 5 would leave 30 for week 9, when both are needed in full.
  const { shares, lacking } = grafted([
    { week: 9, number: 40 },
    { week: 5, number: 20 },
  ])
  expect(lacking).toEqual([])
  expect(shares.map(({ mother, week, number }) => [mother, week, number])).toEqual([
    ['second', 5, 20],
    ['first', 9, 20],
    ['second', 9, 20],
  ])
})

test('what no mother may give is told, and by which start', () => {
  const { shares, lacking } = grafted([{ week: 5, number: 50 }])
  expect(shares.map(({ number }) => number)).toEqual([20, 20])
  expect(lacking).toEqual([{ start: 0, pool: 0, week: 5, number: 10 }])
})
