import { requireWithin } from '../bounds.ts'
import { MM_PER_MJ } from './evaporation.ts'
import { declination, inverseDistance, sunsetHourAngle } from './sun.ts'
import {
  psychrometricConstantKPaPerCelsius,
  saturationVapourPressureKPa,
  slopeOfSaturationKPaPerCelsius,
} from './vapour-pressure.ts'

export interface HourOfSun {
  readonly latitudeDegrees: number
  /** East positive. */
  readonly longitudeDegrees: number
  /** Longitude of the middle of the time zone: 15 degrees for each hour before or behind, east positive, no summer time. */
  readonly zoneLongitudeDegrees: number
  readonly dayOfYear: number
  /** Clock time in the middle of the hour, 14.5 from 14 to 15 o'clock. */
  readonly middleHour: number
}

/**
 * Radiation of one hour on a level surface above the air.
 * @returns MJ per square metre in the hour; 0 while the sun is down
 * @throws RangeError for a latitude, day of the year or hour out of range
 * @source FAO Irrigation and Drainage Paper 56, eq. 28 to 33
 * @example extraterrestrialHourMJ({ latitudeDegrees: 16.217, longitudeDegrees: -16.25, zoneLongitudeDegrees: -15, dayOfYear: 274, middleHour: 14.5 }) // 3.543
 */
export function extraterrestrialHourMJ(hour: HourOfSun): number {
  const { latitudeDegrees, longitudeDegrees, zoneLongitudeDegrees, dayOfYear, middleHour } = hour
  requireWithin('extraterrestrialHourMJ', 'middleHour', middleHour, 0, 24)
  const setting = sunsetHourAngle(latitudeDegrees, dayOfYear)
  const b = (2 * Math.PI * (dayOfYear - 81)) / 364
  const seasonal = 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b)
  const solarHour = middleHour + (longitudeDegrees - zoneLongitudeDegrees) / 15 + seasonal
  const angle = (Math.PI / 12) * (solarHour - 12)
  const from = Math.max(angle - Math.PI / 24, -setting)
  const to = Math.min(angle + Math.PI / 24, setting)
  if (to <= from) return 0
  const latitude = (latitudeDegrees * Math.PI) / 180
  const sun = declination(dayOfYear)
  return (
    ((12 * 60) / Math.PI) *
    0.082 *
    inverseDistance(dayOfYear) *
    ((to - from) * Math.sin(latitude) * Math.sin(sun) +
      Math.cos(latitude) * Math.cos(sun) * (Math.sin(to) - Math.sin(from)))
  )
}

/**
 * Heat that a short green crop radiates away in an hour.
 * @param solarShareOfClearSky 0 to 1; at night that of the last hours before sunset
 * @returns MJ per square metre
 * @source FAO Irrigation and Drainage Paper 56, eq. 39 with the constant of an hour
 * @example netLongwaveHourMJ(38, 3.445, 0.92) // 0.137
 */
export const netLongwaveHourMJ = (
  airCelsius: number,
  vapourPressureKPa: number,
  solarShareOfClearSky: number,
): number =>
  2.043e-10 *
  (airCelsius + 273.16) ** 4 *
  (0.34 - 0.14 * Math.sqrt(vapourPressureKPa)) *
  (1.35 * solarShareOfClearSky - 0.35)

export interface HourOfWeather {
  readonly airCelsius: number
  readonly vapourPressureKPa: number
  readonly windAtTwoMetres: number
  /** Below 0 at night. */
  readonly netRadiationMJ: number
  readonly pressureKPa: number
}

/**
 * Water that a short green crop well supplied gives off in one hour: what a mist or a watering has to make good.
 * The soil keeps a tenth of the net radiation by day, and gives back half of the loss by night.
 * @returns mm in the hour
 * @source FAO Irrigation and Drainage Paper 56, eq. 45, 46 and 53
 * @example referenceEvaporationHourMm({ airCelsius: 38, vapourPressureKPa: 3.445, windAtTwoMetres: 3.3, netRadiationMJ: 1.749, pressureKPa: 101.2 }) // 0.627
 */
export function referenceEvaporationHourMm(hour: HourOfWeather): number {
  const { airCelsius, vapourPressureKPa, windAtTwoMetres: wind, netRadiationMJ, pressureKPa } = hour
  const slope = slopeOfSaturationKPaPerCelsius(airCelsius)
  const gamma = psychrometricConstantKPaPerCelsius(pressureKPa)
  const soilHeat = netRadiationMJ * (netRadiationMJ > 0 ? 0.1 : 0.5)
  return (
    (MM_PER_MJ * slope * (netRadiationMJ - soilHeat) +
      ((gamma * 37) / (airCelsius + 273)) *
        wind *
        (saturationVapourPressureKPa(airCelsius) - vapourPressureKPa)) /
    (slope + gamma * (1 + 0.34 * wind))
  )
}
