import type { Spread, YearlySpread } from './answer.ts'

const LOW = 0.1
const HIGH = 0.9

/** The value at a share of sorted ones, between neighbours in a straight line; infinite where it meets infinity. */
export function atShare(sorted: Float64Array, share: number): number {
  const place = share * (sorted.length - 1)
  const below = Math.floor(place)
  const low = sorted[below]!
  const high = sorted[Math.min(sorted.length - 1, below + 1)]!
  if (place === below || low === high) return low
  return Number.isFinite(high) ? low + (place - below) * (high - low) : high
}

export function spreadOf(values: ArrayLike<number>): Spread {
  const sorted = Float64Array.from(values).sort()
  return { low: atShare(sorted, LOW), middle: atShare(sorted, 0.5), high: atShare(sorted, HIGH) }
}

export const meanOf = (values: ArrayLike<number>): number => {
  let sum = 0
  for (let i = 0; i < values.length; i++) sum += values[i]!
  return sum / values.length
}

/** Mean of each year over courses of equal length. */
export function yearlyMean(courses: readonly Float64Array[]): readonly number[] {
  const sums = new Float64Array(courses[0]?.length ?? 0)
  for (const course of courses) for (let year = 0; year < sums.length; year++) sums[year]! += course[year]!
  return Array.from(sums, sum => sum / courses.length)
}

/** Spread and mean of each year over courses of equal length. */
export function yearlySpread(courses: readonly Float64Array[]): YearlySpread {
  const years = courses[0]?.length ?? 0
  const low: number[] = []
  const middle: number[] = []
  const high: number[] = []
  const of = new Float64Array(courses.length)
  for (let year = 0; year < years; year++) {
    for (let i = 0; i < courses.length; i++) of[i] = courses[i]![year]!
    of.sort()
    low.push(atShare(of, LOW))
    middle.push(atShare(of, 0.5))
    high.push(atShare(of, HIGH))
  }
  return { low, middle, high, mean: yearlyMean(courses) }
}

/** Sums a course up where it stands: each year becomes all the years until then. */
export function soFar(yearly: Float64Array): Float64Array {
  for (let year = 1; year < yearly.length; year++) yearly[year]! += yearly[year - 1]!
  return yearly
}
