import type { Day, Supply } from '../register.ts'
import type { MotherState } from '../state.ts'

type Given = MotherState['given'][number]

/**
 * The year in which a season began that holds the day. A season of months that run over the turn of the year
 * (November to February) is one season; any other is a calendar year.
 */
export function seasonYear(months: readonly number[], on: Day): number {
  const year = Number(on.slice(0, 4))
  const runsOver = months.includes(12) && months.includes(1) && months.length < 12
  if (!runsOver) return year
  let first = 12
  while (months.includes(first - 1)) first -= 1
  return Number(on.slice(5, 7)) < first ? year - 1 : year
}

/** A part of a taking, and the supply and season that it counts on. */
export interface Counted<G> {
  readonly supply: Supply
  readonly season: number
  readonly taking: G
  readonly number: number
  /** All that counts on the supply in the season, with this. */
  readonly sum: number
}

/**
 * What was taken counts on the supply of its material that gives in its month: one after the other where several do, and
 * on the last of them what is beyond them all; on all of the material where none does. A material without a supply has no
 * bound yet, and counts on nothing.
 * @param given in the order in which it was taken
 */
export function* countOnSupplies<G extends Pick<Given, 'on' | 'material' | 'number'>>(
  supplies: readonly Supply[],
  given: readonly G[],
): Generator<Counted<G>> {
  const sums = new Map<Supply, Map<number, number>>()
  for (const taking of given) {
    const month = Number(taking.on.slice(5, 7))
    const own = supplies.filter(({ material }) => material === taking.material)
    const inMonth = own.filter(({ months }) => months.length === 0 || months.includes(month))
    let left = taking.number
    const asked = inMonth.length > 0 ? inMonth : own
    for (const [i, supply] of asked.entries()) {
      const season = seasonYear(supply.months, taking.on)
      const bySeason = sums.get(supply) ?? new Map<number, number>()
      sums.set(supply, bySeason)
      const before = bySeason.get(season) ?? 0
      const isLast = i === asked.length - 1
      const number = isLast ? left : Math.min(left, Math.max(0, supply.perYear - before))
      if (number === 0) continue
      bySeason.set(season, before + number)
      left -= number
      yield { supply, season, taking, number, sum: before + number }
      if (left === 0) break
    }
  }
}

/** What counts on each supply in its season that holds the day, and by which takings. */
export function givenInSeason<G extends Pick<Given, 'on' | 'material' | 'number'>>(
  supplies: readonly Supply[],
  given: readonly G[],
  on: Day,
): { supply: Supply; season: number; given: number; takings: G[] }[] {
  const counted = [...countOnSupplies(supplies, given)]
  return supplies.map(supply => {
    const season = seasonYear(supply.months, on)
    const own = counted.filter(one => one.supply === supply && one.season === season)
    return {
      supply,
      season,
      given: own.reduce((sum, { number }) => sum + number, 0),
      takings: own.map(({ taking }) => taking),
    }
  })
}
