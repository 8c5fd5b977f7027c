import { buildSeasonModel } from '../model/build-season-model.ts'
import type { Margins, SeasonModel, SeasonSolver, Solution } from '../model/season-model.ts'
import { openSolver } from '../model/solve.ts'
import { usefulStarts } from '../model/useful-starts.ts'
import type { Season, SeasonStart } from '../season.ts'
import { proveWhole } from './prove.ts'

export interface WholeInput {
  readonly season: Season
  readonly margins: Margins
  /** The solved relaxation: its starts are rounded, its cost is the bound. */
  readonly relaxed: Solution
  /** Seconds to spend on proving and bettering the rounded plan; 0 for none. */
  readonly proveSeconds: number
  /** Most that may be begun, `way · weeks + week`, where starts are spread over weeks; up to whole trays of it. */
  readonly most?: ReadonlyMap<number, number>
  readonly isStopped?: () => boolean
}

export interface WholePlan {
  readonly model: SeasonModel
  readonly solution: Solution
  readonly cost: number
  /** No plan in whole trays costs less than this. */
  readonly bound: number
  /** (cost − bound) ÷ cost. */
  readonly gapShare: number
}

/** Batches under this part of the largest of their kind are dropped, if the plan then costs hardly more. */
const SMALL_BESIDE_LARGEST = [0.5, 0.2, 0]
/** So much dearer a plan may be for fewer batches: one part in 500. Our choice: each has its label, card and counts. */
const NEXT_TO_NOTHING = 0.002
/** So many starts can all be looked at. */
const FEW_STARTS = 150
/** Rounds of fixing before all that is left is rounded up. */
const ROUNDS = 8
/** A part of a tray over this goes up, under that goes down, in between waits for the next round. */
const UP = 0.6
const DOWN = 0.15
const NEARLY = 0.01

/**
 * From the relaxation to whole trays and sensible batches. Which batches are begun at all is read off the relaxation
 * (dribbles under half a smallest batch are dropped and their neighbours take over), then trays are fixed in rounds,
 * each solved again from the last basis. A small mixed-integer search may better it; it is never begun without a plan.
 */
export async function wholeTrays(input: WholeInput): Promise<WholePlan> {
  const { season, margins, relaxed, isStopped } = input
  const model = buildSeasonModel(
    season,
    margins,
    besideStarts(season, [...relaxed.starts, ...standing(season)]),
  )
  boundStarts(model, input.most)
  const solver = await openSolver(model)
  try {
    const begun = fixBegun(model, solver, solver.solve(isStopped))
    const rounded = fixTrays(model, solver, solver.solve(isStopped), begun)
    const better = await proveWhole(model, solver.addedRows(), rounded, input)
    const solution = better ?? rounded
    const cost = solution.objective
    const bound = Math.min(cost, relaxed.objective)
    return { model, solution, cost, bound, gapShare: cost > 0 ? (cost - bound) / cost : 0 }
  } finally {
    solver.dispose()
  }
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

/** Starts that people have seen or accepted. */
const standing = (season: Season): readonly SeasonStart[] => [...season.accepted, ...(season.shown ?? [])]

/** These starts and the weeks beside them, as far as they are of use; of a small season, all starts of use. */
export function besideStarts(season: Season, starts: readonly SeasonStart[]): Set<number> {
  const { useful } = usefulStarts(season)
  const all = new Set<number>()
  useful.forEach((isUseful, start) => {
    if (isUseful) all.add(start)
  })
  if (all.size <= FEW_STARTS) return all
  const chosen = new Set<number>()
  for (const { way, week } of starts)
    for (const beside of [week - 1, week, week + 1])
      if (beside >= 0 && beside < season.weeks && all.has(way * season.weeks + beside))
        chosen.add(way * season.weeks + beside)
  return chosen
}

/**
 * Yes or no for each batch. The relaxation spreads what could be one batch over several weeks for next to nothing, so
 * batches that are small beside the largest of their kind are dropped first, as long as that costs next to nothing.
 */
function fixBegun(model: SeasonModel, solver: SeasonSolver, free: Solution): Float64Array {
  for (const smallest of SMALL_BESIDE_LARGEST) {
    const begun = begunAtLeast(model, free, smallest)
    bindBegun(model, solver, begun)
    if (smallest === 0) return begun
    const { outcome, objective } = solver.solve()
    if (outcome === 'optimal' && objective <= free.objective * (1 + NEXT_TO_NOTHING)) return begun
  }
  throw new RangeError('fixBegun: the last of SMALL_BESIDE_LARGEST must be 0')
}

function bindBegun({ wholeStarts }: SeasonModel, solver: SeasonSolver, begun: Float64Array): void {
  const columns = Int32Array.from(wholeStarts, ({ begun: column }) => column)
  solver.setColumnBounds(columns, begun, begun)
}

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
  const stands = new Set(standing(season).map(({ way, week }) => way * season.weeks + week))
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

function fixTrays(model: SeasonModel, solver: SeasonSolver, first: Solution, begun: Float64Array): Solution {
  const { wholeStarts } = model
  const fixed = new Float64Array(wholeStarts.length).fill(-1)
  begun.forEach((isBegun, s) => {
    if (isBegun === 0) fixed[s] = 0
  })
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
