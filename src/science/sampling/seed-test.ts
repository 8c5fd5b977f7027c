import { requireWithin } from '../bounds.ts'

/**
 * Largest range between replicates of 100 seeds in one germination test, by the mean in per cent; wider ranges are more
 * than chance, and the test is to be repeated. From 99 per cent downwards; low means mirror high ones.
 * Rows below 71 and the two-replicate values for 99 and 98 were not in reach.
 * @source US Code of Federal Regulations, title 7, § 201.55(a); descends from Miles 1963, Proc. International Seed
 *   Testing Association 28:525-686
 */
const RANGE_OF_FOUR = [
  5, 6, 7, 8, 9, 10, 10, 11, 11, 12, 12, 13, 13, 14, 14, 14, 15, 15, 15, 16, 16, 16, 17, 17, 17, 17, 17, 18,
  18,
]
const RANGE_OF_TWO = [
  null,
  null,
  6,
  6,
  7,
  8,
  8,
  9,
  9,
  9,
  10,
  10,
  11,
  11,
  11,
  11,
  12,
  12,
  12,
  13,
  13,
  13,
  13,
  13,
  14,
  14,
  14,
  14,
  14,
]
const HIGHEST_MEAN = 99

/**
 * Largest difference between two tests of 400 seeds each, by the lowest mean of each band (51 or more); low means mirror.
 * @source Louisiana Administrative Code 7 XIII-139, quoting the Federal Seed Act and AOSA table
 */
const DIFFERENCE_OF_TESTS: readonly (readonly [meanFrom: number, most: number])[] = [
  [99, 2],
  [97, 3],
  [94, 4],
  [91, 5],
  [87, 6],
  [82, 7],
  [76, 8],
  [70, 9],
  [60, 10],
  [51, 11],
]

export interface ReplicatesJudged {
  readonly meanPercent: number
  readonly rangePercent: number
  /** Largest range that chance allows; null where the table does not reach. */
  readonly allowedPercent: number | null
  /** Whether the replicates agree; null where the table does not reach. */
  readonly agree: boolean | null
}

/**
 * Whether the replicates of a germination test agree with each other.
 * @param percents germination of two or four replicates of 100 seeds, per cent
 * @throws RangeError for an argument out of range
 * @source the table that stands above in this file, with its own source
 * @example replicatesAgree([80, 95, 85, 88]) // { meanPercent: 87, rangePercent: 15, allowedPercent: 13, agree: false }
 */
export function replicatesAgree(percents: readonly number[]): ReplicatesJudged {
  if (percents.length !== 2 && percents.length !== 4)
    throw new RangeError(`replicatesAgree: percents must be of 2 or 4 replicates, got ${percents.length}`)
  for (const percent of percents) requireWithin('replicatesAgree', 'percents', percent, 0, 100)
  const meanPercent = percents.reduce((sum, percent) => sum + percent, 0) / percents.length
  const rangePercent = Math.max(...percents) - Math.min(...percents)
  const table = percents.length === 4 ? RANGE_OF_FOUR : RANGE_OF_TWO
  // 2 per cent stands in the row of 99, as 101 less the mean.
  const rounded = Math.round(meanPercent)
  const allowedPercent = table[HIGHEST_MEAN - (rounded < 51 ? 101 - rounded : rounded)] ?? null
  return {
    meanPercent,
    rangePercent,
    allowedPercent,
    agree: allowedPercent === null ? null : rangePercent <= allowedPercent,
  }
}

/**
 * How far two germination tests of 400 seeds may differ, in per cent; null where the table does not reach (above 99,
 * below 2).
 * @param meanPercent mean of both tests
 * @throws RangeError for an argument out of range
 * @source the table that stands above in this file, with its own source
 * @example differenceAllowed(88) // 6
 */
export function differenceAllowed(meanPercent: number): number | null {
  requireWithin('differenceAllowed', 'meanPercent', meanPercent, 0, 100)
  const rounded = Math.round(meanPercent)
  const high = rounded < 51 ? 101 - rounded : rounded
  if (high > HIGHEST_MEAN) return null
  return DIFFERENCE_OF_TESTS.find(([from]) => high >= from)?.[1] ?? null
}

/** 97.5 % point of the range of four standard normal numbers; from R's qtukey(0.975, 4, Inf). */
const STUDENTISED_RANGE_OF_FOUR = 3.984007

/**
 * Range of four replicates of 100 seeds that pure chance exceeds once in forty tests: a theory to understand the
 * table by, not to replace it.
 * @example rangeByChance(90) // 11.95
 */
export function rangeByChance(meanPercent: number): number {
  requireWithin('rangeByChance', 'meanPercent', meanPercent, 0, 100)
  return STUDENTISED_RANGE_OF_FOUR * Math.sqrt((meanPercent * (100 - meanPercent)) / 100)
}
