import { requireAbove, requireWithin } from '../bounds.ts'

/**
 * Pressure of water vapour in saturated air: e°(T) = 0.6108 exp(17.27 T / (T + 237.3)).
 * @param airTemperatureCelsius −40 to 60 (our limit)
 * @returns kPa
 * @throws RangeError for an argument out of range
 * @source Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56, eq. 11
 * @example saturationVapourPressureKPa(24.5) // 3.075
 */
export function saturationVapourPressureKPa(airTemperatureCelsius: number): number {
  requireWithin('saturationVapourPressureKPa', 'airTemperatureCelsius', airTemperatureCelsius, -40, 60)
  return 0.6108 * Math.exp((17.27 * airTemperatureCelsius) / (airTemperatureCelsius + 237.3))
}

/**
 * Slope of the saturation curve, kPa per degree.
 * @source FAO Irrigation and Drainage Paper 56, eq. 13
 * @example slopeOfSaturationKPaPerCelsius(19.75) // 0.1428
 */
export function slopeOfSaturationKPaPerCelsius(airTemperatureCelsius: number): number {
  return (4098 * saturationVapourPressureKPa(airTemperatureCelsius)) / (airTemperatureCelsius + 237.3) ** 2
}

/**
 * Vapour pressure deficit: how hard the air draws water from an unrooted cutting. VPD = e°(T) (1 − RH/100).
 * @param relativeHumidityPercent 0 to 100
 * @returns kPa
 * @throws RangeError for an argument out of range
 * @source FAO Irrigation and Drainage Paper 56, eq. 10 and 11
 * @example vapourPressureDeficitKPa(25, 80) // 0.634
 */
export function vapourPressureDeficitKPa(
  airTemperatureCelsius: number,
  relativeHumidityPercent: number,
): number {
  requireWithin('vapourPressureDeficitKPa', 'relativeHumidityPercent', relativeHumidityPercent, 0, 100)
  return saturationVapourPressureKPa(airTemperatureCelsius) * (1 - relativeHumidityPercent / 100)
}

/**
 * Mean vapour pressure of a day from the highest and the lowest humidity: the first goes with the night's cold, the
 * second with the day's warmth. Without the lowest, from the highest alone.
 * @param highestHumidityPercent 0 to 100
 * @param lowestHumidityPercent 0 to the highest, or null where it is not known
 * @returns kPa
 * @throws RangeError for an argument out of range
 * @source FAO Irrigation and Drainage Paper 56, eq. 17 and 18
 * @example vapourPressureFromHumidityKPa(18, 25, 82, 54) // 1.70
 */
export function vapourPressureFromHumidityKPa(
  minCelsius: number,
  maxCelsius: number,
  highestHumidityPercent: number,
  lowestHumidityPercent: number | null,
): number {
  const place = 'vapourPressureFromHumidityKPa'
  requireWithin(place, 'highestHumidityPercent', highestHumidityPercent, 0, 100)
  const byNight = (saturationVapourPressureKPa(minCelsius) * highestHumidityPercent) / 100
  if (lowestHumidityPercent === null) return byNight
  requireWithin(place, 'lowestHumidityPercent', lowestHumidityPercent, 0, highestHumidityPercent)
  return (byNight + (saturationVapourPressureKPa(maxCelsius) * lowestHumidityPercent) / 100) / 2
}

/**
 * Temperature at which the vapour in the air begins to settle as dew; the inverse of e°(T).
 * @param vapourPressureKPa above 0
 * @returns °C
 * @throws RangeError for an argument out of range
 * @source FAO Irrigation and Drainage Paper 56, eq. 11 turned round
 * @example dewPointCelsius(1.409) // 12.07
 */
export function dewPointCelsius(vapourPressureKPa: number): number {
  requireAbove('dewPointCelsius', 'vapourPressureKPa', vapourPressureKPa, 0)
  const log = Math.log(vapourPressureKPa / 0.6108)
  return (237.3 * log) / (17.27 - log)
}

/**
 * Mean pressure of the air at a height above the sea.
 * @param elevationMetres −500 to 6000 (our limit)
 * @returns kPa
 * @throws RangeError for an argument out of range
 * @source FAO Irrigation and Drainage Paper 56, eq. 7
 * @example airPressureKPa(1800) // 81.8
 */
export function airPressureKPa(elevationMetres: number): number {
  requireWithin('airPressureKPa', 'elevationMetres', elevationMetres, -500, 6000)
  return 101.3 * ((293 - 0.0065 * elevationMetres) / 293) ** 5.26
}

/**
 * Psychrometric constant, kPa per degree.
 * @source FAO Irrigation and Drainage Paper 56, eq. 8
 * @example psychrometricConstantKPaPerCelsius(81.8) // 0.0544
 */
export const psychrometricConstantKPaPerCelsius = (pressureKPa: number): number => 0.000665 * pressureKPa

/** Coefficient of a psychrometer with a fan, per degree. FAO Irrigation and Drainage Paper 56, eq. 16. */
export const ASPIRATED_PER_CELSIUS = 0.000662

/**
 * Vapour pressure from a dry and a wet thermometer.
 * @param coefficientPerCelsius of the instrument; with a fan unless told
 * @returns kPa
 * @throws RangeError for an argument out of range
 * @source FAO Irrigation and Drainage Paper 56, eq. 15
 * @example vapourPressureFromWetBulbKPa(25.6, 19.5, 87.9) // 1.91
 */
export function vapourPressureFromWetBulbKPa(
  dryCelsius: number,
  wetCelsius: number,
  pressureKPa: number,
  coefficientPerCelsius = ASPIRATED_PER_CELSIUS,
): number {
  requireWithin('vapourPressureFromWetBulbKPa', 'wetCelsius', wetCelsius, -40, dryCelsius)
  return (
    saturationVapourPressureKPa(wetCelsius) - coefficientPerCelsius * pressureKPa * (dryCelsius - wetCelsius)
  )
}
