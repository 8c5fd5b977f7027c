import { requireWhole } from '../bounds.ts'
import type { Counted } from './heterogeneity.ts'

export interface IntraclassCorrelation {
  readonly pooledShare: number
  readonly betweenMeanSquare: number
  readonly withinMeanSquare: number
  /** Plants of an average group, for unequal groups. */
  readonly groupSize: number
  /** Correlation of two plants of one group; may be slightly below 0 by chance. */
  readonly correlation: number
  /** How many times as many plants are needed as if plants were independent: 1 + (group size − 1) · correlation. */
  readonly designEffect: number
}

/**
 * How alike plants of one batch (bench, plate) are: the analysis-of-variance estimate of the intraclass correlation.
 *
 * @param groups two or more, each with at least one plant
 * @throws RangeError for an argument out of range
 * @source Ridout, Demétrio & Firth 1999, Biometrics 55:137-148; design effect: Kish 1965, Survey Sampling
 * @example intraclassCorrelation([{ entered: 40, survived: 36 }, { entered: 40, survived: 24 }]).correlation //
 *   0.1941
 */
export function intraclassCorrelation(groups: readonly Counted[]): IntraclassCorrelation {
  if (groups.length < 2)
    throw new RangeError(`intraclassCorrelation: groups must be 2 or more, got ${groups.length}`)
  let plants = 0
  let alive = 0
  let squares = 0
  let aliveSquares = 0
  for (const { entered, survived } of groups) {
    requireWhole('intraclassCorrelation', 'entered', entered, 1)
    requireWhole('intraclassCorrelation', 'survived', survived, 0, entered)
    plants += entered
    alive += survived
    squares += entered * entered
    aliveSquares += (survived * survived) / entered
  }
  const count = groups.length
  const betweenMeanSquare = (aliveSquares - (alive * alive) / plants) / (count - 1)
  const withinMeanSquare = (alive - aliveSquares) / (plants - count)
  const groupSize = (plants - squares / plants) / (count - 1)
  const correlation =
    (betweenMeanSquare - withinMeanSquare) / (betweenMeanSquare + (groupSize - 1) * withinMeanSquare)
  return {
    pooledShare: alive / plants,
    betweenMeanSquare,
    withinMeanSquare,
    groupSize,
    correlation,
    designEffect: Math.max(1, 1 + (groupSize - 1) * correlation),
  }
}
