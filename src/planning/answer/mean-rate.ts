import type { Batch } from '../../record/index.ts'
import type { StepId } from '../../trade/index.ts'
import type { Season } from '../season.ts'

/** The share of a step that was to be expected of a batch of this kind and protocol; null where neither is read any more. */
export function meanRate(season: Season, batch: Batch, step: StepId): number | null {
  const live = season.batches.find(({ id }) => id === batch.id)
  const way = season.ways.find(
    ({ kind, protocol }) => season.kinds[kind]!.id === batch.kind && protocol.id === batch.protocol,
  )
  const rate = (live?.course ?? way?.courses[0])?.steps.find(({ step: id }) => id === step)
  return rate ? rate.alpha / (rate.alpha + rate.beta) : null
}
