import type { BatchId } from '../../trade/index.ts'
import type { Nursery } from '../state.ts'
import { lineageOf } from './trace.ts'

/** The batches that plants or wood of this one went straight into. */
export const childrenOf = (
  nursery: Nursery,
  batch: BatchId,
): readonly {
  readonly batch: BatchId
  readonly number: number
  readonly as: string
  readonly on: string
}[] =>
  lineageOf(nursery)
    .descendants({ what: 'batch', id: batch })
    .links.filter(link => link.from.id === batch && link.from.what === 'batch')
    .map(({ to, number, as, on }) => ({ batch: to.id as BatchId, number, as, on }))
