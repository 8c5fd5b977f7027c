import money from '../fixtures/money.json' with { type: 'json' }
import { annuityFactor, equivalentYearlyValue, netPresentValue, paybackYear } from '../money/present-value.ts'
import { checkOf, type Fixture } from './fixture.ts'
import type { OutsideCheck } from './outside-check.ts'

const fixture = money as unknown as Fixture

/** The sum of flows of which the first comes at the end of the first year. */
const fromYearOne = (rate: number, flows: readonly number[]) => netPresentValue(rate, [0, ...flows])

/** Present value, annuity, equivalent yearly value and payback. */
export const moneyChecks = (): readonly OutsideCheck[] => [
  ...checkOf<{ rate: number; cashflowsFromYear1: number | number[] }, { npv: number }>(
    fixture,
    'npv-single',
    'present value of one sum a year away',
    ({ rate, cashflowsFromYear1 }) => ({
      got: { npv: fromYearOne(rate, [cashflowsFromYear1].flat()) },
      tolerance: 1e-8,
    }),
  ),
  ...checkOf<{ rate: number; cashflowsFromYear1: number[] }, { npv: number }>(
    fixture,
    'npv-4-years',
    'present value of four yearly sums',
    ({ rate, cashflowsFromYear1 }) => ({
      got: { npv: fromYearOne(rate, cashflowsFromYear1) },
      tolerance: 1e-8,
    }),
  ),
  ...checkOf<{ rate: number; cashflowsFromPeriod1: number[] }, { npv: number }>(
    fixture,
    'npv-monthly',
    'present value of monthly sums',
    ({ rate, cashflowsFromPeriod1 }) => ({
      got: { npv: fromYearOne(rate, cashflowsFromPeriod1) },
      tolerance: 1e-8,
    }),
  ),
  ...checkOf<{ rate: number; cashflows: number[] }, object>(
    fixture,
    'npv-spreadsheet-convention',
    'present value with the first sum now, and as a spreadsheet counts it',
    ({ rate, cashflows }) => ({
      got: {
        npvFirstFlowAtEndOfPeriod1: fromYearOne(rate, cashflows),
        npvFirstFlowAtTime0: netPresentValue(rate, cashflows),
      },
      tolerance: 0.005,
    }),
  ),
  ...checkOf<{ rate: number; cashflows: number[] }, object>(
    fixture,
    'npv-2',
    'present value as a spreadsheet manual prints it',
    ({ rate, cashflows }) => ({
      got: { npvFirstFlowAtEndOfPeriod1: fromYearOne(rate, cashflows) },
      tolerance: 0.005,
    }),
  ),
  ...checkOf<{ rate: number; n: number; payment: number }, { pv: number }>(
    fixture,
    'pv-annuity',
    'present value of a yearly payment',
    ({ rate, n, payment }) => ({ got: { pv: payment * annuityFactor(rate, n) }, tolerance: 0.005 }),
  ),
  ...checkOf<
    { npv: number | number[]; rate: number; years: number | number[] },
    { eaa: number | readonly number[] }
  >(fixture, 'eaa-', 'the equal yearly value of projects of different length', ({ npv, rate, years }) => {
    const lives = [years].flat()
    const got = [npv].flat().map((value, i) => equivalentYearlyValue(value, rate, lives[i]!))
    const isList = Array.isArray(npv)
    return { got: { eaa: isList ? got : got[0]! }, tolerance: isList ? 1 : 0.005 }
  }),
  ...checkOf<{ rate: number; baseYear: number; flows: { year: number; value: number }[] }, { pv: number }>(
    fixture,
    'pv-long-horizon',
    'present value of fellings decades away',
    ({ rate, baseYear, flows }) => {
      const byYear = new Array<number>(Math.max(...flows.map(({ year }) => year)) - baseYear + 1).fill(0)
      for (const { year, value } of flows) byYear[year - baseYear] = value
      const alone = flows.map(({ year, value }) => value * (1 + rate) ** (baseYear - year))
      return { got: { terms: alone, pv: netPresentValue(rate, byYear) }, tolerance: 0.6 }
    },
  ),
  ...checkOf<{ rate: number; cashflowsFromYear0: number[] }, object>(
    fixture,
    'perennial-orchard',
    'an orchard: present and equal yearly value, payback plain and discounted',
    ({ rate, cashflowsFromYear0 }) => {
      const npv = netPresentValue(rate, cashflowsFromYear0)
      return {
        got: {
          npv,
          eaa: equivalentYearlyValue(npv, rate, cashflowsFromYear0.length - 1),
          valueOfInfiniteReplacement: equivalentYearlyValue(npv, rate, cashflowsFromYear0.length - 1) / rate,
          paybackYear: paybackYear(0, cashflowsFromYear0),
          discountedPaybackYear: paybackYear(rate, cashflowsFromYear0),
        },
        tolerance: { paybackYear: 0, discountedPaybackYear: 0, other: 0.001 },
      }
    },
    expected => {
      const { irr: _, ...rest } = expected as { irr: number }
      return rest
    },
  ),
]
