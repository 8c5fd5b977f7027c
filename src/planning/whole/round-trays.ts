import { buildSeasonModel } from '../model/build-season-model.ts'
import { deliveredInTime } from '../model/delivered-in-time.ts'
import type { Margins, SeasonModel, SeasonSolver, Solution } from '../model/season-model.ts'
import { openSolver } from '../model/solve.ts'
import type { Season, SeasonStart } from '../season.ts'
import { besideStarts, standingStarts } from './beside-starts.ts'
import { proveWhole } from './prove.ts'
import { allBatches, type Begun, whichBatches } from './which-batches.ts'

export interface RoundInput {
  readonly margins: Margins
  /** Of the relaxation, and of the last plan: these and the weeks beside them are weighed. */
  readonly seen: readonly SeasonStart[]
  /** Batches of a plan rounded before, which stay; others may come to them. None unless told. */
  readonly kept?: readonly SeasonStart[] | undefined
  /** Most that may be begun, `way · weeks + week`, where starts are spread over weeks; up to whole trays of it. */
  readonly most?: ReadonlyMap<number, number> | undefined
  /** Seconds to spend on proving and bettering the rounded plan; 0 for none. */
  readonly proveSeconds: number
  /** Ends the bettering: the plan is rounded by then. */
  readonly isStopped?: (() => boolean) | undefined
}

/** Rounds of fixing before all that is left is rounded up. */
const ROUNDS = 8
/** A part of a tray over this goes up, under that goes down, in between waits for the next round. */
const UP = 0.6
const DOWN = 0.15
const NEARLY = 0.01
/** Less than this is none. */
const UNSERVED = 0.5

export interface Rounding {
  readonly model: SeasonModel
  readonly solution: Solution
  /** Before trays are whole: what a limit of the nursery keeps from an order shows here; rounding down is no limit. */
  readonly free: Solution
}

/**
 * From the relaxation to whole trays and sensible batches. Which batches are begun at all is read off the relaxation
 * (dribbles under half a smallest batch are dropped and their neighbours take over), then trays are fixed in rounds,
 * each solved again from the last basis. A small mixed-integer search may better it; it is never begun without a plan.
 */
export async function roundTrays(
  season: Season,
  { margins, seen, kept, most, proveSeconds, isStopped }: RoundInput,
): Promise<Rounding> {
  const weighed = besideStarts(season, [...seen, ...(kept ?? []), ...standingStarts(season)])
  const model = buildSeasonModel(season, margins, weighed)
  boundStarts(model, most)
  const solver = await openSolver(model)
  try {
    const begun = whichBatches(model, solver, kept)
    const rounded = fixTrays(model, solver, begun)
    const better = await proveWhole(model, solver.addedRows(), rounded, {
      proveSeconds,
      ...(isStopped && { isStopped }),
    })
    return { model, solution: better ?? rounded, free: begun.free }
  } finally {
    solver.dispose()
  }
}

/**
 * The batches of a plan rounded before, of kinds that are planned otherwise now in as many trays as orders ask for: nothing else
 * is begun, and all others keep their trays. Null where an order of these kinds then lacks more than before or another kind is
 * bought in, so that other batches must be weighed as well.
 */
export async function roundAgain(
  season: Season,
  { margins, most }: Pick<RoundInput, 'margins' | 'most'>,
  last: Pick<Solution, 'starts' | 'bought'> & { readonly lacking: Float64Array },
  isOtherwise: (kind: number) => boolean,
): Promise<Rounding | null> {
  const model = buildSeasonModel(
    season,
    margins,
    new Set(last.starts.map(({ way, week }) => way * season.weeks + week)),
  )
  boundStarts(model, most)
  const solver = await openSolver(model)
  try {
    const stay = last.starts.filter(({ way }) => !isOtherwise(season.ways[way]!.kind))
    keepNumbers(model, solver, stay)
    const begun = allBatches(model, solver)
    const { free } = begun
    if (free.outcome !== 'optimal' || buysOther(free, last)) return null
    const lacksMore = lackingIn(margins, free).some(
      (number, o) => isOtherwise(season.orders[o]!.kinds[0]!.kind) && number > last.lacking[o]! + UNSERVED,
    )
    if (lacksMore) return null
    return { model, solution: fixTrays(model, solver, begun), free }
  } finally {
    solver.dispose()
  }
}

/** By order, what is planned for it and does not come in time. */
export const lackingIn = (margins: Margins, solution: Solution): Float64Array =>
  deliveredInTime(margins, solution).map((number, o) => margins.plannedNumber[o]! - number)

const buysOther = ({ bought }: Solution, last: Pick<Solution, 'bought'>): boolean => {
  const before = new Set(last.bought.map(({ kind }) => kind))
  return bought.some(({ kind, number }) => number > UNSERVED && !before.has(kind))
}

function keepNumbers(
  { season, startColumn }: SeasonModel,
  solver: SeasonSolver,
  starts: readonly SeasonStart[],
): void {
  const numbers = Float64Array.from(starts, ({ number }) => Math.round(number))
  solver.setColumnBounds(
    Int32Array.from(starts, ({ way, week }) => startColumn[way * season.weeks + week]!),
    numbers,
    numbers,
  )
}

/** Where starts are spread over weeks, each keeps to its part, in whole trays and sensible batches. */
function boundStarts(model: SeasonModel, most: ReadonlyMap<number, number> | undefined): void {
  const { season, columns } = model
  for (const { way, week, column } of model.wholeStarts) {
    const bound = most?.get(way * season.weeks + week)
    if (bound === undefined) continue
    const { tray, smallestBatch } = season.ways[way]!
    const trays = Math.ceil(Math.max(bound, smallestBatch) / tray)
    columns.upper[column] = Math.min(columns.upper[column]!, trays * tray)
  }
}

function fixTrays(model: SeasonModel, solver: SeasonSolver, { begun, solution: first }: Begun): Solution {
  const { wholeStarts } = model
  const fixed = begun.map(isBegun => (isBegun === 0 ? 0 : -1))
  let solution = first
  for (let round = 1; round <= ROUNDS; round++) {
    const up: number[] = []
    const changed: number[] = []
    wholeStarts.forEach(({ trays }, s) => {
      if (fixed[s]! >= 0) return
      const value = solution.columnValue[trays]!
      const part = value - Math.floor(value)
      if (part < NEARLY || part > 1 - NEARLY) fixed[s] = Math.round(value)
      else if (round === ROUNDS || part >= UP) {
        fixed[s] = Math.ceil(value)
        up.push(s)
      } else if (part <= DOWN && value >= 1) fixed[s] = Math.floor(value)
      else return
      changed.push(s)
    })
    if (changed.length === 0 && round < ROUNDS) continue
    const bound = (starts: readonly number[]) =>
      solver.setColumnBounds(
        Int32Array.from(starts, s => wholeStarts[s]!.trays),
        Float64Array.from(starts, s => fixed[s]!),
        Float64Array.from(starts, s => fixed[s]!),
      )
    bound(changed)
    let next = solver.solve()
    if (next.outcome === 'contradiction') {
      // No room for another tray: these go down instead, and are not begun where that leaves too few.
      for (const s of up) {
        const start = wholeStarts[s]!
        const { smallestBatch, tray } = model.season.ways[start.way]!
        const fewer = fixed[s]! - 1
        fixed[s] = fewer * tray >= Math.max(smallestBatch, tray) ? fewer : 0
        if (fixed[s] === 0)
          solver.setColumnBounds(Int32Array.of(start.begun), Float64Array.of(0), Float64Array.of(0))
      }
      bound(up)
      next = solver.solve()
    }
    if (next.outcome !== 'optimal') break
    solution = next
    if (fixed.every(trays => trays >= 0)) break
  }
  return solution
}
