import type { Batch } from '../../record/index.ts'
import { chanceOfAtLeast, type Rate } from '../../science/index.ts'
import type { Protocol, StepId } from '../../trade/index.ts'
import type { RateBook } from '../rates/rate-book.ts'

/** Plants alive expected at an age of the batch: nine of ten such batches run between `low` and `high`. */
export interface BandPoint {
  readonly day: number
  readonly low: number
  readonly middle: number
  readonly high: number
  /** The step that ends (or, on day 0, begins) here. */
  readonly step: StepId
}

const NINE_OF_TEN = { low: 0.95, middle: 0.5, high: 0.05 } as const

/** The largest number that is reached with at least this chance. */
const reachedWith = (chance: number, start: number, steps: readonly Rate[]): number => {
  let below = 0
  let above = start + 1
  while (above - below > 1) {
    const number = (below + above) >> 1
    if (chanceOfAtLeast({ wanted: number, start, steps }) >= chance) below = number
    else above = number
  }
  return below
}

/**
 * The band in which a batch's counts are expected to run, as it was foreseen when the batch was begun: from the rates
 * of its protocol at the time of its start and the typical days of each step, not from its own counts.
 */
export const expectedBand = (
  book: RateBook,
  protocol: Protocol,
  batch: Pick<Batch, 'kind' | 'startedOn' | 'number' | 'workedBy'>,
): BandPoint[] => {
  const asked = { kind: batch.kind, startMonth: Number(batch.startedOn.slice(5, 7)), people: batch.workedBy }
  const steps: Rate[] = []
  const points: BandPoint[] = [
    { day: 0, low: batch.number, middle: batch.number, high: batch.number, step: protocol.steps[0]!.id },
  ]
  let day = 0
  for (const [at, step] of protocol.steps.entries()) {
    const { alpha, beta } = book.survival(protocol, at, asked)
    steps.push({ kind: 'uncertain', alpha, beta })
    day += book.days(protocol, at).medianDays
    points.push({
      day: Math.round(day),
      low: reachedWith(NINE_OF_TEN.low, batch.number, steps),
      middle: reachedWith(NINE_OF_TEN.middle, batch.number, steps),
      high: reachedWith(NINE_OF_TEN.high, batch.number, steps),
      step: step.id,
    })
  }
  return points
}
