import { requireAbove, requireWithin } from '../bounds.ts'
import { normalCdf, normalQuantile } from '../distributions/normal.ts'
import { logitOfShare, shareOfLogit } from '../numerics/logit.ts'
import { minimise, withSlope } from '../numerics/quasi-newton.ts'
import { decidedBetween, type LookedAtBatch } from './looks.ts'

/** When things happen: the logarithm of the time is normal. */
export interface LogNormalTime {
  readonly meanLog: number
  readonly sdLog: number
}

/** How a kind of graft or cutting decides over time. */
export interface TakeCurve {
  /** Share of all worked that takes in the end. */
  readonly takesInTheEnd: number
  /** When those take that do. */
  readonly toTake: LogNormalTime
  /** When the others are seen to be dead; null where nobody writes down deaths, so that they stay undecided. */
  readonly toDie: LogNormalTime | null
}

/**
 * Share of those concerned to whom it has happened by a day.
 * @source log-normal law
 * @example happenedBy(timeFromLowHigh(14, 28), 21) // 0.6101
 */
export const happenedBy = ({ meanLog, sdLog }: LogNormalTime, day: number): number =>
  day > 0 ? normalCdf((Math.log(day) - meanLog) / sdLog) : 0

const NINE_OF_TEN = normalQuantile(0.95)

/**
 * The log-normal time of which nine in ten lie from low to high.
 * @throws RangeError for an argument out of range
 * @source log-normal law
 * @example timeFromLowHigh(14, 28).sdLog // 0.2107
 */
export function timeFromLowHigh(low: number, high: number): LogNormalTime {
  requireAbove('timeFromLowHigh', 'low', low, 0)
  requireAbove('timeFromLowHigh', 'high', high, low)
  return {
    meanLog: (Math.log(low) + Math.log(high)) / 2,
    sdLog: (Math.log(high) - Math.log(low)) / (2 * NINE_OF_TEN),
  }
}

/**
 * The curve of taking and dying from looks between which each plant decided, or has not yet. A share takes in the
 * end; those that do, take after a log-normal time; the others are seen dead after a log-normal time of their own.
 * Maximum likelihood, with a slight preference for spreads near a third (worth less than one plant) so that looks
 * far apart do not end in a spread of nothing.
 *
 * @param batches looks with counts since the start; batches not looked at say nothing
 * @returns null where no plant has taken yet
 * @throws RangeError for counts that are not whole plants
 * @source Farewell 1982, Biometrics 38:1041-1046 (a share that never does); from memory; checked with R
 * @example fitTakeCurve([{ entered: 50, looks: [{ day: 14, taken: 10, dead: 2 }, { day: 21, taken: 30, dead: 4 },
 *   { day: 42, taken: 40, dead: 10 }] }]).takesInTheEnd // 0.8
 */
export function fitTakeCurve(batches: readonly LookedAtBatch[]): TakeCurve | null {
  const seen = decidedBetween(batches)
  const sum = (wanted: string) =>
    seen.reduce((total, { outcome, number }) => total + (outcome === wanted ? number : 0), 0)
  const taken = sum('taken')
  const dead = sum('dead')
  if (taken === 0) return null
  const withDeaths = dead > 0
  const start = Float64Array.from([
    logitOfShare((taken + 0.5) / (taken + dead + 0.5 * sum('undecided') + 1)),
    averageLog(seen.filter(({ outcome }) => outcome === 'taken')),
    Math.log(0.3),
    ...(withDeaths ? [averageLog(seen.filter(({ outcome }) => outcome === 'dead')), Math.log(0.5)] : []),
  ])
  const read = (at: Float64Array): TakeCurve => ({
    takesInTheEnd: shareOfLogit(at[0]!),
    toTake: { meanLog: at[1]!, sdLog: Math.exp(at[2]!) },
    toDie: withDeaths ? { meanLog: at[3]!, sdLog: Math.exp(at[4]!) } : null,
  })
  const objective = (at: Float64Array): number => {
    const curve = read(at)
    if (curve.toTake.sdLog < 0.01 || curve.toTake.sdLog > 5) return Number.NaN
    if (curve.toDie !== null && (curve.toDie.sdLog < 0.01 || curve.toDie.sdLog > 5)) return Number.NaN
    let value = 0
    for (const { after, to, outcome, number } of seen) {
      const takenBy = (day: number) => curve.takesInTheEnd * happenedBy(curve.toTake, day)
      const deadBy = (day: number) =>
        curve.toDie === null ? 0 : (1 - curve.takesInTheEnd) * happenedBy(curve.toDie, day)
      const chance =
        outcome === 'taken'
          ? takenBy(to) - takenBy(after)
          : outcome === 'dead'
            ? deadBy(to) - deadBy(after)
            : 1 - takenBy(after) - deadBy(after)
      value -= number * Math.log(Math.max(chance, 1e-300))
    }
    const away = (logSd: number) => 0.005 * ((logSd - Math.log(0.33)) / 0.7) ** 2
    return value + away(at[2]!) + (withDeaths ? away(at[4]!) : 0)
  }
  const found = minimise(withSlope(objective), start, {
    scale: Float64Array.from(start, () => 0.2),
    stepAtMost: 0.7,
    fallBelow: 1e-9,
  })
  return read(found.at)
}

function averageLog(
  seen: readonly { readonly after: number; readonly to: number; readonly number: number }[],
): number {
  let sum = 0
  let count = 0
  for (const { after, to, number } of seen) {
    sum += number * Math.log((after + to) / 2)
    count += number
  }
  return sum / count
}

/**
 * The chance that a plant undecided on a day still takes: π·(1 − F) / (π·(1 − F) + (1 − π)·(1 − G)), with F and G
 * the shares taken and seen dead by then, and π the share that takes in the end.
 *
 * @param day since the work; 0 gives the share that takes in the end
 * @returns 0 to 1; falls with the day where taking comes before dying
 * @throws RangeError for an argument out of range
 * @source Bayes' rule; curve as `fitTakeCurve`
 * @example chanceStillTakes({ takesInTheEnd: 0.8, toTake: timeFromLowHigh(14, 28), toDie: null }, 28) // 0.17
 */
export function chanceStillTakes(curve: TakeCurve, day: number): number {
  requireWithin('chanceStillTakes', 'day', day, 0, Number.MAX_VALUE)
  const takes = curve.takesInTheEnd * (1 - happenedBy(curve.toTake, day))
  const dies = (1 - curve.takesInTheEnd) * (1 - (curve.toDie === null ? 0 : happenedBy(curve.toDie, day)))
  return takes + dies > 0 ? takes / (takes + dies) : 0
}
