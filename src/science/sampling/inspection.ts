import gammaln from '@stdlib/math-base-special-gammaln'
import { requireBetween, requireWhole, requireWithin } from '../bounds.ts'

/**
 * How many plants of a lot to inspect so that a fault is found with the chance `sure` if `level` of the lot has it.
 * Without replacement (hypergeometric), so that small lots need nearly all. The faulty ones are counted as
 * level × lot, rounded down.
 *
 * @param lot whole plants, 1 or more
 * @param level share faulty that shall be found, above 0; with less than one faulty plant the answer is null
 * @param sure chance to find it, between 0 and 1
 * @param allowed faulty plants in the sample that do not yet count as found; 0 unless told
 * @returns plants to inspect, or null where the level is less than one plant of the lot or not even all plants suffice
 * @throws RangeError for an argument out of range
 * @source ISPM 31 (2008), Methodologies for sampling of consignments, appendix 2 and table 1
 * @example plantsToInspect(1000, 0.05, 0.95) // 57
 */
export function plantsToInspect(lot: number, level: number, sure: number, allowed = 0): number | null {
  requireWhole('plantsToInspect', 'lot', lot, 1)
  requireWithin('plantsToInspect', 'level', level, 0, 1)
  requireBetween('plantsToInspect', 'sure', sure, 0, 1)
  requireWhole('plantsToInspect', 'allowed', allowed, 0)
  // 0.29 · 100 is 28.999…: what was meant is 29.
  const faulty = Math.floor(lot * level + 1e-9)
  if (faulty <= allowed) return null
  let low = allowed
  let high = lot
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (chanceToAccept({ lot, faulty, sample: middle, allowed }) <= 1 - sure + 1e-12) high = middle
    else low = middle
  }
  return high
}

/**
 * How many to inspect in a lot so large that it has no end (binomial).
 * @param efficacy chance that a faulty plant is seen to be faulty, above 0; 1 unless told
 * @throws RangeError for an argument out of range
 * @source ISPM 31 (2008), appendix 3
 * @example plantsToInspectOfMany(0.05, 0.95) // 59
 */
export function plantsToInspectOfMany(level: number, sure: number, efficacy = 1): number {
  requireBetween('plantsToInspectOfMany', 'level', level, 0, 1)
  requireBetween('plantsToInspectOfMany', 'sure', sure, 0, 1)
  requireWithin('plantsToInspectOfMany', 'efficacy', efficacy, Number.MIN_VALUE, 1)
  return Math.ceil(Math.log1p(-sure) / Math.log1p(-level * efficacy) - 1e-9)
}

export interface LotSample {
  readonly lot: number
  readonly faulty: number
  readonly sample: number
  /** Faulty plants in the sample up to which the lot is accepted. */
  readonly allowed: number
}

/**
 * Chance that a sample shows no more than `allowed` faulty plants, so that the lot passes (hypergeometric).
 * @returns absolute error below 1e-10
 * @throws RangeError for an argument out of range
 * @source hypergeometric distribution, as ISPM 31 (2008), appendix 2
 * @example chanceToAccept({ lot: 500, faulty: 20, sample: 50, allowed: 1 }) // 0.3865
 */
export function chanceToAccept({ lot, faulty, sample, allowed }: LotSample): number {
  requireWhole('chanceToAccept', 'lot', lot, 1)
  requireWhole('chanceToAccept', 'faulty', faulty, 0, lot)
  requireWhole('chanceToAccept', 'sample', sample, 0, lot)
  requireWhole('chanceToAccept', 'allowed', allowed, 0)
  const logWays = (n: number, k: number) => gammaln(n + 1) - gammaln(k + 1) - gammaln(n - k + 1)
  const all = logWays(lot, sample)
  let sum = 0
  for (let found = Math.max(0, sample + faulty - lot); found <= Math.min(allowed, sample, faulty); found++)
    sum += Math.exp(logWays(faulty, found) + logWays(lot - faulty, sample - found) - all)
  return Math.min(1, sum)
}

/**
 * After a sample with `found` faulty plants: the largest number of faulty plants in the lot that still fits, with the
 * chance of so few being found at least 1 − sure.
 * @throws RangeError for an argument out of range
 * @source as `plantsToInspect`, asked the other way
 * @example mostFaulty(240, 32, 0, 0.95) // 20
 */
export function mostFaulty(lot: number, sample: number, found: number, sure: number): number {
  requireWhole('mostFaulty', 'sample', sample, 0, lot)
  requireWhole('mostFaulty', 'found', found, 0, sample)
  requireBetween('mostFaulty', 'sure', sure, 0, 1)
  let faulty = found
  while (
    faulty < lot - (sample - found) &&
    chanceToAccept({ lot, faulty: faulty + 1, sample, allowed: found }) > 1 - sure
  )
    faulty++
  return faulty
}
