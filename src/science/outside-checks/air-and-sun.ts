import { MM_PER_MJ } from '../climate/evaporation.ts'
import {
  dayLengthHours,
  declination,
  extraterrestrialRadiationMJ,
  inverseDistance,
  sunsetHourAngle,
} from '../climate/sun.ts'
import {
  airPressureKPa,
  dewPointCelsius,
  psychrometricConstantKPaPerCelsius,
  saturationVapourPressureKPa,
  slopeOfSaturationKPaPerCelsius,
  vapourPressureDeficitKPa,
  vapourPressureFromWetBulbKPa,
} from '../climate/vapour-pressure.ts'
import fao56 from '../fixtures/fao56.json' with { type: 'json' }
import { checkOf, type Fixture } from './fixture.ts'
import type { OutsideCheck } from './outside-check.ts'

const water = fao56 as unknown as Fixture

/** Water in the air, daylight and radiation. */
export const airAndSunChecks = (): readonly OutsideCheck[] => [...airChecks(), ...sunChecks()]

const airChecks = (): readonly OutsideCheck[] => [
  ...checkOf<{ elevation_m: number }, object>(
    water,
    'ex2-',
    'air pressure and psychrometric constant',
    input => {
      const pressure = airPressureKPa(input.elevation_m)
      return {
        got: { pressure_kPa: pressure, gamma_kPa_C: psychrometricConstantKPaPerCelsius(pressure) },
        tolerance: { pressure_kPa: 0.05, gamma_kPa_C: 0.0005 },
      }
    },
  ),
  ...checkOf<{ tmax: number; tmin: number }, object>(
    water,
    'ex3-saturation',
    'saturation vapour pressure of the warmest and coldest hour, and their mean',
    ({ tmax, tmin }) => {
      const esTmax = saturationVapourPressureKPa(tmax)
      const esTmin = saturationVapourPressureKPa(tmin)
      return { got: { esTmax, esTmin, esMean: (esTmax + esTmin) / 2 }, tolerance: 0.0005 }
    },
  ),
  ...checkOf<{ t: number }, object>(water, 'ex3-slope', 'slope of the saturation curve', ({ t }) => ({
    got: { slope: slopeOfSaturationKPaPerCelsius(t) },
    tolerance: 1e-6,
  })),
  ...checkOf<{ twet: number; tdry: number; elevation_m: number }, object>(
    water,
    'ex4-',
    'vapour pressure from a wet and a dry thermometer',
    ({ twet, tdry, elevation_m }) => ({
      got: {
        pressure_kPa: airPressureKPa(elevation_m),
        esWet: saturationVapourPressureKPa(twet),
        ea: vapourPressureFromWetBulbKPa(tdry, twet, airPressureKPa(elevation_m)),
      },
      tolerance: { pressure_kPa: 0.05, esWet: 0.0005, ea: 0.005 },
    }),
  ),
  ...checkOf<{ tmin: number; tmax: number; rhmin: number; rhmax: number }, object>(
    water,
    'ex6-',
    'vapour pressure deficit of a day',
    ({ tmin, tmax, rhmin, rhmax }) => {
      const es = (saturationVapourPressureKPa(tmin) + saturationVapourPressureKPa(tmax)) / 2
      const vpd = (vapourPressureDeficitKPa(tmin, rhmax) + vapourPressureDeficitKPa(tmax, rhmin)) / 2
      return { got: { es, vpd }, tolerance: 0.006 }
    },
  ),
  ...checkOf<{ ea_kPa: number[] }, object>(
    water,
    'dewpoint-',
    'dew point from vapour pressure',
    ({ ea_kPa }) => ({
      got: { tdew: ea_kPa.map(dewPointCelsius) },
      tolerance: 0.02,
    }),
  ),
  ...checkOf<{ t: number[] }, object>(
    water,
    'annex-saturation-',
    'table of saturation vapour pressure',
    ({ t }) => ({
      got: { e: t.map(saturationVapourPressureKPa) },
      tolerance: 0.0005,
    }),
  ),
  ...checkOf<{ z: number[] }, object>(
    water,
    'annex-pressure-',
    'table of air pressure by height',
    ({ z }) => ({
      got: {
        P: z.map(airPressureKPa),
        gamma: z.map(m => psychrometricConstantKPaPerCelsius(airPressureKPa(m))),
      },
      tolerance: { P: 1e-4, gamma: 1e-6 },
    }),
  ),
  ...checkOf<{ t: number[]; rh: number[] }, object>(
    water,
    'vpd-grid',
    'vapour pressure deficit and dew point over a grid of temperature and humidity',
    ({ t, rh }) => ({
      got: {
        vpd: t.map((celsius, i) => vapourPressureDeficitKPa(celsius, rh[i]!)),
        tdew: t.map((celsius, i) => dewPointCelsius((saturationVapourPressureKPa(celsius) * rh[i]!) / 100)),
      },
      tolerance: 1e-6,
    }),
  ),
  ...checkOf<{ tdry: number[]; depression: number[]; pressure: number }, object>(
    water,
    'psychrometric-grid',
    'vapour pressure and humidity over a grid of dry and wet temperature',
    ({ tdry, depression, pressure }) => {
      const ea = tdry.map((dry, i) => vapourPressureFromWetBulbKPa(dry, dry - depression[i]!, pressure))
      return {
        got: { ea, rh: ea.map((kPa, i) => (100 * kPa) / saturationVapourPressureKPa(tdry[i]!)) },
        tolerance: 1e-6,
      }
    },
  ),
]

const sunChecks = (): readonly OutsideCheck[] => [
  ...checkOf<{ latitude: number; dayOfYear: number }, object>(
    water,
    'ex8-',
    'radiation above the air and what it is made from',
    ({ latitude, dayOfYear }) => {
      const radiation = extraterrestrialRadiationMJ(latitude, dayOfYear)
      return {
        got: {
          dr: inverseDistance(dayOfYear),
          declination: declination(dayOfYear),
          sunsetHourAngle: sunsetHourAngle(latitude, dayOfYear),
          Ra_MJ: radiation,
          Ra_mm: MM_PER_MJ * radiation,
        },
        tolerance: { sunsetHourAngle: 0.001, Ra_MJ: 0.05, Ra_mm: 0.05, other: 0.0005 },
      }
    },
  ),
  ...checkOf<{ latitude: number; dayOfYear: number }, object>(
    water,
    'ex9-',
    'hours of daylight',
    ({ latitude, dayOfYear }) => ({ got: { N: dayLengthHours(latitude, dayOfYear) }, tolerance: 0.05 }),
  ),
  ...checkOf<{ latitudes: number[]; daysOfYear: number[] }, object>(
    water,
    'Ra-N-grid',
    'radiation and daylight over a grid of latitudes and days',
    ({ latitudes, daysOfYear }) => ({
      got: {
        Ra: latitudes.map(latitude => daysOfYear.map(day => extraterrestrialRadiationMJ(latitude, day))),
        N: latitudes.map(latitude => daysOfYear.map(day => dayLengthHours(latitude, day))),
      },
      tolerance: 1e-5,
    }),
  ),
]
