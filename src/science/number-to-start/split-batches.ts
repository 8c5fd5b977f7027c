import { binomialList } from '../distributions/binomial-list.ts'
import { chancesOfSums } from '../distributions/sums-of-lists.ts'
import type { WeightedCourse } from './in-a-year.ts'
import { type SharePoints, sharePoints } from './share-points.ts'

/** Chances of 0, 1, 2 … plants coming out of a start of any number, split over batches. */
export type SplitDistribution = (start: number) => Float64Array

/**
 * A start split over batches that each have their own rates; within a year the batches are independent. Sizes differ by
 * at most one plant. The chances of one batch come from points of its share, those of the sum by Fourier transform.
 *
 * @returns chances with absolute error below 1e-8 for rates with alpha and beta of 1 or more, 1e-6 above 0.1
 */
export function splitDistribution(batches: number, allYears: readonly WeightedCourse[]): SplitDistribution {
  let readyFor = 0
  let points: readonly { weight: number; points: SharePoints }[] = []
  let last: { start: number; chances: Float64Array } | null = null
  return start => {
    if (last?.start === start) return last.chances
    const small = Math.floor(start / batches)
    const larger = start - small * batches
    if (small + 1 > readyFor) {
      // Points for larger batches serve smaller ones too: make them once for what the search may come to.
      readyFor = Math.ceil(1.5 * (small + 1))
      points = allYears.map(({ weight, course }) => ({ weight, points: sharePoints(course, readyFor) }))
    }
    const chances = chancesOfSums(
      points.map(({ weight, points: ofYear }) => ({
        weight,
        one: binomialList(small, ofYear),
        times: batches - larger,
        other: binomialList(larger > 0 ? small + 1 : 0, ofYear),
        otherTimes: larger,
      })),
      start + 1,
    )
    last = { start, chances }
    return chances
  }
}

export function chanceFromList(chances: Float64Array, wanted: number): number {
  if (wanted <= 0) return 1
  // The shorter side is summed.
  let sum = 0
  if (wanted > chances.length / 2) {
    for (let number = wanted; number < chances.length; number++) sum += chances[number]!
    return Math.min(sum, 1)
  }
  for (let number = 0; number < wanted; number++) sum += chances[number]!
  return Math.max(1 - sum, 0)
}
