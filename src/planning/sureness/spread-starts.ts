import type { Solution } from '../model/season-model.ts'
import { numberSet } from '../rules/set-by-hand.ts'
import type { Season } from '../season.ts'

/** Weeks to either side into which a start may be spread. */
const REACH_WEEKS = 10

/**
 * Bounds that spread each start over several weeks: no open week within reach of it takes more than a part of what it is
 * now, the part of its kind. Batches with luck of their own vary less together, so an order needs less margin;
 * whether that is worth the other weeks' cost shows when the margins are settled again.
 * @returns most that may be begun, by `way · weeks + week`; weeks out of reach of all are not named
 */
export function spreadStarts(
  season: Season,
  solution: Pick<Solution, 'starts'>,
  partOfKind: readonly number[],
): ReadonlyMap<number, number> {
  const { weeks, ways } = season
  const most = new Map<number, number>()
  for (const { way, week, number } of solution.starts) {
    const part = partOfKind[ways[way]!.kind]!
    if (part >= 1) continue
    for (
      let near = Math.max(0, week - REACH_WEEKS);
      near <= Math.min(weeks - 1, week + REACH_WEEKS);
      near++
    ) {
      const start = way * weeks + near
      // Where several starts reach, the largest says; what the nursery fixed itself is not spread.
      if (ways[way]!.open[near] && numberSet(season, { way, week: near }) === undefined)
        most.set(start, Math.max(part * number, most.get(start) ?? 0))
    }
  }
  return most
}
