/**
 * Degree-days of one day from its lowest and highest temperature: the area between a curve through them and a lower
 * threshold. Any scale of temperature, both thresholds in the same; degree-days of °F become those of °C by 5/9.
 *
 * `curve`: a sine or a triangle. `above` says what heat over the upper threshold does: counts no further
 * (`horizontal`), takes back as much as it goes over (`intermediate`), or counts for nothing while it lasts (`vertical`).
 * `nextMin`: the second half of the day runs to the next day's minimum (double method).
 */
export interface DegreeDayMethod {
  readonly lower: number
  /** No upper threshold unless told. */
  readonly upper?: number
  readonly curve: 'sine' | 'triangle'
  readonly above?: 'horizontal' | 'intermediate' | 'vertical'
}

/**
 * @param min lowest temperature of the day
 * @param max highest, min or more
 * @returns degree-days, 0 or more, except with `intermediate`, where great heat can take back more than there was
 * @throws RangeError for an argument out of range
 * @source Baskerville & Emin 1969, Ecology 50:514-517 (sine); Lindsey & Newman 1956, Ecology 37:812-823 (triangle);
 *   Zalom, Goodell, Wilson, Barnett & Bentley 1983, University of California Leaflet 21373 (upper thresholds)
 * @example degreeDays(8, 22, { lower: 10, upper: 30, curve: 'sine' }) // 5.33
 */
export function degreeDays(min: number, max: number, method: DegreeDayMethod, nextMin?: number): number {
  if (!(max >= min)) throw new RangeError(`degreeDays: max must be min (${min}) or more, got ${max}`)
  const { lower } = method
  const upper = method.upper ?? Number.POSITIVE_INFINITY
  if (!(upper > lower)) throw new RangeError(`degreeDays: upper must be above lower (${lower}), got ${upper}`)
  if (nextMin !== undefined)
    // A next minimum above this maximum: the second half is a level line at the warmer of both.
    return (
      (degreeDays(min, max, method) + degreeDays(Math.min(nextMin, max), Math.max(nextMin, max), method)) / 2
    )
  const over = method.curve === 'sine' ? underSine : underTriangle
  const counted = over(min, max, lower)
  if (max <= upper) return counted
  const excess = over(min, max, upper)
  if (method.above === 'intermediate') return counted - 2 * excess
  if (method.above === 'vertical') {
    const share =
      method.curve === 'sine' ? shareOverBySine(min, max, upper) : shareOverByTriangle(min, max, upper)
    return Math.max(0, counted - excess - (upper - lower) * share)
  }
  return counted - excess
}

/** Area of the curve above a threshold, per day. */
function underSine(min: number, max: number, threshold: number): number {
  if (max <= threshold) return 0
  const mean = (max + min) / 2
  if (min >= threshold) return mean - threshold
  const half = (max - min) / 2
  const angle = Math.asin((threshold - mean) / half)
  return ((mean - threshold) * (Math.PI / 2 - angle) + half * Math.cos(angle)) / Math.PI
}

function underTriangle(min: number, max: number, threshold: number): number {
  if (max <= threshold) return 0
  if (min >= threshold) return (max + min) / 2 - threshold
  return (max - threshold) ** 2 / (2 * (max - min))
}

/** Share of the day spent above a threshold. */
function shareOverBySine(min: number, max: number, threshold: number): number {
  if (min >= threshold) return 1
  return 0.5 - Math.asin((threshold - (max + min) / 2) / ((max - min) / 2)) / Math.PI
}

const shareOverByTriangle = (min: number, max: number, threshold: number): number =>
  min >= threshold ? 1 : (max - threshold) / (max - min)

/**
 * Degree-days from the mean of lowest and highest temperature alone: 0 on days whose mean is under the threshold, even
 * if their noon was not.
 * @source as `degreeDays`
 * @example averageDegreeDays(8, 22, 10) // 5
 */
export const averageDegreeDays = (min: number, max: number, lower: number): number =>
  Math.max(0, (min + max) / 2 - lower)

/**
 * The same with lowest and highest first brought inside the thresholds.
 * @source as `degreeDays`; the clipped mean is common practice
 * @example averageClippedDegreeDays(8, 22, 10, 30) // 6
 */
export function averageClippedDegreeDays(min: number, max: number, lower: number, upper: number): number {
  const inside = (temperature: number) => Math.max(lower, Math.min(temperature, upper))
  return (inside(min) + inside(max)) / 2 - lower
}
