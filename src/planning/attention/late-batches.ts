import type { Nursery } from '../../record/index.ts'
import { dayNumber } from '../../science/index.ts'
import type { BatchId, StepId } from '../../trade/index.ts'
import type { RateBook } from '../rates/rate-book.ts'

/** Plants that stand in a step longer than nineteen of twenty do. */
export interface LateBatch {
  readonly batch: BatchId
  readonly step: StepId
  readonly number: number
  readonly days: number
  /** What the step usually takes, and what nineteen of twenty stay below. */
  readonly usualDays: number
  readonly mostDays: number
}

/** So many sd above the middle of a normal distribution lie one of twenty. */
const ONE_OF_TWENTY = 1.6448536269514722

/** Batches that should have gone on: work was forgotten, an entry is missing, or they do not thrive. */
export const lateBatches = (nursery: Nursery, book: RateBook, today: string): readonly LateBatch[] =>
  [...nursery.batches.values()].flatMap(batch => {
    const protocol = nursery.protocols.get(batch.protocol)
    if (protocol === undefined) return []
    return protocol.steps.flatMap((step, index) => {
      const portions = batch.portions.filter(portion => portion.step === step.id && portion.number > 0)
      if (portions.length === 0) return []
      const { medianDays, sdLogDays, plantSdLogDays } = book.days(protocol, index)
      const mostDays = medianDays * Math.exp(ONE_OF_TWENTY * Math.hypot(sdLogDays, plantSdLogDays))
      const late = portions.filter(({ since }) => dayNumber(today) - dayNumber(since) > mostDays)
      if (medianDays === 0 || late.length === 0) return []
      return [
        {
          batch: batch.id,
          step: step.id,
          number: late.reduce((sum, { number }) => sum + number, 0),
          days: Math.max(...late.map(({ since }) => dayNumber(today) - dayNumber(since))),
          usualDays: Math.round(medianDays),
          mostDays: Math.round(mostDays),
        },
      ]
    })
  })
