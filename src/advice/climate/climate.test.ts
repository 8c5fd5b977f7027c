import fc from 'fast-check'
import { expect, test } from 'vitest'
import { chillByWarmth, chillHoursOf } from './chill-and-heat.ts'
import { monthsBetween } from './climate.ts'
import { monthsAtPlace } from './months-at-place.ts'
import { coldestNightOnceIn, readClimate } from './read-climate.ts'

const normals = (coldestNightCelsius: number, coldestInTenYearsCelsius: number | null) =>
  readClimate({
    kind: 'normals',
    coldestNightCelsius,
    coldestInTenYearsCelsius,
    coldestMonthCelsius: 2,
    warmestMonthCelsius: 20,
  })

test('typed figures come back: the coldest night of a usual year, and of ten', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -30, max: 15, noNaN: true }),
      fc.double({ min: 0.5, max: 12, noNaN: true }),
      (usual, drop) => {
        const climate = normals(usual, usual - drop)
        expect(coldestNightOnceIn(climate, 2)).toBeCloseTo(usual, 8)
        expect(coldestNightOnceIn(climate, 10)).toBeCloseTo(usual - drop, 8)
      },
    ),
  )
})

test('a record of years gives its own middle and tenth, nearly, and is surer the longer it is', () => {
  const years = [-4, -7, -5.5, -9, -6, -3.5, -8, -5, -6.5, -11, -4.5, -7.5, -6, -5, -8.5]
  const said = { kind: 'record', coldestMonthCelsius: 2, warmestMonthCelsius: 20 } as const
  const short = readClimate({ ...said, yearlyMinimaCelsius: years })
  expect(Math.abs(coldestNightOnceIn(short, 2) + 6)).toBeLessThan(0.7)
  expect(Math.abs(coldestNightOnceIn(short, 10) + 9)).toBeLessThan(1)
  const long = readClimate({ ...said, yearlyMinimaCelsius: [...years, ...years, ...years] })
  expect(long.coldestNightError).toBeLessThan(0.7 * short.coldestNightError)
})

test('a record of equal years is no trouble', () => {
  const climate = readClimate({
    kind: 'record',
    yearlyMinimaCelsius: [-3, -3, -3, -3, -3],
    coldestMonthCelsius: 2,
    warmestMonthCelsius: 20,
  })
  expect(Math.abs(coldestNightOnceIn(climate, 2) + 3)).toBeLessThan(0.5)
})

test('from place alone: colder with latitude and height, the same on both hemispheres, and less sure', () => {
  const at = (latitude: number, heightMetres: number) =>
    readClimate({ kind: 'place', latitude, heightMetres, sea: 'some way off' })
  const night = (latitude: number, height: number) => coldestNightOnceIn(at(latitude, height), 2)
  expect(night(0, 0)).toBeGreaterThan(night(25, 0))
  expect(night(25, 0)).toBeGreaterThan(night(45, 0))
  expect(night(25, 0) - night(25, 1000)).toBeCloseTo(6.5, 6)
  expect(at(-33, 100).monthMeansCelsius).toEqual(at(33, 100).monthMeansCelsius)
  expect(at(45, 0).coldestNightError).toBeGreaterThan(2 * normals(-5, null).coldestNightError)
})

test('chill is least in heat, most in a cool winter, and hardly more in a hard one', () => {
  const of = (coldest: number, warmest: number) =>
    chillHoursOf({ monthMeansCelsius: monthsBetween(coldest, warmest) }, 0)
  expect(of(22, 27)).toBeLessThan(20)
  expect(of(4, 22)).toBeGreaterThan(1000)
  expect(of(13, 26)).toBeLessThan(500)
  expect(of(-18, 20)).toBeLessThan(of(3, 20))
})

test('chill read between half degrees is that of the very warmth', () => {
  const climate = normals(-5, null)
  const quick = chillByWarmth(climate)
  fc.assert(
    fc.property(fc.double({ min: -11, max: 11, noNaN: true }), warmer => {
      expect(Math.abs(quick(warmer) - chillHoursOf(climate, warmer))).toBeLessThan(4)
    }),
  )
})

test('the months of a place run from January: coldest in the north, warmest in the south, and alike over the equator', () => {
  const north = monthsAtPlace(47, 400)
  const south = monthsAtPlace(-47, 400)
  expect(north.meansCelsius.indexOf(Math.min(...north.meansCelsius))).toBe(0)
  expect(north.meansCelsius.indexOf(Math.max(...north.meansCelsius))).toBe(6)
  expect(south.meansCelsius).toEqual([...north.meansCelsius.slice(6), ...north.meansCelsius.slice(0, 6)])
  // Zürich-Fluntern, 47.4° N, 556 m, normals 1991–2020 of the national weather service: 1.0 °C in January, 19.1 °C in July
  // (from memory).
  const there = monthsAtPlace(47.4, 556)
  expect(Math.abs(there.meansCelsius[0]! - 1)).toBeLessThan(2 * there.errorCelsius)
  expect(Math.abs(there.meansCelsius[6]! - 19.1)).toBeLessThan(2 * there.errorCelsius)
})
