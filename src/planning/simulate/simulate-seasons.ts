import type { BoughtIn, Season, SeasonStart } from '../season.ts'
import { drawsOf } from './draw-run.ts'
import { type KeptDraws, noDraws } from './kept-draws.ts'
import { type KeptUnits, type KnownUnit, runUnits } from './kept-units.ts'
import { LOADS_EVERY, noLoads, type SeasonLoads } from './loads.ts'
import { type Luck, luckOf } from './luck.ts'
import { promisable } from './promisable.ts'
import { emptyRoom, type Room } from './room-to-keep.ts'
import { runUnit, type WeekCount } from './run-unit.ts'
import { type Run, runsOf } from './runs.ts'
import { unitsOf } from './units.ts'

export interface SimulationInput {
  /** Seasons `from` to `to − 1` of the endless row that belongs to the seed. */
  readonly from: number
  readonly to: number
  readonly seed: number
  /** Bought in: on hand in their week. */
  readonly bought?: readonly BoughtIn[]
  /** Kinds of which it is kept, season by season, how many could be promised more in each week. */
  readonly watch?: readonly number[]
  /** Is told the counts of every week, to prove that they close. */
  readonly ledger?: (week: WeekCount) => void
}

/** What came of some seasons; parts of the same plan and seed are put together by `mergePartials`. */
export interface SimulatedSeasons {
  readonly from: number
  readonly to: number
  readonly orders: number
  readonly weeks: number
  /** By order and season: delivered by the end of the due week, with what else was on hand for it. */
  readonly byDue: Int32Array
  /** By order and season: weeks late when filled, 0 on time, `NEVER` not at all. */
  readonly weeksLate: Uint8Array
  /** By order and season: delivered late. With what was there by the due week, up to its number, it is all that an order got. */
  readonly late: Int32Array
  readonly watched: readonly number[]
  /** By season, watched kind and week. */
  readonly promisable: Int32Array
}

/** What a simulation leaves behind for the next of the same season: what does not change is not run again. */
export interface SimulationKept {
  readonly luck: Luck
  readonly draws: KeptDraws
  units: KeptUnits
}

export const nothingKept = (seed: number, luck = luckOf(seed), room: Room = emptyRoom()): SimulationKept => ({
  luck,
  draws: noDraws(room),
  units: new Map(),
})

/**
 * The nursery's seasons, drawn one by one; the answer for a season depends on the seed, the plan and the season alone.
 *
 * A season first draws its years: one normal score for each group of method and species and calendar year. Each batch then
 * draws its own scores. Losses are binomial, days log-normal. Grafts take the rootstocks that are there and can be worked,
 * and are cut down to them. Trees go out by due date.
 */
export function simulateSeasons(
  season: Season,
  starts: readonly SeasonStart[],
  input: SimulationInput,
  kept: SimulationKept = nothingKept(input.seed),
): SimulatedSeasons {
  const { from, to, bought = [], watch: watched = [], ledger } = input
  const { weeks, orders } = season
  const runs = runsOf(season, starts)
  const units = unitsOf(season, runs)
  const draws = drawsOf(runs, kept.luck, to, kept.draws)
  const promises = new Int32Array((to - from) * watched.length * weeks)
  const watch = watched.length > 0 ? promisable(watched, runs.lines, weeks, promises) : undefined
  const isSeen = watch !== undefined || ledger !== undefined
  const { known, keep } = runUnits(
    season,
    runs,
    units,
    { from, to, bought },
    isSeen ? new Map() : kept.units,
    (unit, rows, got) => runUnit({ season, runs, unit, rows, draws, bought, got, watch, ledger }),
  )
  if (!isSeen) kept.units = keep

  const cells = orders.length * (to - from)
  const byOrder = <A extends Int32Array | Uint8Array>(all: A, of: (unit: KnownUnit) => readonly A[]): A => {
    known.forEach((unit, u) => {
      units[u]!.orders.forEach((o, own) => {
        all.set(of(unit)[own]!.subarray(from - unit.from, to - unit.from), o * (to - from))
      })
    })
    return all
  }
  return {
    from,
    to,
    orders: orders.length,
    weeks,
    byDue: byOrder(new Int32Array(cells), of => of.byDue),
    weeksLate: byOrder(new Uint8Array(cells), of => of.weeksLate),
    late: byOrder(new Int32Array(cells), of => of.late),
    watched,
    promisable: promises,
  }
}

/** What the seasons take of places and hands: of those that the input names, one in `LOADS_EVERY`. */
export function simulateLoads(
  season: Season,
  starts: readonly SeasonStart[],
  { from, to, bought = [] }: SimulationInput,
  { luck, draws: kept }: Pick<SimulationKept, 'luck' | 'draws'>,
): SeasonLoads {
  const first = Math.ceil(from / LOADS_EVERY)
  const rows = { from: first * LOADS_EVERY, count: Math.ceil(to / LOADS_EVERY) - first, every: LOADS_EVERY }
  const runs = runsOf(season, starts)
  const draws = drawsOf(runs, luck, to, kept)
  const loads = noLoads(season, runs, rows.count)
  const got = new Map<Run, Int32Array>()
  for (const unit of unitsOf(season, runs)) runUnit({ season, runs, unit, rows, draws, bought, got, loads })
  const { places, skills, squareMetres, minutes } = loads
  return { weeks: season.weeks, places, skills, squareMetres, minutes }
}
