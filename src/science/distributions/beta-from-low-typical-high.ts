import betaCdf from '@stdlib/stats-base-dists-beta-cdf'
import { requireWithin } from '../bounds.ts'

/** Share of cases that a stated range is taken to hold. */
const HELD = 0.9
/** A middle nearer to 0 or 1 than this is taken at this distance: no Beta has its median at 0 or 1. */
const NEAREST_TO_END = 1e-3
const FLATTEST = 1
const SHARPEST = 1e6

/**
 * The Beta for a share of which people say "between low and high, typically so much".
 *
 * `typical` is taken as the median: who says "usually 70 %" means as many batches above as below; a mean would have
 * to be calculated, and a mode does not exist for every Beta. `low` to `high` are taken to hold nine cases of ten.
 * Two numbers cannot meet three wishes: the median and the 90 % inside the range are met exactly, while the other
 * 10 % need not be split evenly between below and above.
 * alpha + beta is kept between 1 and 1,000,000; a range wider or narrower than that allows gets the nearest.
 *
 * @param low 0 to 1
 * @param typical low to high
 * @param high 0 to 1
 * @returns alpha and beta; median and 90 % met to 1e-9
 * @throws RangeError for an argument out of range
 * @source what is met, and how, is our choice; no source
 * @example betaFromLowTypicalHigh(0.5, 0.7, 0.85) // { alpha: 12.5, beta: 5.54 }
 */
export function betaFromLowTypicalHigh(
  low: number,
  typical: number,
  high: number,
): { alpha: number; beta: number } {
  requireWithin('betaFromLowTypicalHigh', 'low', low, 0, 1)
  requireWithin('betaFromLowTypicalHigh', 'high', high, low, 1)
  requireWithin('betaFromLowTypicalHigh', 'typical', typical, low, high)
  const median = Math.min(Math.max(typical, NEAREST_TO_END), 1 - NEAREST_TO_END)
  const held = (logPrecision: number) => {
    const { alpha, beta } = betaWithMedian(median, Math.exp(logPrecision))
    return betaCdf(high, alpha, beta) - betaCdf(low, alpha, beta) - HELD
  }
  const flattest = Math.log(FLATTEST)
  const sharpest = Math.log(SHARPEST)
  if (held(flattest) >= 0) return betaWithMedian(median, FLATTEST)
  if (!(held(sharpest) > 0)) return betaWithMedian(median, SHARPEST)
  return betaWithMedian(median, Math.exp(rootBetween(held, flattest, sharpest)))
}

/** The Beta with a given median and a given alpha + beta. */
function betaWithMedian(median: number, precision: number): { alpha: number; beta: number } {
  // The logit of the mean is sought; by symmetry the half nearer to 0 is enough and keeps the digits.
  if (median > 0.5) {
    const mirrored = betaWithMedian(1 - median, precision)
    return { alpha: mirrored.beta, beta: mirrored.alpha }
  }
  const below = (logMean: number) => {
    const mean = Math.exp(logMean)
    return 0.5 - betaCdf(median, mean * precision, (1 - mean) * precision)
  }
  const high = Math.log(0.5)
  const low = Math.log(Math.min(median, 0.5) / 4) - 8 / precision
  const mean = below(high) <= 0 ? 0.5 : Math.exp(rootBetween(below, low, high))
  return { alpha: mean * precision, beta: (1 - mean) * precision }
}

/**
 * Root of a rising function between two ends: straight lines through the last two points, halving where a line leads
 * out of the two ends or does not come nearer fast enough.
 */
function rootBetween(rising: (x: number) => number, from: number, to: number): number {
  let low = from
  let high = to
  let before = from
  let atBefore = rising(from)
  let x = to
  let y = rising(to)
  for (let i = 0; i < 100 && high - low > 1e-13 * (1 + Math.abs(high)); i++) {
    const line = x - (y * (x - before)) / (y - atBefore)
    const next = i % 8 !== 7 && line > low && line < high ? line : (low + high) / 2
    before = x
    atBefore = y
    x = next
    y = rising(x)
    if (Math.abs(y) < 1e-11) break
    if (y < 0) low = x
    else high = x
  }
  return x
}
