import { requireWhole } from '../bounds.ts'
import { chiSquareAbove } from '../distributions/chi-square.ts'

/** One group of plants: how many there were, how many survived (took, rooted, lived). */
export interface Counted {
  readonly entered: number
  readonly survived: number
}

export interface Heterogeneity {
  /** All survivors over all plants. */
  readonly pooledShare: number
  /** Pearson's chi-square of the groups about the pooled share. */
  readonly pearson: number
  /** The same by the likelihood ratio. */
  readonly likelihoodRatio: number
  readonly degreesOfFreedom: number
  /** Chance of groups differing this much if all had one share and plants were independent. */
  readonly p: number
}

/**
 * Do groups differ by more than chance? Chi-square of a table of groups by (survived, dead). Trustworthy where about
 * five of each are expected in every group; plants of one batch are not independent, so with one batch a group a
 * small p says only that batches differ.
 *
 * @throws RangeError for an argument out of range
 * @source Pearson 1900; McCullagh & Nelder 1989, ch. 4; checked on published tables
 * @example heterogeneity([{ entered: 40, survived: 36 }, { entered: 40, survived: 24 }]).pearson // 9.6
 */
export function heterogeneity(groups: readonly Counted[]): Heterogeneity {
  let plants = 0
  let alive = 0
  for (const { entered, survived } of groups) {
    requireWhole('heterogeneity', 'entered', entered, 0)
    requireWhole('heterogeneity', 'survived', survived, 0, entered)
    plants += entered
    alive += survived
  }
  const pooledShare = alive / plants
  const term = (observed: number, expected: number) =>
    observed > 0 ? 2 * observed * Math.log(observed / expected) : 0
  let pearson = 0
  let likelihoodRatio = 0
  let used = 0
  for (const { entered, survived } of groups) {
    if (entered === 0) continue
    used++
    if (pooledShare === 0 || pooledShare === 1) continue
    const expected = entered * pooledShare
    pearson += (survived - expected) ** 2 / (expected * (1 - pooledShare))
    likelihoodRatio += term(survived, expected) + term(entered - survived, entered - expected)
  }
  const degreesOfFreedom = Math.max(used - 1, 0)
  return {
    pooledShare,
    pearson,
    likelihoodRatio,
    degreesOfFreedom,
    p: degreesOfFreedom === 0 ? 1 : chiSquareAbove(pearson, degreesOfFreedom),
  }
}
