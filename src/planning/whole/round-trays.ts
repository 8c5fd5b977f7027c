import { buildSeasonModel } from '../model/build-season-model.ts'
import { deliveredInTime } from '../model/delivered-in-time.ts'
import type { Margins, SeasonModel, SeasonSolver, Solution } from '../model/season-model.ts'
import { openSolver } from '../model/solve.ts'
import type { Season, SeasonStart } from '../season.ts'
import { besideStarts, standingStarts } from './beside-starts.ts'
import { joinedStarts } from './joined-starts.ts'
import { proveWhole } from './prove.ts'

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
  readonly isStopped?: (() => boolean) | undefined
}

/** Batches under this part of the largest of their kind are dropped, if the plan then costs hardly more. */
const SMALL_BESIDE_LARGEST = [0.5, 0.2]
/** So much dearer a plan may be for fewer batches: one part in 500. Our choice: each has its label, card and counts. */
const NEXT_TO_NOTHING = 0.002
/** Of a part, so many batches are tried without. */
const MOST_LEFT_OUT = 16
/** Solves in which small batches may give way. */
const JOINING_SOLVES = 3
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
    const stays = kept && batchesOf(model, kept)
    if (stays) solver.setColumnBounds(begunColumns(model), stays, new Float64Array(stays.length).fill(1))
    const free = joinedFirst(solver, isStopped)
    const first = stays ? begunBeside(model, solver, free, stays) : fixBegun(model, solver, free)
    const rounded = fixTrays(model, solver, first)
    const better = await proveWhole(model, solver.addedRows(), rounded, {
      proveSeconds,
      ...(isStopped && { isStopped }),
    })
    return { model, solution: better ?? rounded, free }
  } finally {
    solver.dispose()
  }
}

/**
 * The batches of a plan rounded before, in as many trays as orders now ask for: nothing else is begun. Null where an order
 * then lacks more than before or another kind is bought in, so that other batches must be weighed as well.
 */
export async function roundAgain(
  season: Season,
  { margins, most, isStopped }: Pick<RoundInput, 'margins' | 'most' | 'isStopped'>,
  last: Pick<Solution, 'starts' | 'bought'> & { readonly lacking: Float64Array },
): Promise<Rounding | null> {
  const model = buildSeasonModel(
    season,
    margins,
    new Set(last.starts.map(({ way, week }) => way * season.weeks + week)),
  )
  boundStarts(model, most)
  const solver = await openSolver(model)
  try {
    const begun = new Float64Array(model.wholeStarts.length).fill(1)
    bindBegun(model, solver, begun)
    const free = solver.solve(isStopped)
    if (free.outcome !== 'optimal' || buysOther(free, last)) return null
    if (lackingIn(margins, free).some((number, o) => number > last.lacking[o]! + UNSERVED)) return null
    return { model, solution: fixTrays(model, solver, { begun, solution: free }), free }
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

/** Before yes and no are said, a few solves in which small batches give way to large ones. */
function joinedFirst(solver: SeasonSolver, isStopped: (() => boolean) | undefined): Solution {
  const joined = joinedStarts(solver)
  let solution = joined.solve(isStopped)
  for (let solve = 1; solve < JOINING_SOLVES; solve++) solution = joined.solve(isStopped)
  joined.done()
  return solution
}

/** A yes (1) or no for each batch, and the solution with it. */
interface Begun {
  readonly begun: Float64Array
  readonly solution: Solution
}

/**
 * Yes or no for each batch. Batches that are small beside the largest of their kind are dropped as well, as long as the
 * plan then costs next to nothing more.
 */
function fixBegun(model: SeasonModel, solver: SeasonSolver, free: Solution): Begun {
  let begun = begunAtLeast(model, free, 0)
  bindBegun(model, solver, begun)
  let best = solver.solve()
  const most = best.objective * (1 + NEXT_TO_NOTHING)
  for (const smallest of SMALL_BESIDE_LARGEST) {
    const fewer = begunAtLeast(model, free, smallest)
    if (fewer.every((is, s) => is === begun[s])) continue
    bindBegun(model, solver, fewer)
    const solution = solver.solve()
    if (solution.outcome !== 'optimal' || solution.objective > most) continue
    begun = fewer
    best = solution
    break
  }
  bindBegun(model, solver, begun)
  return withoutDearBatches(model, solver, begun, best)
}

/**
 * The smallest batches are left out one by one, each where the plan is cheaper without it: its plants are then begun with
 * its neighbours, and its work and what a batch fewer is worth are saved.
 */
function withoutDearBatches(
  model: SeasonModel,
  solver: SeasonSolver,
  begun: Float64Array,
  withAll: Solution,
): Begun {
  const { season, wholeStarts } = model
  const fewer = Float64Array.from(begun)
  let best = withAll
  const stands = new Set(standingStarts(season).map(({ way, week }) => way * season.weeks + week))
  const sizeOf = (s: number) => best.columnValue[wholeStarts[s]!.column]!
  const smallest = wholeStarts
    .flatMap(({ way, week }, s) => (begun[s] === 1 && !stands.has(way * season.weeks + week) ? [s] : []))
    .sort((a, b) => sizeOf(a) - sizeOf(b))
    .slice(0, MOST_LEFT_OUT)
  for (const s of smallest) {
    const column = Int32Array.of(wholeStarts[s]!.begun)
    solver.setColumnBounds(column, Float64Array.of(0), Float64Array.of(0))
    const without = solver.solve()
    if (without.outcome === 'optimal' && without.objective < best.objective) {
      fewer[s] = 0
      best = without
    } else solver.setColumnBounds(column, Float64Array.of(1), Float64Array.of(1))
  }
  return { begun: fewer, solution: best }
}

/** The batches that stay, and those that must come to them. */
function begunBeside(model: SeasonModel, solver: SeasonSolver, free: Solution, stays: Float64Array): Begun {
  const begun = begunAtLeast(model, free, SMALL_BESIDE_LARGEST[0]!).map((is, s) => Math.max(is, stays[s]!))
  bindBegun(model, solver, begun)
  return { begun, solution: solver.solve() }
}

/** 1 for each start of the model that is one of these. */
function batchesOf({ season, wholeStarts }: SeasonModel, starts: readonly SeasonStart[]): Float64Array {
  const names = new Set(starts.map(({ way, week }) => way * season.weeks + week))
  return Float64Array.from(wholeStarts, ({ way, week }) => (names.has(way * season.weeks + week) ? 1 : 0))
}

const begunColumns = ({ wholeStarts }: SeasonModel) => Int32Array.from(wholeStarts, ({ begun }) => begun)

const bindBegun = (model: SeasonModel, solver: SeasonSolver, begun: Float64Array) =>
  solver.setColumnBounds(begunColumns(model), begun, begun)

/** Every kind that the relaxation makes keeps at least its largest batch. */
function begunAtLeast(model: SeasonModel, { columnValue }: Solution, smallest: number): Float64Array {
  const { season, wholeStarts } = model
  const largest = new Map<number, number>()
  wholeStarts.forEach(({ way, column }, s) => {
    const { kind } = season.ways[way]!
    const best = largest.get(kind)
    if (best === undefined || columnValue[column]! > columnValue[wholeStarts[best]!.column]!)
      largest.set(kind, s)
  })
  const stands = new Set(standingStarts(season).map(({ way, week }) => way * season.weeks + week))
  return Float64Array.from(wholeStarts, ({ way, week, column }, s) => {
    const number = columnValue[column]!
    const { kind, smallestBatch } = season.ways[way]!
    const best = largest.get(kind)!
    if (number < 0.5) return 0
    if (best === s || stands.has(way * season.weeks + week)) return 1
    const least = Math.max(smallestBatch / 2, smallest * columnValue[wholeStarts[best]!.column]!)
    return number >= least ? 1 : 0
  })
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
