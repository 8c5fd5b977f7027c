import type { BatchId, BenchId, EntryId, OrderId } from '../../trade/index.ts'
import { aliveIn } from '../fold/batch-draft.ts'
import type { Day } from '../register.ts'
import type { Batch, Nursery } from '../state.ts'
import type { Ref } from './graph.ts'
import { type SharedGround, sharedGround } from './shared-ground.ts'
import { lineageOf } from './trace.ts'

/** A batch of which any tree may carry wood or roots of what was asked about. */
export interface Carrier {
  readonly batch: BatchId
  /** Plants, sticks or seeds that came over to it. */
  readonly came: number
  /** Generations away; 0 is what was asked about itself. */
  readonly steps: number
  /** From which day on; null: from its beginning. */
  readonly since: Day | null
  /** Alive and here. */
  readonly alive: number
  readonly finished: number
  readonly benches: readonly BenchId[]
}

/** Trees that went out and may carry it. */
export interface SentOut {
  readonly batch: BatchId
  readonly entry: EntryId
  readonly on: Day
  readonly order: OrderId | null
  /** Who had them, where no order says so. */
  readonly to: string
  /** Sent; below nought: came back. */
  readonly number: number
}

/** Where something found in one mother tree, batch or lot may have got to. */
export interface Affected {
  readonly carriers: readonly Carrier[]
  readonly sent: readonly SentOut[]
  /** The wider circle: what stood on a bench or was cut on a day with any of them. It is no lineage. */
  readonly nearby: SharedGround
}

/** Follows something found in a mother tree, lot or batch to all that may carry it, here and gone. */
export function affectedBy(nursery: Nursery, of: Ref): Affected {
  const reached = [{ ref: of, number: 0, steps: 0, day: null }, ...lineageOf(nursery).descendants(of).reached]
  const carriers: Carrier[] = []
  const sent: SentOut[] = []
  for (const { ref, number, steps, day } of reached) {
    const batch = ref.what === 'batch' ? nursery.batches.get(ref.id as BatchId) : undefined
    if (batch === undefined) continue
    carriers.push({
      batch: batch.id,
      came: number,
      steps,
      since: day,
      alive: aliveIn(batch),
      finished: batch.finished,
      benches: benchesOf(batch),
    })
    const after = ({ on }: { readonly on: Day }) => day === null || on >= day
    for (const out of batch.dispatched) if (after(out)) sent.push({ batch: batch.id, ...out })
    for (const { number: back, ...rest } of batch.cameBack)
      if (after(rest)) sent.push({ batch: batch.id, ...rest, to: '', number: -back })
  }
  sent.sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.entry < b.entry ? -1 : 1))
  return {
    carriers,
    sent,
    nearby: sharedGround(
      nursery,
      reached.map(({ ref }) => ref),
    ),
  }
}

const benchesOf = ({ portions, finishedPortions }: Batch): BenchId[] => [
  ...new Set([...portions, ...finishedPortions].flatMap(({ bench }) => bench ?? [])),
]
