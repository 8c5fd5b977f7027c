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

/**
 * Shares out what each start takes to the mothers of the pool: evenly, but none beyond what it may give in the week
 * and in the season. Wood is cut as late as it can be. Whole sticks, cuttings and seeds.
 */
export function shareMothers(season: Season, starts: readonly ChosenStart[]): MotherShare[] {
  const shares: MotherShare[] = []
  const left = season.pools.map(poolLedger)
  starts.forEach(({ week, number, course }, start) => {
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
    }
  })
  return shares
}

function poolLedger(pool: MotherPool) {
  const stored = pool.stored.map(({ number, untilWeek }) => ({ untilWeek, left: number }))
  const mothers = pool.mothers.map(mother => ({
    id: mother.id,
    week: mother.perWeek.slice(),
    seasons: [...mother.perYear],
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
      const mayGive = mothers.map(mother =>
        Math.floor(Math.min(mother.week[week]!, mother.seasons[s] ?? 0) + 1e-6),
      )
      const taken = evenShares(wanted, mayGive)
      return mothers.flatMap((mother, m) => {
        if (taken[m]! <= 0) return []
        mother.week[week]! -= taken[m]!
        mother.seasons[s]! -= taken[m]!
        return [{ mother: mother.id, taken: taken[m]! }]
      })
    },
  }
}

/**
 * As even as can be in whole numbers, none above its bound.
 * @example evenShares(10, [2, 9, 9]) // [2, 4, 4]
 */
export function evenShares(wanted: number, bounds: readonly number[]): number[] {
  const shares = bounds.map(() => 0)
  const rising = bounds.map((_, i) => i).sort((a, b) => bounds[a]! - bounds[b]!)
  let left = wanted
  rising.forEach((index, position) => {
    // Who may still give more gives the odd one.
    const even = Math.floor(left / (rising.length - position))
    shares[index] = Math.min(bounds[index]!, even, left)
    left -= shares[index]!
  })
  return shares
}
