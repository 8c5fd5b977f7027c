import type { AnyEntry, LoggedEntry, Nursery } from '../record/index.ts'
import type { Appended, Log } from '../store/index.ts'
import type { EntryId } from '../trade/index.ts'
import { foldLog } from './folded-log.ts'

/** The log on disk and its folded state in memory, kept in step. */
export interface NurseryMemory {
  readonly log: Log
  /** What the state was begun from: the one kept, or all entries of the log. */
  readonly begunFrom: 'snapshot' | 'log'
  nursery(): Nursery
  throughSeq(): number
  /** The hash of the last entry; empty while there is none. */
  lastHash(): string
  /** The entry with this id, as the log has it. */
  entry(id: EntryId): LoggedEntry | undefined
  /** Those of the entries that the log has. */
  entries(ids: readonly EntryId[]): readonly LoggedEntry[]
  /** Notes and photographs about a batch, mother or anything else with an id. */
  notesAbout(id: string): readonly LoggedEntry[]
  /** All entries after `seq`, oldest first. */
  after(seq: number, limit: number): readonly LoggedEntry[]
  /** The last entries before `seq`, newest first. */
  before(seq: number, limit: number): readonly LoggedEntry[]
  append(entries: readonly AnyEntry[], receivedAt: string): Appended
  onAppend(heard: (throughSeq: number) => void): () => void
  onClose(heard: () => void): () => void
  /** Leaves the log, which its owner closes. */
  close(): void
}

export const openNurseryMemory = (log: Log): NurseryMemory => {
  const listeners = new Set<(throughSeq: number) => void>()
  const mourners = new Set<() => void>()
  const folded = foldLog(log)
  return {
    log,
    begunFrom: folded.begunFrom,
    nursery: folded.nursery,
    throughSeq: folded.throughSeq,
    lastHash: () => log.readBack({ beforeSeq: Number.MAX_SAFE_INTEGER, limit: 1 })[0]?.hash ?? '',
    entry: id => log.entriesById([id])[0],
    entries: ids => log.entriesById(ids),
    notesAbout: id => log.entriesById(folded.nursery().notes.get(id) ?? []),
    after: (seq, limit) => log.read({ afterSeq: seq, limit }),
    before: (seq, limit) => log.readBack({ beforeSeq: seq, limit }),
    append: (entries, receivedAt) => {
      const result = log.append(entries, receivedAt)
      folded.add(result.accepted)
      if (result.accepted.length > 0) for (const heard of listeners) heard(folded.throughSeq())
      return result
    },
    onAppend: heard => {
      listeners.add(heard)
      return () => listeners.delete(heard)
    },
    onClose: heard => {
      mourners.add(heard)
      return () => mourners.delete(heard)
    },
    close: () => {
      for (const heard of mourners) heard()
      folded.close()
    },
  }
}
