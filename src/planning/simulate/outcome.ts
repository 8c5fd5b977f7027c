import { betaQuantile } from '../../science/index.ts'
import type { Skill } from '../../trade/index.ts'
import type { Season } from '../season.ts'
import type { SimulatedSeasons } from './simulate-seasons.ts'

/** As much as is needed to move margins. */
export interface OrderChance {
  /** Share of the seasons in which the whole number was ready by the due week. */
  readonly chance: number
  /** Ready for it by the due week, what is over counted in, on average. */
  readonly meanByDue: number
}

/** What the simulated seasons say of one order. */
export interface OrderOutcome extends OrderChance {
  /** The 95 % interval of the chance. */
  readonly chanceLow: number
  readonly chanceHigh: number
  /** Ready for it by the due week, what is over counted in: standard deviation, one year in ten below, above. */
  readonly sdByDue: number
  readonly lowByDue: number
  readonly highByDue: number
  /** Mean number delivered late, and never. */
  readonly late: number
  readonly short: number
}

export interface SimulatedLoads {
  readonly squareMetres: readonly Load[]
  readonly minutes: readonly (Load & { readonly skill: Skill })[]
}

/** By week: the mean, and what is exceeded in one season of ten. */
export interface Load {
  readonly expected: Float64Array
  readonly badYear: Float64Array
}

export function orderChances(season: Season, simulated: SimulatedSeasons): OrderChance[] {
  const { orders: count, byDue, weeksLate } = simulated
  const seasons = simulated.to - simulated.from
  const onTime = new Int32Array(count)
  const ready = new Float64Array(count)
  for (let row = 0, at = 0; row < seasons; row++)
    for (let o = 0; o < count; o++, at++) {
      if (weeksLate[at] === 0) onTime[o]!++
      ready[o]! += byDue[at]!
    }
  return season.orders.map((_, o) => ({ chance: onTime[o]! / seasons, meanByDue: ready[o]! / seasons }))
}

export function orderOutcomes(season: Season, simulated: SimulatedSeasons): OrderOutcome[] {
  const seasons = simulated.to - simulated.from
  return season.orders.map((order, o) => {
    const ready = byDueOf(simulated, o).sort()
    let onTime = 0
    let late = 0
    let delivered = 0
    for (let row = 0; row < seasons; row++) {
      const at = row * simulated.orders + o
      if (simulated.weeksLate[at] === 0) onTime++
      late += simulated.late[at]!
      delivered += simulated.delivered[at]!
    }
    let mean = 0
    for (const number of ready) mean += number / seasons
    let square = 0
    for (const number of ready) square += (number - mean) ** 2
    return {
      chance: onTime / seasons,
      ...interval(onTime, seasons),
      meanByDue: mean,
      sdByDue: Math.sqrt(square / Math.max(1, seasons - 1)),
      lowByDue: quantileOfSorted(ready, 0.1),
      highByDue: quantileOfSorted(ready, 0.9),
      late: late / seasons,
      short: order.number - delivered / seasons,
    }
  })
}

/** What was ready for an order by its due week, season by season. */
export function byDueOf(simulated: SimulatedSeasons, order: number): Int32Array {
  const { orders, byDue } = simulated
  const of = new Int32Array(simulated.to - simulated.from)
  for (let row = 0; row < of.length; row++) of[row] = byDue[row * orders + order]!
  return of
}

/**
 * 95 % interval of a share counted in independent seasons.
 * @source Clopper & Pearson 1934, Biometrika 26:404-413
 */
function interval(count: number, seasons: number): { chanceLow: number; chanceHigh: number } {
  return {
    chanceLow: count === 0 ? 0 : betaQuantile(0.025, count, seasons - count + 1),
    chanceHigh: count === seasons ? 1 : betaQuantile(0.975, count + 1, seasons - count),
  }
}

/** The value that a share of the sorted numbers does not exceed. */
export const quantileOfSorted = (sorted: Float64Array | Int32Array, share: number): number =>
  sorted.length === 0
    ? 0
    : sorted[Math.min(sorted.length - 1, Math.max(0, Math.ceil(share * sorted.length) - 1))]!

export function simulatedLoads(season: Season, simulated: SimulatedSeasons): SimulatedLoads {
  const { weeks } = season
  const loadsOf = (all: Float32Array, count: number): Load[] =>
    Array.from({ length: count }, (_, index) => {
      const rows = count === 0 ? 0 : all.length / (count * weeks)
      const expected = new Float64Array(weeks)
      const badYear = new Float64Array(weeks)
      for (let w = 0; w < weeks; w++) {
        const values = Float64Array.from(
          { length: rows },
          (_, r) => all[(r * count + index) * weeks + w]!,
        ).sort()
        expected[w] = values.reduce((sum, value) => sum + value, 0) / Math.max(1, rows)
        badYear[w] = quantileOfSorted(values, 0.9)
      }
      return { expected, badYear }
    })
  return {
    squareMetres: loadsOf(simulated.squareMetres, season.places.length),
    minutes: loadsOf(simulated.minutes, simulated.skills.length).map((load, i) => ({
      ...load,
      skill: simulated.skills[i]!,
    })),
  }
}
