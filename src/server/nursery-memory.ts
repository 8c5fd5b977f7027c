import { type AnyEntry, createFold, isKnown, type LoggedEntry, type Nursery } from '../record/index.ts'
import type { Appended, Log } from '../store/index.ts'
import type { EntryId } from '../trade/index.ts'

const PAGE = 50_000

/** The log on disk and its folded state in memory, kept in step. */
export interface NurseryMemory {
  readonly log: Log
  nursery(): Nursery
  throughSeq(): number
  /** The entry with this id, as the log has it. */
  entry(id: EntryId): LoggedEntry | undefined
  /** Notes and photographs about a batch, mother or anything else with an id, oldest first. */
  notesAbout(id: string): readonly LoggedEntry[]
  /** All entries after `seq`, oldest first. */
  after(seq: number, limit: number): readonly LoggedEntry[]
  append(entries: readonly AnyEntry[], receivedAt: string): Appended
  onAppend(heard: (throughSeq: number) => void): () => void
}

export const openNurseryMemory = (log: Log): NurseryMemory => {
  const fold = createFold()
  const byId = new Map<EntryId, LoggedEntry>()
  const notes = new Map<string, LoggedEntry[]>()
  const listeners = new Set<(throughSeq: number) => void>()
  let throughSeq = 0

  const take = (entries: readonly LoggedEntry[]): void => {
    fold.add(entries)
    for (const entry of entries) {
      byId.set(entry.id, entry)
      throughSeq = entry.seq
      if (!isKnown(entry)) continue
      const { body } = entry
      if (body.kind !== 'noted/1' && body.kind !== 'photographed/1') continue
      const about = notes.get(body.about)
      if (about) about.push(entry)
      else notes.set(body.about, [entry])
    }
  }

  for (;;) {
    const page = log.read({ afterSeq: throughSeq, limit: PAGE })
    if (page.length === 0) break
    take(page)
  }

  return {
    log,
    nursery: () => fold.nursery(),
    throughSeq: () => throughSeq,
    entry: id => byId.get(id),
    notesAbout: id => notes.get(id) ?? [],
    after: (seq, limit) => log.read({ afterSeq: seq, limit }),
    append: (entries, receivedAt) => {
      const result = log.append(entries, receivedAt)
      if (result.accepted.length > 0) {
        take(result.accepted)
        for (const heard of listeners) heard(throughSeq)
      }
      return result
    },
    onAppend: heard => {
      listeners.add(heard)
      return () => listeners.delete(heard)
    },
  }
}
