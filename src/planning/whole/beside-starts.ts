import { usefulStarts } from '../model/useful-starts.ts'
import type { Season, SeasonStart } from '../season.ts'

/** So many starts can all be looked at. */
const FEW_STARTS = 150

/** Starts that people have fixed, accepted or seen. */
export const standingStarts = (season: Season): readonly SeasonStart[] => [
  ...(season.set ?? []),
  ...season.accepted,
  ...(season.shown ?? []),
]

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
