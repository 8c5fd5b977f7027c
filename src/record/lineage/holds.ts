import type { BatchId, BenchId, MaterialLotId, MotherId } from '../../trade/index.ts'
import type { Hold, Nursery } from '../state.ts'
import type { Ref } from './graph.ts'
import { lineageOf } from './trace.ts'

/** What holds stop, and which holds they are. */
export interface HeldThings {
  readonly batches: ReadonlyMap<BatchId, readonly Hold[]>
  readonly mothers: ReadonlyMap<MotherId, readonly Hold[]>
  readonly lots: ReadonlyMap<MaterialLotId, readonly Hold[]>
  /** Benches that take no more plants. */
  readonly benches: ReadonlyMap<BenchId, readonly Hold[]>
}

type Held = Pick<Nursery, 'batches' | 'lots' | 'mothers' | 'holds'>

/**
 * Everything that one hold stops. A hold on a mother stops her and the wood of her in hand; one on a batch goes
 * with the plants into batches that they are split off to or put with from that day on; one on a bench stops what
 * stands there, and stood there since; one on a lineage stops all that ever came of it.
 */
export function coveredBy(hold: Hold, nursery: Held): readonly Ref[] {
  const { on } = hold
  switch (on.what) {
    case 'mother': {
      const lots = [...nursery.lots.values()].filter(lot => lot.mother === on.mother)
      return [{ what: 'mother', id: on.mother }, ...lots.map(({ id }): Ref => ({ what: 'lot', id }))]
    }
    case 'batch': {
      const covered = new Set<string>([on.batch])
      const { links } = lineageOf(nursery).descendants({ what: 'batch', id: on.batch }, hold.since)
      for (const { from, to, as } of links) {
        if ((as === 'rest' || as === 'joined') && covered.has(from.id)) covered.add(to.id)
      }
      return [...covered].map(id => ({ what: 'batch', id }))
    }
    case 'bench':
      return [...nursery.batches.values()]
        .filter(batch =>
          batch.stays.some(stay => stay.bench === on.bench && (stay.to === null || stay.to >= hold.since)),
        )
        .map(({ id }) => ({ what: 'batch', id }))
    case 'lineage': {
      const root: Ref =
        'mother' in on.of ? { what: 'mother', id: on.of.mother } : { what: 'batch', id: on.of.batch }
      return [
        root,
        ...lineageOf(nursery)
          .descendants(root)
          .reached.map(({ ref }) => ref),
      ]
    }
  }
}

const known = new WeakMap<object, HeldThings>()

/** All that may not leave, be taken from or be started from now. */
export function heldThings(nursery: Held): HeldThings {
  const before = known.get(nursery)
  if (before) return before
  const batches = new Map<BatchId, Hold[]>()
  const mothers = new Map<MotherId, Hold[]>()
  const lots = new Map<MaterialLotId, Hold[]>()
  const benches = new Map<BenchId, Hold[]>()
  for (const hold of nursery.holds.values()) {
    if (hold.released) continue
    if (hold.on.what === 'bench') add(benches, hold.on.bench, hold)
    for (const { what, id } of coveredBy(hold, nursery)) {
      if (what === 'batch') add(batches, id as BatchId, hold)
      else if (what === 'mother') add(mothers, id as MotherId, hold)
      else if (what === 'lot') add(lots, id as MaterialLotId, hold)
    }
  }
  const held = { batches, mothers, lots, benches }
  known.set(nursery, held)
  return held
}

function add<Id>(to: Map<Id, Hold[]>, id: Id, hold: Hold): void {
  const holds = to.get(id)
  if (holds) holds.push(hold)
  else to.set(id, [hold])
}

export const heldBatches = (nursery: Held): HeldThings['batches'] => heldThings(nursery).batches
export const heldMothers = (nursery: Held): HeldThings['mothers'] => heldThings(nursery).mothers
export const heldLots = (nursery: Held): HeldThings['lots'] => heldThings(nursery).lots
