import { requireBetween } from '../bounds.ts'
import { normalQuantile } from '../distributions/normal.ts'
import { type Interval, wilsonInterval } from './share-interval.ts'
import { requireTwoCounts, type TwoCounts } from './two-counts.ts'

/**
 * Range of the difference of two true shares, first less second, from the score ranges of both; good for small
 * numbers.
 * @throws RangeError for an argument out of range
 * @source Newcombe 1998, Statistics in Medicine 17:873-890 (method 10)
 * @example differenceInterval({ survived1: 56, entered1: 70, survived2: 48, entered2: 80 }, 0.95) // [0.0524, 0.3339]
 */
export function differenceInterval(counts: TwoCounts, confidence: number): Interval {
  requireTwoCounts('differenceInterval', counts)
  const { survived1, entered1, survived2, entered2 } = counts
  const p1 = survived1 / entered1
  const p2 = survived2 / entered2
  const [lower1, upper1] = wilsonInterval(survived1, entered1, confidence)
  const [lower2, upper2] = wilsonInterval(survived2, entered2, confidence)
  return [p1 - p2 - Math.hypot(p1 - lower1, upper2 - p2), p1 - p2 + Math.hypot(upper1 - p1, p2 - lower2)]
}

/**
 * The plain large-sample range of the difference; too narrow for small numbers, of no width when all or none survive.
 * @example waldDifferenceInterval({ survived1: 56, entered1: 70, survived2: 48, entered2: 80 }, 0.95) // [0.0575, 0.3425]
 */
export function waldDifferenceInterval(counts: TwoCounts, confidence: number): Interval {
  requireTwoCounts('waldDifferenceInterval', counts)
  requireBetween('waldDifferenceInterval', 'confidence', confidence, 0, 1)
  const { survived1, entered1, survived2, entered2 } = counts
  const p1 = survived1 / entered1
  const p2 = survived2 / entered2
  const half =
    normalQuantile(0.5 + confidence / 2) * Math.sqrt((p1 * (1 - p1)) / entered1 + (p2 * (1 - p2)) / entered2)
  return [p1 - p2 - half, p1 - p2 + half]
}
