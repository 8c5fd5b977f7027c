import type { NeedsLook } from '../../api/index.ts'
import { lateBatches, poorTakes, readRateBook, slumps, staleLots } from '../../planning/index.ts'
import type { Nursery } from '../../record/index.ts'
import type { BatchId, ProtocolId, StepId } from '../../trade/index.ts'
import { named } from './named.ts'

/** What wants eyes in the record: late batches, poor takes, slumps, wood going stale. */
export const needsLook = (nursery: Nursery, today: string): Omit<NeedsLook, 'full' | 'fullBenches'> => {
  const book = readRateBook(nursery, today)
  const stepName = (protocolId: ProtocolId | undefined, step: StepId): string =>
    (protocolId && nursery.protocols.get(protocolId))?.steps.find(({ id }) => id === step)?.name ?? step
  const ofBatch = (batch: BatchId, step: StepId) => {
    const { name, detail } = named(nursery, { what: 'batch', id: batch })
    return { name, kindName: detail, stepName: stepName(nursery.batches.get(batch)?.protocol, step) }
  }
  return {
    late: lateBatches(nursery, book, today).map(({ step, ...late }) => ({
      ...late,
      ...ofBatch(late.batch, step),
    })),
    poor: poorTakes(nursery, book, today).map(({ step, ...poor }) => ({
      ...poor,
      ...ofBatch(poor.batch, step),
    })),
    slumps: slumps(nursery, today).map(({ step, ...slump }) => ({
      ...slump,
      protocolName: nursery.protocols.get(slump.protocol)?.name ?? slump.protocol,
      stepName: stepName(slump.protocol, step),
      sinceName: named(nursery, { what: 'batch', id: slump.since }).name,
    })),
    stale: staleLots(nursery, today).map(lot => ({
      ...lot,
      motherName: named(nursery, { what: 'mother', id: lot.mother }).name,
    })),
  }
}
