import { requireWithin } from '../bounds.ts'

/** Share of the full crop that counts as full bearing; what it lacks of the whole counts as the first crop. */
const FULL = 0.9
/** From a tenth to nine tenths the logistic curve takes 2·ln 9 of its own time units. */
const LOGIT = Math.log(FULL / (1 - FULL))

/**
 * Share of the full crop that a tree bears at an age: nothing before its first crop, a tenth then, nine tenths at full
 * bearing, and a logistic curve through both:
 * 1 / (1 + exp(−(age − middle)/pace)), middle = (first + full)/2, pace = (full − first)/(2·ln 9).
 * @param age years since planting, 0 or more
 * @param firstCropAge years from planting to the first crop, 0 or more
 * @param fullBearingAge at least firstCropAge
 * @returns 0 to 1; alternate bearing and the decline of old age are not in it
 * @throws RangeError for an argument out of range
 * @source logistic growth in time: Pinheiro & Bates 2000, Mixed-Effects Models in S and S-PLUS, app. C.7 (SSlogis);
 *   the tenth and nine tenths are our reading of "first crop" and "full bearing"
 * @example bearingShare(5, 3, 7) // 0.5
 */
export function bearingShare(age: number, firstCropAge: number, fullBearingAge: number): number {
  requireWithin('bearingShare', 'age', age, 0, 1e4)
  requireWithin('bearingShare', 'firstCropAge', firstCropAge, 0, 1e4)
  requireWithin('bearingShare', 'fullBearingAge', fullBearingAge, firstCropAge, 1e4)
  if (age < firstCropAge) return 0
  if (fullBearingAge === firstCropAge) return FULL
  const middle = (firstCropAge + fullBearingAge) / 2
  const pace = (fullBearingAge - firstCropAge) / (2 * LOGIT)
  return 1 / (1 + Math.exp(-(age - middle) / pace))
}
