import {
  clearSkyRadiationMJ,
  evaporationFromTemperatureMm,
  netLongwaveMJ,
  netRadiationMJ,
  netSolarMJ,
  referenceEvaporationMm,
  soilHeatOfMonthMJ,
  solarRadiationFromRangeMJ,
  solarRadiationMJ,
  windAtTwoMetres,
} from '../climate/evaporation.ts'
import {
  extraterrestrialHourMJ,
  netLongwaveHourMJ,
  referenceEvaporationHourMm,
} from '../climate/hourly-evaporation.ts'
import { dayLengthHours, extraterrestrialRadiationMJ } from '../climate/sun.ts'
import {
  airPressureKPa,
  psychrometricConstantKPaPerCelsius,
  saturationVapourPressureKPa,
  slopeOfSaturationKPaPerCelsius,
  vapourPressureFromHumidityKPa,
} from '../climate/vapour-pressure.ts'
import fao56 from '../fixtures/fao56.json' with { type: 'json' }
import { checkOf, type Fixture } from './fixture.ts'
import type { OutsideCheck } from './outside-check.ts'

const water = fao56 as unknown as Fixture

/** Water that a crop gives off, with every step on the way. */
export const evaporationChecks = (): readonly OutsideCheck[] => [
  ...checkOf<{ tmin: number; tmax: number; rhmax: number; rhmin: number }, object>(
    water,
    'ex5-',
    'vapour pressure from humidity',
    ({ tmin, tmax, rhmax, rhmin }) => ({
      got: {
        esTmin: saturationVapourPressureKPa(tmin),
        esTmax: saturationVapourPressureKPa(tmax),
        eaRhMinMax: vapourPressureFromHumidityKPa(tmin, tmax, rhmax, rhmin),
        eaRhMaxOnly: vapourPressureFromHumidityKPa(tmin, tmax, rhmax, null),
      },
      tolerance: 0.005,
    }),
    // The mean humidity alone says less than either, and is not used.
    expected => Object.fromEntries(Object.entries(expected).filter(([name]) => name !== 'eaRhMean')),
  ),
  ...checkOf<{ Rs: number; Rnl: number }, object>(water, 'ex12-', 'sunlight kept', ({ Rs, Rnl }) => ({
    got: { Rns: netSolarMJ(Rs), Rn: netSolarMJ(Rs) - Rnl },
    // The source cuts off its second digit.
    tolerance: 0.07,
  })),
  ...checkOf<{ tMarch: number; tMay: number }, object>(
    water,
    'ex13-',
    'heat that the soil takes up in a month',
    ({ tMarch, tMay }) => ({ got: { Gapril: soilHeatOfMonthMJ(tMarch, tMay) }, tolerance: 0.005 }),
  ),
  ...checkOf<HourlyInputs, object>(water, 'ex19-', 'evaporation of an hour by night and by day', hourly),
  ...checkOf<
    { latitude: number; dayOfYear: number; sunshineHoursMonth: number; daysInMonth: number },
    object
  >(
    water,
    'ex10-',
    'solar radiation from sunshine',
    ({ latitude, dayOfYear, sunshineHoursMonth, daysInMonth }) => {
      const Ra = extraterrestrialRadiationMJ(latitude, dayOfYear)
      const N = dayLengthHours(latitude, dayOfYear)
      const n = sunshineHoursMonth / daysInMonth
      return {
        got: { Ra, N, n, Rs: solarRadiationMJ(n, N, Ra), Rso: clearSkyRadiationMJ(0, Ra) },
        tolerance: 0.06,
      }
    },
  ),
  ...checkOf<{ tmax: number; tmin: number; ea: number; Rs: number; Rso: number }, object>(
    water,
    'ex11-',
    'heat radiated away',
    ({ tmax, tmin, ea, Rs, Rso }) => ({
      got: {
        Rnl: netLongwaveMJ({
          maxCelsius: tmax,
          minCelsius: tmin,
          vapourPressureKPa: ea,
          solarMJ: Rs,
          clearSkyMJ: Rso,
        }),
      },
      tolerance: 0.05,
    }),
  ),
  ...checkOf<{ u: number; height: number }, object>(
    water,
    'ex14-',
    'wind at two metres',
    ({ u, height }) => ({
      got: { u2: windAtTwoMetres(u, height) },
      tolerance: 0.05,
    }),
  ),
  ...checkOf<{ latitude: number; dayOfYear: number; tmax: number; tmin: number; kRs: number }, object>(
    water,
    'ex15-',
    'solar radiation from the range of temperature',
    ({ latitude, dayOfYear, tmax, tmin, kRs }) => {
      const Ra = extraterrestrialRadiationMJ(latitude, dayOfYear)
      return { got: { Ra, Rs: solarRadiationFromRangeMJ(tmax, tmin, Ra, kRs) }, tolerance: 0.1 }
    },
  ),
  ...checkOf<
    {
      latitude: number
      elevation_m: number
      dayOfYear: number
      tmax: number
      tmin: number
      tmean: number
      tPrevMonth: number
      ea: number
      u2: number
      n: number
    },
    object
  >(water, 'ex17-', 'reference evaporation of a month, with every step', input => {
    const radiationAbove = extraterrestrialRadiationMJ(input.latitude, input.dayOfYear)
    const daylight = dayLengthHours(input.latitude, input.dayOfYear)
    const radiation = {
      maxCelsius: input.tmax,
      minCelsius: input.tmin,
      vapourPressureKPa: input.ea,
      solarMJ: solarRadiationMJ(input.n, daylight, radiationAbove),
      clearSkyMJ: clearSkyRadiationMJ(0, radiationAbove),
    }
    // Monthly soil heat: FAO-56 eq. 44.
    const soilHeat = 0.14 * (input.tmean - input.tPrevMonth)
    const pressure = airPressureKPa(input.elevation_m)
    const esTmax = saturationVapourPressureKPa(input.tmax)
    const esTmin = saturationVapourPressureKPa(input.tmin)
    return {
      got: {
        slope: slopeOfSaturationKPaPerCelsius(input.tmean),
        gamma: psychrometricConstantKPaPerCelsius(pressure),
        esTmax,
        esTmin,
        es: (esTmax + esTmin) / 2,
        vpd: (esTmax + esTmin) / 2 - input.ea,
        Ra: radiationAbove,
        N: daylight,
        Rs: radiation.solarMJ,
        Rso: radiation.clearSkyMJ,
        Rns: netRadiationMJ(radiation) + netLongwaveMJ(radiation),
        Rnl: netLongwaveMJ(radiation),
        Rn: netRadiationMJ(radiation),
        G: soilHeat,
        ETo: referenceEvaporationMm({
          meanCelsius: input.tmean,
          maxCelsius: input.tmax,
          minCelsius: input.tmin,
          vapourPressureKPa: input.ea,
          windAtTwoMetres: input.u2,
          netRadiationMJ: netRadiationMJ(radiation),
          soilHeatMJ: soilHeat,
          pressureKPa: pressure,
        }),
      },
      tolerance: {
        slope: 0.0005,
        gamma: 0.0002,
        N: 0.01,
        ETo: 0.01,
        Ra: 0.02,
        Rs: 0.02,
        Rso: 0.02,
        Rns: 0.02,
        Rnl: 0.02,
        Rn: 0.02,
        other: 0.005,
      },
    }
  }),
  ...checkOf<
    {
      latitude: number
      elevation_m: number
      dayOfYear: number
      tmax: number
      tmin: number
      rhmax: number
      rhmin: number
      wind10m_kmh: number
      n: number
    },
    object
  >(water, 'ex18-brussels', 'reference evaporation of a day, with every step', input => ({
    got: dayInJuly(input),
    tolerance: {
      u2: 0.001,
      pressure: 0.05,
      gamma: 0.0002,
      slope: 0.0005,
      N: 0.05,
      ETo: 0.01,
      Ra: 0.02,
      Rs: 0.02,
      Rso: 0.02,
      Rns: 0.02,
      Rnl: 0.02,
      Rn: 0.02,
      other: 0.001,
    },
  })),
  ...checkOf<object, object>(
    water,
    'ex18-full',
    'reference evaporation of a day without rounding on the way',
    () => ({
      got: dayInJuly({
        latitude: 50.8,
        elevation_m: 100,
        dayOfYear: 187,
        tmax: 21.5,
        tmin: 12.3,
        rhmax: 84,
        rhmin: 63,
        wind10m_kmh: 10,
        n: 9.25,
      }),
      tolerance: 1e-4,
    }),
  ),
  ...checkOf<{ latitude: number; dayOfYear: number; tmax: number; tmin: number }, object>(
    water,
    'ex20-',
    'evaporation from temperatures alone',
    ({ latitude, dayOfYear, tmax, tmin }) => ({
      got: {
        eaFromTmin: saturationVapourPressureKPa(tmin),
        EToHargreaves: evaporationFromTemperatureMm(
          (tmax + tmin) / 2,
          tmax,
          tmin,
          extraterrestrialRadiationMJ(latitude, dayOfYear),
        ),
      },
      tolerance: 0.05,
    }),
  ),
  ...checkOf<object, object>(
    water,
    'hargreaves-more',
    'evaporation from temperatures alone at two more places',
    () => ({
      got: {
        bangkok: evaporationFromTemperatureMm(30.2, 34.8, 25.6, extraterrestrialRadiationMJ(13.73, 105)),
        brussels: evaporationFromTemperatureMm(16.9, 21.5, 12.3, extraterrestrialRadiationMJ(50.8, 187)),
      },
      tolerance: 0.01,
    }),
  ),
  ...checkOf<{ tmin: number; tmax: number; tmean: number; Ra_MJ: number }, object>(
    water,
    'hargreaves-shah',
    'evaporation from temperatures alone, mean given',
    ({ tmin, tmax, tmean, Ra_MJ }) => ({
      got: { ETo: evaporationFromTemperatureMm(tmean, tmax, tmin, Ra_MJ) },
      tolerance: 0.05,
    }),
  ),
]

function dayInJuly(input: {
  latitude: number
  elevation_m: number
  dayOfYear: number
  tmax: number
  tmin: number
  rhmax: number
  rhmin: number
  wind10m_kmh: number
  n: number
}) {
  const { tmax, tmin, latitude, dayOfYear } = input
  const u2 = windAtTwoMetres(input.wind10m_kmh / 3.6, 10)
  const pressure = airPressureKPa(input.elevation_m)
  const esTmax = saturationVapourPressureKPa(tmax)
  const esTmin = saturationVapourPressureKPa(tmin)
  const ea = (esTmin * input.rhmax + esTmax * input.rhmin) / 200
  const Ra = extraterrestrialRadiationMJ(latitude, dayOfYear)
  const N = dayLengthHours(latitude, dayOfYear)
  const radiation = {
    maxCelsius: tmax,
    minCelsius: tmin,
    vapourPressureKPa: ea,
    solarMJ: solarRadiationMJ(input.n, N, Ra),
    clearSkyMJ: clearSkyRadiationMJ(input.elevation_m, Ra),
  }
  const Rnl = netLongwaveMJ(radiation)
  const Rn = netRadiationMJ(radiation)
  const meanCelsius = (tmax + tmin) / 2
  return {
    u2,
    pressure,
    gamma: psychrometricConstantKPaPerCelsius(pressure),
    slope: slopeOfSaturationKPaPerCelsius(meanCelsius),
    esTmax,
    esTmin,
    es: (esTmax + esTmin) / 2,
    ea,
    vpd: (esTmax + esTmin) / 2 - ea,
    Ra,
    N,
    Rs: radiation.solarMJ,
    Rso: radiation.clearSkyMJ,
    Rns: Rn + Rnl,
    Rnl,
    Rn,
    ETo: referenceEvaporationMm({
      meanCelsius,
      maxCelsius: tmax,
      minCelsius: tmin,
      vapourPressureKPa: ea,
      windAtTwoMetres: u2,
      netRadiationMJ: Rn,
      soilHeatMJ: 0,
      pressureKPa: pressure,
    }),
  }
}

interface HourlyInputs {
  readonly night: {
    readonly t: number
    readonly rh: number
    readonly u2: number
    readonly RsOverRso: number
  }
  readonly day: { readonly t: number; readonly rh: number; readonly u2: number; readonly Rs: number }
}

/** The site as the example's words have it: 16°13' N, 16°15' W, 8 m, 1 October, time of the meridian 15° W. */
function hourly({ night, day }: HourlyInputs) {
  const pressureKPa = airPressureKPa(8)
  const vapour = ({ t, rh }: { readonly t: number; readonly rh: number }) =>
    (saturationVapourPressureKPa(t) * rh) / 100
  const evaporation = ({ t, rh, u2 }: HourlyInputs['night' | 'day'], netRadiation: number) =>
    referenceEvaporationHourMm({
      airCelsius: t,
      vapourPressureKPa: vapour({ t, rh }),
      windAtTwoMetres: u2,
      netRadiationMJ: netRadiation,
      pressureKPa,
    })
  const dayRa = extraterrestrialHourMJ({
    latitudeDegrees: 16 + 13 / 60,
    longitudeDegrees: -16.25,
    zoneLongitudeDegrees: -15,
    dayOfYear: 274,
    middleHour: 14.5,
  })
  const nightRn = -netLongwaveHourMJ(night.t, vapour(night), night.RsOverRso)
  const dayRnl = netLongwaveHourMJ(day.t, vapour(day), day.Rs / clearSkyRadiationMJ(8, dayRa))
  const dayRn = netSolarMJ(day.Rs) - dayRnl
  return {
    got: {
      nightRn,
      nightETo: evaporation(night, nightRn),
      dayRa,
      dayRnl,
      dayRn,
      dayETo: evaporation(day, dayRn),
    },
    tolerance: 0.006,
  }
}
