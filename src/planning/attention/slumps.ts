import type { Batch, Nursery } from '../../record/index.ts'
import { dayNumber, dayText, watchForSlump } from '../../science/index.ts'
import type { BatchId, MethodId, PersonId, ProtocolId, SpeciesId, StepId } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import { learntSurvival } from '../rates/learnt-survival.ts'
import { seenSteps } from '../rates/read-rate-book.ts'
import type { SeenStep } from '../rates/seen-step.ts'

/** Whose takes are watched together: those of a step of one protocol, of a fruit or a person in one method. */
export type SlumpOf =
  | { readonly by: 'step'; readonly protocol: ProtocolId; readonly step: StepId }
  | { readonly by: 'species'; readonly method: MethodId; readonly species: SpeciesId }
  | { readonly by: 'person'; readonly method: MethodId; readonly person: PersonId }

/** One batch in one step: what was to be expected of it before it was seen, and what came of it. */
export interface SlumpedStep {
  readonly batch: BatchId
  readonly protocol: ProtocolId
  readonly step: StepId
  readonly entered: number
  readonly survived: number
  readonly expectedShare: number
  /** Nine of ten such batches were expected between. */
  readonly low: number
  readonly high: number
}

/** Takes that have been doing worse than before, and how likely something is wrong. */
export interface Slump {
  readonly of: SlumpOf
  /** The day on which the batch came to its end in the step with which it most likely began. */
  readonly since: string
  /** What has ended since, that one first. */
  readonly steps: readonly SlumpedStep[]
  /** Chance that a slump is on, were one to begin once in a hundred batches. */
  readonly chance: number
  /** Odds of survival against those before. */
  readonly oddsRatio: number
}

/** What ended so lately is watched; what ended before says what was to be expected. Our choice. */
const WATCHED_DAYS = 182
const LIKELY = 0.5

/** A step of a batch, with the day on which it was over. */
type Ended = SeenStep & { readonly batch: BatchId; readonly ended: number }

/**
 * What has fallen, in the last half-year, below what all batches before had let expect: steps of protocols, then fruits
 * and people in a method, the likeliest first. Kinds, months and people are allowed for in what was expected, so that a
 * person with the harder kinds is not warned of for them. With nothing wrong, the alarm behind each sounds no more often
 * than once in two hundred batches of the step, the fruit or the person (see `watchForSlump`). What is told of the very
 * same batches is told once.
 */
export const slumps = (nursery: Nursery, today: string): readonly Slump[] => {
  const rows = seenSteps(nursery, today)
  const from = dayNumber(today) - WATCHED_DAYS
  const late: Ended[] = []
  const earlier: SeenStep[] = []
  for (const row of rows) {
    const ended = lastDay(nursery.batches.get(row.batch), row.step)
    if (ended > from) late.push({ ...row, ended })
    else earlier.push(row)
  }
  if (late.length === 0 || earlier.length === 0) return []
  const before = learntSurvival(earlier, nursery.protocols)
  const watched = late
    .flatMap(row => {
      const expected = before.share(row)
      return expected === null ? [] : [{ ...row, ...expected }]
    })
    .sort((a, b) => a.ended - b.ended || (a.batch < b.batch ? -1 : 1))
  type Watched = (typeof watched)[number]

  const found = (group: readonly Watched[], of: SlumpOf): readonly Slump[] => {
    const last = watchForSlump(group).at(-1)
    if (last === undefined || last.chance < LIKELY) return []
    const since = group.slice(last.since)
    return [
      {
        of,
        since: dayText(since[0]!.ended),
        steps: since.map(({ batch, protocol, step, entered, survived, alpha, beta, low, high }) => ({
          ...{ batch, protocol, step, entered, survived, low, high },
          expectedShare: alpha / (alpha + beta),
        })),
        chance: last.chance,
        oddsRatio: last.oddsRatio,
      },
    ]
  }
  const by = (keyOf: (row: Watched) => string, of: (row: Watched) => SlumpOf | null): readonly Slump[] =>
    [...grouped(watched, keyOf).values()]
      .flatMap(group => {
        const whose = of(group[0]!)
        return whose === null ? [] : found(group, whose)
      })
      .sort((a, b) => b.chance - a.chance)
  const told = new Set<string>()
  return [
    ...by(
      ({ protocol, step }) => `${protocol}\n${step}`,
      ({ protocol, step }) => ({ by: 'step', protocol, step }),
    ),
    ...by(
      ({ method, species }) => `${method}\n${species}`,
      ({ method, species }) => ({ by: 'species', method, species }),
    ),
    ...by(
      ({ method, person }) => `${method}\n${person}`,
      ({ method, person }) => (person === null ? null : { by: 'person', method, person }),
    ),
  ].filter(({ of, steps }) => {
    // A person is told of beside the fruit or the step: who worked them all may be what is wrong with them.
    if (of.by === 'person') return true
    const same = steps.map(({ batch, step }) => `${batch}\n${step}`).join('\t')
    return told.has(same) ? false : told.add(same)
  })
}

/** The day on which the last plant left the step of the batch, or was lost from it. */
function lastDay(batch: Batch | undefined, step: StepId): number {
  let last = ''
  for (const outcome of batch?.outcomes ?? [])
    if (outcome.step === step && outcome.lastLeft !== null && outcome.lastLeft > last) last = outcome.lastLeft
  for (const loss of batch?.losses ?? []) if (loss.step === step && loss.on > last) last = loss.on
  return last === '' ? Number.NEGATIVE_INFINITY : dayNumber(last)
}
