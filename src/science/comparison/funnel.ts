import { requireAbove, requireWhole, requireWithin } from '../bounds.ts'
import { betaQuantile } from '../distributions/beta.ts'
import { shareOfLogit } from '../numerics/logit.ts'

/** One batch of somebody's (or some month's, some treatment's) work. */
export interface GroupedBatch {
  readonly group: string
  readonly entered: number
  readonly survived: number
}

/** Where a group stands against the limits that chance allows: 95 in 100 lie within, 998 in 1000 not far outside. */
export type FunnelStanding = 'far-below' | 'below' | 'within' | 'above' | 'far-above'

/** Limits for a group that is no different from all: 95 in 100 lie from low to high, 998 in 1000 from farLow to farHigh. */
export interface FunnelLimits {
  readonly farLow: number
  readonly low: number
  readonly high: number
  readonly farHigh: number
}

export interface FunnelGroup extends FunnelLimits {
  readonly group: string
  readonly batches: number
  readonly entered: number
  readonly survived: number
  /** What of all plants would have survived, had all been like this group's; its own share where nothing is allowed for. */
  readonly share: number
  /** As many plants, each with a luck of its own, would say as much. */
  readonly worth: number
  readonly standing: FunnelStanding
}

export interface Funnel {
  /** Share over all plants. */
  readonly share: number
  /** Correlation of two plants of one batch, beyond what the group explains. */
  readonly correlation: number
  /** 'assumed' where fewer than six batches more than groups are there to measure it. */
  readonly correlationBasis: 'told' | 'measured' | 'assumed'
  readonly groups: readonly FunnelGroup[]
}

/** What a model expects of the batches, whosesoever they are. */
export interface FunnelAllowance {
  /** One for each batch. Only differences count: all are moved together until they sum to what survived. */
  readonly logits: readonly number[]
  /** Spread between batches for no known reason, standard deviation on the logit scale. */
  readonly sdLogit: number
}

/** Correlation within a batch where it cannot be measured: common practice, no source. */
const ASSUMED_CORRELATION = 0.05
const MOST_CORRELATION = 0.95

/**
 * Limits that are fair to small numbers: who stands out, when batches differ anyway? A group whose batches of n plants
 * are expected to survive by e has, were it like all others, a variance of Σ n·e·(1 − e)·(1 + (n − 1)·ρ) / (Σ n)² about
 * the share S of all. It is worth as many single plants as give that variance to a binomial of S, and has the limits of
 * that number. ρ is σ²·e·(1 − e) where a model tells the spread σ of batches; else it is measured inside groups, so that
 * real differences between groups do not hide themselves in it, and e is S. What is allowed for moves a group by indirect
 * standardization, to S + Σ (survived − n·e) / Σ n, kept within 0 and 1.
 *
 * @returns groups in order of first appearance; shares 0 to 1
 * @throws RangeError for an argument out of range
 * @source Spiegelhalter 2005, Stat. Med. 24:1185-1202 (funnel plots, limits widened for overdispersion); Williams 1982,
 *   Applied Statistics 31:144-148 (ρ, and its logistic-normal form); Kish 1965 (effective number); all from memory
 * @example funnel([{ group: 'Ana', entered: 40, survived: 36 }, { group: 'Ben', entered: 40, survived: 24
 *   }]).groups[0].high // 0.937
 */
export function funnel(batches: readonly GroupedBatch[], allowed?: FunnelAllowance): Funnel {
  let plants = 0
  let alive = 0
  for (const batch of batches) {
    requireWhole('funnel', 'entered', batch.entered, 1)
    requireWhole('funnel', 'survived', batch.survived, 0, batch.entered)
    plants += batch.entered
    alive += batch.survived
  }
  if (plants === 0) throw new RangeError('funnel: batches must not be empty')
  if (allowed !== undefined) {
    requireWhole('funnel', 'allowed.logits.length', allowed.logits.length, batches.length, batches.length)
    requireWithin('funnel', 'allowed.sdLogit', allowed.sdLogit, 0, Number.MAX_VALUE)
  }
  const share = alive / plants
  const spare = batches.length - byGroup(batches).size
  const measured = spare >= 6 ? correlationWithin(batches) : ASSUMED_CORRELATION
  const correlationAt = (e: number) =>
    allowed === undefined ? measured : Math.min(MOST_CORRELATION, allowed.sdLogit ** 2 * e * (1 - e))
  const expected = allowed === undefined ? batches.map(() => share) : expectedShares(batches, allowed.logits)

  const told = batches.map((batch, at) => ({ ...batch, expected: expected[at]! }))
  return {
    share,
    correlation: correlationAt(share),
    correlationBasis: allowed !== undefined ? 'told' : spare >= 6 ? 'measured' : 'assumed',
    groups: [...byGroup(told)].map(([group, own]): FunnelGroup => {
      const entered = sum(own.map(batch => batch.entered))
      const survived = sum(own.map(batch => batch.survived))
      const beyond = sum(own.map(batch => batch.survived - batch.entered * batch.expected))
      const variance = sum(
        own.map(({ entered: n, expected: e }) => n * e * (1 - e) * (1 + (n - 1) * correlationAt(e))),
      )
      const worth = variance > 0 ? (entered ** 2 * share * (1 - share)) / variance : entered
      const ownShare = Math.min(1, Math.max(0, share + beyond / entered))
      const limits = funnelLimits(share, worth)
      const standing = standingOf(ownShare, limits)
      return { group, batches: own.length, entered, survived, share: ownShare, worth, ...limits, standing }
    }),
  }
}

/**
 * Limits of the share seen in so many plants when all have the same chance: those of a Beta with the mean and the
 * variance of that binomial share, so that they stay within 0 and 1 and the number need not be whole.
 * @throws RangeError for an argument out of range
 * @source Spiegelhalter 2005, Stat. Med. 24:1185-1202 (95 and 99.8 in 100), from memory; the Beta is our choice
 * @example funnelLimits(0.5, 100) // { farLow: 0.348, low: 0.4022, high: 0.5978, farHigh: 0.652 }
 */
export function funnelLimits(share: number, worth: number): FunnelLimits {
  requireWithin('funnelLimits', 'share', share, 0, 1)
  requireAbove('funnelLimits', 'worth', worth, 0)
  if (share === 0 || share === 1) return { farLow: share, low: share, high: share, farHigh: share }
  const precision = Math.max(worth - 1, 0.5)
  const at = (tail: number) => betaQuantile(tail, share * precision, (1 - share) * precision)
  return { farLow: at(0.001), low: at(0.025), high: at(0.975), farHigh: at(0.999) }
}

const standingOf = (share: number, { farLow, low, high, farHigh }: FunnelLimits): FunnelStanding =>
  share < farLow
    ? 'far-below'
    : share < low
      ? 'below'
      : share > farHigh
        ? 'far-above'
        : share > high
          ? 'above'
          : 'within'

/** The shares of the logits, moved by one number so that as many are expected as survived. */
function expectedShares(batches: readonly GroupedBatch[], logits: readonly number[]): readonly number[] {
  const alive = sum(batches.map(({ survived }) => survived))
  const expectedAt = (move: number) =>
    sum(batches.map(({ entered }, at) => entered * shareOfLogit(logits[at]! + move)))
  let low = -40
  let high = 40
  for (let round = 0; round < 50; round++) {
    const middle = (low + high) / 2
    if (expectedAt(middle) < alive) low = middle
    else high = middle
  }
  return logits.map(logit => shareOfLogit(logit + (low + high) / 2))
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0)

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
  let high = MOST_CORRELATION
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2
    if (excess(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

function byGroup<Batch extends GroupedBatch>(batches: readonly Batch[]): Map<string, Batch[]> {
  const groups = new Map<string, Batch[]>()
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
