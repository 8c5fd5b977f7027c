import gammaln from '@stdlib/math-base-special-gammaln'
import { shareOfLogit } from '../numerics/logit.ts'
import { minimise, withSlope } from '../numerics/quasi-newton.ts'

export interface RootCountsInput {
  /** For each treatment cell, how many shoots had 0, 1, 2, … roots. */
  readonly shootsByRoots: readonly (readonly number[])[]
  /** Which group of cells shares one mean; cells with the same number share. Usually each its own. */
  readonly meanGroup: readonly number[]
  /** Which group of cells shares one chance of not rooting at all; left out, every shoot may root. */
  readonly unrootedGroup?: readonly number[]
  /** Do shoots that root differ among each other by more than Poisson chance? */
  readonly spread: 'poisson' | 'negative-binomial'
}

export interface RootCountsFit {
  /** Mean number of roots of the shoots that can root, by mean group. */
  readonly means: readonly number[]
  /** Chance that a shoot cannot root, by group (beyond the zeros that chance gives). */
  readonly unrooted: readonly number[]
  /** Negative binomial size: variance = mean + mean²/size; Infinity for Poisson. */
  readonly size: number
  readonly logLikelihood: number
}

/**
 * Numbers of roots on shoots that may fail to root at all: (zero-inflated) Poisson or negative binomial counts,
 * by maximum likelihood. How many root and how many roots they make are different questions: this answers the
 * second, and says how much of the first is a class of its own.
 *
 * @throws RangeError for an argument out of range
 * @source Ridout, Hinde & Demétrio 1998, Proc. 19th Int. Biometric Conf., 179-192 (model and table, checked)
 * @example fitRootCounts({ shootsByRoots: [[5, 3, 4, 2]], meanGroup: [0], spread: 'poisson' }).means // [1.214]
 */
export function fitRootCounts(input: RootCountsInput): RootCountsFit {
  const { shootsByRoots, meanGroup, unrootedGroup, spread } = input
  const cells = shootsByRoots.length
  if (meanGroup.length !== cells)
    throw new RangeError(`fitRootCounts: meanGroup must have ${cells} entries, got ${meanGroup.length}`)
  const meanCount = Math.max(...meanGroup) + 1
  const unrootedCount = unrootedGroup === undefined ? 0 : Math.max(...unrootedGroup) + 1
  const size = meanCount + unrootedCount + (spread === 'negative-binomial' ? 1 : 0)
  const logLikelihood = (at: Float64Array): number => {
    const theta = spread === 'negative-binomial' ? Math.exp(at[size - 1]!) : Number.POSITIVE_INFINITY
    let sum = 0
    for (let c = 0; c < cells; c++) {
      const mean = Math.exp(at[meanGroup[c]!]!)
      const never = unrootedGroup === undefined ? 0 : shareOfLogit(at[meanCount + unrootedGroup[c]!]!)
      shootsByRoots[c]!.forEach((shoots, roots) => {
        if (shoots === 0) return
        const log = logCount(roots, mean, theta)
        sum +=
          shoots * (roots === 0 ? Math.log(never + (1 - never) * Math.exp(log)) : Math.log1p(-never) + log)
      })
    }
    return sum
  }
  const start = new Float64Array(size)
  for (let g = 0; g < meanCount; g++) {
    let roots = 0
    let shoots = 0
    shootsByRoots.forEach((list, c) => {
      if (meanGroup[c] !== g) return
      list.forEach((count, k) => {
        roots += count * k
        shoots += k > 0 || unrootedGroup === undefined ? count : 0
      })
    })
    start[g] = Math.log((roots + 0.5) / (shoots + 0.5))
  }
  for (let g = 0; g < unrootedCount; g++) start[meanCount + g] = -1
  if (spread === 'negative-binomial') start[size - 1] = 1
  const found = minimise(
    withSlope(at => -logLikelihood(at)),
    start,
    { scale: new Float64Array(size).fill(0.3), stepAtMost: 1, fallBelow: 1e-10 },
  )
  return {
    means: Array.from(found.at.subarray(0, meanCount), Math.exp),
    unrooted: Array.from(found.at.subarray(meanCount, meanCount + unrootedCount), shareOfLogit),
    size: spread === 'negative-binomial' ? Math.exp(found.at[size - 1]!) : Number.POSITIVE_INFINITY,
    logLikelihood: -found.value,
  }
}

function logCount(roots: number, mean: number, size: number): number {
  if (size > 1e7) return roots * Math.log(mean) - mean - gammaln(roots + 1)
  return (
    gammaln(size + roots) -
    gammaln(size) -
    gammaln(roots + 1) +
    size * Math.log(size / (size + mean)) +
    roots * Math.log(mean / (size + mean))
  )
}
