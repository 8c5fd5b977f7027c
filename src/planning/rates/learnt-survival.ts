import {
  betaFromLowTypicalHigh,
  fitRates,
  logitMoments,
  predictShare,
  type RateFact,
  type RateModel,
} from '../../science/index.ts'
import type { MethodId, Protocol, ProtocolId, Sign, SpeciesId, StepId } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import { type Comparison, compareLevels } from './compare-levels.ts'
import { newestOfEach } from './newest-counts.ts'
import { type AskedStep, contextOf, levelsOf, type SeenStep, stepOf } from './seen-step.ts'

/** The share of a batch to come. */
interface Share {
  readonly alpha: number
  readonly beta: number
  /** Nine of ten batches to come lie between. */
  readonly low: number
  readonly high: number
  /** Of the variance on the logit scale, the part that a good or bad year shares. */
  readonly yearShare: number
}

export interface LearntShare extends Share {
  /** Batches of the step's protocol; of them, of the very kind, begun in the very month, worked by the very person. */
  readonly batches: number
  readonly ofKind: number
  readonly inMonth: number
  readonly byPerson: number
}

export interface LearntSurvival {
  /** Null for a step that no batch has been through under its protocol. */
  share(asked: AskedStep): LearntShare | null
  /** The year's part where only a figure is known. */
  readonly yearShare: number
  /** People beside each other in each method. */
  comparePeople(): readonly Comparison<{ readonly method: MethodId }>[]
  /** Months of the start beside each other in each step of a protocol. */
  compareMonths(): readonly Comparison<StepCompared>[]
  /** Kinds beside each other in each step of a protocol. */
  compareKinds(): readonly Comparison<StepCompared>[]
  /** Rootstocks beside each other in each method. */
  compareRootstocks(): readonly Comparison<{ readonly method: MethodId }>[]
  /** Methods beside each other in each fruit, by what takes: the first step that ends with roots, a union or a shoot. */
  compareMethods(): readonly Comparison<{ readonly species: SpeciesId }>[]
  /** Cultivars beside each other in each method of a fruit. */
  compareCultivars(): readonly Comparison<WayCompared>[]
}

export interface WayCompared {
  readonly species: SpeciesId
  readonly method: MethodId
}

export interface StepCompared {
  readonly protocol: ProtocolId
  readonly step: StepId
}

/** How many batches a protocol's figure is worth, for the average of its step. Our choice, no source. */
export const FIGURE_WORTH_BATCHES = 2
/** How many kinds (months, people, years) and batches the spreads that it implies are worth. Our choice, no source. */
const SPREAD_WORTH = 10
/** How far methods of a fruit are believed to lie apart on the logit scale, as a start. Our choice, no source. */
const METHODS_APART = { sdLogit: 1, worthLevels: SPREAD_WORTH }
/** A factor with fewer levels says little of how far they lie apart: it is left to the spread between batches. */
const FEWEST_LEVELS = 3
const FEWEST_SEASONS = 3
/** A figure said to be surer than this, on the logit scale, is believed as if it were not. Our choice, no source. */
const LEAST_VARIANCE = 0.1
/** Of the variance between batches, what a good or bad year shares until there are seasons to tell. Our choice, no source. */
export const USUAL_YEAR_SHARE = 0.3

/**
 * From so many counts rates are learnt in a second or two; more say little that these do not, and tell of older times.
 * Our choice, no source.
 */
const MOST_COUNTS = 20_000

/**
 * What the nursery's own counts say of each step: one logistic regression in which the steps of protocols, kinds,
 * months of the start, people and years have crossed effects, each drawn towards the average as far as its own counts
 * are few. All are departures from the protocols' figures. A figure is for the next batch of anybody, worth 2 batches: of
 * its variance a third is what the nursery's own average is off, half is between batches and a sixth between kinds.
 * Months, people and years are believed to differ as kinds do until the counts say otherwise.
 * A share is for a batch to come, in a year not yet known. Of very many counts, the newest of each kind in each step
 * teach.
 *
 * @source science's `fitRates` and `predictShare`; the worth of the figures is our choice
 */
export function learntSurvival(
  seen: readonly SeenStep[],
  protocols: ReadonlyMap<ProtocolId, Protocol>,
): LearntSurvival {
  const known = recent.find(one => isSame(one.seen, seen) && hasSameSteps(one.protocols, protocols))
  if (known !== undefined) return known.learnt
  const learnt = learn(seen, protocols)
  recent = [{ seen, protocols, learnt }, ...recent].slice(0, REMEMBERED)
  return learnt
}

/**
 * Learning takes seconds from tens of thousands of counts, and most entries end no step: then there is nothing new.
 * Two are remembered: what all counts say, and what those said that came before the ones watched for a slump.
 */
const REMEMBERED = 2
let recent: readonly {
  readonly seen: readonly SeenStep[]
  readonly protocols: ReadonlyMap<ProtocolId, Protocol>
  readonly learnt: LearntSurvival
}[] = []

const TOLD = [
  'protocol',
  'method',
  'step',
  'species',
  'kind',
  'month',
  'year',
  'person',
  'rootstock',
  'cultivar',
  'entered',
  'survived',
] as const

const isSame = (some: readonly SeenStep[], others: readonly SeenStep[]): boolean =>
  some.length === others.length && some.every((row, at) => TOLD.every(key => row[key] === others[at]![key]))

const hasSameSteps = (
  some: ReadonlyMap<ProtocolId, Protocol>,
  others: ReadonlyMap<ProtocolId, Protocol>,
): boolean =>
  some.size === others.size && [...some].every(([id, { steps }]) => others.get(id)?.steps === steps)

function learn(all: readonly SeenStep[], protocols: ReadonlyMap<ProtocolId, Protocol>): LearntSurvival {
  const seen = newestOfEach(all, row => levelsOf(row).kind, MOST_COUNTS)
  const rowsOf = new Map<string, readonly SeenStep[]>()
  const figures = new Map<string, Figure>()
  for (const [step, rows] of grouped(seen, stepOf)) {
    // A step that its protocol no longer has cannot be asked for.
    const figure = figureOf(rows[0]!, protocols)
    if (figure === undefined) continue
    rowsOf.set(step, rows)
    figures.set(step, figure)
  }
  if (figures.size === 0)
    return {
      share: () => null,
      yearShare: USUAL_YEAR_SHARE,
      comparePeople: () => [],
      compareMonths: () => [],
      compareKinds: () => [],
      compareRootstocks: () => [],
      compareMethods: () => [],
      compareCultivars: () => [],
    }
  const allRows = [...rowsOf.values()].flat()
  const expected: OffsetOf = row => figures.get(stepOf(row))!.mean
  const model = fitted(allRows, figures)

  const factorsByName = new Map(model.factors.map(factor => [factor.name, factor]))
  const isLevel = (name: string, level: string | undefined) =>
    level !== undefined && factorsByName.get(name)?.levelNumbers.has(level) === true
  const shares = new Map<string, Share>()
  const countsOf = new Map([...rowsOf].map(([step, rows]) => [step, countBy(rows)]))
  const varianceOf = (name: string) => factorsByName.get(name)?.varianceOfNew
  const ofYears = varianceOf('year')
  const ofBatch = ['kind', 'month', 'person', 'year'].reduce(
    (sum, name) => sum + (varianceOf(name) ?? 0),
    model.varianceOfNewBatch,
  )
  return {
    yearShare: ofYears === undefined ? USUAL_YEAR_SHARE : ofYears / ofBatch,
    comparePeople: () => compareLevels(model, 'person', comparedIn(allRows, expected, 'method', 'person')),
    compareMonths: () => compareLevels(model, 'month', comparedIn(allRows, expected, 'step', 'month')),
    compareKinds: () => compareLevels(model, 'kind', comparedIn(allRows, expected, 'step', 'kind')),
    compareRootstocks: () => {
      const worked = allRows.filter(({ rootstock }) => rootstock !== null)
      if (worked.length === 0) return []
      // The plan asks nobody for a rootstock's own part, so that it is learnt only where it is looked at.
      const rows = comparedIn(worked, expected, 'method', 'rootstock')
      return compareLevels(fitted(worked, figures, { further: ['rootstock'] }), 'rootstock', rows)
    },
    compareMethods: () => {
      const takes = allRows.filter(({ protocol, step }) => takingStep(protocols.get(protocol)!) === step)
      if (takes.length === 0) return []
      // Each protocol has a method: its own figures and its steps would say again what the method does.
      const average = averageOfFruit(takes)
      const learnt = fitted(takes, figures, { further: ['method'], without: ['step'], offset: average })
      return compareLevels(learnt, 'method', comparedIn(takes, average, 'fruit', 'method'))
    },
    compareCultivars: () => {
      const named = allRows.filter(({ cultivar }) => cultivar !== null)
      if (named.length === 0) return []
      // A kind is a cultivar on its stock: beside each other, neither could be told.
      const learnt = fitted(named, figures, { further: ['cultivar'], without: ['kind'] })
      return compareLevels(learnt, 'cultivar', comparedIn(named, expected, 'way', 'cultivar'))
    },
    share(asked) {
      const rows = rowsOf.get(stepOf(asked))
      if (rows === undefined) return null
      const named = levelsOf(asked)
      // Levels never seen are all alike.
      const name = Object.entries(named)
        .map(([factor, level]) => (isLevel(factor, level) ? level : ''))
        .join('\n')
      let share = shares.get(name)
      if (share === undefined) {
        const { alpha, beta, low, high, logit } = predictShare(model, named, figures.get(stepOf(asked))!.mean)
        const ofYear = ofYears === undefined ? USUAL_YEAR_SHARE : ofYears / logit.variance
        share = { alpha, beta, low, high, yearShare: ofYear }
        shares.set(name, share)
      }
      const counts = countsOf.get(stepOf(asked))!
      return {
        ...share,
        batches: rows.length,
        ofKind: counts.get(`kind ${asked.kind}`) ?? 0,
        inMonth: counts.get(`month ${asked.month}`) ?? 0,
        byPerson: asked.person === null ? 0 : (counts.get(`person ${asked.person}`) ?? 0),
      }
    },
  }
}

/** What its logit is known to be before its own counts are looked at. */
type OffsetOf = (row: SeenStep) => number

/** Signs that a plant took; where it lives on is another matter. */
const TAKES: readonly Sign[] = ['germinated', 'sprouted', 'rooted', 'united']
const takingStep = ({ steps }: Protocol): StepId | undefined =>
  steps.find(({ sign }) => TAKES.includes(sign))?.id

/** The share of a fruit over all its methods, on the logit scale; half a plant either way keeps it there. */
function averageOfFruit(rows: readonly SeenStep[]): OffsetOf {
  const logits = new Map(
    [...grouped(rows, ({ species }) => species)].map(([species, own]) => {
      const survived = own.reduce((sum, row) => sum + row.survived, 0.5)
      const failed = own.reduce((sum, row) => sum + row.entered - row.survived, 0.5)
      return [species, Math.log(survived / failed)] as const
    }),
  )
  return ({ species }) => logits.get(species)!
}

/** What is compared within: what a group of counts is of. */
const WITHIN = {
  method: ({ method }: SeenStep) => ({ method }),
  step: ({ protocol, step }: SeenStep): StepCompared => ({ protocol, step }),
  fruit: ({ species }: SeenStep) => ({ species }),
  way: ({ species, method }: SeenStep): WayCompared => ({ species, method }),
} as const

/** The counts that say which member they are of, to be compared within each method, step of a protocol, fruit or way. */
function comparedIn<In extends keyof typeof WITHIN>(
  rows: readonly SeenStep[],
  offset: OffsetOf,
  within: In,
  by: 'person' | 'month' | 'kind' | 'rootstock' | 'method' | 'cultivar',
) {
  return rows.flatMap(row => {
    const { entered, survived } = row
    const member = row[by]
    if (member === null) return []
    const of = WITHIN[within](row) as ReturnType<(typeof WITHIN)[In]>
    const group = Object.values(of).join(' ')
    const context = contextOf(row)
    return [{ entered, survived, context, offsetLogit: offset(row), group, of, member: String(member) }]
  })
}

/** How many of the counts are of each kind, month and person. */
function countBy(rows: readonly SeenStep[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  const one = (key: string) => counts.set(key, (counts.get(key) ?? 0) + 1)
  for (const { kind, month, person } of rows) {
    one(`kind ${kind}`)
    one(`month ${month}`)
    if (person !== null) one(`person ${person}`)
  }
  return counts
}

/** The figure of a step as its protocol has it, and its logit. */
interface Figure {
  readonly alpha: number
  readonly beta: number
  readonly mean: number
  readonly variance: number
}

function figureOf(
  { protocol, step }: SeenStep,
  protocols: ReadonlyMap<ProtocolId, Protocol>,
): Figure | undefined {
  const survival = protocols.get(protocol)?.steps.find(({ id }) => id === step)?.survival
  if (survival === undefined) return undefined
  const { alpha, beta } = betaFromLowTypicalHigh(survival.low, survival.typical, survival.high)
  return { alpha, beta, ...logitMoments(alpha, beta) }
}

function fitted(
  seen: readonly SeenStep[],
  figures: ReadonlyMap<string, Figure>,
  {
    further = [],
    without = [],
    offset = row => figures.get(stepOf(row))!.mean,
  }: {
    readonly further?: readonly ('rootstock' | 'cultivar' | 'method')[]
    readonly without?: readonly ('step' | 'kind')[]
    readonly offset?: OffsetOf
  } = {},
): RateModel {
  const observations = seen.map(row => ({
    entered: row.entered,
    survived: row.survived,
    offsetLogit: offset(row),
    context: contextOf(row),
  }))
  const isTold = (name: 'month' | 'person') =>
    new Set(observations.map(({ context }) => context[name])).size >= FEWEST_LEVELS
  const seasons = new Set(seen.map(({ year }) => year)).size

  const variances = [...figures.values()].map(({ variance }) => variance).sort((a, b) => a - b)
  const middle = Math.max(LEAST_VARIANCE, variances[variances.length >> 1]!)
  const spreadOf = (part: number) => ({ sdLogit: Math.sqrt(middle * part), worthLevels: SPREAD_WORTH })
  const ofAverage = 1 / (FIGURE_WORTH_BATCHES + 1)
  const ofKinds = (1 - ofAverage) / 4
  const factors = [
    ...(['step', 'kind'] as const).filter(name => !without.includes(name)),
    ...(['month', 'person'] as const).filter(isTold),
    ...(seasons >= FEWEST_SEASONS ? ['year'] : []),
    ...further,
  ]
  return fitRates({
    observations,
    factors,
    facts: (without.includes('step') ? [] : [...figures]).map(
      ([step, { alpha, beta, mean, variance }]): RateFact => ({
        context: { step },
        alpha,
        beta,
        offsetLogit: mean,
        worthBatches: Math.min(1, variance / LEAST_VARIANCE) / ofAverage,
      }),
    ),
    spreads: Object.fromEntries(
      factors.map(name => [
        name,
        name === 'method' ? METHODS_APART : spreadOf(name === 'step' ? ofAverage : ofKinds),
      ]),
    ),
    batchSpread: spreadOf(1 - ofAverage - ofKinds),
  })
}
