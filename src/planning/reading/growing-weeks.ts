import type { Nursery } from '../../record/index.ts'
import { dateOf } from '../../science/index.ts'
import type { Weeks } from './weeks.ts'

/**
 * Months without heat enough for stems to thicken, where winters are cold. Common practice, no source: growth follows
 * degree-days, and the nursery's own temperatures are not known.
 */
const STILL_NORTH = [11, 12, 1, 2]
const STILL_SOUTH = [5, 6, 7, 8]
/** Nearer to the equator than this stems are taken to thicken all the year. */
const COLD_FROM_DEGREES = 30

const stillMonths = ({ site }: Pick<Nursery, 'site'>): readonly number[] => {
  const latitude = site?.latitudeDegrees ?? 0
  if (Math.abs(latitude) < COLD_FROM_DEGREES) return []
  return latitude < 0 ? STILL_SOUTH : STILL_NORTH
}

/** 1 in weeks in which stems thicken: those whose Thursday is in no still month. */
export function growingWeeks(nursery: Pick<Nursery, 'site'>, weeks: Weeks): Uint8Array {
  const still = stillMonths(nursery)
  return Uint8Array.from({ length: weeks.count }, (_, week) => Number(!still.includes(weeks.month(week))))
}

/** Weeks of thickening between two days. */
export function weeksOfGrowth(nursery: Pick<Nursery, 'site'>, from: number, to: number): number {
  const still = stillMonths(nursery)
  let days = 0
  for (let day = from; day < to; day++) if (!still.includes(dateOf(day).month)) days++
  return days / 7
}
