import { chiSquareAbove } from '../distributions/chi-square.ts'
import { invertPositiveDefinite } from '../numerics/small-cholesky.ts'
import { byTime, type LossesAt } from './kaplan-meier.ts'

export interface LogRank {
  readonly observed: readonly number[]
  readonly expected: readonly number[]
  /** Variance of the first group's observed less expected. */
  readonly variance: number
  readonly chiSquare: number
  readonly degreesOfFreedom: number
  /** Chance of a difference as large as this if all groups lose alike. */
  readonly p: number
}

/**
 * Do groups lose plants at different times? Log-rank test, or with `early` the Peto & Peto test, which
 * weighs each loss by the share alive before it and so looks harder at early losses.
 *
 * @param groups one list of happenings for each group, at least two groups
 * @throws RangeError for an argument out of range
 * @source Mantel 1966, Cancer Chemother. Rep. 50:163-170; Harrington & Fleming 1982 (ρ = 1), from memory;
 *   checked against R's survival::survdiff
 * @example logRank([[{ time: 5, lost: 2, leftAlive: 8 }], [{ time: 3, lost: 5, leftAlive: 5 }]]).chiSquare //
 *   6.333
 */
export function logRank(
  groups: readonly (readonly LossesAt[])[],
  weigh: 'alike' | 'early' = 'alike',
): LogRank {
  if (groups.length < 2) throw new RangeError(`logRank: groups must be 2 or more, got ${groups.length}`)
  const count = groups.length
  const single = groups.map(group => byTime(group))
  const pooled = byTime(groups.flat())
  const place = new Array<number>(count).fill(0)
  const observed = new Array<number>(count).fill(0)
  const expected = new Array<number>(count).fill(0)
  const covariance = new Float64Array(count * count)
  let survival = 1
  for (const { time, lost, atRisk } of pooled) {
    if (lost === 0) continue
    const weight = weigh === 'early' ? survival : 1
    const standing = single.map((list, g) => {
      while (place[g]! < list.length && list[place[g]!]!.time < time) place[g]!++
      return list[place[g]!]?.atRisk ?? 0
    })
    const spread = atRisk > 1 ? (lost * (atRisk - lost)) / (atRisk - 1) : 0
    for (let g = 0; g < count; g++) {
      const here = single[g]![place[g]!]
      observed[g]! += weight * (here?.time === time ? here.lost : 0)
      const share = standing[g]! / atRisk
      expected[g]! += weight * lost * share
      for (let h = 0; h < count; h++)
        covariance[g * count + h]! +=
          weight * weight * spread * share * ((g === h ? 1 : 0) - standing[h]! / atRisk)
    }
    survival *= (atRisk - lost) / atRisk
  }
  const degreesOfFreedom = count - 1
  const part = new Float64Array(degreesOfFreedom ** 2)
  for (let g = 0; g < degreesOfFreedom; g++)
    for (let h = 0; h < degreesOfFreedom; h++) part[g * degreesOfFreedom + h] = covariance[g * count + h]!
  const inverse = invertPositiveDefinite(part, degreesOfFreedom)
  let chiSquare = inverse === undefined ? Number.NaN : 0
  if (inverse !== undefined)
    for (let g = 0; g < degreesOfFreedom; g++)
      for (let h = 0; h < degreesOfFreedom; h++)
        chiSquare +=
          (observed[g]! - expected[g]!) * inverse[g * degreesOfFreedom + h]! * (observed[h]! - expected[h]!)
  return {
    observed,
    expected,
    variance: covariance[0]!,
    chiSquare,
    degreesOfFreedom,
    p: Number.isNaN(chiSquare) ? 1 : chiSquareAbove(chiSquare, degreesOfFreedom),
  }
}
