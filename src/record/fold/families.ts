import type { BatchId } from '../../trade/index.ts'

/** Which batches must be folded together, since plants went from one into the other by a split or a join. */
export interface Families {
  /** A batch of the family that stands for it. */
  readonly headOf: (batch: BatchId) => BatchId
  readonly members: (head: BatchId) => readonly BatchId[]
  /** Makes one family of two; gives the head that is one no more, if they were apart. */
  readonly link: (a: BatchId, b: BatchId) => BatchId | null
}

export function newFamilies(): Families {
  const heads = new Map<BatchId, BatchId>()
  const lists = new Map<BatchId, BatchId[]>()
  const headOf = (batch: BatchId) => heads.get(batch) ?? batch
  const members = (head: BatchId) => lists.get(head) ?? [head]
  return {
    headOf,
    members,
    link(a, b) {
      let [kept, gone] = [headOf(a), headOf(b)]
      if (kept === gone) return null
      if (members(kept).length < members(gone).length) [kept, gone] = [gone, kept]
      const joined = [...members(kept)]
      for (const batch of members(gone)) joined.push(batch)
      for (const batch of joined) heads.set(batch, kept)
      lists.set(kept, joined)
      lists.delete(gone)
      return gone
    },
  }
}
