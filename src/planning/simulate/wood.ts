import type { Planted, Season, SeasonStart } from '../season.ts'

/**
 * How many of each start there is wood, cuttings or seed for. Starts are served in order of week from what is stored
 * (what goes stale first, first) and from what the mothers may give in the weeks before, as long as it keeps, within
 * a year's most. Wood is cut for the number planned, so this is the same in every season. Young mothers that the plan
 * plants add what they give at their age.
 */
export function startsWithWood(season: Season, starts: readonly SeasonStart[]): SeasonStart[] {
  const copied = new Map<number, Wood>()
  const copyOf = (pool: number) => {
    const known = copied.get(pool)
    if (known) return known
    const copy = poolCopy(season, pool)
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

/** The season with the young mothers that a plan plants; one that plants none counts on none. */
export const withPlanted = (season: Season, planted: readonly Planted[]): Season =>
  planted.length > 0 ? { ...season, planted } : season

/** A mother planted now gives nothing in a season that begins before it has stood a year. */
const FIRST_YEAR = 52

function poolCopy(season: Season, p: number): Wood {
  const pool = season.pools[p]!
  const perWeek = Float64Array.from(pool.perWeek)
  const perYear = pool.perYear.map(({ fromWeek, toWeek, most }) => {
    const more = fromYoung(season, p, fromWeek)
    // The young ones give in the same weeks as those that stand, and in the same proportion.
    for (let week = fromWeek; week <= Math.min(toWeek, perWeek.length - 1) && more > 0; week++)
      if (perWeek[week]! > 0)
        perWeek[week]! += more * (most > 0 && Number.isFinite(most) ? perWeek[week]! / most : 1)
    return { fromWeek, toWeek, most: most + more }
  })
  return {
    stored: pool.stored.map(lot => ({ ...lot })).sort((a, b) => a.untilWeek - b.untilWeek),
    perWeek,
    perYear,
    keepsWeeks: pool.keepsWeeks,
  }
}

/** What young mothers give in a season of giving; until it is known how many are planted, as much as is wanted. */
function fromYoung({ pools, planted }: Season, p: number, fromWeek: number): number {
  const { young } = pools[p]!
  if (young === null || fromWeek < FIRST_YEAR) return 0
  if (planted === undefined) return Number.POSITIVE_INFINITY
  let more = 0
  for (const { pool, week, number } of planted) {
    const years = Math.floor((fromWeek - week) / FIRST_YEAR)
    if (pool === p && years >= 0)
      more += number * young.perSeasonByAge[Math.min(years, young.perSeasonByAge.length - 1)]!
  }
  return more
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
