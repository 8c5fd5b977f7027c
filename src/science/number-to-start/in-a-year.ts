import { betaQuantile } from '../distributions/beta.ts'
import { normalCdf } from '../distributions/normal.ts'
import type { Course } from './rate.ts'

/**
 * The course of a batch in a year of a given quality, when part of every rate's variance is the year's:
 * the same for all steps and batches of that year.
 *
 * A rate with mean m and alpha + beta = φ has the variance m(1 − m)/(φ + 1). The year's mean is Beta with the same
 * mean and the part `yearShare` of that variance, the same quantile of it for every step; within the year the rate is
 * Beta about the year's mean with alpha + beta = φ/(1 − yearShare). Then mean and variance over all years are
 * those of the Beta given, exactly; its third moment differs a little.
 *
 * @param yearShare 0 to 1: part of the variance that is the year's
 * @param quality the year as a standard normal score: 0 a middling year, 1.28 better than nine of ten
 */
export function courseInYear(course: Course, yearShare: number, quality: number): Course {
  if (yearShare === 0) return course
  const better = normalCdf(-quality)
  let known = course.known
  const uncertain: { alpha: number; beta: number }[] = []
  for (const { alpha, beta } of course.uncertain) {
    const precision = alpha + beta
    const ofYears = (precision + 1) / yearShare - 1
    const a = (alpha / precision) * ofYears
    const b = (beta / precision) * ofYears
    // The smaller tail keeps its digits.
    const missing = quality > 0 ? betaQuantile(better, b, a) : 1 - betaQuantile(1 - better, a, b)
    const mean = quality > 0 ? 1 - missing : betaQuantile(1 - better, a, b)
    if (yearShare === 1 || mean <= 0 || missing <= 0) {
      known *= mean
    } else {
      const within = precision / (1 - yearShare)
      uncertain.push({ alpha: mean * within, beta: missing * within })
    }
  }
  return { known, uncertain }
}

/** From the worst to the best, a part of all years each. */
export interface WeightedCourse {
  readonly weight: number
  readonly course: Course
}

const WORST_YEAR = -6.5

/**
 * Years from the worst to the best as a trapezoid rule over the normal score; one year when nothing is shared.
 * The rule is as fine as the chance is steep: what a batch of `start` plants spreads by itself, against the years.
 * Error in probability below 1e-9.
 */
export function years(course: Course, yearShare: number, start: number): readonly WeightedCourse[] {
  if (yearShare === 0 || course.uncertain.length === 0) return [{ weight: 1, course }]
  let yearSd = 0
  let within = 0
  let mean = course.known
  for (const { alpha, beta } of course.uncertain) {
    const relative = beta / (alpha * (alpha + beta + 1))
    yearSd += Math.sqrt(yearShare * relative)
    within += (1 - yearShare) * relative
    mean *= alpha / (alpha + beta)
  }
  within += (1 - mean) / (mean * Math.max(start, 1))
  const steepness = yearSd / Math.sqrt(within)
  const step = Math.min(0.5, 0.8 / Math.sqrt(1 + steepness * steepness))
  const list: WeightedCourse[] = []
  const half = Math.ceil(-WORST_YEAR / step)
  for (let i = -half; i <= half; i++) {
    const quality = i * step
    const weight = (step * Math.exp(-0.5 * quality * quality)) / Math.sqrt(2 * Math.PI)
    list.push({ weight, course: courseInYear(course, yearShare, quality) })
  }
  return list
}

/** A chance nearer to 0 or 1 than this counts as 0 or 1. */
const SETTLED = 1e-11

/**
 * Mean over years of a chance that rises with their quality. Only the years between where it is nearly 0 and nearly 1
 * are asked, from about the middle outwards: where most of the variance is the year's, they are few.
 * @param isGood whether the chance is likely above a half, cheap and rising too
 */
export function meanOfRising(
  allYears: readonly WeightedCourse[],
  isGood: (course: Course) => boolean,
  chance: (course: Course) => number,
): number {
  let low = 0
  let high = allYears.length
  while (low < high) {
    const half = (low + high) >> 1
    if (isGood(allYears[half]!.course)) high = half
    else low = half + 1
  }
  let sum = 0
  let from = low
  for (let last = 0; from < allYears.length && last <= 1 - SETTLED; from++) {
    last = chance(allYears[from]!.course)
    sum += allYears[from]!.weight * last
  }
  for (; from < allYears.length; from++) sum += allYears[from]!.weight
  for (let i = low - 1, last = 1; i >= 0 && last >= SETTLED; i--) {
    last = chance(allYears[i]!.course)
    sum += allYears[i]!.weight * last
  }
  return sum
}
