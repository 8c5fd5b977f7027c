import { normalCdf } from '../distributions/normal.ts'
import { requireTwoCounts, type TwoCounts } from './two-counts.ts'

/**
 * Pearson's chi-square of two shares and its chance under no difference, with or without Yates' correction for whole
 * counts. For numbers too large for the exact test to matter; expected counts under 5 make it unreliable.
 * @throws RangeError for an argument out of range
 * @source Pearson 1900, Philosophical Magazine 50:157-175; Yates 1934, Suppl. J. Royal Statistical Society 1:217-235
 * @example chiSquareTest({ survived1: 45, entered1: 50, survived2: 35, entered2: 50 }).chiSquare // 6.25
 */
export function chiSquareTest(counts: TwoCounts, correctForCounts = false): { chiSquare: number; p: number } {
  requireTwoCounts('chiSquareTest', counts)
  const { survived1, entered1, survived2, entered2 } = counts
  const all = entered1 + entered2
  const survived = survived1 + survived2
  const cross = Math.abs(survived1 * (entered2 - survived2) - survived2 * (entered1 - survived1))
  const gap = correctForCounts ? Math.max(0, cross - all / 2) : cross
  const margins = entered1 * entered2 * survived * (all - survived)
  const chiSquare = margins === 0 ? 0 : (all * gap * gap) / margins
  return { chiSquare, p: 2 * normalCdf(-Math.sqrt(chiSquare)) }
}
