import type { RateSet } from '../../record/index.ts'
import { betaFromLowTypicalHigh, betaQuantile } from '../../science/index.ts'
import type { KindId, PersonId, Protocol, ProtocolId, StepId } from '../../trade/index.ts'
import type { RateUsed } from '../plan.ts'
import type { StepDays } from './days-to-ready.ts'
import { type Beta, pooledShare, type SeenShare } from './pooled-share.ts'

/** What one batch did in one step, with what is known of it. */
export interface SeenStep extends SeenShare {
  readonly protocol: ProtocolId
  readonly step: StepId
  readonly kind: KindId
  readonly closed: boolean
}

/** How many days one batch took for one step. */
export interface SeenDays {
  readonly protocol: ProtocolId
  readonly step: StepId
  readonly days: number
}

/** The batch of which a rate is asked. */
export interface AskedBatch {
  readonly kind: KindId
  /** Month of the start, 1 to 12. */
  readonly startMonth: number
  readonly people?: readonly PersonId[]
}

export interface SurvivalRate extends Beta {
  /** Part of the variance on the logit scale that a good or bad year shares between batches. */
  readonly yearShare: number
  readonly used: RateUsed
}

export interface RateBook {
  survival(protocol: Protocol, stepIndex: number, asked: AskedBatch): SurvivalRate
  days(protocol: Protocol, stepIndex: number): StepDays
}

/** Of the variance between batches, what a good or bad year shares. Our choice, no source: weather is about a third. */
const YEAR_SHARE = 0.3
/** From low to high of a figure lie nine cases of ten: so many sd of a normal distribution. */
const SD_LOW_TO_HIGH = 2 * 1.6448536269514722
/** Of the variance of a duration's logarithm, half is between batches and half between plants. Our choice, no source. */
const BATCH_PART_OF_DAYS = 0.5
const DAYS_WORTH_BATCHES = 2

/**
 * The rates to plan with. A protocol's own figure is a weak prior; batches of any kind under the protocol move it,
 * and batches of the very kind move it further; what the nursery has set itself overrules both.
 */
export function rateBook(seen: {
  readonly steps: readonly SeenStep[]
  readonly days: readonly SeenDays[]
  readonly set: readonly RateSet[]
}): RateBook {
  const rowsOf = grouped(
    seen.steps.filter(row => row.closed),
    row => keyOf(row.protocol, row.step),
  )
  const daysOf = grouped(seen.days, row => keyOf(row.protocol, row.step))
  const survivals = new Map<string, SurvivalRate>()
  const durations = new Map<string, StepDays>()

  return {
    survival(protocol, stepIndex, { kind }) {
      const step = protocol.steps[stepIndex]!
      const rows = rowsOf.get(keyOf(protocol.id, step.id)) ?? []
      // Kinds without a batch or a rate of their own share one answer: a nursery has many of them.
      const isOwn = rows.some(row => row.kind === kind) || seen.set.some(rate => rate.kind === kind)
      const key = `${keyOf(protocol.id, step.id)}\n${isOwn ? kind : ''}`
      return remembered(survivals, key, () => {
        const set = latestSet(seen.set, protocol.id, step.id, kind)
        if (set) {
          const share = betaFromLowTypicalHigh(set.survival.low, set.survival.typical, set.survival.high)
          return rateOf(share, {
            from: 'set by the nursery',
            basis: set.why,
            sources: [],
            batches: 0,
          })
        }
        const { low, typical, high, basis, sources } = step.survival
        const believed = betaFromLowTypicalHigh(low, typical, high)
        const own = rows.filter(row => row.kind === kind)
        const others = rows.filter(row => row.kind !== kind)
        const share = pooledShare(pooledShare(believed, others), own)
        if (rows.length > 0)
          return rateOf(share, {
            from: 'records',
            basis: `${batchesSaid(own.length)} of this kind, ${batchesSaid(others.length)} of other kinds by this protocol`,
            sources: [],
            batches: rows.length,
          })
        return rateOf(share, {
          from: basis === 'set by the nursery' ? basis : 'facts',
          basis,
          sources: [...sources],
          batches: 0,
        })
      })
    },

    days(protocol, stepIndex) {
      const step = protocol.steps[stepIndex]!
      const key = keyOf(protocol.id, step.id)
      return remembered(durations, key, () => learntDays(step.days, daysOf.get(key) ?? []))
    },
  }
}

function rateOf(share: Beta, from: Pick<RateUsed, 'from' | 'basis' | 'sources' | 'batches'>): SurvivalRate {
  return {
    ...share,
    yearShare: YEAR_SHARE,
    used: {
      mean: share.alpha / (share.alpha + share.beta),
      low: betaQuantile(0.05, share.alpha, share.beta),
      high: betaQuantile(0.95, share.alpha, share.beta),
      ...from,
    },
  }
}

/** Days of a step: the figure's spread, moved by the batches that have been through it. */
function learntDays(figure: Protocol['steps'][number]['days'], seen: readonly SeenDays[]): StepDays {
  if (!(figure.typical > 0)) return { medianDays: 0, sdLogDays: 0, plantSdLogDays: 0 }
  const low = Math.max(figure.low, figure.typical / 10)
  const whole = Math.log(Math.max(figure.high, figure.typical) / low) / SD_LOW_TO_HIGH
  const plantSdLogDays = whole * Math.sqrt(1 - BATCH_PART_OF_DAYS)
  const batchVariance = whole ** 2 * BATCH_PART_OF_DAYS
  const logs = seen.filter(row => row.days > 0).map(row => Math.log(row.days))
  const worth = DAYS_WORTH_BATCHES + logs.length
  const median = (DAYS_WORTH_BATCHES * Math.log(figure.typical) + sum(logs)) / worth
  const spread = sum(logs.map(log => (log - median) ** 2))
  const variance = (DAYS_WORTH_BATCHES * batchVariance + spread) / worth
  return { medianDays: Math.exp(median), sdLogDays: Math.sqrt(variance), plantSdLogDays }
}

/** What was set for this very kind goes before what was set for all; of several, the last one said. */
function latestSet(
  sets: readonly RateSet[],
  protocol: ProtocolId,
  step: StepId,
  kind: KindId,
): RateSet | undefined {
  const of = (wanted: KindId | null) =>
    sets.findLast(set => set.protocol === protocol && set.step === step && set.kind === wanted)
  return of(kind) ?? of(null)
}

const batchesSaid = (count: number) => (count === 1 ? '1 batch' : `${count} batches`)
const keyOf = (protocol: ProtocolId, step: StepId) => `${protocol}\n${step}`
const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0)

function grouped<T>(rows: readonly T[], keyOfRow: (row: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>()
  for (const row of rows) {
    const group = groups.get(keyOfRow(row))
    if (group) group.push(row)
    else groups.set(keyOfRow(row), [row])
  }
  return groups
}

function remembered<T>(known: Map<string, T>, key: string, make: () => T): T {
  const before = known.get(key)
  if (before !== undefined) return before
  const made = make()
  known.set(key, made)
  return made
}
