import { type ChosenStart, chosenStarts } from '../answer/planned.ts'
import type { Margins, SeasonSolver, Solution } from '../model/season-model.ts'
import type { Season } from '../season.ts'
import { byComponent, type SeasonsByComponent } from '../simulate/simulate-by-component.ts'
import type { SimulatedSeasons } from '../simulate/simulate-seasons.ts'
import { joinedStarts } from '../whole/joined-starts.ts'
import { type ReckoningMemory, reckonedAgainst } from '../whole/reckon.ts'
import type { WholePlan } from '../whole/whole-plan.ts'
import { wholeTrays } from '../whole/whole-trays.ts'
import { firstMargins } from './first-margins.ts'
import type { Standing } from './move-margins.ts'
import { settleMargins } from './settle-margins.ts'
import { settleSpread } from './settle-spread.ts'

export interface SurePlanInput {
  /** As it is read: the seasons are simulated on this. */
  readonly season: Season
  /** The same `withCover`, and a solver that holds its model. */
  readonly covered: Season
  readonly solver: SeasonSolver
  readonly seasons: number
  readonly seed: number
  /** Spread starts over more weeks where that lowers what must be begun: fewer plants, more batches. */
  readonly isSpread?: boolean
  /** Where to begin, say with the margins of the last plan. */
  readonly margins?: Margins
  /** Orders that may stay surer than asked: what serves them is to stand as it does. */
  readonly keepsSurplus?: (order: number) => boolean
  readonly simulated?: SeasonsByComponent
  readonly reckoning?: ReckoningMemory | undefined
  /** Once true, no further round is made: what is relaxed by then is rounded, so that there always is a plan to work by. */
  readonly isStopped?: () => boolean
  readonly tell?: (stage: 'margins' | 'whole numbers', round: number, worst: number) => void
}

export interface SurePlan {
  readonly margins: Margins
  readonly relaxed: Solution
  readonly whole: WholePlan
  readonly starts: readonly ChosenStart[]
  readonly simulated: SimulatedSeasons
  readonly standing: readonly Standing[]
  readonly isSettled: boolean
}

/** A season whose margins are settled on its relaxation; to be rounded while its solver is open. */
export interface RelaxedSurely {
  /** @param proveSeconds to search for cheaper trays; 0 for none */
  inTrays(proveSeconds: number): Promise<SurePlan>
}

/** Margins are settled on the relaxation, with fewer seasons first; then on whole trays with all of them. */
const RELAXED_ROUNDS = [0.25, 0.5, 0.5, 1, 1, 1, 1, 1]
const SPREAD_ROUNDS = [0.5, 0.5, 1, 1]
const WHOLE_ROUNDS = [1, 1, 1, 1, 1]
/** Of many orders a season takes longer to run, and the first rounds need not see finely. */
const MANY_ORDERS = 100
const RELAXED_ROUNDS_OF_MANY = [0.1, 0.2, 0.3]
const WHOLE_ROUNDS_OF_MANY = [0.5, 1, 1, 1, 1]
const FEWEST_SEASONS = 200

/**
 * The plan that is as sure as each order asks: margins settled on the relaxation; then rounded to whole trays, and the margins
 * of those that the rounding left less sure than asked moved again.
 */
export async function relaxedSurely(input: SurePlanInput): Promise<RelaxedSurely> {
  const { season, covered, solver, seasons, seed, isStopped = () => false, tell } = input
  const { run: simulate, begin } = input.simulated ?? byComponent(season, seed)
  const joined = joinedStarts(solver)
  /** The first time until batches have found their sizes: what an order needs hangs on them. */
  let areJoined = false
  const relax = (margins: Margins) => {
    solver.withMargins(margins)
    const solution = areJoined ? joined.solve() : joined.settle()
    areJoined = true
    return sentInTheirDates(season, solution)
  }
  const isMany = season.orders.length > MANY_ORDERS
  const part = (share: number) => Math.max(FEWEST_SEASONS, Math.round(share * seasons))
  const settle = {
    season,
    margins: input.margins ?? firstMargins(season),
    simulate,
    seasonsByRound: (isMany ? RELAXED_ROUNDS_OF_MANY : RELAXED_ROUNDS).map(part),
    isStopped,
    ...(input.keepsSurplus && { keepsSurplus: input.keepsSurplus }),
    tell: (round: number, worst: number) => tell?.('margins', round, worst),
  }
  const relaxed = input.isSpread
    ? await settleSpread({ ...settle, solver, seasonsBySpreadRound: SPREAD_ROUNDS.map(part) })
    : { ...(await settleMargins({ ...settle, solve: relax })), most: undefined }
  const inTrays = async (proveSeconds: number): Promise<SurePlan> => {
    const trays = wholeTrays({
      season: covered,
      relaxed: relaxed.plan,
      model: solver.model,
      most: relaxed.most,
    })
    /** The search for cheaper trays is made once; what is moved afterwards is rounded alone. */
    let isProved = false
    const settled = await settleMargins({
      season,
      margins: relaxed.margins,
      solve: async (margins: Margins, toSimulate: number): Promise<RoundedPlan> => {
        const { starts, bought, deliveries, roundedOff } = await trays.round({
          margins,
          proveSeconds: isProved ? 0 : proveSeconds,
          isStopped,
          onPart: part => begin(chosenStarts(season, part.starts), part.bought, toSimulate),
        })
        isProved = true
        return { starts: chosenStarts(season, starts), bought, begun: starts, deliveries, roundedOff }
      },
      simulate,
      seasonsByRound: (isMany ? WHOLE_ROUNDS_OF_MANY : WHOLE_ROUNDS).map(part),
      fewestToEnd: part(1),
      keepsSurplus: () => true,
      inWholeTrays: true,
      isStopped,
      tell: (round, worst) => tell?.('whole numbers', round, worst),
    })
    const { plan, simulated, standing, isSettled } = settled
    const margins = margined(settled.margins, plan.roundedOff)
    solver.withMargins(margins)
    joined.done()
    const relaxedPlan = sentInTheirDates(season, solver.solve())
    const whole = await reckonedAgainst(
      relaxedPlan,
      covered,
      margins,
      plan.begun,
      plan.bought,
      input.reckoning,
    )
    return {
      margins,
      relaxed: relaxedPlan,
      whole: { ...whole, solution: sentInTheirDates(season, whole.solution) },
      starts: plan.starts,
      simulated,
      standing,
      isSettled,
    }
  }
  return { inTrays }
}

interface RoundedPlan {
  readonly starts: readonly ChosenStart[]
  /** The same as it was solved, not yet counted in whole plants. */
  readonly begun: Solution['starts']
  readonly bought: Solution['bought']
  readonly deliveries: Solution['deliveries']
  readonly roundedOff: Float64Array
}

/**
 * What the whole trays really keep above what is ordered: the part of a tree that they leave out lacks nobody, for the
 * sureness was counted without it.
 */
const margined = ({ plannedNumber, plannedDueWeek }: Margins, roundedOff: Float64Array): Margins => ({
  plannedNumber: plannedNumber.map((number, o) => number - roundedOff[o]!),
  plannedDueWeek,
})

/** What was set aside for an order goes out in its earliest week. */
const sentInTheirDates = (season: Season, solution: Solution): Solution => ({
  ...solution,
  deliveries: solution.deliveries.map(delivery => ({
    ...delivery,
    week: Math.max(delivery.week, Math.min(season.orders[delivery.order]!.earliestWeek, season.weeks - 1)),
  })),
})
