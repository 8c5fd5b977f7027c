import type { Nursery } from '../../record/index.ts'
import { chanceOfAtLeast, dayNumber } from '../../science/index.ts'
import type { BatchId, StepId } from '../../trade/index.ts'
import type { RateBook } from '../rates/rate-book.ts'

/** A count so low that fewer than one batch in twenty would have it by chance. */
export interface PoorTake {
  readonly batch: BatchId
  readonly step: StepId
  readonly on: string
  readonly taken: number
  /** Of those counted, without the ones not yet to tell. */
  readonly counted: number
  readonly expectedShare: number
  /** Chance of so few or fewer, were the batch like others. */
  readonly chance: number
}

const RARE = 0.05
/** A count older than this is known by now. Our choice. */
const NEWS_DAYS = 28

/** The last counts of the last weeks that fell below what the rates of that step let expect. */
export const poorTakes = (nursery: Nursery, book: RateBook, today: string): readonly PoorTake[] =>
  [...nursery.batches.values()].flatMap(batch => {
    const protocol = nursery.protocols.get(batch.protocol)
    if (protocol === undefined) return []
    return batch.outcomes.flatMap(outcome => {
      const look = outcome.looks.at(-1)
      const index = protocol.steps.findIndex(({ id }) => id === outcome.step)
      if (look === undefined || index < 0 || dayNumber(today) - dayNumber(look.on) > NEWS_DAYS) return []
      const counted = look.taken + look.dead
      if (counted === 0) return []
      const { alpha, beta } = book.survival(protocol, index, {
        kind: batch.kind,
        startMonth: Number(batch.startedOn.slice(5, 7)),
        people: batch.workedBy,
      })
      const steps = [{ kind: 'uncertain', alpha, beta } as const]
      const chance = 1 - chanceOfAtLeast({ wanted: look.taken + 1, start: counted, steps })
      if (chance >= RARE) return []
      return [
        {
          batch: batch.id,
          step: outcome.step,
          on: look.on,
          taken: look.taken,
          counted,
          expectedShare: alpha / (alpha + beta),
          chance,
        },
      ]
    })
  })
