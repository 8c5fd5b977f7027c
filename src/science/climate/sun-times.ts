import { requireWithin } from '../bounds.ts'

const degrees = Math.PI / 180

export interface SunTimes {
  /** Minutes after midnight, universal time; below 0 or above 1440 on the day before or after. */
  readonly noonMinutes: number
  /** Null in polar day and polar night. */
  readonly riseMinutes: number | null
  readonly setMinutes: number | null
  /** 24 in polar day, 0 in polar night. */
  readonly hoursAbove: number
}

/** The upper edge of the sun on the horizon, its light bent by the air; and the end of useful light (civil twilight). */
export const SUN_ON_HORIZON = 90.833
export const CIVIL_TWILIGHT = 96

/**
 * When the sun rises, culminates and sets as seen: with its own width and the bending of its light, unlike
 * `dayLengthHours`, so that days are some minutes longer.
 *
 * @param latitudeDegrees −90 to 90, south negative
 * @param longitudeDegrees −180 to 180, west negative
 * @param dayNumber days since 1 January 1970
 * @param zenithDegrees distance of the sun's centre from the zenith, 80 to 110; `SUN_ON_HORIZON` unless told
 * @returns minutes within about a minute up to 60 degrees of latitude, 1900 to 2100
 * @throws RangeError for a latitude, longitude or zenith out of range
 * @source Meeus 1998, Astronomical Algorithms, ch. 25 and 28 (low accuracy), in the order of the solar calculator of
 *   the US National Oceanic and Atmospheric Administration; formulas from memory, results checked
 * @example sunTimes(45, 0, dayNumber('2024-06-20')) // noon 721.7, up for 15.62 hours
 */
export function sunTimes(
  latitudeDegrees: number,
  longitudeDegrees: number,
  dayNumber: number,
  zenithDegrees = SUN_ON_HORIZON,
): SunTimes {
  requireWithin('sunTimes', 'latitudeDegrees', latitudeDegrees, -90, 90)
  requireWithin('sunTimes', 'longitudeDegrees', longitudeDegrees, -180, 180)
  requireWithin('sunTimes', 'zenithDegrees', zenithDegrees, 80, 110)
  const latitude = latitudeDegrees * degrees
  // Days since noon of 1 January 2000, at the local noon.
  const { declination, equationMinutes } = sunAt((dayNumber - 10957 - longitudeDegrees / 360) / 36525)
  const noonMinutes = 720 - 4 * longitudeDegrees - equationMinutes
  const cos =
    Math.cos(zenithDegrees * degrees) / (Math.cos(latitude) * Math.cos(declination)) -
    Math.tan(latitude) * Math.tan(declination)
  if (!(cos > -1 && cos < 1))
    return { noonMinutes, riseMinutes: null, setMinutes: null, hoursAbove: cos >= 1 ? 0 : 24 }
  const half = (4 * Math.acos(cos)) / degrees
  return {
    noonMinutes,
    riseMinutes: noonMinutes - half,
    setMinutes: noonMinutes + half,
    hoursAbove: half / 30,
  }
}

/** Where the sun stands, so many centuries after noon of 1 January 2000. */
function sunAt(centuries: number): { declination: number; equationMinutes: number } {
  const t = centuries
  const meanLongitude = (280.46646 + t * (36000.76983 + 0.0003032 * t)) * degrees
  const anomaly = (357.52911 + t * (35999.05029 - 0.0001537 * t)) * degrees
  const eccentricity = 0.016708634 - t * (0.000042037 + 0.0000001267 * t)
  const centre =
    Math.sin(anomaly) * (1.914602 - t * (0.004817 + 0.000014 * t)) +
    Math.sin(2 * anomaly) * (0.019993 - 0.000101 * t) +
    Math.sin(3 * anomaly) * 0.000289
  const node = (125.04 - 1934.136 * t) * degrees
  const longitude = meanLongitude + (centre - 0.00569 - 0.00478 * Math.sin(node)) * degrees
  const meanObliquity = 23 + (26 + (21.448 - t * (46.815 + t * (0.00059 - 0.001813 * t))) / 60) / 60
  const obliquity = (meanObliquity + 0.00256 * Math.cos(node)) * degrees
  const y = Math.tan(obliquity / 2) ** 2
  const equation =
    y * Math.sin(2 * meanLongitude) -
    2 * eccentricity * Math.sin(anomaly) +
    4 * eccentricity * y * Math.sin(anomaly) * Math.cos(2 * meanLongitude) -
    0.5 * y * y * Math.sin(4 * meanLongitude) -
    1.25 * eccentricity ** 2 * Math.sin(2 * anomaly)
  return {
    declination: Math.asin(Math.sin(obliquity) * Math.sin(longitude)),
    equationMinutes: (4 * equation) / degrees,
  }
}

/**
 * Hours of daylight of any day of any year, with the twilight that a plant's sense of day length is taken to count.
 * @param latitudeDegrees −90 to 90, south negative
 * @param dayOfYear 1 to 366
 * @param sunBelowDegrees how far the sun's centre is below the horizon at the end of the day, 0 to 18: 0.8333 for its
 *   upper edge gone, 6 for civil twilight
 * @returns hours, within a minute between 40 degrees north and south, within 7 to 60 degrees
 * @throws RangeError for an argument out of range
 * @source Forsythe, Rykiel, Stahl, Wu & Schoolfield 1995, Ecological Modelling 80:87-95; constants from memory
 * @example daylightHours(45, 172, 0.8333) // 15.62
 */
export function daylightHours(latitudeDegrees: number, dayOfYear: number, sunBelowDegrees: number): number {
  requireWithin('daylightHours', 'latitudeDegrees', latitudeDegrees, -90, 90)
  requireWithin('daylightHours', 'dayOfYear', dayOfYear, 1, 366)
  requireWithin('daylightHours', 'sunBelowDegrees', sunBelowDegrees, 0, 18)
  const turned = 0.2163108 + 2 * Math.atan(0.9671396 * Math.tan(0.0086 * (dayOfYear - 186)))
  const declination = Math.asin(0.39795 * Math.cos(turned))
  const latitude = latitudeDegrees * degrees
  const cos =
    (Math.sin(sunBelowDegrees * degrees) + Math.sin(latitude) * Math.sin(declination)) /
    (Math.cos(latitude) * Math.cos(declination))
  return 24 - (24 / Math.PI) * Math.acos(Math.min(1, Math.max(-1, cos)))
}
