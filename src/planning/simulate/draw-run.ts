import type { Comings } from './comings.ts'
import { type DrawnRun, drawnUpTo, type KeptDraws, keepDrawsOf } from './kept-draws.ts'
import type { Luck } from './luck.ts'
import { normalScore } from './normal-scores.ts'
import type { Run, Runs } from './runs.ts'
import { shareAt } from './share-curve.ts'

export interface Draws {
  /** Where the draws of a run are written, kept or not. */
  of(run: Run): DrawnRun
  comingsOf(run: Run): Comings | undefined
  /**
   * Draws a run of a season where that was not done before.
   * @param isAnew draws it in any case, for `alive`
   * @returns the place in `into` where its draws stand
   */
  draw(run: Run, into: DrawnRun, season: number, isAnew: boolean): number
  /** Share alive when each step of the run drawn last begins, and at last what is finished. */
  readonly alive: Float64Array
}

/**
 * Draws runs, each from a stream of its own: its days, and the shares that live. A step's share is the quantile of its Beta at
 * a normal score that is partly the year's and partly its own, so that every share is Beta as the rates say and moves with
 * the year.
 * @param kept what was drawn for the last plan of the season; afterwards, what is drawn for this one
 */
export function drawsOf(
  { curves, yearKeys, free, grafts }: Runs,
  luck: Luck,
  to: number,
  kept: KeptDraws,
): Draws {
  const runs = [...free, ...grafts]
  const longest = runs.reduce((most, { steps }) => Math.max(most, steps.length), 0)
  const years = yearKeys.map(key => luck.ofYears(key, to))
  const alive = new Float64Array(longest + 1)
  alive[0] = 1
  const { drawnOf, comingsOf } = keepDrawsOf(kept, runs, to)
  /** Of runs that are not kept, one season at a time. */
  const passing = drawnUpTo(1, true)
  return {
    alive,
    of: run => drawnOf(run) ?? passing,
    comingsOf,
    draw(run, into, season, isAnew) {
      const at = into === passing ? 0 : season
      if (into !== passing && !isAnew && !Number.isNaN(into.logDays[at])) return at
      const own = luck.ofSeason(season).stream(run.key)
      const { steps, stepsBeforeRootstock } = run
      into.logDays[at] = run.logMedianDays + run.batchSdLog * normalScore(own.uniform())
      for (let i = 0; i < run.ownDraws; i++) {
        const uniform = own.uniform()
        if (i === run.ownDraw) into.luck[at] = uniform
        else if (stepsBeforeRootstock > 0) into.earlyLuck[at] = uniform
      }
      for (let j = steps.length - 1; j >= 0; j--) {
        const step = steps[j]!
        const score =
          step.yearWeight * years[step.yearEffect]![season]! + step.ownWeight * normalScore(own.uniform())
        alive[j + 1] = shareAt(curves, step.curve, score)
      }
      for (let j = 0; j < steps.length; j++) alive[j + 1]! *= alive[j]!
      into.finished[at] = alive[steps.length]!
      if (stepsBeforeRootstock > 0) into.worked[at] = alive[stepsBeforeRootstock]!
      return at
    },
  }
}
