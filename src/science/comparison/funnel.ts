import { requireAbove, requireWhole, requireWithin } from '../bounds.ts'
import { betaCdf } from '../distributions/beta.ts'
import { logitOfShare, shareOfLogit } from '../numerics/logit.ts'

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
 * Limits that are fair to small numbers: who stands out, when batches differ anyway? Batches of n plants are expected to
 * survive by e; a group moves all its expected logits by the one δ at which as many would survive as did, and its share
 * is that of all, S, moved by δ. Were it like all others, δ would vary by V = Σ n·w·(1 + (n − 1)·ρ) / (Σ n·w)² with
 * w = e·(1 − e): as much as that of a binomial of S with 1 / (V·S·(1 − S)) plants, whose limits it has. ρ is σ²·w where a
 * model tells the spread σ of batches; else it is measured inside groups, so that real differences between groups do
 * not hide themselves in it, and e is S.
 *
 * @returns groups in order of first appearance; shares 0 to 1
 * @throws RangeError for an argument out of range
 * @source Spiegelhalter 2005, Stat. Med. 24:1185-1202 (funnel plots, limits widened for overdispersion); Williams 1982,
 *   Applied Statistics 31:144-148 (ρ, and its logistic-normal form); Kish 1965 (effective number); all from memory
 * @example funnel([{ group: 'Ana', entered: 40, survived: 36 }, { group: 'Ben', entered: 40, survived: 24
 *   }]).groups[0].share // 0.9
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
  const { logits } = allowed ?? { logits: batches.map(() => 0) }
  const moved = moveTo(alive, batches, logits)
  const expected = logits.map(logit => (allowed === undefined ? share : shareOfLogit(logit + moved)))

  const told = batches.map((batch, at) => ({ ...batch, expected: expected[at]! }))
  return {
    share,
    correlation: correlationAt(share),
    correlationBasis: allowed !== undefined ? 'told' : spare >= 6 ? 'measured' : 'assumed',
    groups: [...byGroup(told)].map(([group, own]): FunnelGroup => {
      const entered = sum(own.map(batch => batch.entered))
      const survived = sum(own.map(batch => batch.survived))
      const weight = sum(own.map(({ entered: n, expected: e }) => n * e * (1 - e)))
      const inflated = sum(
        own.map(({ entered: n, expected: e }) => n * e * (1 - e) * (1 + (n - 1) * correlationAt(e))),
      )
      // Where all survived, or none, there is no spread to be worth more or less than the plants themselves.
      const spread = share * (1 - share) * inflated
      const worth = spread > 0 ? weight ** 2 / spread : entered
      const move = moveTo(
        survived,
        own,
        own.map(batch => logitOfShare(batch.expected)),
      )
      const ownShare = allowed === undefined ? survived / entered : shareOfLogit(logitOfShare(share) + move)
      const limits = funnelLimits(share, worth)
      const standing = standingOf(ownShare, limits)
      return { group, batches: own.length, entered, survived, share: ownShare, worth, ...limits, standing }
    }),
  }
}

/**
 * Limits of the share seen in so many plants when all have the same chance: beyond each lies its tail of the binomial,
 * half of the limit's own chance counted in, so that the number of plants need not be whole. Where all of so few are no
 * surprise the limit is 1, or 0.
 * @throws RangeError for an argument out of range
 * @source Spiegelhalter 2005, Stat. Med. 24:1185-1202 (exact limits of 95 and 99.8 in 100); Brown, Cai & DasGupta 2001,
 *   Statistical Science 16:101-133 (the Beta with a half added is that middle); both from memory
 * @example funnelLimits(0.5, 100) // { farLow: 0.3466, low: 0.4022, high: 0.5978, farHigh: 0.6534 }
 */
export function funnelLimits(share: number, worth: number): FunnelLimits {
  requireWithin('funnelLimits', 'share', share, 0, 1)
  requireAbove('funnelLimits', 'worth', worth, 0)
  if (share === 0 || share === 1) return { farLow: share, low: share, high: share, farHigh: share }
  return {
    farLow: 1 - upperLimit(1 - share, worth, 0.001),
    low: 1 - upperLimit(1 - share, worth, 0.025),
    high: upperLimit(share, worth, 0.025),
    farHigh: upperLimit(share, worth, 0.001),
  }
}

function upperLimit(share: number, worth: number, tail: number): number {
  const above = (seen: number) => betaCdf(share, seen * worth + 0.5, (1 - seen) * worth + 0.5)
  if (above(1) >= tail) return 1
  let low = share
  let high = 1
  for (let round = 0; round < 26; round++) {
    const middle = (low + high) / 2
    if (above(middle) > tail) low = middle
    else high = middle
  }
  return (low + high) / 2
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

/** By how much all logits must be moved so that as many are expected as survived. */
function moveTo(survived: number, batches: readonly GroupedBatch[], logits: readonly number[]): number {
  const expectedAt = (move: number) =>
    sum(batches.map(({ entered }, at) => entered * shareOfLogit(logits[at]! + move)))
  let low = -40
  let high = 40
  for (let round = 0; round < 50; round++) {
    const middle = (low + high) / 2
    if (expectedAt(middle) < survived) low = middle
    else high = middle
  }
  return (low + high) / 2
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
