import fc from 'fast-check'
import { expect, test } from 'vitest'
import * as units from './units.ts'

test('the published definitions are met to their last digit', () => {
  // NIST Special Publication 811 (2008), appendix B.
  expect(units.mmFromInches(1)).toBe(25.4)
  expect(units.squareMetresFromSquareFeet(1)).toBeCloseTo(0.09290304, 12)
  expect(units.kilogramsFromPounds(1)).toBe(0.45359237)
  expect(units.gramsFromOunces(1)).toBeCloseTo(28.349523125, 9)
  expect(units.litresFromUsGallons(1)).toBe(3.785411784)
  expect(units.litresFromCubicInches(231)).toBeCloseTo(units.litresFromUsGallons(1), 12)
  expect(units.litresFromImperialGallons(1)).toBe(4.54609)
})

test('temperatures meet at −40, water freezes at 32 and boils at 212', () => {
  expect(units.celsiusFromFahrenheit(-40)).toBe(-40)
  expect(units.celsiusFromFahrenheit(32)).toBe(0)
  expect(units.celsiusFromFahrenheit(212)).toBeCloseTo(100, 12)
})

test('what is turned there and back is what it was', () => {
  const pairs = [
    [units.mmFromInches, units.inchesFromMm],
    [units.squareMetresFromSquareFeet, units.squareFeetFromSquareMetres],
    [units.kilogramsFromPounds, units.poundsFromKilograms],
    [units.celsiusFromFahrenheit, units.fahrenheitFromCelsius],
    [units.ppmFromPercent, units.percentFromPpm],
  ] as const
  for (const [there, back] of pairs)
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), value => {
        expect(Math.abs(back(there(value)) - value)).toBeLessThan(1e-9 * (1 + Math.abs(value)))
      }),
    )
})
