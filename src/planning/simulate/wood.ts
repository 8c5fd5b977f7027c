import type { MotherPool, Season, SeasonStart } from '../season.ts'

/**
 * How many of each start there is wood, cuttings or seed for. Starts are served in order of week from what is stored
 * (what goes stale first, first) and from what the mothers may give in the weeks before, as long as it keeps, within
 * a year's most. Wood is cut for the number planned, so this is the same in every season.
 */
export function startsWithWood(season: Season, starts: readonly SeasonStart[]): SeasonStart[] {
  const copied = new Map<number, Wood>()
  const copyOf = (pool: number) => {
    const known = copied.get(pool)
    if (known) return known
    const copy = poolCopy(season.pools[pool]!)
    copied.set(pool, copy)
    return copy
  }
  const inOrder = starts.map((start, index) => ({ start, index })).sort((a, b) => a.start.week - b.start.week)
  const served: SeasonStart[] = [...starts]
  for (const { start, index } of inOrder) {
    const way = season.ways[start.way]!
    let number = start.number
    for (const { pool, offset, perPlant } of way.courses[way.courseOfWeek[start.week]!]!.material) {
      const got = takeWood(copyOf(pool), Math.max(0, start.week + offset), number * perPlant)
      // A hair of slack: plans are whole numbers, supplies may be fractions.
      number = Math.min(number, Math.floor(got / perPlant + 1e-6))
    }
    served[index] = { ...start, number }
  }
  return served
}

/** A mother planted now gives nothing in a season that begins before it has stood a year. */
const FIRST_YEAR = 52

/** What mothers still to be planted will give, in the seasons in which they can, is the plan's to count. */
const poolCopy = (pool: MotherPool): Wood => {
  const mayGrow = (fromWeek: number) => pool.young !== null && fromWeek >= FIRST_YEAR
  const perWeek = Float64Array.from(pool.perWeek)
  for (const { fromWeek, toWeek } of pool.perYear)
    if (mayGrow(fromWeek)) perWeek.fill(Number.POSITIVE_INFINITY, fromWeek, toWeek + 1)
  return {
    stored: pool.stored.map(lot => ({ ...lot })).sort((a, b) => a.untilWeek - b.untilWeek),
    perWeek,
    perYear: pool.perYear.map(({ fromWeek, toWeek, most }) => ({
      fromWeek,
      toWeek,
      most: mayGrow(fromWeek) ? Number.POSITIVE_INFINITY : most,
    })),
    keepsWeeks: pool.keepsWeeks,
  }
}

interface Wood {
  readonly stored: { number: number; readonly untilWeek: number }[]
  readonly perWeek: Float64Array
  readonly perYear: { readonly fromWeek: number; readonly toWeek: number; most: number }[]
  readonly keepsWeeks: number
}

function takeWood(wood: Wood, week: number, wanted: number): number {
  let got = 0
  for (const lot of wood.stored) {
    if (lot.untilWeek < week) continue
    const now = Math.min(lot.number, wanted - got)
    lot.number -= now
    got += now
  }
  for (let cut = Math.max(0, week - wood.keepsWeeks); cut <= week && got < wanted; cut++) {
    const year = wood.perYear.find(span => span.fromWeek <= cut && cut <= span.toWeek)
    const now = Math.min(wood.perWeek[cut] ?? 0, year?.most ?? Number.POSITIVE_INFINITY, wanted - got)
    if (!(now > 0)) continue
    wood.perWeek[cut]! -= now
    if (year) year.most -= now
    got += now
  }
  return got
}
