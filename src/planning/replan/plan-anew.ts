import { buildSeasonModel, withoutMargins } from '../model/build-season-model.ts'
import type { Margins } from '../model/season-model.ts'
import { openSolver } from '../model/solve.ts'
import type { Season } from '../season.ts'
import type { OpenRunner } from '../simulate/part-runs.ts'
import { byComponent, type SimulationMemory } from '../simulate/simulate-by-component.ts'
import { savedByMoving } from '../sureness/saved-by-moving.ts'
import { surePlan } from '../sureness/sure-plan.ts'
import { withCover } from '../sureness/with-cover.ts'
import type { MadePlan } from './replan.ts'

export interface AnewInput {
  /** With the starts that were shown, where moving one costs something. */
  readonly season: Season
  /** Where to begin, say with the margins of the last plan. */
  readonly margins?: Margins | undefined
  readonly seasons: number
  readonly seed: number
  readonly proveSeconds: number
  readonly isSpread: boolean
  readonly isStopped: () => boolean
  readonly tell?: ((stage: 'margins' | 'whole numbers', round: number, worst: number) => void) | undefined
  readonly memory?: SimulationMemory | undefined
  readonly open?: OpenRunner | undefined
}

/** The whole season, made as sure as each order asks. */
export async function planAnew(input: AnewInput): Promise<MadePlan> {
  const { season, seasons, seed, proveSeconds, isSpread, isStopped } = input
  const covered = withCover(season)
  const solver = await openSolver(buildSeasonModel(covered, withoutMargins(covered)))
  try {
    const sure = await surePlan({
      season,
      covered,
      solver,
      seasons,
      seed,
      proveSeconds,
      isSpread,
      isStopped,
      ...(input.tell && { tell: input.tell }),
      ...(input.margins && { margins: input.margins }),
      simulated: byComponent(season, seed, input.memory, input.open),
    })
    return { ...sure, saved: savedByMoving(solver, sure.relaxed, sure.starts) }
  } finally {
    solver.dispose()
  }
}
