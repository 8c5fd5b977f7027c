import { normalCdf } from '../../science/index.ts'

/** How long one step takes: log-normal between batches, and between the plants of one batch around it. */
export interface StepDays {
  readonly medianDays: number
  readonly sdLogDays: number
  readonly plantSdLogDays: number
}

/** How long a course of steps takes from its start until plants are ready. */
export interface DaysToReady {
  readonly meanDays: number
  /** Sd of the logarithm between batches, and between plants of one batch. */
  readonly batchSdLog: number
  readonly plantSdLog: number
}

/** A start of a week is begun on average in the middle of it. */
export const DAY_OF_START = 3.5

/**
 * The sum of the steps' days, log-normal again with the mean and the variances of the sum (steps are independent).
 * @example daysToReady([{ medianDays: 28, sdLogDays: 0.1, plantSdLogDays: 0.1 }]) // mean 28.28, both sd 0.1
 */
export function daysToReady(steps: readonly StepDays[]): DaysToReady {
  let meanDays = 0
  let batchVariance = 0
  let plantVariance = 0
  for (const { medianDays, sdLogDays, plantSdLogDays } of steps) {
    const mean = medianDays * Math.exp((sdLogDays ** 2 + plantSdLogDays ** 2) / 2)
    meanDays += mean
    batchVariance += mean ** 2 * Math.expm1(sdLogDays ** 2)
    plantVariance += mean ** 2 * Math.expm1(plantSdLogDays ** 2)
  }
  if (meanDays === 0) return { meanDays: 0, batchSdLog: 0, plantSdLog: 0 }
  return {
    meanDays,
    batchSdLog: Math.sqrt(Math.log1p(batchVariance / meanDays ** 2)),
    plantSdLog: Math.sqrt(Math.log1p(plantVariance / meanDays ** 2)),
  }
}

/**
 * Chance that a plant picked at random is ready in each week since the start; sums to 1.
 * What is beyond the last thousandth is counted into the last week.
 */
export function shareReadyByWeek(days: DaysToReady, dayOfStart = DAY_OF_START): Float64Array {
  const sd = Math.hypot(days.batchSdLog, days.plantSdLog)
  if (sd === 0 || days.meanDays === 0) {
    const shares = new Float64Array(Math.floor((dayOfStart + days.meanDays) / 7) + 1)
    shares[shares.length - 1] = 1
    return shares
  }
  const mu = Math.log(days.meanDays) - sd ** 2 / 2
  const shares: number[] = []
  for (let week = 0, before = 0; before < 1; week++) {
    const end = 7 * (week + 1) - dayOfStart
    const by = end <= 0 ? 0 : normalCdf((Math.log(end) - mu) / sd)
    const now = by > 0.999 ? 1 : by
    shares.push(now - before)
    before = now
  }
  return Float64Array.from(shares)
}
