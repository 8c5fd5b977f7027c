import { requireWithin } from '../bounds.ts'

/** Sun's declination in radians. FAO Irrigation and Drainage Paper 56, eq. 24. */
export const declination = (dayOfYear: number): number =>
  0.409 * Math.sin((2 * Math.PI * dayOfYear) / 365 - 1.39)

/** Inverse relative distance of earth and sun. Same, eq. 23. */
export const inverseDistance = (dayOfYear: number): number =>
  1 + 0.033 * Math.cos((2 * Math.PI * dayOfYear) / 365)

/**
 * Angle that the sun goes from noon to its setting, radians; 0 in polar night, π in polar day.
 * @source FAO Irrigation and Drainage Paper 56, eq. 25
 */
export function sunsetHourAngle(latitudeDegrees: number, dayOfYear: number): number {
  requireWithin('sunsetHourAngle', 'latitudeDegrees', latitudeDegrees, -90, 90)
  requireWithin('sunsetHourAngle', 'dayOfYear', dayOfYear, 1, 366)
  const cos = -Math.tan((latitudeDegrees * Math.PI) / 180) * Math.tan(declination(dayOfYear))
  return Math.acos(Math.min(1, Math.max(-1, cos)))
}

/**
 * Hours from sunrise to sunset by geometry, without twilight or the bending of light (some minutes more).
 * @param latitudeDegrees −90 to 90, south negative
 * @param dayOfYear 1 to 366
 * @source FAO Irrigation and Drainage Paper 56, eq. 34
 * @example dayLengthHours(-20, 246) // 11.67
 */
export const dayLengthHours = (latitudeDegrees: number, dayOfYear: number): number =>
  (24 / Math.PI) * sunsetHourAngle(latitudeDegrees, dayOfYear)

/**
 * Radiation of a day on a level surface above the air, MJ per square metre.
 * @source FAO Irrigation and Drainage Paper 56, eq. 21, solar constant 0.0820 MJ m⁻² min⁻¹
 * @example extraterrestrialRadiationMJ(-20, 246) // 32.2
 */
export function extraterrestrialRadiationMJ(latitudeDegrees: number, dayOfYear: number): number {
  const angle = sunsetHourAngle(latitudeDegrees, dayOfYear)
  const latitude = (latitudeDegrees * Math.PI) / 180
  const sun = declination(dayOfYear)
  return (
    ((24 * 60) / Math.PI) *
    0.082 *
    inverseDistance(dayOfYear) *
    (angle * Math.sin(latitude) * Math.sin(sun) + Math.cos(latitude) * Math.cos(sun) * Math.sin(angle))
  )
}
