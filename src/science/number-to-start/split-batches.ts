import { binomialList } from '../distributions/binomial-list.ts'
import { chancesOfSum } from '../distributions/sums-of-lists.ts'
import { chanceOfCourse } from './chance-of-course.ts'
import type { Course } from './rate.ts'
import { type SharePoints, sharePoints } from './share-points.ts'

/** Chance that at least `wanted` of `start` plants come through one course. */
export type ChanceInYear = (wanted: number, start: number, course: Course) => number

/**
 * A start split over batches that each have their own rates, independent within the year. Sizes differ by at most one
 * plant. The chances of one batch come from points of its share, those of the sum by Fourier transform.
 *
 * @returns chances with absolute error below 1e-8 for rates with alpha and beta of 1 or more, 1e-6 above 0.1
 */
export function chanceOfSplit(batches: number): ChanceInYear {
  const pointsOf = new Map<Course, { readonly readyFor: number; readonly points: SharePoints }>()
  let sums = new Map<Course, Tails>()
  let sumsOf = -1
  return (wanted, start, course) => {
    // Batches that have no luck of their own are one.
    if (course.uncertain.length === 0) return chanceOfCourse(wanted, start, course)
    if (wanted <= 0) return 1
    if (sumsOf !== start) {
      sums = new Map()
      sumsOf = start
    }
    let sum = sums.get(course)
    if (sum === undefined) {
      const small = Math.floor(start / batches)
      const larger = start - small * batches
      let known = pointsOf.get(course)
      if (known === undefined || small + 1 > known.readyFor) {
        // Points for larger batches serve smaller ones too: make them once for what the search may come to.
        const readyFor = Math.ceil(1.5 * (small + 1))
        known = { readyFor, points: sharePoints(course, readyFor) }
        pointsOf.set(course, known)
      }
      sum = tailsOf(
        chancesOfSum({
          one: binomialList(small, known.points),
          times: batches - larger,
          other: binomialList(larger > 0 ? small + 1 : 0, known.points),
          otherTimes: larger,
        }),
      )
      sums.set(course, sum)
    }
    return sum(wanted)
  }
}

type Tails = (wanted: number) => number

/** Chance of at least a number, from the chances of each. */
function tailsOf({ first, chances }: ReturnType<typeof chancesOfSum>): Tails {
  const atLeast = new Float64Array(chances.length + 1)
  for (let i = chances.length - 1; i >= 0; i--) atLeast[i] = atLeast[i + 1]! + chances[i]!
  return wanted => Math.min(1, atLeast[Math.min(Math.max(wanted - first, 0), chances.length)]!)
}
