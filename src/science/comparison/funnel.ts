import { requireWhole, requireWithin } from '../bounds.ts'
import { betaQuantile } from '../distributions/beta.ts'

/** One batch of somebody's (or some month's, some treatment's) work. */
export interface GroupedBatch {
  readonly group: string
  readonly entered: number
  readonly survived: number
}

/** Where a group stands against the limits that chance allows: 95 in 100 lie within, 998 in 1000 not far outside. */
export type FunnelStanding = 'far-below' | 'below' | 'within' | 'above' | 'far-above'

export interface FunnelGroup {
  readonly group: string
  readonly batches: number
  readonly entered: number
  readonly survived: number
  readonly share: number
  /** Limits for a group of this size that is no different from all: 95 in 100, and 998 in 1000. */
  readonly low: number
  readonly high: number
  readonly farLow: number
  readonly farHigh: number
  readonly standing: FunnelStanding
}

export interface Funnel {
  /** Share over all plants. */
  readonly share: number
  /** Correlation of two plants of one batch, beyond what the group explains. */
  readonly correlation: number
  /** 'assumed' where fewer than six batches more than groups are there to measure it. */
  readonly correlationBasis: 'measured' | 'assumed'
  readonly groups: readonly FunnelGroup[]
}

/** Correlation within a batch where it cannot be measured: common practice, no source. */
const ASSUMED_CORRELATION = 0.05

/**
 * Limits that are fair to small numbers: who stands out, when batches differ anyway? A group's share, were it like
 * all others, varies by p·q·Σ n·(1 + (n − 1)·ρ) / (Σ n)² over its batches of n plants; the limits are those of a Beta
 * with that mean and variance. ρ is measured inside groups, so that real differences between groups do not hide
 * themselves in it.
 *
 * @returns groups in order of first appearance; shares 0 to 1
 * @throws RangeError for an argument out of range
 * @source Spiegelhalter 2005, Stat. Med. 24:1185-1202 (funnel plots); Williams 1982, Applied Statistics 31:144-148
 *   (moment equation for ρ); both from memory
 * @example funnel([{ group: 'Ana', entered: 40, survived: 36 }, { group: 'Ben', entered: 40, survived: 24
 *   }]).groups[0].high // 0.937
 */
export function funnel(batches: readonly GroupedBatch[]): Funnel {
  let plants = 0
  let alive = 0
  for (const batch of batches) {
    requireWhole('funnel', 'entered', batch.entered, 1)
    requireWhole('funnel', 'survived', batch.survived, 0, batch.entered)
    plants += batch.entered
    alive += batch.survived
  }
  if (plants === 0) throw new RangeError('funnel: batches must not be empty')
  const groups = byGroup(batches)
  const share = alive / plants
  const spare = batches.length - groups.size
  const correlation = spare >= 6 ? correlationWithin(batches) : ASSUMED_CORRELATION
  return {
    share,
    correlation,
    correlationBasis: spare >= 6 ? 'measured' : 'assumed',
    groups: [...groups].map(([group, own]) => {
      const entered = own.reduce((sum, batch) => sum + batch.entered, 0)
      const survived = own.reduce((sum, batch) => sum + batch.survived, 0)
      const inflated = own.reduce((sum, { entered: n }) => sum + n * (1 + (n - 1) * correlation), 0)
      const limit = (tail: number) => {
        if (share === 0 || share === 1) return share
        const precision = Math.max(entered ** 2 / inflated - 1, 0.5)
        return betaQuantile(tail, share * precision, (1 - share) * precision)
      }
      const [farLow, low, high, farHigh] = [limit(0.001), limit(0.025), limit(0.975), limit(0.999)] as const
      const ownShare = survived / entered
      const standing: FunnelStanding =
        ownShare < farLow
          ? 'far-below'
          : ownShare < low
            ? 'below'
            : ownShare > farHigh
              ? 'far-above'
              : ownShare > high
                ? 'above'
                : 'within'
      return {
        group,
        batches: own.length,
        entered,
        survived,
        share: ownShare,
        low,
        high,
        farLow,
        farHigh,
        standing,
      }
    }),
  }
}

/**
 * Correlation of plants of one batch, given that groups have shares of their own: the ρ at which Pearson's chi-square
 * of batches about their group's share, each scaled by 1 + (n − 1)·ρ, equals its degrees of freedom.
 * @returns 0 to 0.95; 0 where batches differ by no more than chance
 * @source Williams 1982, Applied Statistics 31:144-148 (moment equation), from memory
 * @example correlationWithin([{ group: 'Ana', entered: 40, survived: 36 }, { group: 'Ana', entered: 40, survived:
 *   24 }]) // 0.2205
 */
export function correlationWithin(batches: readonly GroupedBatch[]): number {
  const terms: { n: number; square: number }[] = []
  let degreesOfFreedom = 0
  for (const own of byGroup(batches).values()) {
    const entered = own.reduce((sum, batch) => sum + batch.entered, 0)
    const p = own.reduce((sum, batch) => sum + batch.survived, 0) / entered
    if (p === 0 || p === 1) continue
    degreesOfFreedom += own.length - 1
    for (const { entered: n, survived: y } of own)
      terms.push({ n, square: (y - n * p) ** 2 / (n * p * (1 - p)) })
  }
  const excess = (rho: number) =>
    terms.reduce((sum, { n, square }) => sum + square / (1 + (n - 1) * rho), 0) - degreesOfFreedom
  if (degreesOfFreedom === 0 || excess(0) <= 0) return 0
  let low = 0
  let high = 0.95
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2
    if (excess(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

function byGroup(batches: readonly GroupedBatch[]): Map<string, GroupedBatch[]> {
  const groups = new Map<string, GroupedBatch[]>()
  for (const batch of batches) {
    const own = groups.get(batch.group)
    if (own === undefined) groups.set(batch.group, [batch])
    else own.push(batch)
  }
  return groups
}

/**
 * Difference of two groups on the logit scale, batches of each being alike by `correlation`.
 * @throws RangeError for an argument out of range
 * @source Woolf 1955, Annals of Human Genetics 19:251-253 (log odds ratio), from memory; variance enlarged as Kish 1965
 * @example groupDifference([{ group: 'Ana', entered: 40, survived: 36 }], [{ group: 'Ben', entered: 40, survived:
 *   24 }], 0.05).effect // 1.698
 */
export function groupDifference(
  first: readonly GroupedBatch[],
  second: readonly GroupedBatch[],
  correlation: number,
): { effect: number; standardError: number; plants: number } {
  requireWithin('groupDifference', 'correlation', correlation, 0, 1)
  const side = (own: readonly GroupedBatch[]) => {
    const entered = own.reduce((sum, batch) => sum + batch.entered, 0)
    const survived = own.reduce((sum, batch) => sum + batch.survived, 0)
    const inflated = own.reduce((sum, { entered: n }) => sum + n * (1 + (n - 1) * correlation), 0)
    // Half a plant added to each side keeps an all-or-nothing group finite.
    const alive = survived + 0.5
    const dead = entered - survived + 0.5
    return { logit: Math.log(alive / dead), variance: ((1 / alive + 1 / dead) * inflated) / entered, entered }
  }
  const a = side(first)
  const b = side(second)
  return {
    effect: a.logit - b.logit,
    standardError: Math.sqrt(a.variance + b.variance),
    plants: a.entered + b.entered,
  }
}
