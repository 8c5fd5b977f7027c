import { requireWithin } from '../bounds.ts'
import { normalQuantile } from '../distributions/normal.ts'

/** What happened at one time: plants lost, and plants that left alive (sold, moved, or last seen standing). */
export interface LossesAt {
  readonly time: number
  readonly lost: number
  readonly leftAlive: number
}

export interface SurvivalPoint {
  readonly time: number
  readonly atRisk: number
  readonly lost: number
  /** Share still alive just after this time. */
  readonly survival: number
  /** Greenwood's standard error; null once nothing is left. */
  readonly standardError: number | null
  readonly low: number | null
  readonly high: number | null
  /** Nelson–Aalen sum of lost / at risk. */
  readonly cumulativeHazard: number
}

export type IntervalScale = 'plain' | 'log' | 'log-log'

/**
 * Kaplan–Meier curve of losses over time, with Greenwood's standard errors: S = Π (1 − lost / atRisk).
 * Plants that leave alive at a time leave after its losses.
 *
 * @param happenings in any order; several at one time are added up. Times in any unit (days, degree-days)
 * @param scale where the interval is symmetric: 'log-log' stays within 0 to 1 and is the usual choice
 * @param sure chance that an interval holds the truth, 0.95 unless told
 * @returns one point for each time with a loss
 * @throws RangeError for an argument out of range
 * @source Kaplan & Meier 1958, J. Am. Stat. Assoc. 53:457-481; Greenwood 1926; Kalbfleisch & Prentice 1980
 *   (log-log limits); checked against R's survival
 * @example kaplanMeier([{ time: 5, lost: 2, leftAlive: 0 }, { time: 9, lost: 1, leftAlive: 7 }]).at(-1).survival
 *   // 0.7
 */
export function kaplanMeier(
  happenings: readonly LossesAt[],
  scale: IntervalScale = 'log-log',
  sure = 0.95,
): readonly SurvivalPoint[] {
  requireWithin('kaplanMeier', 'sure', sure, 0.01, 0.9999)
  for (const { time, lost, leftAlive } of happenings) {
    requireWithin('kaplanMeier', 'time', time, 0, Number.MAX_VALUE)
    requireWithin('kaplanMeier', 'lost', lost, 0, Number.MAX_VALUE)
    requireWithin('kaplanMeier', 'leftAlive', leftAlive, 0, Number.MAX_VALUE)
  }
  const z = normalQuantile((1 + sure) / 2)
  const points: SurvivalPoint[] = []
  let survival = 1
  let greenwood = 0
  let cumulativeHazard = 0
  for (const { time, lost, atRisk } of byTime(happenings)) {
    if (lost === 0) continue
    survival *= (atRisk - lost) / atRisk
    greenwood += atRisk > lost ? lost / (atRisk * (atRisk - lost)) : Number.POSITIVE_INFINITY
    cumulativeHazard += lost / atRisk
    const spread = survival > 0 ? Math.sqrt(greenwood) : null
    points.push({
      time,
      atRisk,
      lost,
      survival,
      standardError: spread === null ? null : survival * spread,
      ...(spread === null ? { low: null, high: null } : limits(survival, spread, z, scale)),
      cumulativeHazard,
    })
  }
  return points
}

function limits(
  survival: number,
  spread: number,
  z: number,
  scale: IntervalScale,
): { low: number; high: number } {
  if (scale === 'plain')
    return {
      low: Math.max(0, survival - z * survival * spread),
      high: Math.min(1, survival + z * survival * spread),
    }
  if (scale === 'log')
    return { low: survival * Math.exp(-z * spread), high: Math.min(1, survival * Math.exp(z * spread)) }
  const reach = (z * spread) / Math.abs(Math.log(survival))
  return { low: survival ** Math.exp(reach), high: survival ** Math.exp(-reach) }
}

/** Losses and leavers gathered by time, ascending, with the number that stood just before. */
export function byTime(
  happenings: readonly LossesAt[],
): readonly { time: number; lost: number; leftAlive: number; atRisk: number }[] {
  const at = new Map<number, { lost: number; leftAlive: number }>()
  let standing = 0
  for (const { time, lost, leftAlive } of happenings) {
    const sum = at.get(time) ?? { lost: 0, leftAlive: 0 }
    sum.lost += lost
    sum.leftAlive += leftAlive
    at.set(time, sum)
    standing += lost + leftAlive
  }
  return [...at]
    .sort(([a], [b]) => a - b)
    .map(([time, { lost, leftAlive }]) => {
      const atRisk = standing
      standing -= lost + leftAlive
      return { time, lost, leftAlive, atRisk }
    })
}

/**
 * The time by which a share of plants is lost: where the curve first falls to 1 − share or below; half way
 * to the next loss where it lies exactly on it; null where it never does. With the curve's limits as bounds.
 * @throws RangeError for an argument out of range
 * @source as `kaplanMeier`; limits as R's survival has them
 * @example timeOfLoss(kaplanMeier([{ time: 5, lost: 2, leftAlive: 0 }, { time: 9, lost: 1, leftAlive: 7 }]),
 *   0.25).time // 9
 */
export function timeOfLoss(
  curve: readonly SurvivalPoint[],
  share: number,
): { time: number | null; low: number | null; high: number | null } {
  requireWithin('timeOfLoss', 'share', share, 0, 1)
  const level = 1 - share
  const first = (of: (point: SurvivalPoint) => number | null): number | null => {
    const i = curve.findIndex(point => {
      const value = of(point)
      return value !== null && value <= level + 1e-12
    })
    if (i < 0) return null
    const here = curve[i]!
    const next = curve[i + 1]
    const exact = Math.abs((of(here) ?? 0) - level) < 1e-12
    return exact && next !== undefined ? (here.time + next.time) / 2 : here.time
  }
  return { time: first(p => p.survival), low: first(p => p.low), high: first(p => p.high) }
}
