import type { Luck } from './luck.ts'
import { normalScore } from './normal-scores.ts'
import type { Run, Runs } from './runs.ts'
import { shareAt } from './share-curve.ts'

/** What a run draws, by season and whatever its number; NaN as days where nothing is drawn yet. */
export interface DrawnRun {
  readonly logDays: Float64Array
  /** Share that is finished, and share that lives until it takes its rootstocks (where steps come before that). */
  readonly finished: Float64Array
  readonly worked: Float64Array
  /** Uniform numbers for its own losses: after it has its rootstocks, and before. */
  readonly luck: Float64Array
  readonly earlyLuck: Float64Array
}

/** Draws of the last plan of a season, by run: in the next they are the same. */
export type KeptDraws = Map<string, DrawnRun>

export interface Draws {
  of(run: Run): DrawnRun
  draw(run: Run, into: DrawnRun, season: number): void
  /** Share alive when each step of the run drawn last begins, and at last what is finished. */
  readonly alive: Float64Array
}

const NONE = new Float64Array(0)

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
  const before = new Map(kept)
  kept.clear()
  for (const run of runs) kept.set(nameOf(run), drawnUpTo(to, run, before.get(nameOf(run))))
  return {
    alive,
    of: run => kept.get(nameOf(run))!,
    draw(run, into, season) {
      const own = luck.ofSeason(season).stream(run.key)
      const { steps, stepsBeforeRootstock } = run
      into.logDays[season] = run.logMedianDays + run.batchSdLog * normalScore(own.uniform())
      for (let i = 0; i < run.ownDraws; i++) {
        const uniform = own.uniform()
        if (i === run.ownDraw) into.luck[season] = uniform
        else if (stepsBeforeRootstock > 0) into.earlyLuck[season] = uniform
      }
      for (let j = steps.length - 1; j >= 0; j--) {
        const step = steps[j]!
        const score =
          step.yearWeight * years[step.yearEffect]![season]! + step.ownWeight * normalScore(own.uniform())
        alive[j + 1] = shareAt(curves, step.curve, score)
      }
      for (let j = 0; j < steps.length; j++) alive[j + 1]! *= alive[j]!
      into.finished[season] = alive[steps.length]!
      if (stepsBeforeRootstock > 0) into.worked[season] = alive[stepsBeforeRootstock]!
    },
  }
}

/** A start has a key of its own; portions of a batch share theirs. */
const nameOf = ({ key, ownDraw }: Run) => `${key}/${ownDraw}`

function drawnUpTo(to: number, { stepsBeforeRootstock }: Run, before: DrawnRun | undefined): DrawnRun {
  if (before && before.logDays.length >= to) return before
  const longer = (of: Float64Array | undefined, without: number) => {
    const all = new Float64Array(to).fill(without)
    if (of) all.set(of)
    return all
  }
  const isEarly = stepsBeforeRootstock > 0
  return {
    logDays: longer(before?.logDays, Number.NaN),
    finished: longer(before?.finished, 0),
    luck: longer(before?.luck, 0),
    worked: isEarly ? longer(before?.worked, 0) : NONE,
    earlyLuck: isEarly ? longer(before?.earlyLuck, 0) : NONE,
  }
}
