import { requireWhole } from '../bounds.ts'

export interface ControlChart {
  /** Share lost over all lots. */
  readonly mean: number
  /** Three standard deviations of chance about it for each lot, cut off at 0 and 1. */
  readonly lower: readonly number[]
  readonly upper: readonly number[]
  /** Lots outside their limits, counted from 0. */
  readonly outside: readonly number[]
}

/**
 * Shares of many lots against what chance alone would do: p ± 3 √(p q / n) with p from all lots together.
 * It takes the lots to have one true share; lots of plants usually differ more than that.
 * @param lost whole numbers, one a lot
 * @param entered whole numbers of 1 or more, one a lot
 * @throws RangeError for an argument out of range
 * @source Shewhart 1931, Economic Control of Quality of Manufactured Product; limits as in Montgomery, Introduction to
 *   Statistical Quality Control
 * @example controlChart([12, 15, 8], [50, 50, 50]).mean // 0.2333
 */
export function controlChart(lost: readonly number[], entered: readonly number[]): ControlChart {
  if (lost.length !== entered.length || lost.length === 0)
    throw new RangeError(
      `controlChart: entered must have one number for each of lost (at least one), got ${entered.length} and ${lost.length}`,
    )
  lost.forEach((number, i) => {
    requireWhole('controlChart', 'entered', entered[i]!, 1)
    requireWhole('controlChart', 'lost', number, 0, entered[i]!)
  })
  const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0)
  const mean = sum(lost) / sum(entered)
  const half = entered.map(number => 3 * Math.sqrt((mean * (1 - mean)) / number))
  const lower = half.map(width => Math.max(0, mean - width))
  const upper = half.map(width => Math.min(1, mean + width))
  const outside = lost.flatMap((number, i) => {
    const share = number / entered[i]!
    return share < lower[i]! || share > upper[i]! ? [i] : []
  })
  return { mean, lower, upper, outside }
}
