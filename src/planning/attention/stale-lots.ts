import type { Nursery } from '../../record/index.ts'
import { dayNumber } from '../../science/index.ts'
import type { Material, MaterialLotId, MotherId } from '../../trade/index.ts'

/** Wood or seed in hand that must be used within days, or is over its time. */
export interface StaleLot {
  readonly lot: MaterialLotId
  readonly mother: MotherId
  readonly material: Material
  readonly left: number
  readonly goodUntil: string
  /** Below 0: past. */
  readonly daysLeft: number
}

/** Warned of so many days before. Our choice. */
const WARNED_DAYS = 7

export const staleLots = (nursery: Nursery, today: string): readonly StaleLot[] =>
  [...nursery.lots.values()]
    .flatMap(({ id, mother, material, number, used, discarded, goodUntil }) => {
      const left = number - used - discarded
      if (goodUntil === null || left <= 0) return []
      const daysLeft = dayNumber(goodUntil) - dayNumber(today)
      return daysLeft > WARNED_DAYS ? [] : [{ lot: id, mother, material, left, goodUntil, daysLeft }]
    })
    .sort((a, b) => a.daysLeft - b.daysLeft)
