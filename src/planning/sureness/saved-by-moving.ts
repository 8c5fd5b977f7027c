import type { SeasonSolver, Solution } from '../model/season-model.ts'
import type { Season, SeasonStart } from '../season.ts'

/** Accepted starts that are begun with fewer than half of what was accepted. */
export function movedStarts({ accepted, weeks }: Season, starts: readonly SeasonStart[]): number {
  const numberOf = new Map(starts.map(({ way, week, number }) => [way * weeks + week, number]))
  return accepted.filter(({ way, week, number }) => (numberOf.get(way * weeks + week) ?? 0) < number / 2)
    .length
}

/** Starts in a week in which none was shown or accepted; of a first plan none is new. */
export function newStarts({ accepted, shown = [], weeks }: Season, starts: readonly SeasonStart[]): number {
  const known = new Set([...accepted, ...shown].map(({ way, week }) => way * weeks + week))
  return known.size === 0 ? 0 : starts.filter(({ way, week }) => !known.has(way * weeks + week)).length
}

/** What the relaxed plan would cost more if the accepted starts that are moved had to stay. */
export function savedByMoving(
  solver: SeasonSolver,
  relaxed: Solution,
  starts: readonly SeasonStart[],
): number {
  const { season, lessThanAccepted: columns } = solver.model
  if (movedStarts(season, starts) === 0) return 0
  const free = Float64Array.from(columns, () => Number.POSITIVE_INFINITY)
  const none = new Float64Array(columns.length)
  const indices = Int32Array.from(columns, ({ column }) => column)
  solver.setColumnBounds(indices, none, none)
  const fixed = solver.solve()
  solver.setColumnBounds(indices, none, free)
  const moving = columns.reduce(
    (sum, { column }) => sum + relaxed.columnValue[column]! * solver.model.columns.cost[column]!,
    0,
  )
  return fixed.outcome === 'optimal' ? Math.max(0, fixed.objective - (relaxed.objective - moving)) : 0
}
