import { betaQuantile } from '../../science/index.ts'
import type { Skill } from '../../trade/index.ts'
import type { Season } from '../season.ts'
import type { SeasonLoads } from './loads.ts'
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
  const seasons = simulated.to - simulated.from
  return season.orders.map((_, o) => {
    let onTime = 0
    let ready = 0
    for (let at = o * seasons; at < (o + 1) * seasons; at++) {
      if (simulated.weeksLate[at] === 0) onTime++
      ready += simulated.byDue[at]!
    }
    return { chance: onTime / seasons, meanByDue: ready / seasons }
  })
}

export function orderOutcomes(season: Season, simulated: SimulatedSeasons): OrderOutcome[] {
  const seasons = simulated.to - simulated.from
  return season.orders.map((order, o) => {
    const ready = byDueOf(simulated, o).sort()
    let onTime = 0
    let late = 0
    let delivered = 0
    for (let at = o * seasons; at < (o + 1) * seasons; at++) {
      if (simulated.weeksLate[at] === 0) onTime++
      late += simulated.late[at]!
      delivered += Math.min(order.number, simulated.byDue[at]! + simulated.late[at]!)
    }
    let mean = 0
    for (let s = 0; s < seasons; s++) mean += ready[s]! / seasons
    let square = 0
    for (let s = 0; s < seasons; s++) square += (ready[s]! - mean) ** 2
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
export const byDueOf = ({ byDue, from, to }: SimulatedSeasons, order: number): Int32Array =>
  byDue.slice(order * (to - from), (order + 1) * (to - from))

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

export function simulatedLoads(season: Season, loads: SeasonLoads): SimulatedLoads {
  const { places, skills, weeks, squareMetres, minutes } = loads
  const loadsOf = (all: Float32Array, rows: number): Load[] => {
    const seasons = rows === 0 ? 0 : all.length / (rows * weeks)
    const values = new Float64Array(seasons)
    return Array.from({ length: rows }, (_, row) => {
      const expected = new Float64Array(weeks)
      const badYear = new Float64Array(weeks)
      for (let w = 0; w < weeks; w++) {
        for (let s = 0; s < seasons; s++) values[s] = all[(s * rows + row) * weeks + w]!
        values.sort()
        expected[w] = values.reduce((sum, value) => sum + value, 0) / Math.max(1, seasons)
        badYear[w] = quantileOfSorted(values, 0.9)
      }
      return { expected, badYear }
    })
  }
  const areas = loadsOf(squareMetres, places.length)
  const rowOf = new Map(places.map((place, row) => [place, row]))
  return {
    squareMetres: season.places.map((_, place) => {
      const row = rowOf.get(place)
      return row === undefined ? noLoad(weeks) : areas[row]!
    }),
    minutes: loadsOf(minutes, skills.length).map((load, i) => ({ ...load, skill: skills[i]! })),
  }
}

const noLoad = (weeks: number): Load => ({
  expected: new Float64Array(weeks),
  badYear: new Float64Array(weeks),
})
