import { binomialList } from '../distributions/binomial-list.ts'
import { powerOfList, productOfLists } from '../distributions/sums-of-lists.ts'
import type { WeightedCourse } from './in-a-year.ts'
import { sharePoints } from './share-points.ts'

/**
 * Chances of 0, 1, 2 … plants coming out of a start that is split over batches, each with its own rates; within a
 * year the batches are independent. Sizes differ by at most one plant.
 */
export function splitDistribution(
  start: number,
  batches: number,
  allYears: readonly WeightedCourse[],
): Float64Array {
  const small = Math.floor(start / batches)
  const larger = start - small * batches
  const sum = new Float64Array(start + 1)
  for (const { weight, course } of allYears) {
    const points = sharePoints(course, small + 1)
    const ofSmall = powerOfList(binomialList(small, points), batches - larger)
    const all =
      larger === 0 ? ofSmall : productOfLists(ofSmall, powerOfList(binomialList(small + 1, points), larger))
    for (let number = 0; number <= start; number++) sum[number]! += weight * all[number]!
  }
  return sum
}

export function chanceOfSplit(
  wanted: number,
  start: number,
  batches: number,
  allYears: readonly WeightedCourse[],
): number {
  if (wanted <= 0) return 1
  if (wanted > start) return 0
  const chances = splitDistribution(start, batches, allYears)
  let below = 0
  for (let number = 0; number < wanted; number++) below += chances[number]!
  return Math.min(Math.max(1 - below, 0), 1)
}
