import fc from 'fast-check'
import { expect, test } from 'vitest'
import { annuityFactor, equivalentYearlyValue, netPresentValue, paybackYear } from './present-value.ts'

const rates = fc.double({ min: 0, max: 0.5, noNaN: true })
const flows = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 40 })

test('equal yearly payments are worth the payment times the annuity factor', () => {
  fc.assert(
    fc.property(rates, fc.integer({ min: 1, max: 60 }), (rate, years) => {
      const worth = netPresentValue(rate, [0, ...new Array<number>(years).fill(7)])
      expect(annuityFactor(rate, years) * 7).toBeCloseTo(worth, 6)
      expect(equivalentYearlyValue(worth, rate, years)).toBeCloseTo(7, 8)
    }),
  )
})

test('the present value of two plans together is that of each added', () => {
  fc.assert(
    fc.property(rates, flows, (rate, some) => {
      const doubled = some.map(value => 2 * value)
      expect(netPresentValue(rate, doubled)).toBeCloseTo(2 * netPresentValue(rate, some), 3)
    }),
  )
})

test('payback is the first year from which the sum never falls below what was spent', () => {
  expect(paybackYear(0, [-100, 60, 60])).toBe(2)
  expect(paybackYear(0, [-100, 60, 60, -50])).toBeNull()
  expect(paybackYear(0, [-100, 200, -150, 100])).toBe(3)
  expect(paybackYear(0, [-100, 0, 0])).toBeNull()
  expect(paybackYear(0.1, [-100, 105])).toBeNull()
})

test('a rate that eats everything is refused', () => {
  expect(() => netPresentValue(-1, [1])).toThrow('netPresentValue: yearlyRate must be above -1, got -1')
})
