import { normalCdf } from '../../science/index.ts'
import type { Course } from '../season.ts'

/**
 * Which stems of a batch of rootstocks can be worked, by weeks since they were ready, as places in the row from
 * the thinnest (0) to the thickest (1): those from `thinnest[age]` to `thickest[age]`. All thicken alike, so
 * the row keeps its order.
 */
export interface Workable {
  readonly thinnest: Float64Array
  readonly thickest: Float64Array
}

/** Stems are normal about their mean, with a standard deviation that is a share of it when they are ready. */
export function workableByAge(
  caliper: NonNullable<Course['caliper']>,
  usableWeeks: number,
  minMm: number,
  maxMm: number,
): Workable {
  const { meanMmWhenReady, mmPerWeek, spreadShare } = caliper
  const sd = Math.max(meanMmWhenReady * spreadShare, 1e-9)
  const placeOf = (mm: number) =>
    Float64Array.from({ length: usableWeeks + 1 }, (_, age) =>
      normalCdf((mm - meanMmWhenReady - mmPerWeek * age) / sd),
    )
  return { thinnest: placeOf(minMm), thickest: placeOf(maxMm) }
}
