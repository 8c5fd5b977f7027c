import type { Margins, Solution } from '../model/season-model.ts'
import type { Season } from '../season.ts'
import { byDueOf, type OrderOutcome, quantileOfSorted } from '../simulate/outcome.ts'
import type { SimulatedSeasons } from '../simulate/simulate-seasons.ts'

/** Chance and wish may differ by this much: 1.5 points. */
export const CLOSE_ENOUGH = 0.015
/** An order filled within so many weeks after its due week lacked time, not plants. */
const SOON = 3
/** Planned for so much less than wanted by its week, an order is at a limit of the nursery. */
const AT_LIMIT = 0.98
const EARLIEST_STEP = 4

/** How an order stands after a round. */
export type Standing =
  | 'as asked'
  | 'more wanted'
  | 'sooner wanted'
  | 'more than asked'
  | 'limited'
  | 'covered'

export interface MarginState {
  readonly margins: Margins
  readonly standing: readonly Standing[]
  /** Mean ready by the due week when an order's number was last lowered; NaN when it was not. */
  readonly meanWhenLowered: Float64Array
  /** No earlier week is of use. */
  readonly isTimeSpent: Uint8Array
}

export const firstState = (margins: Margins): MarginState => ({
  margins,
  standing: Array.from(margins.plannedNumber, () => 'as asked' as const),
  meanWhenLowered: new Float64Array(margins.plannedNumber.length).fill(Number.NaN),
  isTimeSpent: new Uint8Array(margins.plannedNumber.length),
})

/**
 * Moves each order's margin towards its wish.
 *
 * Along a chain, an order is filled by its due week when what is on hand for it then is at least its number. So the
 * (1 − sure) quantile of that is to be its number, and the cumulative plan is moved by the difference, made
 * larger by mean ÷ quantile of the cumulative supply, because a larger supply also varies more. (This is the Newton step
 * in normal scores, without taking the supply for normal.) Where most failures are filled within three weeks after
 * the due week, it is time that lacks: the planned week moves earlier instead.
 */
export function moveMargins(
  season: Season,
  chains: readonly (readonly number[])[],
  state: MarginState,
  solution: Pick<Solution, 'deliveries'>,
  simulated: SimulatedSeasons,
  outcomes: readonly OrderOutcome[],
): MarginState {
  const plannedNumber = Float64Array.from(state.margins.plannedNumber)
  const plannedDueWeek = Int32Array.from(state.margins.plannedDueWeek)
  const isTimeSpent = Uint8Array.from(state.isTimeSpent)
  const meanWhenLowered = new Float64Array(plannedNumber.length).fill(Number.NaN)
  const standing = [...state.standing]
  const inTime = deliveredInTime(season, state.margins, solution)

  for (const chain of chains) {
    let before = 0
    let beforeMoved = 0
    let ordered = 0
    for (const o of chain) {
      const { number, sure, dueWeek } = season.orders[o]!
      const { chance, meanByDue } = outcomes[o]!
      const planned = before + plannedNumber[o]!
      let moved = planned
      const isLimited = inTime[o]! < AT_LIMIT * plannedNumber[o]! - 0.5
      standing[o] = 'as asked'
      if (number > 0 && dueWeek >= 0 && chance < sure - CLOSE_ENOUGH / 3) {
        const weeks = isTimeSpent[o] ? 0 : weeksLacking(simulated, o, chance, sure)
        if (isLimited && plannedDueWeek[o]! < dueWeek) {
          // An earlier week cannot be met: plan for the due week itself, with more plants.
          plannedDueWeek[o] = Math.min(dueWeek, plannedDueWeek[o]! + EARLIEST_STEP)
          isTimeSpent[o] = 1
          standing[o] = 'limited'
        } else if (isLimited) standing[o] = 'limited'
        else if (weeks > 0 && plannedDueWeek[o]! > 0) {
          plannedDueWeek[o] = Math.max(0, plannedDueWeek[o]! - weeks)
          standing[o] = 'sooner wanted'
        } else {
          moved = planned + supplyLacking(simulated, o, number, sure, meanByDue, ordered)
          standing[o] = 'more wanted'
        }
      } else if (number > 0 && chance > sure + CLOSE_ENOUGH / 3) {
        const lowered = state.meanWhenLowered[o]!
        // Fewer were planned and as many came: others' plants cover it.
        const isCovered = planned <= beforeMoved + 1e-6 || lowered - meanByDue < 0.01 * Math.max(1, number)
        standing[o] = isCovered && !Number.isNaN(lowered) ? 'covered' : 'more than asked'
        moved = planned + supplyLacking(simulated, o, number, sure, meanByDue, ordered)
        meanWhenLowered[o] = meanByDue
      }
      moved = Math.max(beforeMoved, Math.min(moved, planned + Math.max(2 * number, planned)))
      plannedNumber[o] = moved - beforeMoved
      before = planned
      beforeMoved = moved
      ordered += Math.max(0, number)
    }
  }
  return { margins: { plannedNumber, plannedDueWeek }, standing, meanWhenLowered, isTimeSpent }
}

/** What the cumulative supply lacks, or has too much (below 0). */
function supplyLacking(
  simulated: SimulatedSeasons,
  order: number,
  number: number,
  sure: number,
  meanByDue: number,
  orderedBefore: number,
): number {
  const there = quantileOfSorted(Float64Array.from(byDueOf(simulated, order)).sort(), 1 - sure)
  const growth = (meanByDue + orderedBefore) / Math.max(1, there + orderedBefore)
  return (number - there) * Math.min(Math.max(growth, 1), 2)
}

/** Weeks by which to plan earlier, where most failures are only late; else 0. */
function weeksLacking(simulated: SimulatedSeasons, order: number, chance: number, sure: number): number {
  const seasons = simulated.to - simulated.from
  const byWeeksLate = new Int32Array(SOON + 1)
  for (let row = 0; row < seasons; row++) {
    const late = simulated.weeksLate[row * simulated.orders + order]!
    if (late <= SOON) byWeeksLate[late]!++
  }
  const soon = byWeeksLate.reduce((sum, count) => sum + count, 0) / seasons - chance
  if (soon < 0.5 * (1 - chance)) return 0
  let filled = 0
  for (let weeks = 0; weeks <= SOON; weeks++) {
    filled += byWeeksLate[weeks]! / seasons
    if (filled >= sure) return weeks
  }
  return SOON
}

/** By order, what the plan expects to deliver by the planned week. */
function deliveredInTime(
  season: Season,
  margins: Margins,
  { deliveries }: Pick<Solution, 'deliveries'>,
): Float64Array {
  const inTime = new Float64Array(season.orders.length)
  for (const { order, week, number } of deliveries)
    if (week <= margins.plannedDueWeek[order]!) inTime[order]! += number
  return inTime
}
