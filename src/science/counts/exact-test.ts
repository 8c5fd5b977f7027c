import gammaln from '@stdlib/math-base-special-gammaln'
import { requireBetween } from '../bounds.ts'
import type { Interval } from './share-interval.ts'
import { requireTwoCounts, type TwoCounts } from './two-counts.ts'

export interface ExactTest {
  /** Chance, were there no difference, of a table as unlikely as this or more. */
  readonly pTwoSided: number
  /** Chance of the first lot doing as well or better, and as badly or worse. */
  readonly pGreater: number
  readonly pLess: number
  /** Odds of surviving in the first lot over those in the second: conditional maximum likelihood, 0 to infinity. */
  readonly oddsRatio: number
}

/**
 * Fisher's exact test of two shares: with both totals and the number of survivors as they are, the first lot's survivors
 * are hypergeometric if there is no difference. Two-sided: all tables no more likely than the one seen.
 * @returns chances with absolute error below 1e-11
 * @throws RangeError for an argument out of range
 * @source Fisher 1935, J. Royal Statistical Society 98:39-82
 * @example exactTest({ survived1: 18, entered1: 20, survived2: 11, entered2: 20 }).pTwoSided // 0.0310
 */
export function exactTest(counts: TwoCounts): ExactTest {
  requireTwoCounts('exactTest', counts)
  const table = fixedMargins(counts)
  const { logChances, least, seen } = table
  const chances = tilted(table, 0)
  const own = logChances[seen - least]!
  let pTwoSided = 0
  let pGreater = 0
  let pLess = 0
  chances.forEach((chance, i) => {
    if (logChances[i]! <= own + 1e-7) pTwoSided += chance
    if (i + least >= seen) pGreater += chance
    if (i + least <= seen) pLess += chance
  })
  return {
    pTwoSided: Math.min(1, pTwoSided),
    pGreater: Math.min(1, pGreater),
    pLess: Math.min(1, pLess),
    oddsRatio: oddsRatioWhere(table, log => mean(table, log) - seen),
  }
}

/**
 * Exact range of the odds ratio of `exactTest`, conditional on both totals; an end without a limit is 0 or infinity.
 * @throws RangeError for an argument out of range
 * @source Cornfield 1956, Proc. Third Berkeley Symposium 4:135-148 (exact form)
 * @example oddsRatioInterval({ survived1: 18, entered1: 20, survived2: 11, entered2: 20 }, 0.95) // [1.148, 78.3]
 */
export function oddsRatioInterval(counts: TwoCounts, confidence: number): Interval {
  requireTwoCounts('oddsRatioInterval', counts)
  requireBetween('oddsRatioInterval', 'confidence', confidence, 0, 1)
  const table = fixedMargins(counts)
  const { least, most, seen } = table
  const tail = (1 - confidence) / 2
  const atLeastSeen = (log: number) =>
    tilted(table, log).reduce((sum, c, i) => (i + least >= seen ? sum + c : sum), 0)
  const atMostSeen = (log: number) =>
    tilted(table, log).reduce((sum, c, i) => (i + least <= seen ? sum + c : sum), 0)
  return [
    seen === least ? 0 : Math.exp(risingRoot(log => atLeastSeen(log) - tail)),
    seen === most ? Number.POSITIVE_INFINITY : Math.exp(risingRoot(log => tail - atMostSeen(log))),
  ]
}

interface FixedMargins {
  /** Fewest and most that can have survived in the first lot, and how many did. */
  readonly least: number
  readonly most: number
  readonly seen: number
  /** Logarithms of the chances under no difference, from `least` on. */
  readonly logChances: readonly number[]
}

function fixedMargins({ survived1, entered1, survived2, entered2 }: TwoCounts): FixedMargins {
  const survived = survived1 + survived2
  const least = Math.max(0, survived - entered2)
  const most = Math.min(entered1, survived)
  const logWays = (n: number, k: number) => gammaln(n + 1) - gammaln(k + 1) - gammaln(n - k + 1)
  const all = logWays(entered1 + entered2, survived)
  const logChances = Array.from(
    { length: most - least + 1 },
    (_, i) => logWays(entered1, least + i) + logWays(entered2, survived - least - i) - all,
  )
  return { least, most, seen: survived1, logChances }
}

/** Chances when the odds ratio has a given logarithm. */
function tilted({ logChances }: FixedMargins, logOddsRatio: number): number[] {
  const logs = logChances.map((log, i) => log + i * logOddsRatio)
  const highest = Math.max(...logs)
  const heights = logs.map(log => Math.exp(log - highest))
  const total = heights.reduce((sum, height) => sum + height, 0)
  return heights.map(height => height / total)
}

const mean = (table: FixedMargins, logOddsRatio: number) =>
  tilted(table, logOddsRatio).reduce((sum, chance, i) => sum + chance * (i + table.least), 0)

function oddsRatioWhere({ least, most, seen }: FixedMargins, rising: (log: number) => number): number {
  if (least === most) return Number.NaN
  if (seen === least) return 0
  if (seen === most) return Number.POSITIVE_INFINITY
  return Math.exp(risingRoot(rising))
}

/** Root of a rising function of a logarithm, by halving. */
function risingRoot(rising: (log: number) => number): number {
  let low = -50
  let high = 50
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (rising(middle) < 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}
