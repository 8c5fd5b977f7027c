import { requireAbove, requireBetween, requireWhole } from '../bounds.ts'

/**
 * Net present value of yearly flows of money, the first of them now: Σ flow(t) / (1 + r)^t.
 * A spreadsheet that puts the first flow at the end of the first year gives this divided by 1 + r.
 * @param yearlyRate what money earns elsewhere, above −1 (0.06 for 6 %)
 * @param flows money in (+) and out (−) of year 0, 1, 2 …
 * @throws RangeError for an argument out of range
 * @source Brealey, Myers & Allen, Principles of Corporate Finance, ch. 2, from memory
 * @example netPresentValue(0.1, [-10000, 3000, 4200, 6800]) // 1307.29
 */
export function netPresentValue(yearlyRate: number, flows: ArrayLike<number>): number {
  requireAbove('netPresentValue', 'yearlyRate', yearlyRate, -1)
  let value = 0
  for (let year = flows.length - 1; year >= 0; year--) value = value / (1 + yearlyRate) + flows[year]!
  return value
}

/**
 * What 1 paid at the end of each of so many years is worth now: (1 − (1 + r)^−n) / r, and n where r is 0.
 * @param yearlyRate above −1
 * @param years whole, 0 or more
 * @throws RangeError for an argument out of range
 * @source Brealey, Myers & Allen, Principles of Corporate Finance, ch. 2, from memory
 * @example annuityFactor(0.07, 20) // 10.594
 */
export function annuityFactor(yearlyRate: number, years: number): number {
  requireAbove('annuityFactor', 'yearlyRate', yearlyRate, -1)
  requireWhole('annuityFactor', 'years', years, 0)
  return yearlyRate === 0 ? years : -Math.expm1(-years * Math.log1p(yearlyRate)) / yearlyRate
}

/**
 * The same sum at the end of every year that is worth as much as a present value: lives of different length compared.
 * @param yearlyRate above −1
 * @param years whole, 1 or more
 * @throws RangeError for an argument out of range
 * @source Klemperer, Forest Resource Economics and Finance, ch. 4 (equivalent annual annuity), from memory
 * @example equivalentYearlyValue(3000000, 0.1, 5) // 791392.44
 */
export function equivalentYearlyValue(presentValue: number, yearlyRate: number, years: number): number {
  requireWhole('equivalentYearlyValue', 'years', years, 1)
  return presentValue / annuityFactor(yearlyRate, years)
}

/**
 * The first year by whose end the discounted flows so far, once spent, have come back for good within the years looked
 * at: from then on their sum stays at 0 or above. Null where they never do.
 * @param yearlyRate 0 for the plain payback; above −1
 * @throws RangeError for an argument out of range
 * @example paybackYear(0, [-12000, -1500, -1500, 0, 1500, 3500, 5000, 5000]) // 7
 */
export function paybackYear(yearlyRate: number, flows: ArrayLike<number>): number | null {
  requireBetween('paybackYear', 'yearlyRate', yearlyRate, -1, Number.POSITIVE_INFINITY)
  let sum = 0
  let worth = 1
  let paidBack: number | null = null
  for (let year = 0; year < flows.length; year++) {
    sum += flows[year]! * worth
    worth /= 1 + yearlyRate
    if (sum < 0) paidBack = null
    else paidBack ??= year
  }
  return paidBack
}
