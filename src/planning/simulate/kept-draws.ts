import { type Comings, noComings } from './comings.ts'
import type { Room } from './room-to-keep.ts'
import type { Run } from './runs.ts'

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

/** Draws of the last plan of a season, by run: in the next they are the same; of living batches, all that comes of them is. */
export interface KeptDraws {
  readonly drawn: Map<string, DrawnRun>
  readonly comings: Map<string, Comings>
  /** Shared by all that keep draws in a thread. */
  readonly room: Room
}

const BYTES = Float64Array.BYTES_PER_ELEMENT
const NONE = new Float64Array(0)

export const noDraws = (room: Room): KeptDraws => ({ drawn: new Map(), comings: new Map(), room })

/** A start has a key of its own; portions of a batch share theirs. */
const nameOf = ({ key, ownDraw }: Run) => `${key}/${ownDraw}`

/** Makes room for the draws of these runs, as far as there is any, and lets go of all others. */
export function keepDrawsOf({ drawn, comings, room }: KeptDraws, runs: readonly Run[], seasons: number) {
  const names = new Set(runs.map(nameOf))
  for (const [name, of] of drawn)
    if (!names.has(name)) {
      room.left += sizeOf(of)
      drawn.delete(name)
    }
  for (const run of runs) {
    const name = nameOf(run)
    if (run.isLiving) {
      if (!comings.has(name)) comings.set(name, noComings(room))
      continue
    }
    const before = drawn.get(name)
    if (before && before.logDays.length >= seasons) continue
    const more = drawnUpTo(seasons, run.stepsBeforeRootstock > 0, before)
    const size = sizeOf(more) - (before ? sizeOf(before) : 0)
    if (size > room.left) continue
    room.left -= size
    drawn.set(name, more)
  }
  return {
    drawnOf: (run: Run): DrawnRun | undefined => {
      const known = drawn.get(nameOf(run))
      return known && known.logDays.length >= seasons ? known : undefined
    },
    comingsOf: (run: Run): Comings | undefined => comings.get(nameOf(run)),
  }
}

const sizeOf = ({ logDays, worked }: DrawnRun) => BYTES * (3 * logDays.length + 2 * worked.length)

/** As many seasons of a run, those before as they were drawn. */
export function drawnUpTo(seasons: number, isEarly: boolean, before?: DrawnRun): DrawnRun {
  const longer = (of: Float64Array | undefined, without: number) => {
    const all = new Float64Array(seasons).fill(without)
    if (of) all.set(of)
    return all
  }
  return {
    logDays: longer(before?.logDays, Number.NaN),
    finished: longer(before?.finished, 0),
    luck: longer(before?.luck, 0),
    worked: isEarly ? longer(before?.worked, 0) : NONE,
    earlyLuck: isEarly ? longer(before?.earlyLuck, 0) : NONE,
  }
}
