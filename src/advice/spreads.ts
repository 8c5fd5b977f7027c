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

/** Spread and mean of each year over the futures; each year's values are left sorted. */
export function yearlySpread(years: readonly Float64Array[]): YearlySpread {
  for (const values of years) values.sort()
  return {
    low: years.map(sorted => atShare(sorted, LOW)),
    middle: years.map(sorted => atShare(sorted, 0.5)),
    high: years.map(sorted => atShare(sorted, HIGH)),
    mean: years.map(meanOf),
  }
}
