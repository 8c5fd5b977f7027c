import fc from 'fast-check'
import { expect, test } from 'vitest'
import { figureTyped, typed } from './figure-typed.ts'
import { shownUnit } from './shown-unit.ts'

test('what is shown in a unit and typed back is what it was', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(
        '°C',
        'mm',
        'm',
        'a m²',
        'kg a m²',
        'mm a plant',
        'kg',
        'l a plant',
        'ml a plant',
        'share',
        'years',
        'money',
        '',
      ),
      fc.constantFrom('metric' as const, 'us' as const),
      fc.double({ min: -500, max: 5000, noNaN: true }),
      (unit, units, value) => {
        const shown = shownUnit(unit, units)
        expect(shown.from(shown.to(value))).toBeCloseTo(value, 8)
      },
    ),
  )
})

test('measures by definition: 0 °C is 32 °F, 25.4 mm an inch, 0.3048 m a foot, 1 kg/m² 0.2048 lb/ft², a quart 0.9464 l (NIST SP 811)', () => {
  const us = (unit: string, value: number) => shownUnit(unit, 'us').to(value)
  expect(us('°C', 0)).toBe(32)
  expect(us('mm', 25.4)).toBeCloseTo(1, 12)
  expect(us('m', 0.3048)).toBeCloseTo(1, 12)
  expect(us('kg a m²', 1)).toBeCloseTo(0.204816, 6)
  expect(us('a m a year', 1)).toBeCloseTo(0.3048, 12)
  expect(us('kg', 0.45359237)).toBeCloseTo(1, 12)
  expect(us('l a plant', 0.946352946)).toBeCloseTo(1, 12)
  expect(us('ml a plant', 29.5735295625)).toBeCloseTo(1, 12)
  expect(typed(us('mm', 10))).toBe('0.394')
})

test('three numbers that rise are a figure, with a comma or a point; anything else is none', () => {
  const percent = shownUnit('share', 'metric')
  const of = (low: string, typical: string, high: string) => figureTyped({ low, typical, high }, percent)
  expect(of('40', '52,5', '60')).toMatchObject({
    low: 0.4,
    typical: 0.525,
    high: 0.6,
    basis: 'set by the nursery',
  })
  expect(of('60', '50', '40')).toBeNull()
  expect(of('', '50', '60')).toBeNull()
  expect(of('a few', '50', '60')).toBeNull()
})
