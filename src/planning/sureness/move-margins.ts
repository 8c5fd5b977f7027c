import { deliveredInTime } from '../model/delivered-in-time.ts'
import type { Margins, Solution } from '../model/season-model.ts'
import type { Season } from '../season.ts'
import { byDueOf, type OrderChance, quantileOfSorted } from '../simulate/outcome.ts'
import type { SimulatedSeasons } from '../simulate/simulate-seasons.ts'
import { SET_ASIDE_WEEKS } from './with-cover.ts'

/** Chance and wish may differ by this much: 1.5 points. */
export const CLOSE_ENOUGH = 0.015
/** An order filled within so many weeks after its due week lacked time, not plants. */
const SOON = 3
/** Planned for so much less than wanted by its week, an order is at a limit of the nursery. */
const AT_LIMIT = 0.98
const EARLIER_STEP = 2
/** Nearer to the wish than this, a margin stays where it is. */
const TOLERATED = CLOSE_ENOUGH / 3
const TOLERATED_IN_TRAYS = 0.01
/** A margin moves by no more than this part of the order's number in one round. */
const LARGEST_STEP = 0.5
/** After an overshoot steps are this much shorter, and grow again afterwards. */
const DAMPING = 0.6
const RECOVERY = 1.15
/** Trees on hand for an order are up to this part of their useful time old. */
const AGE_SPREAD = 0.3

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
  /** The last miss, and the part of a step that is taken: smaller once an order has been overshot. */
  readonly miss: Float64Array
  readonly stepShare: Float64Array
}

export const firstState = (margins: Margins): MarginState => ({
  margins,
  standing: Array.from(margins.plannedNumber, () => 'as asked' as const),
  meanWhenLowered: new Float64Array(margins.plannedNumber.length).fill(Number.NaN),
  isTimeSpent: new Uint8Array(margins.plannedNumber.length),
  miss: new Float64Array(margins.plannedNumber.length),
  stepShare: new Float64Array(margins.plannedNumber.length).fill(1),
})

/**
 * Moves each order's margin towards its wish.
 *
 * An order is filled by its due week when what is on hand for it then is at least its number, so the (1 − sure)
 * quantile of that is to be its number. The mean is moved by the difference, made larger by mean ÷ quantile, because a
 * larger supply also varies more. (This is the Newton step in normal scores, without taking the supply for normal.)
 * Along a chain of orders of one kind, what one order leaves over serves the next: of a change D of the mean before one
 * order, the share in which it is filled is left over, as far as trees keep until the next due week. The rest of what the
 * next order lacks is its own. Where most failures are filled within three weeks after the due week, it is time that
 * lacks: the planned week moves earlier instead.
 *
 * @param keepsSurplus orders that stay surer than asked where they are so
 * @param inWholeTrays what lacks is asked for in whole trees, and what lacks hardly anything stays: a part of a tray is none
 */
export function moveMargins(
  season: Season,
  chains: readonly (readonly number[])[],
  state: MarginState,
  solution: Pick<Solution, 'deliveries'>,
  simulated: SimulatedSeasons,
  outcomes: readonly OrderChance[],
  keepsSurplus: (order: number) => boolean = () => false,
  inWholeTrays = false,
): MarginState {
  const tolerated = inWholeTrays ? TOLERATED_IN_TRAYS : TOLERATED
  const plannedNumber = Float64Array.from(state.margins.plannedNumber)
  const plannedDueWeek = Int32Array.from(state.margins.plannedDueWeek)
  const isTimeSpent = Uint8Array.from(state.isTimeSpent)
  const meanWhenLowered = new Float64Array(plannedNumber.length).fill(Number.NaN)
  const standing = [...state.standing]
  const miss = Float64Array.from(season.orders, ({ sure }, o) => outcomes[o]!.chance - sure)
  const stepShare = state.stepShare.map((share, o) =>
    miss[o]! * state.miss[o]! < 0 ? share * DAMPING : Math.min(1, share * RECOVERY),
  )
  const inTime = deliveredInTime(state.margins, solution)

  for (const chain of chains) {
    /** Change of the mean left over by the order before, and the week since when it has been waiting. */
    let leftOver = 0
    let since = 0
    for (const o of chain) {
      const { number, sure, dueWeek, earliestWeek, kinds } = season.orders[o]!
      const { chance, meanByDue } = outcomes[o]!
      const planned = plannedNumber[o]!
      const { usableWeeks } = season.kinds[kinds[0]!.kind]!
      const comes = leftOver * keptShare(dueWeek - since, usableWeeks)
      // The model delivers, or sets aside, from this week on.
      const earliest = Math.max(0, Math.min(earliestWeek, dueWeek - SET_ASIDE_WEEKS))
      const isLimited = inTime[o]! < AT_LIMIT * planned - 0.5
      let wanted = comes
      standing[o] = 'as asked'
      if (number > 0 && dueWeek >= 0 && chance < sure - tolerated) {
        // Of what it had before, it is to lose nothing to an order before it.
        wanted = Math.max(0, comes)
        const weeks = isTimeSpent[o] ? 0 : weeksLacking(simulated, o, chance, sure)
        if (isLimited && plannedDueWeek[o]! < dueWeek) {
          // An earlier week cannot be met: plan for a later one, with more plants.
          plannedDueWeek[o] = Math.min(dueWeek, plannedDueWeek[o]! + EARLIER_STEP)
          isTimeSpent[o] = 1
          standing[o] = 'limited'
        } else if (isLimited) standing[o] = 'limited'
        else if (weeks > 0 && plannedDueWeek[o]! > earliest) {
          plannedDueWeek[o] = Math.max(earliest, plannedDueWeek[o]! - Math.min(weeks, EARLIER_STEP))
          standing[o] = 'sooner wanted'
        } else {
          wanted = stepShare[o]! * supplyLacking(simulated, o, number, sure, meanByDue, inWholeTrays)
          standing[o] = 'more wanted'
        }
      } else if (number > 0 && chance > sure + tolerated) {
        // Fewer were planned and as many came: others' plants cover it.
        const fell = state.meanWhenLowered[o]! - meanByDue
        const isCovered = planned < 0.5 || fell < 0.01 * number
        standing[o] = isCovered || keepsSurplus(o) ? 'covered' : 'more than asked'
        wanted = keepsSurplus(o)
          ? comes
          : stepShare[o]! * supplyLacking(simulated, o, number, sure, meanByDue, inWholeTrays)
        meanWhenLowered[o] = meanByDue
      } else if (number > 0) wanted = 0
      const own = Math.max(-planned, wanted - comes)
      plannedNumber[o] = planned + own
      leftOver = (comes + own) * chance
      since = dueWeek
    }
  }
  return {
    margins: { plannedNumber, plannedDueWeek },
    standing,
    meanWhenLowered,
    isTimeSpent,
    miss,
    stepShare,
  }
}

/** Share of what one order leaves over that is still fit for use so many weeks later. */
const keptShare = (weeks: number, usableWeeks: number) =>
  Math.min(1, Math.max(0, (usableWeeks - weeks) / Math.max(1, AGE_SPREAD * usableWeeks)))

/** What the mean supply lacks, or has too much (below 0). */
function supplyLacking(
  simulated: SimulatedSeasons,
  order: number,
  number: number,
  sure: number,
  meanByDue: number,
  inWholeTrays: boolean,
): number {
  const sorted = byDueOf(simulated, order).sort()
  const whole = quantileOfSorted(sorted, 1 - sure)
  const there = whole < number && inWholeTrays ? whole : whole + partBeyond(sorted, whole, sure)
  const growth = Math.min(Math.max(meanByDue / Math.max(1, there), 1), 1.5)
  const most = Math.max(LARGEST_STEP * number, 3)
  return Math.min(Math.max((number - there) * growth, -most), most)
}

/**
 * The part of a tree that a share of the seasons has beyond `there`. Of few trees, one less is many seasons' difference: too
 * many to go without it, and yet there is too much. Seasons that have just so many are taken as spread evenly up to the next.
 */
function partBeyond(sorted: Int32Array, there: number, share: number): number {
  const below = sorted.findIndex(number => number >= there)
  const above = sorted.findLastIndex(number => number <= there) + 1
  return Math.max(0, (sorted.length - below - share * sorted.length) / (above - below))
}

/** Weeks by which to plan earlier, where most failures are only late; else 0. */
function weeksLacking(simulated: SimulatedSeasons, order: number, chance: number, sure: number): number {
  const seasons = simulated.to - simulated.from
  const byWeeksLate = new Int32Array(SOON + 1)
  for (let row = 0; row < seasons; row++) {
    const late = simulated.weeksLate[order * seasons + row]!
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
