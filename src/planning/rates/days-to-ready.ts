import { normalCdf } from '../../science/index.ts'

/** How long one step takes: log-normal between batches, and between the plants of one batch around it. */
export interface StepDays {
  readonly medianDays: number
  readonly sdLogDays: number
  readonly plantSdLogDays: number
}

/** How long it takes until plants are ready: the days of a batch, and each plant's own factor around them. */
export interface DaysToReady {
  readonly meanDays: number
  /** Sd of the logarithm between batches, and between plants of one batch. */
  readonly batchSdLog: number
  readonly plantSdLog: number
}

/** A start of a week is begun on average in the middle of it; what stands now stands in the middle of this week. */
export const DAY_OF_START = 3.5

/** A step later than this many sd of its logarithm counts as this late: no log-normal tail is trusted further. */
const LATEST_SD = 3

/**
 * The sum of the steps' days, log-normal again with the mean and the variances of the sum (steps are independent).
 * Plants that have been in the first step for `daysIn` already have the rest of it before them, given that it
 * is not over.
 * @source Fenton 1960, IRE Transactions on Communications Systems 8:57-67 (sum of log-normals by its moments)
 * @example daysToReady([{ medianDays: 28, sdLogDays: 0.1, plantSdLogDays: 0.1 }]) // mean 28.28, both sd 0.1
 */
export function daysToReady(steps: readonly StepDays[], daysIn = 0): DaysToReady {
  let meanDays = 0
  let batchVariance = 0
  let plantVariance = 0
  steps.forEach((step, i) => {
    const { sdLogDays, plantSdLogDays } = step
    const both = sdLogDays ** 2 + plantSdLogDays ** 2
    if (i === 0 && daysIn > 0 && both > 0) {
      const rest = restOfLogNormal(Math.log(step.medianDays), Math.sqrt(both), daysIn)
      meanDays += rest.mean
      batchVariance += (rest.variance * sdLogDays ** 2) / both
      plantVariance += (rest.variance * plantSdLogDays ** 2) / both
      return
    }
    const mean = step.medianDays * Math.exp(both / 2)
    meanDays += i === 0 ? Math.max(0, mean - daysIn) : mean
    batchVariance += mean ** 2 * Math.expm1(sdLogDays ** 2)
    plantVariance += mean ** 2 * Math.expm1(plantSdLogDays ** 2)
  })
  if (!(meanDays > 0)) return { meanDays: 0, batchSdLog: 0, plantSdLog: 0 }
  return {
    meanDays,
    batchSdLog: Math.sqrt(Math.log1p(batchVariance / meanDays ** 2)),
    plantSdLog: Math.sqrt(Math.log1p(plantVariance / meanDays ** 2)),
  }
}

/** Mean and variance of D − days given D > days, D log-normal. */
function restOfLogNormal(mu: number, sd: number, days: number): { mean: number; variance: number } {
  const late = Math.min((Math.log(days) - mu) / sd, LATEST_SD)
  const from = Math.exp(mu + late * sd)
  const above = normalCdf(-late)
  const first = (Math.exp(mu + sd ** 2 / 2) * normalCdf(sd - late)) / above
  const second = (Math.exp(2 * mu + 2 * sd ** 2) * normalCdf(2 * sd - late)) / above
  return { mean: first - from, variance: Math.max(0, second - first ** 2) }
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
    const by = normalCdf((Math.log(7 * (week + 1) - dayOfStart) - mu) / sd)
    const now = by > 0.999 ? 1 : by
    shares.push(now - before)
    before = now
  }
  return Float64Array.from(shares)
}
