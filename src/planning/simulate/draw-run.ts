import type { Luck } from './luck.ts'
import { normalScore } from './normal-scores.ts'
import type { Run, Runs } from './runs.ts'
import { shareAt } from './share-curve.ts'

/** What a run draws in a season, whatever its number; overwritten by the next draw. */
export interface Drawn {
  /** Share alive when each step begins, and at last what is finished. */
  readonly alive: Float64Array
  /** Uniform numbers for its own losses: after it has its rootstocks, and before. */
  luck: number
  earlyLuck: number
  logDays: number
}

export interface Draws {
  readonly drawn: Drawn
  draw(run: Run, season: number): void
}

/**
 * Draws runs, each from a stream of its own: its days, and the shares that live. A step's share is the quantile of its Beta at
 * a normal score that is partly the year's and partly its own, so that every share is Beta as the rates say and moves with
 * the year.
 */
export function drawsOf({ curves, yearKeys, free, grafts }: Runs, luck: Luck, to: number): Draws {
  const longest = [...free, ...grafts].reduce((most, { steps }) => Math.max(most, steps.length), 0)
  const years = yearKeys.map(key => luck.ofYears(key, to))
  const shares = new Float64Array(longest)
  const drawn: Drawn = { alive: new Float64Array(longest + 1), luck: 0.5, earlyLuck: 0.5, logDays: 0 }
  drawn.alive[0] = 1
  return {
    drawn,
    draw(run, season) {
      const own = luck.ofSeason(season).stream(run.key)
      const { steps } = run
      drawn.logDays = run.logMedianDays + run.batchSdLog * normalScore(own.uniform())
      for (let i = 0; i < run.ownDraws; i++) {
        const uniform = own.uniform()
        if (i === run.ownDraw) drawn.luck = uniform
        else drawn.earlyLuck = uniform
      }
      for (let j = steps.length - 1; j >= 0; j--) {
        const step = steps[j]!
        const score =
          step.yearWeight * years[step.yearEffect]![season]! + step.ownWeight * normalScore(own.uniform())
        shares[j] = shareAt(curves, step.curve, score)
      }
      for (let j = 0; j < steps.length; j++) drawn.alive[j + 1] = drawn.alive[j]! * shares[j]!
    },
  }
}
