import { type AnyEntry, createFold, type Fold, type LoggedEntry, type Nursery } from '../record/index.ts'
import type { Appended, Log } from '../store/index.ts'
import type { EntryId } from '../trade/index.ts'

/** Entries read from the log before others have their turn again. */
const PAGE = 4_000
/** The state is kept anew once the log has been quiet for so long and has grown by a hundredth. */
const QUIET_MS = 30_000
const GROWN_SHARE = 0.01

/** The log on disk and its folded state in memory, kept in step. */
export interface NurseryMemory {
  readonly log: Log
  /** What the state was begun from: the snapshot, or all entries of the log. */
  readonly begunFrom: 'snapshot' | 'log'
  nursery(): Nursery
  throughSeq(): number
  /** The entry with this id, as the log has it. */
  entry(id: EntryId): LoggedEntry | undefined
  /** Those of the entries that the log has. */
  entries(ids: readonly EntryId[]): readonly LoggedEntry[]
  /** Notes and photographs about a batch, mother or anything else with an id. */
  notesAbout(id: string): readonly LoggedEntry[]
  /** All entries after `seq`, oldest first. */
  after(seq: number, limit: number): readonly LoggedEntry[]
  append(entries: readonly AnyEntry[], receivedAt: string): Appended
  onAppend(heard: (throughSeq: number) => void): () => void
  /** Keeps the state for the next start, if it is newer than the one kept. Nothing depends on it. */
  keep(): void
  /** Keeps the state and leaves the log, which its owner closes. */
  close(): void
}

/**
 * A state kept up to the log's last entry is taken as it is, and the entries are folded in between other work, for only
 * a new entry needs them. A state kept earlier, by another version or of another log is no use: then all is folded first.
 */
export const openNurseryMemory = (log: Log): NurseryMemory => {
  const listeners = new Set<(throughSeq: number) => void>()
  const fold: Fold = createFold()
  let throughSeq = log.lastSeq()
  const snapshot = log.loadSnapshot()
  let kept = snapshot?.seq ?? 0
  /** The state as it was kept, until the fold has caught up with it. */
  let asKept: Nursery | null = snapshot !== null && snapshot.seq === throughSeq ? snapshot.nursery : null
  let foldedTo = 0
  let isOpen = true
  let quiet: ReturnType<typeof setTimeout> | undefined

  /** Folds one page of what is not folded yet; false when there is no more. */
  const foldPage = (): boolean => {
    if (foldedTo >= throughSeq) return false
    const page = log.read({ afterSeq: foldedTo, limit: PAGE })
    fold.add(page)
    foldedTo = page.at(-1)?.seq ?? throughSeq
    return true
  }
  const foldAll = (): void => {
    while (foldPage());
    asKept = null
  }
  const foldInBetween = (): void => {
    if (!isOpen || asKept === null) return
    if (foldPage()) {
      setImmediate(foldInBetween)
      return
    }
    fold.nursery()
    asKept = null
  }
  const nursery = (): Nursery => asKept ?? fold.nursery()

  const keep = (): void => {
    if (kept === throughSeq) return
    log.saveSnapshot(throughSeq, nursery())
    kept = throughSeq
  }
  const keepWhenQuiet = (): void => {
    clearTimeout(quiet)
    if (!isOpen || throughSeq - kept < GROWN_SHARE * throughSeq) return
    quiet = setTimeout(() => {
      try {
        keep()
      } catch {
        // A full disk costs the next start some time, and nothing else.
      }
    }, QUIET_MS)
    quiet.unref()
  }

  if (asKept === null) foldAll()
  else setImmediate(foldInBetween)
  keepWhenQuiet()

  return {
    log,
    begunFrom: asKept === null ? 'log' : 'snapshot',
    nursery,
    throughSeq: () => throughSeq,
    entry: id => log.entriesById([id])[0],
    entries: ids => log.entriesById(ids),
    notesAbout: id => log.entriesById(nursery().notes.get(id) ?? []),
    after: (seq, limit) => log.read({ afterSeq: seq, limit }),
    append: (entries, receivedAt) => {
      const result = log.append(entries, receivedAt)
      const last = result.accepted.at(-1)
      if (last !== undefined) {
        foldAll()
        fold.add(result.accepted)
        throughSeq = last.seq
        foldedTo = last.seq
        keepWhenQuiet()
        for (const heard of listeners) heard(throughSeq)
      }
      return result
    },
    onAppend: heard => {
      listeners.add(heard)
      return () => listeners.delete(heard)
    },
    keep,
    close: () => {
      isOpen = false
      clearTimeout(quiet)
      try {
        keep()
      } catch {
        // The next start folds the log.
      }
    },
  }
}
