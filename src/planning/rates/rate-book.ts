import type { RateSet } from '../../record/index.ts'
import { betaFromLowTypicalHigh, betaQuantile } from '../../science/index.ts'
import type { KindId, PersonId, Protocol, ProtocolId, StepId } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { RateUsed } from '../plan.ts'
import type { StepDays } from './days-to-ready.ts'
import {
  FIGURE_WORTH_BATCHES,
  type LearntShare,
  type LearntSurvival,
  learntSurvival,
} from './learnt-survival.ts'
import type { SeenStep } from './seen-step.ts'

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

export interface Beta {
  readonly alpha: number
  readonly beta: number
}

export interface SurvivalRate extends Beta {
  /** Part of the variance on the logit scale that a good or bad year shares between batches. */
  readonly yearShare: number
  readonly used: RateUsed
}

export interface RateBook {
  survival(protocol: Protocol, stepIndex: number, asked: AskedBatch): SurvivalRate
  days(protocol: Protocol, stepIndex: number): StepDays
  /** People, months, kinds, rootstocks, methods and cultivars beside each other, fairly. */
  compared(): Pick<
    LearntSurvival,
    | 'comparePeople'
    | 'compareMonths'
    | 'compareKinds'
    | 'compareRootstocks'
    | 'compareMethods'
    | 'compareCultivars'
  >
}

/** From low to high of a figure lie nine cases of ten: so many sd of a normal distribution. */
const SD_LOW_TO_HIGH = 2 * 1.6448536269514722
/** Of the variance of a duration's logarithm, half is between batches and half between plants. Our choice, no source. */
const BATCH_PART_OF_DAYS = 0.5
const DAYS_WORTH_BATCHES = 2

/**
 * The rates to plan with. A protocol's own figure is a weak prior; what batches did under the protocol moves it, by
 * kind, month and person where there is history (see `learntSurvival`); what the nursery has set itself overrules both.
 */
export function rateBook(seen: {
  readonly steps: readonly SeenStep[]
  readonly protocols: ReadonlyMap<ProtocolId, Protocol>
  readonly days: readonly SeenDays[]
  readonly set: readonly RateSet[]
}): RateBook {
  let daysOf: ReadonlyMap<string, readonly SeenDays[]> | null = null
  const durations = new Map<string, StepDays>()
  const figures = new Map<string, SurvivalRate>()
  let learnt: LearntSurvival | null = null

  const learned = () => {
    learnt ??= learntSurvival(seen.steps, seen.protocols)
    return learnt
  }

  return {
    compared: learned,

    survival(protocol, stepIndex, { kind, startMonth, people }) {
      const { id, survival } = protocol.steps[stepIndex]!
      const { yearShare, share: shareOf } = learned()
      const set = latestSet(seen.set, protocol.id, id, kind)
      if (set)
        return remembered(figures, `set ${JSON.stringify(set)}`, () =>
          rateOf(set.survival, yearShare, {
            from: 'set by the nursery',
            basis: set.why,
            sources: [],
            batches: 0,
          }),
        )
      const share = shareOf({
        protocol: protocol.id,
        method: protocol.method,
        step: id,
        kind,
        month: startMonth,
        person: people?.length === 1 ? people[0]! : null,
      })
      if (share !== null) return learntRate(share, startMonth)
      const { basis, sources } = survival
      return remembered(figures, keyOf(protocol.id, id), () =>
        rateOf(survival, yearShare, {
          from: basis === 'set by the nursery' ? basis : 'facts',
          basis,
          sources: [...sources],
          batches: 0,
        }),
      )
    },

    days(protocol, stepIndex) {
      const step = protocol.steps[stepIndex]!
      const key = keyOf(protocol.id, step.id)
      daysOf ??= grouped(seen.days, row => keyOf(row.protocol, row.step))
      const days = daysOf.get(key) ?? []
      return remembered(durations, key, () => learntDays(step.days, days))
    },
  }
}

/** The rate that a range means. */
function rateOf(
  { low, typical, high }: RateSet['survival'],
  yearShare: number,
  from: Pick<RateUsed, 'from' | 'basis' | 'sources' | 'batches'>,
): SurvivalRate {
  const { alpha, beta, used } = remembered(ranges, `${low} ${typical} ${high}`, () => {
    const { alpha, beta } = betaFromLowTypicalHigh(low, typical, high)
    const used = {
      mean: alpha / (alpha + beta),
      low: betaQuantile(0.05, alpha, beta),
      high: betaQuantile(0.95, alpha, beta),
    }
    return { alpha, beta, used }
  })
  return { alpha, beta, yearShare, used: { ...used, ...from } }
}
/** Found once each; a plan made again asks for the same. */
const ranges = new Map<string, Beta & { readonly used: Pick<RateUsed, 'mean' | 'low' | 'high'> }>()

/** The rate that counts teach, and where it comes from in words. */
function learntRate(share: LearntShare, startMonth: number): SurvivalRate {
  const { alpha, beta, low, high, yearShare, batches, ofKind, inMonth, byPerson } = share
  const parts = [
    `${batchesSaid(ofKind)} of this kind, ${batchesSaid(batches - ofKind)} of other kinds by this protocol`,
    inMonth > 0 ? `${inMonth} of them begun in ${MONTHS[startMonth - 1]}` : '',
    byPerson > 0 ? `${byPerson} by the same person` : '',
    `the protocol’s own figure counts as ${FIGURE_WORTH_BATCHES} more`,
  ]
  return {
    alpha,
    beta,
    yearShare,
    used: {
      mean: alpha / (alpha + beta),
      low,
      high,
      from: 'records',
      basis: parts.filter(part => part !== '').join('; '),
      sources: [],
      batches,
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
/** What the nursery has set for a step of a kind, or else for that of any kind, last. */
export function latestSet(
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
const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
]
const keyOf = (protocol: ProtocolId, step: StepId) => `${protocol}\n${step}`
const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0)

function remembered<T>(known: Map<string, T>, key: string, make: () => T): T {
  const before = known.get(key)
  if (before !== undefined) return before
  const made = make()
  known.set(key, made)
  return made
}
