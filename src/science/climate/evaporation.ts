import { requireAbove, requireWithin } from '../bounds.ts'
import {
  psychrometricConstantKPaPerCelsius,
  saturationVapourPressureKPa,
  slopeOfSaturationKPaPerCelsius,
} from './vapour-pressure.ts'

/** Share of light that a short green crop throws back. FAO Irrigation and Drainage Paper 56, ch. 3. */
const ALBEDO = 0.23
/** Millimetres of water that 1 MJ per square metre evaporates. Same, eq. 20. */
export const MM_PER_MJ = 0.408

/**
 * Solar radiation from hours of sunshine (Ångström): (0.25 + 0.50 n/N) Ra, MJ per square metre and day.
 * @throws RangeError for an argument out of range
 * @source FAO Irrigation and Drainage Paper 56, eq. 35
 * @example solarRadiationMJ(7.1, 10.9, 25.1) // 14.4
 */
export function solarRadiationMJ(
  sunshineHours: number,
  dayLengthHours: number,
  aboveTheAirMJ: number,
): number {
  requireWithin('solarRadiationMJ', 'sunshineHours', sunshineHours, 0, 24)
  requireAbove('solarRadiationMJ', 'dayLengthHours', dayLengthHours, 0)
  return (0.25 + (0.5 * sunshineHours) / dayLengthHours) * aboveTheAirMJ
}

/**
 * Solar radiation from the day's range of temperature: k √(max − min) Ra.
 * @param coefficient 0.16 inland, 0.19 by the coast
 * @source FAO Irrigation and Drainage Paper 56, eq. 50
 * @example solarRadiationFromRangeMJ(26.6, 14.8, 40.6, 0.16) // 22.3
 */
export const solarRadiationFromRangeMJ = (
  maxCelsius: number,
  minCelsius: number,
  aboveTheAirMJ: number,
  coefficient: number,
): number => coefficient * Math.sqrt(maxCelsius - minCelsius) * aboveTheAirMJ

/**
 * Solar radiation under a clear sky. FAO Irrigation and Drainage Paper 56, eq. 37.
 * @example clearSkyRadiationMJ(100, 41.09) // 30.9
 */
export const clearSkyRadiationMJ = (elevationMetres: number, aboveTheAirMJ: number): number =>
  (0.75 + 2e-5 * elevationMetres) * aboveTheAirMJ

export interface Radiation {
  readonly maxCelsius: number
  readonly minCelsius: number
  readonly vapourPressureKPa: number
  readonly solarMJ: number
  readonly clearSkyMJ: number
}

/**
 * Heat that a short green crop radiates away in a day, MJ per square metre.
 * @source FAO Irrigation and Drainage Paper 56, eq. 39
 * @example netLongwaveMJ({ maxCelsius: 25.1, minCelsius: 19.1, vapourPressureKPa: 2.1, solarMJ: 14.5, clearSkyMJ: 18.8 }) // 3.5
 */
export const netLongwaveMJ = ({
  maxCelsius,
  minCelsius,
  vapourPressureKPa,
  solarMJ,
  clearSkyMJ,
}: Radiation): number =>
  4.903e-9 *
  (((maxCelsius + 273.16) ** 4 + (minCelsius + 273.16) ** 4) / 2) *
  (0.34 - 0.14 * Math.sqrt(vapourPressureKPa)) *
  ((1.35 * solarMJ) / clearSkyMJ - 0.35)

/**
 * Sunlight that a short green crop does not throw back, MJ per square metre in the time that `solarMJ` is for.
 * @source FAO Irrigation and Drainage Paper 56, eq. 38
 * @example netSolarMJ(14.5) // 11.2
 */
export const netSolarMJ = (solarMJ: number): number => (1 - ALBEDO) * solarMJ

/**
 * What a short green crop keeps of the day's radiation, MJ per square metre.
 * @source FAO Irrigation and Drainage Paper 56, eq. 38 and 40
 * @example netRadiationMJ({ maxCelsius: 25.1, minCelsius: 19.1, vapourPressureKPa: 2.1, solarMJ: 14.5, clearSkyMJ: 18.8 }) // 7.6
 */
export const netRadiationMJ = (radiation: Radiation): number =>
  netSolarMJ(radiation.solarMJ) - netLongwaveMJ(radiation)

/**
 * Heat that the soil takes up in a day of a month, from the mean temperatures of the months before and after;
 * below 0 where it cools.
 * @returns MJ per square metre and day
 * @source FAO Irrigation and Drainage Paper 56, eq. 43
 * @example soilHeatOfMonthMJ(14.1, 18.8) // 0.33
 */
export const soilHeatOfMonthMJ = (monthBeforeCelsius: number, monthAfterCelsius: number): number =>
  0.07 * (monthAfterCelsius - monthBeforeCelsius)

/**
 * Wind at two metres from wind measured over grass at another height.
 * @source FAO Irrigation and Drainage Paper 56, eq. 47
 * @example windAtTwoMetres(3.2, 10) // 2.4
 */
export const windAtTwoMetres = (windMetresPerSecond: number, heightMetres: number): number =>
  (windMetresPerSecond * 4.87) / Math.log(67.8 * heightMetres - 5.42)

export interface DayOfWeather {
  readonly meanCelsius: number
  readonly maxCelsius: number
  readonly minCelsius: number
  readonly vapourPressureKPa: number
  readonly windAtTwoMetres: number
  readonly netRadiationMJ: number
  readonly soilHeatMJ: number
  readonly pressureKPa: number
}

/**
 * Water that a short green crop well supplied gives off in a day (Penman–Monteith): the reference evaporation, to be
 * multiplied by a crop's own coefficient.
 * @returns mm per day
 * @source FAO Irrigation and Drainage Paper 56, eq. 6
 * @example referenceEvaporationMm({ meanCelsius: 16.9, maxCelsius: 21.5, minCelsius: 12.3, vapourPressureKPa:
 *   1.409, windAtTwoMetres: 2.078, netRadiationMJ: 13.28, soilHeatMJ: 0, pressureKPa: 100.1 }) // 3.879
 */
export function referenceEvaporationMm(day: DayOfWeather): number {
  const slope = slopeOfSaturationKPaPerCelsius(day.meanCelsius)
  const gamma = psychrometricConstantKPaPerCelsius(day.pressureKPa)
  const saturation =
    (saturationVapourPressureKPa(day.maxCelsius) + saturationVapourPressureKPa(day.minCelsius)) / 2
  const wind = day.windAtTwoMetres
  return (
    (MM_PER_MJ * slope * (day.netRadiationMJ - day.soilHeatMJ) +
      ((gamma * 900) / (day.meanCelsius + 273)) * wind * (saturation - day.vapourPressureKPa)) /
    (slope + gamma * (1 + 0.34 * wind))
  )
}

/**
 * The same from temperatures alone (Hargreaves), where nothing else is measured.
 * @returns mm per day
 * @source FAO Irrigation and Drainage Paper 56, eq. 52
 * @example evaporationFromTemperatureMm(20.7, 26.6, 14.8, 40.55) // 5.0
 */
export const evaporationFromTemperatureMm = (
  meanCelsius: number,
  maxCelsius: number,
  minCelsius: number,
  aboveTheAirMJ: number,
): number => 0.0023 * (meanCelsius + 17.8) * Math.sqrt(maxCelsius - minCelsius) * MM_PER_MJ * aboveTheAirMJ
