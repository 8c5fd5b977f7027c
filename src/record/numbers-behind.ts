import type { BatchId, EntryId, StepId } from '../trade/index.ts'
import { type AnyEntry, type Body, isKnown } from './entry.ts'
import { aliveIn, finishedStep, unknownStep } from './fold/batch-draft.ts'
import { takesPlants } from './fold/sources.ts'
import type { Query } from './query.ts'
import type { Batch, Nursery } from './state.ts'

/** Where the plants of a batch came from and where they are. What came in adds up to what is there and what left. */
export interface BatchSums {
  readonly begun: number
  readonly joinedIn: number
  readonly returned: number
  /** More than the record had, as counts found. */
  readonly found: number
  readonly standing: number
  readonly finished: number
  readonly lost: number
  readonly splitOff: number
  readonly joinedAway: number
  /** Went into other batches, as rootstocks or whole. */
  readonly used: number
  readonly sent: number
  /** Fewer than the record had, as counts found, with no cause. */
  readonly missing: number
}

/** A number of a batch that people read: one of its sums, what one step did, or what stands in it on each bench. */
export type BatchNumber = keyof BatchSums | `${'entered' | 'left' | 'lost' | 'stands'} ${StepId}`

const sum = (items: readonly { readonly number: number }[]): number =>
  items.reduce((total, { number }) => total + number, 0)

export const batchSums = (batch: Batch): BatchSums => ({
  begun: batch.number,
  joinedIn: batch.joinedIn,
  returned: batch.returned,
  found: batch.found,
  standing: aliveIn(batch) - batch.finished,
  finished: batch.finished,
  lost: sum(batch.losses),
  splitOff: batch.splitOff,
  joinedAway: batch.joinedAway,
  used: batch.usedAsRootstock + batch.usedWhole,
  sent: sum(batch.dispatched),
  missing: batch.missing,
})

/** Queries that say that plants were found or missing. */
const unclosed: ReadonlySet<Query['kind']> = new Set([
  'count-does-not-close',
  'bench-count-does-not-close',
  'more-than-stood',
  'not-finished-yet',
])

/** The numbers of a batch that each of its entries has a part in, by entry. Struck entries too: they had it. */
export function numbersBehind(
  nursery: Pick<Nursery, 'protocols' | 'queries' | 'settledQueries'>,
  batch: Pick<Batch, 'id' | 'protocol' | 'outcomes'>,
  entries: readonly AnyEntry[],
): ReadonlyMap<EntryId, ReadonlySet<BatchNumber>> {
  const steps = nursery.protocols.get(batch.protocol)?.steps.map(({ id }) => id) ?? []
  const anywhere = [...batch.outcomes.map(({ step }) => step), finishedStep].map(stands)
  const behind = new Map<EntryId, Set<BatchNumber>>()
  for (const entry of entries)
    if (isKnown(entry)) behind.set(entry.id, new Set(touched(entry.body, batch.id, steps, anywhere)))
  for (const { about, entry, kind } of [...nursery.queries, ...nursery.settledQueries]) {
    const numbers = about.batch === batch.id ? behind.get(entry) : undefined
    if (!numbers) continue
    if (kind === 'started-twice') numbers.add('joinedIn')
    if (unclosed.has(kind))
      for (const number of ['found', 'missing', 'standing', 'finished', ...anywhere] as const)
        numbers.add(number)
  }
  return behind
}

function touched(
  body: Body,
  batch: BatchId,
  steps: readonly StepId[],
  anywhere: readonly BatchNumber[],
): readonly BatchNumber[] {
  const first = steps[0] ?? unknownStep
  const last = steps.at(-1) ?? unknownStep
  switch (body.kind) {
    case 'batch-started/1':
    case 'reworked/1': {
      const gave = body.sources.some(
        source => source.from === 'batch' && source.batch === batch && takesPlants(source),
      )
      const given: readonly BatchNumber[] = gave ? ['used', 'finished', stands(finishedStep)] : []
      if (body.kind === 'reworked/1' || body.batch !== batch) return given
      const step = body.takenOver?.step ?? first
      return ['begun', stood(step), stands(step), `entered ${step}`, ...given]
    }
    case 'counted/1':
      return body.dead > 0
        ? [stood(body.step), stands(body.step), 'lost', `lost ${body.step}`]
        : [stood(body.step), stands(body.step)]
    case 'bench-counted/1':
      return body.lines.flatMap(({ batch: of, step, stood: said, counted }): readonly BatchNumber[] => {
        if (of !== batch || counted === said) return []
        // More than stood there came from wherever the record had them.
        return counted > said
          ? ['standing', 'finished', 'found', ...anywhere]
          : [stood(step), stands(step), 'lost', `lost ${step}`]
      })
    case 'lost/1':
      return [stood(body.step), stands(body.step), 'lost', `lost ${body.step}`]
    case 'advanced/1':
      return [
        ...[body.from, body.to].flatMap(step => [stood(step), stands(step)]),
        `left ${body.from}`,
        `entered ${body.to}`,
      ]
    case 'finished/1':
      return ['standing', 'finished', stands(last), stands(finishedStep), `left ${last}`]
    case 'moved/1':
      return [stands(body.step)]
    case 'split/1':
    case 'joined/1': {
      const { step } = body
      const isSplit = body.kind === 'split/1'
      if (body.batch === batch)
        return [isSplit ? 'splitOff' : 'joinedAway', stood(step), stands(step), `left ${step}`]
      // Plants split off begin a batch; where it is there already they join it.
      return [
        ...(isSplit ? (['begun'] as const) : []),
        'joinedIn',
        stood(step),
        stands(step),
        `entered ${step}`,
      ]
    }
    case 'dispatched/1':
      return ['sent', 'finished', stands(finishedStep)]
    case 'returned/1':
      return ['returned', 'finished', stands(finishedStep)]
    default:
      return []
  }
}

const stands = (step: StepId): BatchNumber => `stands ${step}`
const stood = (step: StepId): 'standing' | 'finished' => (step === finishedStep ? 'finished' : 'standing')
