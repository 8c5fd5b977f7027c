import { buildSeasonModel } from '../model/build-season-model.ts'
import type { Margins, SeasonModel, SeasonSolver, Solution } from '../model/season-model.ts'
import { openSolver } from '../model/solve.ts'
import { usefulStarts } from '../model/useful-starts.ts'
import type { Season, SeasonStart } from '../season.ts'
import { partOfKinds } from '../simulate/components.ts'
import { joinedStarts } from './joined-starts.ts'
import { proveWhole } from './prove.ts'

export interface WholePlan {
  readonly model: SeasonModel
  readonly solution: Solution
  readonly cost: number
  /** No plan in whole trays costs less than this. */
  readonly bound: number
  /** (cost − bound) ÷ cost. */
  readonly gapShare: number
}

/** A season in whole trays, held open while margins move. */
export interface WholeTrays {
  round(input: RoundInput): Promise<WholePlan>
  dispose(): void
}

export interface RoundInput {
  readonly margins: Margins
  /** The solved relaxation: its starts are rounded, its cost is the bound. */
  readonly relaxed: Solution
  /** Kinds rounded anew; the others keep the trays of the last round. All in the first. */
  readonly isAnew?: (kind: number) => boolean
  /** Seconds to spend on proving and bettering the rounded plan; 0 for none. */
  readonly proveSeconds: number
  readonly isStopped?: () => boolean
}

/** Batches under this part of the largest of their kind are dropped, if the plan then costs hardly more. */
const SMALL_BESIDE_LARGEST = [0.5, 0.2]
/** So much dearer a plan may be for fewer batches: one part in 500. Our choice: each has its label, card and counts. */
const NEXT_TO_NOTHING = 0.002
/** Solves in which small batches may give way. */
const JOINING_SOLVES = 3
/** So many starts can all be looked at. */
const FEW_STARTS = 150
/** Rounds of fixing before all that is left is rounded up. */
const ROUNDS = 8
/** A part of a tray over this goes up, under that goes down, in between waits for the next round. */
const UP = 0.6
const DOWN = 0.15
const NEARLY = 0.01
/** So few plants of the relaxation need no column of their own: they are dropped in rounding. */
const WORTH_A_COLUMN = 0.5

/**
 * From the relaxation to whole trays and sensible batches. Which batches are begun at all is read off the relaxation
 * (dribbles under half a smallest batch are dropped and their neighbours take over), then trays are fixed in rounds,
 * each solved again from the last basis. A small mixed-integer search may better it; it is never begun without a plan.
 * @param most most that may be begun, `way · weeks + week`, where starts are spread over weeks; up to whole trays of it
 */
export function wholeTrays(season: Season, most?: ReadonlyMap<number, number>): WholeTrays {
  let opened: { readonly model: SeasonModel; readonly solver: SeasonSolver } | null = null
  let last: Pick<Solution, 'starts' | 'bought'> = { starts: [], bought: [] }

  /** The model holds the starts of the relaxation, what stands, and the weeks beside them; it is made again where one lacks. */
  const open = async (margins: Margins, { starts }: Solution) => {
    const has = ({ way, week, number }: SeasonStart) =>
      number < WORTH_A_COLUMN || opened!.model.startColumn[way * season.weeks + week]! >= 0
    if (opened && starts.every(has)) {
      opened.solver.withMargins(margins)
      return opened
    }
    opened?.solver.dispose()
    const seen = [...starts, ...last.starts, ...standing(season)]
    const model = buildSeasonModel(season, margins, besideStarts(season, seen))
    boundStarts(model, most)
    opened = { model, solver: await openSolver(model) }
    return opened
  }

  return {
    async round({ margins, relaxed, isAnew = () => true, proveSeconds, isStopped }) {
      const { model, solver } = await open(margins, relaxed)
      const stands = standingTrays(model, last, isAnew)
      bindStanding(model, solver, stands, last.bought, isAnew)
      const begun = fixBegun(model, solver, joinedFirst(solver, isStopped), stands)
      const rounded = fixTrays(model, solver, solver.solve(isStopped), begun, stands)
      const better = await proveWhole(model, solver.addedRows(), rounded, {
        proveSeconds,
        ...(isStopped && { isStopped }),
      })
      const solution = better ?? rounded
      last = solution
      return { model, solution, ...costAndGap(model, solution, relaxed) }
    },
    dispose: () => opened?.solver.dispose(),
  }
}

/** What a plan costs, without what was only weighed, and how far it may be from the cheapest. */
export function costAndGap(
  { season, wholeStarts }: SeasonModel,
  { objective, columnValue }: Solution,
  relaxed: Solution,
): Pick<WholePlan, 'cost' | 'bound' | 'gapShare'> {
  const batches = wholeStarts.reduce((sum, { begun }) => sum + columnValue[begun]!, 0)
  const cost = objective - batches * (season.prices.batch ?? 0)
  const bound = Math.min(cost, relaxed.objective)
  return { cost, bound, gapShare: cost > 0 ? (cost - bound) / cost : 0 }
}

/** By start of the model, the trays that it keeps; −1 where it is rounded anew. */
function standingTrays(
  { season, wholeStarts }: SeasonModel,
  last: Pick<Solution, 'starts'>,
  isAnew: (kind: number) => boolean,
): Float64Array {
  const numberOf = new Map(last.starts.map(({ way, week, number }) => [way * season.weeks + week, number]))
  return Float64Array.from(wholeStarts, ({ way, week }) => {
    const { kind, tray } = season.ways[way]!
    return isAnew(kind) ? -1 : (numberOf.get(way * season.weeks + week) ?? 0) / tray
  })
}

function bindStanding(
  { season, wholeStarts, bought }: SeasonModel,
  solver: SeasonSolver,
  stands: Float64Array,
  last: Solution['bought'],
  isAnew: (kind: number) => boolean,
): void {
  const bind = (columns: readonly number[], lower: Float64Array, upper: Float64Array) =>
    solver.setColumnBounds(Int32Array.from(columns), lower, upper)
  const free = Number.POSITIVE_INFINITY
  bind(
    wholeStarts.map(({ trays }) => trays),
    stands.map(trays => Math.max(0, trays)),
    stands.map(trays => (trays < 0 ? free : trays)),
  )
  bind(
    wholeStarts.map(({ begun }) => begun),
    stands.map(trays => (trays > 0 ? 1 : 0)),
    stands.map(trays => (trays === 0 ? 0 : 1)),
  )
  const numberOf = new Map(last.map(({ kind, week, number }) => [kind * season.weeks + week, number]))
  const comes = bought.map(({ kind, week }) => numberOf.get(kind * season.weeks + week) ?? 0)
  bind(
    bought.map(({ column }) => column),
    Float64Array.from(bought, ({ kind }, b) => (isAnew(kind) ? 0 : comes[b]!)),
    Float64Array.from(bought, ({ kind }, b) =>
      isAnew(kind) ? (season.kinds[kind]!.buyIn?.mostPerWeek ?? free) : comes[b]!,
    ),
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

/** Before yes and no are said, a few solves in which small batches give way to large ones. */
function joinedFirst(solver: SeasonSolver, isStopped: (() => boolean) | undefined): Solution {
  const joined = joinedStarts(solver)
  let solution = joined.solve(isStopped)
  for (let solve = 1; solve < JOINING_SOLVES; solve++) solution = joined.solve(isStopped)
  joined.atTrueCosts(isStopped)
  return solution
}

/**
 * Yes or no for each batch. In each part of the season, batches that are small beside the largest of their kind are dropped
 * as well, as long as that part then costs next to nothing more.
 */
function fixBegun(
  model: SeasonModel,
  solver: SeasonSolver,
  free: Solution,
  stands: Float64Array,
): Float64Array {
  const parts = partOfKinds(model.season)
  const partOf = model.wholeStarts.map(({ way }) => parts[model.season.ways[way]!.kind]!)
  const begunAt = (smallest: number) =>
    begunAtLeast(model, free, smallest).map((is, s) => (stands[s]! < 0 ? is : Number(stands[s]! > 0)))
  const all = begunAt(0)
  bindBegun(model, solver, all)
  const before = costOfParts(model, solver.solve(), parts)
  let begun = all
  const isDropped = new Uint8Array(before.length)
  for (const smallest of SMALL_BESIDE_LARGEST) {
    const fewer = begunAt(smallest)
    const tried = begun.map((is, s) => (isDropped[partOf[s]!] ? is : fewer[s]!))
    if (tried.every((is, s) => is === begun[s])) continue
    bindBegun(model, solver, tried)
    const solution = solver.solve()
    if (solution.outcome !== 'optimal') continue
    costOfParts(model, solution, parts).forEach((cost, part) => {
      if (cost <= before[part]! * (1 + NEXT_TO_NOTHING)) isDropped[part] = 1
    })
    begun = begun.map((is, s) => (isDropped[partOf[s]!] ? tried[s]! : is))
  }
  bindBegun(model, solver, begun)
  return begun
}

/** What each part of a season costs, area and hours beyond what there is left aside. */
function costOfParts(model: SeasonModel, { columnValue }: Solution, parts: Int32Array): Float64Array {
  const { season, columns } = model
  const costs = new Float64Array(Math.max(0, ...parts) + 1)
  const add = (kind: number, column: number) => {
    costs[parts[kind]!]! += columns.cost[column]! * columnValue[column]!
  }
  for (const { way, column, begun } of model.wholeStarts) {
    add(season.ways[way]!.kind, column)
    add(season.ways[way]!.kind, begun)
  }
  for (const list of [model.deliveries, model.holds, model.bought])
    for (const { kind, column } of list) add(kind, column)
  season.orders.forEach(({ kinds }, o) => {
    add(kinds[0]!.kind, model.shortColumn[o]!)
  })
  return costs
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

function fixTrays(
  model: SeasonModel,
  solver: SeasonSolver,
  first: Solution,
  begun: Float64Array,
  stands: Float64Array,
): Solution {
  const { wholeStarts } = model
  const fixed = Float64Array.from(stands)
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
