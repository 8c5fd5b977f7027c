import type { MotherId } from '../../trade/index.ts'
import type { MotherPool, Season } from '../season.ts'
import type { ChosenStart } from './planned.ts'

/** Wood or seed of one mother for one start, cut in a week (or from what is stored). */
export interface MotherShare {
  readonly start: number
  readonly pool: number
  readonly mother: MotherId
  readonly week: number
  readonly number: number
}

export interface LackingWood {
  readonly start: number
  readonly pool: number
  readonly week: number
  readonly number: number
}

export interface SharedMothers {
  readonly shares: readonly MotherShare[]
  /** What no mother may give, by start and pool. */
  readonly lacking: readonly LackingWood[]
}

/**
 * Shares out what each start takes to the mothers of the pool, the earliest first: those first that have most weeks' worth
 * left, so that all last equally long, and none beyond what it may give in the week and in the season. Wood is cut as late
 * as it can be. Whole sticks, cuttings and seeds.
 */
export function shareMothers(season: Season, starts: readonly ChosenStart[]): SharedMothers {
  const shares: MotherShare[] = []
  const lacking: LackingWood[] = []
  const left = season.pools.map(poolLedger)
  const inOrder = starts.map((of, start) => ({ ...of, start })).sort((a, b) => a.week - b.week)
  for (const { week, number, course, start } of inOrder) {
    for (const { pool, offset, perPlant } of course.material) {
      const useWeek = Math.max(0, week + offset)
      let wanted = Math.ceil(number * perPlant - 1e-6)
      wanted = Math.max(0, wanted - left[pool]!.takeStored(wanted, useWeek))
      const { keepsWeeks } = season.pools[pool]!
      for (let cut = useWeek; wanted > 0 && cut >= Math.max(0, useWeek - keepsWeeks); cut--)
        for (const { mother, taken } of left[pool]!.cut(wanted, cut)) {
          shares.push({ start, pool, mother, week: cut, number: taken })
          wanted -= taken
        }
      if (wanted > 0) lacking.push({ start, pool, week: useWeek, number: wanted })
    }
  }
  return { shares, lacking }
}

function poolLedger(pool: MotherPool) {
  const stored = pool.stored.map(({ number, untilWeek }) => ({ untilWeek, left: number }))
  const mothers = pool.mothers.map(mother => ({
    id: mother.id,
    week: mother.perWeek.slice(),
    seasons: [...mother.perYear],
    mostInWeek: Math.max(0, ...mother.perWeek),
    mostInSeason: mother.perYear,
  }))
  return {
    takeStored(wanted: number, week: number): number {
      let taken = 0
      for (const lot of stored) {
        if (lot.untilWeek < week) continue
        const now = Math.min(lot.left, wanted - taken)
        lot.left -= now
        taken += now
      }
      return taken
    },
    cut(wanted: number, week: number): { mother: MotherId; taken: number }[] {
      const s = pool.perYear.findIndex(({ fromWeek, toWeek }) => week >= fromWeek && week <= toWeek)
      const taken = sharesByReserve(
        wanted,
        mothers.map(mother => ({
          mayGive: Math.floor(Math.min(mother.week[week]!, mother.seasons[s] ?? 0) + 1e-6),
          perWeek: Math.min(mother.mostInWeek, mother.mostInSeason[s] ?? 0),
          left: mother.seasons[s] ?? 0,
        })),
      )
      const byMother = new Map<MotherId, number>()
      mothers.forEach((mother, m) => {
        if (taken[m]! <= 0) return
        mother.week[week]! -= taken[m]!
        mother.seasons[s]! -= taken[m]!
        byMother.set(mother.id, (byMother.get(mother.id) ?? 0) + taken[m]!)
      })
      return [...byMother].map(([mother, number]) => ({ mother, taken: number }))
    },
  }
}

/** What a mother may give now, at most in a week, and what is left of her season. */
export interface Reserve {
  readonly mayGive: number
  readonly perWeek: number
  readonly left: number
}

const HALVINGS = 60

/**
 * In whole numbers, none above what it may give; so that the weeks' worth left (`left / perWeek`) is level afterwards among
 * those that gave.
 * @example two of 20 a week, one with 20 left, one with 100: 30 come as 10 and 20, for the second lasts longer
 */
export function sharesByReserve(wanted: number, mothers: readonly Reserve[]): number[] {
  const aboveLevel = ({ mayGive, perWeek, left }: Reserve, level: number) =>
    Math.max(0, Math.min(mayGive, left - level * perWeek))
  const all = mothers.reduce((sum, { mayGive }) => sum + mayGive, 0)
  if (all <= wanted) return mothers.map(({ mayGive }) => mayGive)
  let low = 0
  let high = mothers.reduce(
    (most, { left, perWeek }) => (perWeek > 0 ? Math.max(most, left / perWeek) : most),
    0,
  )
  for (let halving = 0; halving < HALVINGS; halving++) {
    const level = (low + high) / 2
    if (mothers.reduce((sum, mother) => sum + aboveLevel(mother, level), 0) > wanted) low = level
    else high = level
  }
  const shares = mothers.map(mother => Math.floor(aboveLevel(mother, high) + 1e-9))
  let rest = wanted - shares.reduce((sum, share) => sum + share, 0)
  // What is lost to whole numbers, one by one from those that then have most left.
  while (rest > 0) {
    let most = -1
    let weeksLeft = Number.NEGATIVE_INFINITY
    mothers.forEach(({ mayGive, perWeek, left }, m) => {
      const after = (left - shares[m]!) / perWeek
      if (shares[m]! < mayGive && after > weeksLeft) {
        most = m
        weeksLeft = after
      }
    })
    shares[most]!++
    rest--
  }
  return shares
}
