import { plantedTrees } from '../answer/plantings.ts'
import { buildSeasonModel, withoutMargins } from '../model/build-season-model.ts'
import type { Margins } from '../model/season-model.ts'
import { openSolver } from '../model/solve.ts'
import { worthOfMovingShown } from '../rules/standing-still.ts'
import type { Season } from '../season.ts'
import { orderChances, simulatedLoads } from '../simulate/outcome.ts'
import type { OpenRunner } from '../simulate/part-runs.ts'
import {
  byComponent,
  type SeasonsByComponent,
  type SimulationMemory,
} from '../simulate/simulate-by-component.ts'
import { withPlanted } from '../simulate/wood.ts'
import { CLOSE_ENOUGH } from '../sureness/move-margins.ts'
import { newStarts, savedByMoving } from '../sureness/saved-by-moving.ts'
import { relaxedSurely } from '../sureness/sure-plan.ts'
import { withCover } from '../sureness/with-cover.ts'
import type { ReckoningMemory } from '../whole/reckon.ts'
import type { MadePlan } from './replan.ts'

export interface AnewInput {
  /** With the starts that were shown, where moving one costs something. */
  readonly season: Season
  /** Where to begin, say with the margins of the last plan. */
  readonly margins?: Margins | undefined
  readonly seasons: number
  readonly seed: number
  readonly proveSeconds: number
  readonly isStopped: () => boolean
  readonly tell?: ((stage: 'margins' | 'whole numbers', round: number, worst: number) => void) | undefined
  readonly memory?: SimulationMemory | undefined
  readonly reckoning?: ReckoningMemory | undefined
  readonly open?: OpenRunner | undefined
}

/** A season of more orders has batches enough that one failing is made good by others; and to plan it twice takes long. */
const FEW_ORDERS = 60

/** The whole season, made as sure as each order asks. */
export async function planAnew(input: AnewInput): Promise<MadePlan> {
  // Counted once no solver is open any longer: of a large season either takes much memory.
  return withLoads(input, await inBatches(input))
}

/**
 * A season of few orders is planned twice: in few large batches, and spread over more weeks, where two batches vary less than
 * one and so need fewer plants for the same sureness. The cheaper one is taken, what a batch less is worth counted in, and
 * beside starts that people have seen what a start that they have not is worth; and a search for cheaper trays is made for it
 * alone, which takes as long as both.
 */
async function inBatches(input: AnewInput): Promise<Once> {
  const { season, isStopped, proveSeconds } = input
  if (season.orders.length > FEW_ORDERS) return planning(input, false, joined => joined.inTrays(proveSeconds))
  const tell: AnewInput['tell'] = (_, round, worst) => input.tell?.('whole numbers', round, worst)
  return planning(input, false, async joined => {
    const inFew = await joined.inTrays(0)
    if (isStopped()) return inFew
    return planning({ ...input, tell }, true, async spread => {
      const inMany = await spread.inTrays(0)
      const [relaxed, best] = isBetter(inMany, inFew) && !isStopped() ? [spread, inMany] : [joined, inFew]
      if (proveSeconds <= 0 || isStopped()) return best
      const searched = await relaxed.inTrays(proveSeconds)
      return isBetter(searched, best) ? searched : best
    })
  })
}

/** The same in few large batches alone, its loads not counted: in half the time. */
export const planJoined = async (input: AnewInput): Promise<Omit<MadePlan, 'loads'>> =>
  inFreshSeasons(input, await planning(input, false, joined => joined.inTrays(input.proveSeconds)))

async function withLoads(input: AnewInput, once: Once): Promise<MadePlan> {
  const { starts, whole } = once.made
  const loads = await once.simulated.loads(starts, whole.solution.bought, input.seasons)
  return { ...(await inFreshSeasons(input, once)), loads: simulatedLoads(input.season, loads) }
}

async function inFreshSeasons(
  { season, seasons, seed, memory, open }: AnewInput,
  { made, simulated }: Once,
): Promise<Omit<MadePlan, 'loads'>> {
  const { starts, whole } = made
  const planted = plantedTrees(whole.solution)
  const inSeason =
    planted.length > 0 ? byComponent(withPlanted(season, planted), seed, memory, open) : simulated
  return { ...made, fresh: await inSeason.runFresh(starts, whole.solution.bought, seasons) }
}

/** The season relaxed, with what is made of it while its solver is open. */
async function planning(
  input: AnewInput,
  isSpread: boolean,
  then: (relaxed: { readonly inTrays: (proveSeconds: number) => Promise<Once> }) => Promise<Once>,
): Promise<Once> {
  const { season, seasons, seed, isStopped } = input
  const covered = withCover(season)
  const solver = await openSolver(buildSeasonModel(covered, withoutMargins(covered)))
  const simulated = byComponent(season, seed, input.memory, input.open)
  try {
    const relaxed = await relaxedSurely({
      season,
      covered,
      solver,
      seasons,
      seed,
      isSpread,
      isStopped,
      ...(input.tell && { tell: input.tell }),
      ...(input.margins && { margins: input.margins }),
      reckoning: input.reckoning,
      simulated,
    })
    const inTrays = async (proveSeconds: number): Promise<Once> => {
      const sure = await relaxed.inTrays(proveSeconds)
      const chances = orderChances(season, sure.simulated)
      return {
        simulated,
        made: { ...sure, saved: savedByMoving(solver, sure.relaxed, sure.starts) },
        cost:
          sure.whole.cost +
          sure.starts.length * (covered.prices.batch ?? 0) +
          newStarts(season, sure.starts) * worthOfMovingShown(season),
        lacking: season.orders.filter(({ sure: asked }, o) => chances[o]!.chance < asked - CLOSE_ENOUGH)
          .length,
      }
    }
    return await then({ inTrays })
  } finally {
    solver.dispose()
  }
}

const isBetter = (one: Once, other: Once): boolean =>
  one.lacking < other.lacking || (one.lacking === other.lacking && one.cost < other.cost)

interface Once {
  readonly simulated: SeasonsByComponent
  readonly made: Omit<MadePlan, 'loads' | 'fresh'>
  /** With what a batch less is worth, and for each start that people have not seen what moving one is worth. */
  readonly cost: number
  /** Orders less sure than asked. */
  readonly lacking: number
}
