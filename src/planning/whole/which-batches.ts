import type { SeasonModel, SeasonSolver, Solution } from '../model/season-model.ts'
import type { SeasonStart } from '../season.ts'
import { standingStarts } from './beside-starts.ts'
import { joinedStarts } from './joined-starts.ts'

/** Batches under this part of the largest of their kind are dropped, if the plan then costs hardly more. */
const SMALL_BESIDE_LARGEST = [0.5, 0.2]
/** So much dearer a plan may be for fewer batches: one part in 500. Our choice: each has its label, card and counts. */
const NEXT_TO_NOTHING = 0.002
/** Of a part, so many batches are tried without. */
const MOST_LEFT_OUT = 16

/** A yes (1) or no for each batch, and the solution with it. */
export interface Begun {
  readonly begun: Float64Array
  readonly solution: Solution
  /** Before yes and no were said: what a limit of the nursery keeps from an order shows here. */
  readonly free: Solution
}

/**
 * Which batches are begun at all, read off the relaxation, in which small ones give way to large.
 * @param kept batches of a plan rounded before, which stay; others come to them only where they are needed
 */
export function whichBatches(
  model: SeasonModel,
  solver: SeasonSolver,
  kept: readonly SeasonStart[] | undefined,
): Begun {
  const stays = batchesOf(model, kept ?? [])
  if (kept) solver.setColumnBounds(begunColumns(model), stays, new Float64Array(stays.length).fill(1))
  // Before yes and no are said, small batches give way to large ones.
  const joined = joinedStarts(solver)
  const free = joined.settle()
  joined.done()
  return { free, ...fixBegun(model, solver, free, stays) }
}

/** Each batch of the model is begun. */
export function allBatches(model: SeasonModel, solver: SeasonSolver): Begun {
  const begun = new Float64Array(model.wholeStarts.length).fill(1)
  bindBegun(model, solver, begun)
  const free = solver.solve()
  return { begun, solution: free, free }
}

type Said = Omit<Begun, 'free'>

/**
 * Yes or no for each batch; some stay. Batches that are small beside the largest of their kind are dropped as well, as
 * long as the plan then costs next to nothing more.
 */
function fixBegun(model: SeasonModel, solver: SeasonSolver, free: Solution, stays: Float64Array): Said {
  let begun = begunAtLeast(model, free, stays, 0)
  bindBegun(model, solver, begun)
  let best = solver.solve()
  const most = best.objective * (1 + NEXT_TO_NOTHING)
  for (const smallest of SMALL_BESIDE_LARGEST) {
    const fewer = begunAtLeast(model, free, stays, smallest)
    if (fewer.every((is, s) => is === begun[s])) continue
    bindBegun(model, solver, fewer)
    const solution = solver.solve()
    if (solution.outcome !== 'optimal' || solution.objective > most) continue
    begun = fewer
    best = solution
    break
  }
  bindBegun(model, solver, begun)
  return withoutDearBatches(model, solver, { begun, solution: best }, stays)
}

/**
 * The smallest batches are left out one by one, each where the plan is cheaper without it: its plants are then begun with
 * its neighbours, and its work and what a batch fewer is worth are saved.
 */
function withoutDearBatches(
  model: SeasonModel,
  solver: SeasonSolver,
  { begun, solution }: Said,
  stays: Float64Array,
): Said {
  const { wholeStarts } = model
  const fewer = Float64Array.from(begun)
  let best = solution
  const stands = batchesOf(model, standingStarts(model.season))
  const sizeOf = (s: number) => best.columnValue[wholeStarts[s]!.column]!
  const smallest = wholeStarts
    .flatMap((_, s) => (begun[s]! > Math.max(stays[s]!, stands[s]!) ? [s] : []))
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

/** 1 for each start of the model that is one of these. */
function batchesOf({ season, wholeStarts }: SeasonModel, starts: readonly SeasonStart[]): Float64Array {
  const names = new Set(starts.map(({ way, week }) => way * season.weeks + week))
  return Float64Array.from(wholeStarts, ({ way, week }) => (names.has(way * season.weeks + week) ? 1 : 0))
}

const begunColumns = ({ wholeStarts }: SeasonModel) => Int32Array.from(wholeStarts, ({ begun }) => begun)

const bindBegun = (model: SeasonModel, solver: SeasonSolver, begun: Float64Array) =>
  solver.setColumnBounds(begunColumns(model), begun, begun)

/** What stays, and what is large enough; every kind that the relaxation makes keeps at least its largest batch. */
function begunAtLeast(
  model: SeasonModel,
  { columnValue }: Solution,
  stays: Float64Array,
  smallest: number,
): Float64Array {
  const { season, wholeStarts } = model
  const largest = new Map<number, number>()
  wholeStarts.forEach(({ way, column }, s) => {
    const { kind } = season.ways[way]!
    const best = largest.get(kind)
    if (best === undefined || columnValue[column]! > columnValue[wholeStarts[best]!.column]!)
      largest.set(kind, s)
  })
  const stands = batchesOf(model, standingStarts(season))
  return Float64Array.from(wholeStarts, ({ way, column }, s) => {
    if (stays[s] === 1) return 1
    const number = columnValue[column]!
    const { kind, smallestBatch } = season.ways[way]!
    const best = largest.get(kind)!
    if (number < 0.5) return 0
    if (best === s || stands[s] === 1) return 1
    const least = Math.max(smallestBatch / 2, smallest * columnValue[wholeStarts[best]!.column]!)
    return number >= least ? 1 : 0
  })
}
