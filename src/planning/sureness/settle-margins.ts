import type { Margins, Solution } from '../model/season-model.ts'
import type { Season, SeasonStart } from '../season.ts'
import { type OrderChance, orderChances } from '../simulate/outcome.ts'
import type { SimulatedSeasons } from '../simulate/simulate-seasons.ts'
import { firstMargins } from './first-margins.ts'
import { CLOSE_ENOUGH, firstState, moveMargins, type Standing } from './move-margins.ts'
import { orderChains } from './order-chains.ts'

/** A plan as far as sureness needs it. */
export type SolvedPlan = Pick<Solution, 'starts' | 'bought' | 'deliveries'>

export interface SettleInput<Plan extends SolvedPlan> {
  readonly season: Season
  /** Where to begin, say with the margins of the last plan; those of `needed` unless told. */
  readonly margins?: Margins
  /** Is told as well how many seasons will be simulated of the plan. */
  readonly solve: (margins: Margins, toSimulate: number) => Plan | Promise<Plan>
  readonly simulate: (
    starts: readonly SeasonStart[],
    bought: Solution['bought'],
    seasons: number,
  ) => SimulatedSeasons | Promise<SimulatedSeasons>
  /** Seasons simulated in each round; as many rounds at most. */
  readonly seasonsByRound: readonly number[]
  /** A round with fewer seasons does not end it; none unless told. */
  readonly fewestToEnd?: number
  /** Orders that are not to be less sure than asked, but surer they may be, say because whole trays were rounded up. */
  readonly keepsSurplus?: (order: number) => boolean
  /** What is solved is in whole trays. */
  readonly inWholeTrays?: boolean
  readonly isStopped?: () => boolean
  readonly tell?: (round: number, worst: number) => void
}

export interface Settled<Plan extends SolvedPlan> {
  readonly margins: Margins
  readonly plan: Plan
  readonly simulated: SimulatedSeasons
  readonly outcomes: readonly OrderChance[]
  readonly standing: readonly Standing[]
  readonly rounds: number
  /** Every order is as sure as asked, or limited, or covered by plants made for others. */
  readonly isSettled: boolean
}

/** Among many orders so few may be left a little off: to settle the last one takes as long as all the others. */
const UNSETTLED_SHARE = 0.01
/** A round that may not end it is never better than one that may. */
const ROUGH = 10

/**
 * Solves, simulates and moves margins until each order's chance is its wish, or its limit is known. At least one
 * round is made, stopped or not.
 */
export async function settleMargins<Plan extends SolvedPlan>(
  input: SettleInput<Plan>,
): Promise<Settled<Plan>> {
  const { season, seasonsByRound, fewestToEnd = 0 } = input
  const chains = orderChains(season)
  let state = firstState(input.margins ?? firstMargins(season))
  let best: Settled<Plan> | undefined
  let least = Number.POSITIVE_INFINITY
  for (let round = 1; ; round++) {
    const { margins } = state
    const toSimulate = seasonsByRound[round - 1]!
    const plan = await input.solve(margins, toSimulate)
    const simulated = await input.simulate(plan.starts, plan.bought, toSimulate)
    const outcomes = orderChances(season, simulated)
    const next = moveMargins(
      season,
      chains,
      state,
      plan,
      simulated,
      outcomes,
      input.keepsSurplus,
      input.inWholeTrays,
    )
    const { worst, off } = missesOf(season, outcomes, next.standing)
    input.tell?.(round, worst)
    const isSettled = off <= UNSETTLED_SHARE * season.orders.length
    // Rounds with more seasons see finer; a rough early round must be much better to be kept.
    const noise = 1 / Math.sqrt(toSimulate)
    const mayEnd = toSimulate >= fewestToEnd
    const miss = off / season.orders.length + worst + noise + (mayEnd ? 0 : ROUGH)
    if (!best || miss <= least) {
      best = { margins, plan, simulated, outcomes, standing: next.standing, rounds: round, isSettled }
      least = miss
    }
    if ((isSettled && mayEnd) || round >= seasonsByRound.length || input.isStopped?.())
      return { ...best, rounds: round }
    state = next
  }
}

/**
 * How far the chance of the order that is furthest off lies from its wish, and how many are further off than is close
 * enough; limits and cover left aside.
 */
function missesOf(
  season: Season,
  outcomes: readonly OrderChance[],
  standing: readonly Standing[],
): { worst: number; off: number } {
  let worst = 0
  let off = 0
  season.orders.forEach(({ sure, number, dueWeek }, o) => {
    if (number <= 0 || dueWeek < 0) return
    const miss = outcomes[o]!.chance - sure
    if (standing[o] === 'limited' || (standing[o] === 'covered' && miss > 0)) return
    worst = Math.max(worst, Math.abs(miss))
    if (Math.abs(miss) > CLOSE_ENOUGH) off++
  })
  return { worst, off }
}
