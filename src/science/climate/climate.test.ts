import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { chillPortions } from './chill.ts'
import { degreeDays } from './degree-days.ts'
import { dayLengthHours, extraterrestrialRadiationMJ } from './sun.ts'
import { dewPointCelsius, saturationVapourPressureKPa, vapourPressureDeficitKPa } from './vapour-pressure.ts'

describe('degree-days', () => {
  test.each(['sine', 'triangle'] as const)(
    'by %s are the area above the threshold, summed in small steps',
    curve => {
      const shape = (part: number) =>
        curve === 'sine' ? Math.cos(2 * Math.PI * part) : 1 - 4 * Math.abs(part - 0.5)
      for (const [min, max] of [
        [3, 21],
        [12, 33],
        [5, 34],
        [-4, 12],
      ] as const) {
        let area = 0
        const steps = 20_000
        for (let i = 0; i < steps; i++) {
          const celsius = (max + min) / 2 + ((max - min) / 2) * shape((i + 0.5) / steps)
          area += Math.min(Math.max(celsius - 10, 0), 20) / steps
        }
        expect(degreeDays(min, max, { lower: 10, upper: 30, curve })).toBeCloseTo(area, 5)
      }
    },
  )

  test('rise with both temperatures and fall with the threshold', () => {
    const celsius = fc.double({ min: -10, max: 40, noNaN: true })
    fc.assert(
      fc.property(
        celsius,
        fc.double({ min: 0, max: 25, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (min, range, more) => {
          const days = (low: number, high: number, lower: number) =>
            degreeDays(low, high, { lower, curve: 'sine' })
          const here = days(min, min + range, 10)
          expect(days(min, min + range + more, 10)).toBeGreaterThanOrEqual(here - 1e-9)
          expect(days(min + more, min + range + more, 10)).toBeGreaterThanOrEqual(here - 1e-9)
          expect(days(min, min + range, 10 + more)).toBeLessThanOrEqual(here + 1e-9)
        },
      ),
    )
  })
})

describe('sun and air', () => {
  test('the other hemisphere has our day half a year later', () => {
    for (const day of [20, 80, 172, 246])
      expect(dayLengthHours(35, day)).toBeCloseTo(24 - dayLengthHours(-35, day), 9)
  })

  test('no radiation comes in polar night', () => {
    expect(extraterrestrialRadiationMJ(75, 355)).toBeCloseTo(0, 9)
  })

  test('air at its dew point is saturated and has no deficit', () => {
    for (const celsius of [-5, 3, 18, 32]) {
      expect(dewPointCelsius(saturationVapourPressureKPa(celsius))).toBeCloseTo(celsius, 9)
      expect(vapourPressureDeficitKPa(celsius, 100)).toBe(0)
    }
  })

  test('humidity over 100 is refused', () => {
    expect(() => vapourPressureDeficitKPa(25, 140)).toThrow(
      'vapourPressureDeficitKPa: relativeHumidityPercent must be 0 to 100, got 140',
    )
  })
})

test('chill once fixed is never lost', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -5, max: 25, noNaN: true }), { minLength: 1, maxLength: 300 }),
      hours => {
        const portions = chillPortions(hours)
        portions.forEach((value, i) => {
          if (i > 0) expect(value).toBeGreaterThanOrEqual(portions[i - 1]!)
        })
      },
    ),
  )
})
