import { type NeedsLook, type Slumped, toTable } from '../../api/index.ts'
import {
  lateBatches,
  poorTakes,
  readRateBook,
  type Slump,
  type SlumpOf,
  slumps,
  staleLots,
} from '../../planning/index.ts'
import { fruitsOf, type Nursery } from '../../record/index.ts'
import { methodById } from '../../trade/facts/index.ts'
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
  const slumpOf = (of: SlumpOf): Slumped['of'] => {
    if (of.by === 'step')
      return {
        by: of.by,
        protocolName: nursery.protocols.get(of.protocol)?.name ?? of.protocol,
        stepName: stepName(of.protocol, of.step),
      }
    const methodName = methodById(of.method).label
    return of.by === 'person'
      ? { by: of.by, methodName, personName: nursery.people.get(of.person)?.name ?? of.person }
      : {
          by: of.by,
          methodName,
          speciesName: fruitsOf(nursery).byId(of.species)?.commonName ?? of.species,
        }
  }
  return {
    late: toTable(
      lateBatches(nursery, book, today).map(({ step, ...late }) => ({
        ...late,
        ...ofBatch(late.batch, step),
      })),
    ),
    poor: toTable(
      poorTakes(nursery, book, today).map(({ step, ...poor }) => ({ ...poor, ...ofBatch(poor.batch, step) })),
    ),
    slumps: slumps(nursery, today).map(({ of, steps, ...slump }) => ({
      ...slump,
      of: slumpOf(of),
      batches: new Set(steps.map(({ batch }) => batch)).size,
      ...summed(steps),
      steps: lostMost(steps).map(({ protocol, step, ...said }) => ({
        ...said,
        ...ofBatch(said.batch, step),
      })),
    })),
    stale: staleLots(nursery, today).map(lot => ({
      ...lot,
      motherName: named(nursery, { what: 'mother', id: lot.mother }).name,
    })),
  }
}

/** A slump is seen in its forty worst batches as well as in all. */
const MOST_STEPS = 40

function summed(steps: Slump['steps']) {
  const sum = (of: (step: Slump['steps'][number]) => number) => steps.reduce((all, step) => all + of(step), 0)
  const entered = sum(step => step.entered)
  return {
    entered,
    survived: sum(({ survived }) => survived),
    expectedShare: entered === 0 ? 0 : sum(step => step.entered * step.expectedShare) / entered,
  }
}

/** Those that lost most against what was expected, in the order in which they ended. */
function lostMost(steps: Slump['steps']): Slump['steps'] {
  const loss = ({ entered, survived, expectedShare }: Slump['steps'][number]) =>
    entered * expectedShare - survived
  const most = new Set([...steps].sort((a, b) => loss(b) - loss(a)).slice(0, MOST_STEPS))
  return steps.filter(step => most.has(step))
}
