import { describe, expect, test } from 'vitest'
import { lotSizing } from '../fixtures/lot-sizing.ts'
import { everyWeek, solved, tinyPlace } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import { withoutMargins } from '../model/build-season-model.ts'
import type { Season } from '../season.ts'
import { reckonedAgainst } from '../whole/reckon.ts'
import { wholeTrays } from '../whole/whole-trays.ts'

async function whole(season: Season, proveSeconds = 20) {
  const relaxed = await solved(season)
  const { model } = relaxed
  const margins = withoutMargins(season)
  const { starts, bought } = await wholeTrays({ season, relaxed, model }).round({ margins, proveSeconds })
  return reckonedAgainst(relaxed, season, margins, starts, bought)
}
const begun = ({ solution }: Awaited<ReturnType<typeof whole>>) =>
  solution.starts.map(({ way, week, number }) => [way, week, Math.round(number * 1e4) / 1e4])

describe('trays', () => {
  const season = (tray: number, smallestBatch: number, number: number) =>
    tinySeason({
      weeks: 20,
      kinds: [tinyKind('fig')],
      ways: [{ kind: 0, steps: [{ ...certain(0.5), days: 28 }], openWeeks: [5], tray, smallestBatch }],
      orders: [{ kind: 0, number, dueWeek: 12, price: 20 }],
    })

  test('a start is rounded up to whole trays, and the gap to the bound is what the part of a tray costs', async () => {
    const plan = await whole(season(48, 1, 60))
    // 120 cuttings asked: three trays of 48 at 1 each, 24 of them beyond the bound.
    expect(begun(plan)).toEqual([[0, 5, 144]])
    expect(plan.cost).toBeCloseTo(144, 6)
    expect(plan.bound).toBeCloseTo(120, 6)
    expect(plan.gapShare).toBeCloseTo(24 / 144, 6)
  })

  test('a batch is not begun below the smallest sensible one', async () => {
    expect(begun(await whole(season(10, 80, 15)))).toEqual([[0, 5, 80]])
  })

  test('without room for another tray the last one is left out, and the order is short', async () => {
    const tight = season(48, 1, 60)
    const plan = await whole({
      ...tight,
      places: [tinyPlace('mist bed', everyWeek(20, 1.3))],
      ways: tight.ways.map(way => ({
        ...way,
        courses: way.courses.map(course => ({
          ...course,
          area: [{ place: 0, squareMetres: Float64Array.of(0.01, 0.01) }],
        })),
      })),
    })
    // 1.3 m² hold 130 cuttings, two trays of 48: 48 trees of 60.
    expect(begun(plan)).toEqual([[0, 5, 96]])
    expect(plan.solution.short[0]).toBeCloseTo(12, 6)
  })
})

describe('lot sizing with set-up costs', () => {
  test('Wagner and Whitin 1958, twelve months: 864', async () => {
    const setup = [85, 102, 102, 101, 98, 114, 105, 86, 119, 110, 98, 114]
    const plan = await whole(
      lotSizing({
        demand: [69, 29, 36, 61, 61, 26, 34, 67, 45, 67, 79, 56],
        setup: period => setup[period]!,
        holding: 1,
      }),
    )
    expect(plan.cost).toBeCloseTo(864, 6)
  })

  test('ten weeks with one set-up price: 580', async () => {
    const plan = await whole(
      lotSizing({ demand: [20, 50, 10, 50, 50, 10, 20, 40, 20, 30], setup: () => 100, holding: 1 }),
    )
    expect(plan.cost).toBeCloseTo(580, 6)
    expect(begun(plan).map(([, week]) => week! + 1)).toEqual([1, 4, 8])
  })

  test('four months, five at most made and four at most kept: 20', async () => {
    const plan = await whole(
      lotSizing({ demand: [1, 3, 2, 4], setup: () => 3, each: 1, holding: 0.5, most: 5, room: 4 }),
    )
    expect(plan.cost).toBeCloseTo(20, 6)
  })
})
