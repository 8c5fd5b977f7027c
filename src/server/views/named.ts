import type { Nursery, Ref } from '../../record/index.ts'
import { type BatchId, type MethodMark, type MotherId, markOfMethod } from '../../trade/index.ts'

/** A mother, batch, lot or bought thing as people call it. */
export const named = (
  nursery: Nursery,
  { what, id }: Ref,
): { name: string; detail: string; mark: MethodMark | null } => {
  if (what === 'mother') {
    const mother = nursery.mothers.get(id as MotherId)?.mother
    return {
      name: mother?.name ?? id,
      detail: (mother && nursery.cultivars.get(mother.cultivar)?.name) ?? '',
      mark: null,
    }
  }
  if (what === 'batch') {
    const batch = nursery.batches.get(id as BatchId)
    const protocol = batch && nursery.protocols.get(batch.protocol)
    const kind = batch && (nursery.kinds.get(batch.kind) ?? nursery.former.kinds.get(batch.kind))
    return {
      name: batch?.name ?? id,
      detail: kind?.name ?? '',
      mark: protocol === undefined ? null : markOfMethod(protocol.method),
    }
  }
  return { name: id, detail: '', mark: null }
}
