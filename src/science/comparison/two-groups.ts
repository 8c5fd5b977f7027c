import { chiSquareAbove } from '../distributions/chi-square.ts'
import type { Counted } from './heterogeneity.ts'
import { heterogeneity } from './heterogeneity.ts'

export interface TwoGroups {
  readonly pearson: number
  readonly likelihoodRatio: number
  /** Pearson's chi-square with half a plant taken off each difference: cautious for small counts. */
  readonly yates: number
  /** Chance of a difference as large by Pearson's chi-square. */
  readonly p: number
  /** Odds of survival in the first group over those in the second. */
  readonly oddsRatio: number
  readonly logOddsRatio: number
  /** Of the log odds ratio: root of the sum of one over each count (Woolf). */
  readonly standardError: number
}

/**
 * Two groups, each so many survived of so many: chi-square and odds ratio. For small counts take `exactStrata`.
 *
 * @source Woolf 1955, Ann. Hum. Genet. 19:251-253 (odds ratio); checked on the plum root cuttings of 1934
 * @example twoGroups({ entered: 240, survived: 156 }, { entered: 240, survived: 84 }).oddsRatio // 3.449
 */
export function twoGroups(first: Counted, second: Counted): TwoGroups {
  const { pearson, likelihoodRatio, p } = heterogeneity([first, second])
  const [a, b, c, d] = cellsOf(first, second)
  const n = a + b + c + d
  const lines = (a + b) * (c + d) * (a + c) * (b + d)
  const apart = Math.abs(a * d - b * c)
  const oddsRatio = (a * d) / (b * c)
  return {
    pearson,
    likelihoodRatio,
    yates: lines > 0 ? (n * (apart - Math.min(apart, n / 2)) ** 2) / lines : 0,
    p,
    oddsRatio,
    logOddsRatio: Math.log(oddsRatio),
    standardError: Math.sqrt(1 / a + 1 / b + 1 / c + 1 / d),
  }
}

/** Survived and dead of the first, survived and dead of the second. */
export const cellsOf = (first: Counted, second: Counted): [number, number, number, number] => [
  first.survived,
  first.entered - first.survived,
  second.survived,
  second.entered - second.survived,
]

/** One block (bench, length of cutting, week) in which two treatments stood side by side. */
export interface Stratum {
  readonly first: Counted
  readonly second: Counted
}

export interface CommonOddsRatio {
  readonly oddsRatio: number
  readonly low: number
  readonly high: number
  /** Mantel–Haenszel chi-square on one degree of freedom, and with half a plant taken off. */
  readonly chiSquare: number
  readonly chiSquareCorrected: number
  readonly p: number
}

/**
 * One odds ratio for two treatments compared inside several blocks.
 *
 * @returns Mantel–Haenszel estimate with the interval of Robins, Breslow & Greenland (95 % with z = 1.96)
 * @source Mantel & Haenszel 1959, J. Natl. Cancer Inst. 22:719-748; Robins et al. 1986, Biometrics 42:311-323;
 *   checked against R's mantelhaen.test
 * @example commonOddsRatio([{ first: { entered: 20, survived: 18 }, second: { entered: 20, survived: 11 }
 *   }]).oddsRatio // 7.364
 */
export function commonOddsRatio(strata: readonly Stratum[], z = 1.959963984540054): CommonOddsRatio {
  let r = 0
  let s = 0
  let pr = 0
  let mixed = 0
  let qs = 0
  let apart = 0
  let variance = 0
  for (const { first, second } of strata) {
    const [a, b, c, d] = cellsOf(first, second)
    const n = a + b + c + d
    if (n < 2) continue
    const alike = (a + d) / n
    const unlike = (b + c) / n
    r += (a * d) / n
    s += (b * c) / n
    pr += (alike * a * d) / n
    mixed += (alike * b * c + unlike * a * d) / n
    qs += (unlike * b * c) / n
    apart += a - ((a + b) * (a + c)) / n
    variance += ((a + b) * (c + d) * (a + c) * (b + d)) / (n * n * (n - 1))
  }
  const oddsRatio = r / s
  const error = Math.sqrt(pr / (2 * r * r) + mixed / (2 * r * s) + qs / (2 * s * s))
  const chiSquare = variance > 0 ? (apart * apart) / variance : 0
  return {
    oddsRatio,
    low: oddsRatio * Math.exp(-z * error),
    high: oddsRatio * Math.exp(z * error),
    chiSquare,
    chiSquareCorrected: variance > 0 ? Math.max(Math.abs(apart) - 0.5, 0) ** 2 / variance : 0,
    p: chiSquareAbove(chiSquare, 1),
  }
}

export interface SameOddsRatio {
  readonly pooledLogOddsRatio: number
  readonly chiSquare: number
  readonly degreesOfFreedom: number
  /** Small: the treatments do not differ by the same amount in every block. */
  readonly p: number
}

/**
 * Is the difference between two treatments the same in every block? Woolf's test; no count may be 0.
 * @throws RangeError for an argument out of range
 * @source Woolf 1955, Ann. Hum. Genet. 19:251-253
 * @example sameOddsRatio([{ first: { entered: 20, survived: 18 }, second: { entered: 20, survived: 11 } }, {
 *   first: { entered: 20, survived: 12 }, second: { entered: 20, survived: 10 } }]).p // 0.1406
 */
export function sameOddsRatio(strata: readonly Stratum[]): SameOddsRatio {
  const each = strata.map(({ first, second }) => twoGroups(first, second))
  let weight = 0
  let sum = 0
  for (const { logOddsRatio, standardError } of each) {
    if (!Number.isFinite(logOddsRatio))
      throw new RangeError('sameOddsRatio: every block must have survivors and dead in both groups, got a 0')
    weight += 1 / standardError ** 2
    sum += logOddsRatio / standardError ** 2
  }
  const pooledLogOddsRatio = sum / weight
  let chiSquare = 0
  for (const { logOddsRatio, standardError } of each)
    chiSquare += ((logOddsRatio - pooledLogOddsRatio) / standardError) ** 2
  const degreesOfFreedom = each.length - 1
  return {
    pooledLogOddsRatio,
    chiSquare,
    degreesOfFreedom,
    p: degreesOfFreedom > 0 ? chiSquareAbove(chiSquare, degreesOfFreedom) : 1,
  }
}

export interface NoThreeWay {
  readonly likelihoodRatio: number
  readonly pearson: number
  readonly p: number
  /** For two blocks: plants moved between cells until the odds ratios are equal (Bartlett's x). */
  readonly displacement: number
}

/**
 * Two blocks: counts that keep every margin and have equal odds ratios in both, and how far the real ones are from
 * them. Bartlett's x solves a·d·f·g (each shifted by x towards it) = b·c·e·h; found by halving.
 *
 * @source Bartlett 1935, J. R. Stat. Soc. Suppl. 2:248-252 (from memory); checked on his plum root cuttings
 * @example noThreeWay({ first: { entered: 240, survived: 156 }, second: { entered: 240, survived: 107 } },
 *   { first: { entered: 240, survived: 84 }, second: { entered: 240, survived: 31 } }).displacement // 5.1
 */
export function noThreeWay(one: Stratum, other: Stratum): NoThreeWay {
  const [a, b, c, d] = cellsOf(one.first, one.second)
  const [e, f, g, h] = cellsOf(other.first, other.second)
  const grow = [a, d, f, g]
  const shrink = [b, c, e, h]
  const excess = (x: number) =>
    grow.reduce((sum, cell) => sum + Math.log(cell + x), 0) -
    shrink.reduce((sum, cell) => sum + Math.log(cell - x), 0)
  let low = -Math.min(...grow)
  let high = Math.min(...shrink)
  for (let round = 0; round < 200; round++) {
    const middle = (low + high) / 2
    if (excess(middle) > 0) high = middle
    else low = middle
  }
  const x = (low + high) / 2
  const pairs = [
    ...grow.map(cell => [cell, cell + x] as const),
    ...shrink.map(cell => [cell, cell - x] as const),
  ]
  let pearson = 0
  let likelihoodRatio = 0
  for (const [observed, expected] of pairs) {
    pearson += (observed - expected) ** 2 / expected
    if (observed > 0) likelihoodRatio += 2 * observed * Math.log(observed / expected)
  }
  return { likelihoodRatio, pearson, p: chiSquareAbove(likelihoodRatio, 1), displacement: x }
}
