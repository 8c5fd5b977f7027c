import {
  type Finding,
  type FunnelGroup,
  findingOf,
  funnel,
  levelDifference,
  levelEstimates,
  logitInContext,
  type RateContext,
  type RateModel,
} from '../../science/index.ts'
import { grouped } from '../grouped.ts'

/** One count, with what it is to be compared by. */
export interface ComparedRow<Of> {
  readonly entered: number
  readonly survived: number
  /** What the model knows of it, by which it calls its level of what is compared; what its logit is known to be. */
  readonly context: RateContext
  readonly offsetLogit: number
  /** Those of one group are compared with each other; what the group is of. */
  readonly group: string
  readonly of: Of
  readonly member: string
}

export interface ComparedMember {
  readonly member: string
  /** What of the group's plants would have come through, had all been like this one's; nine in ten sure. */
  readonly share: number
  readonly low: number
  readonly high: number
  readonly batches: number
  readonly entered: number
  readonly survived: number
  /** In the funnel, where nothing is drawn towards the others: its share, how many single plants its counts are worth. */
  readonly seen: Pick<FunnelGroup, 'share' | 'worth' | 'standing'>
}

export interface Comparison<Of> {
  readonly of: Of
  /** Of all plants compared, what came through. */
  readonly share: number
  /** Best first. */
  readonly members: readonly ComparedMember[]
  /** What may be said of the first against the last. */
  readonly finding: Finding
}

/** So many standard errors either way hold nine of ten. */
const NINE_OF_TEN = 1.6448536269514722

const logistic = (logit: number) => 1 / (1 + Math.exp(-logit))

/**
 * Members of each group beside each other, fairly: what the model of rates says of each once kinds, steps, months and
 * years are allowed for, shrunken towards the others as far as its own counts are few; and in a funnel, not shrunken.
 * Groups of one are left out; the group that shows most comes first.
 */
export const compareLevels = <Of>(
  model: RateModel,
  factor: string,
  rows: readonly ComparedRow<Of>[],
): readonly Comparison<Of>[] => {
  if (!model.factors.some(({ name }) => name === factor)) return []
  const estimates = new Map(levelEstimates(model, factor).map(one => [one.level, one]))
  return [...grouped(rows, ({ group }) => group)]
    .flatMap(([, ofGroup]) => {
      const members = [...grouped(ofGroup, ({ member }) => member)]
        .map(([member, own]) => ({ member, own, estimate: estimates.get(own[0]!.context[factor]!)! }))
        .sort((a, b) => b.estimate.effect - a.estimate.effect)
      if (members.length < 2) return []
      const entered = sum(ofGroup.map(row => row.entered))
      const survived = sum(ofGroup.map(row => row.survived))
      const average =
        sum(members.map(({ own, estimate }) => estimate.effect * sum(own.map(row => row.entered)))) / entered
      // Half a plant either way keeps a group that lost none, or all, on the scale.
      const base = Math.log((survived + 0.5) / (entered - survived + 0.5)) - average
      const [first, last] = [members[0]!, members.at(-1)!]
      const { effect, standardError } = levelDifference(
        model,
        factor,
        first.estimate.level,
        last.estimate.level,
      )
      const finding = findingOf(effect, standardError, entered)
      const stands = funnel(
        ofGroup.map(({ member, entered, survived }) => ({ group: member, entered, survived })),
        {
          logits: ofGroup.map(({ context, offsetLogit }) =>
            logitInContext(model, { ...context, [factor]: undefined }, offsetLogit),
          ),
          sdLogit: model.spreadBetweenBatches,
        },
      )
      const seenOf = new Map(
        stands.groups.map(({ group, share, worth, standing }) => [group, { share, worth, standing }]),
      )
      return [
        {
          of: ofGroup[0]!.of,
          members: members.map(({ member, own, estimate }) => ({
            member,
            share: logistic(base + estimate.effect),
            low: logistic(base + estimate.effect - NINE_OF_TEN * estimate.standardError),
            high: logistic(base + estimate.effect + NINE_OF_TEN * estimate.standardError),
            batches: own.length,
            entered: sum(own.map(row => row.entered)),
            survived: sum(own.map(row => row.survived)),
            seen: seenOf.get(member)!,
          })),
          share: stands.share,
          finding,
          shows: effect / standardError,
        },
      ]
    })
    .sort((a, b) => b.shows - a.shows)
    .map(({ of, share, members, finding }) => ({ of, share, members, finding }))
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0)
