import { requireWhole, requireWithin } from '../bounds.ts'
import { chanceOfCourse } from './chance-of-course.ts'
import { meanOfRising, type WeightedCourse, years } from './in-a-year.ts'
import { type Course, courseOf, moment, type Rate } from './rate.ts'
import { chanceOfSplit } from './split-batches.ts'

export interface CourseInput {
  /** The steps in any order; none at all means that every plant comes through. */
  readonly steps: readonly Rate[]
  /** Part of every uncertain rate's variance that is the year's, shared by all steps and batches; 0 unless told. */
  readonly yearShare?: number
  /** Started as so many batches of equal size (or one plant more), each with its own luck; 1 unless told. */
  readonly batches?: number
}

/** What comes out of a start: numbers of plants. */
export interface Spread {
  readonly mean: number
  readonly sd: number
  /** In 10 of 100 cases no more than this comes out; likewise 50 and 90. */
  readonly p10: number
  readonly p50: number
  readonly p90: number
}

/** The chances of one set of steps, read for any number wanted and any start. */
export interface Outcome {
  /** Expected share of the plants started that come through. */
  readonly meanShare: number
  chance(wanted: number, start: number): number
  spread(start: number): Spread
}

export function outcomeOf(place: string, input: CourseInput, size: number): Outcome {
  const course = courseOf(place, input.steps)
  const yearShare = input.yearShare ?? 0
  const batches = input.batches ?? 1
  requireWithin(place, 'yearShare', yearShare, 0, 1)
  requireWhole(place, 'batches', batches, 1)
  const meanShare = moment(course, 1)
  const allYears = years(course, yearShare, size)
  const inYear = batches > 1 ? chanceOfSplit(batches) : chanceOfCourse
  const chance = (wanted: number, start: number) =>
    meanOfRising(
      allYears,
      year => start * moment(year, 1) >= wanted,
      year => inYear(wanted, start, year),
    )
  return { meanShare, chance, spread: start => spreadOf(start, batches, allYears, chance) }
}

function weighed(allYears: readonly WeightedCourse[], of: (course: Course) => number): number {
  let sum = 0
  for (const { weight, course } of allYears) sum += weight * of(course)
  return sum
}

function spreadOf(
  start: number,
  batches: number,
  allYears: readonly WeightedCourse[],
  chance: (wanted: number, start: number) => number,
): Spread {
  const small = Math.floor(start / batches)
  const larger = start - small * batches
  const squares = (batches - larger) * small ** 2 + larger * (small + 1) ** 2
  const first = weighed(allYears, course => moment(course, 1))
  // Within a year plants of one batch share its luck; over the years all do.
  const variance = weighed(allYears, course => {
    const mean = moment(course, 1)
    const second = moment(course, 2)
    return start * (mean - second) + squares * (second - mean ** 2) + (start * (mean - first)) ** 2
  })
  const mean = start * first
  const sd = Math.sqrt(Math.max(0, variance))
  const quantile = (share: number, score: number) =>
    smallestNumber(number => 1 - chance(number + 1, start), share, mean + score * sd, sd, start)
  return { mean, sd, p10: quantile(0.1, -1.28), p50: quantile(0.5, 0), p90: quantile(0.9, 1.28) }
}

/** The smallest number up to `most` whose rising `below` reaches `share`, searched outwards from a guess. */
function smallestNumber(
  below: (number: number) => number,
  share: number,
  guess: number,
  sd: number,
  most: number,
): number {
  let low = -1
  let high = most
  let atLow = -share
  let atHigh = 1 - share
  let next = Math.min(Math.max(Math.round(guess), 0), Math.max(most - 1, 0))
  for (let i = 0; high - low > 1; i++) {
    const value = below(next) - share
    if (value >= -1e-10) {
      high = next
      atHigh = value
    } else {
      low = next
      atLow = value
    }
    // A straight line through the two ends; every third time halving; at first a step of a third of a deviation.
    const line = low + ((high - low) * -atLow) / (atHigh - atLow)
    const near = i === 0 ? next - (value / 0.4) * sd : i % 3 === 2 ? (low + high) / 2 : line
    next = Math.min(Math.max(Math.round(near), low + 1), high - 1)
  }
  return high
}
