import { createFold, type Fold, type LoggedEntry, type Nursery } from '../record/index.ts'
import type { Log } from '../store/index.ts'

/** Entries read from the log at once. */
const PAGE = 4_000
/** The same before others have their turn again: an answer has to wait for several turns. */
const PAGE_BETWEEN = 250

/** The state that the log's entries say, up to one of them. */
export interface FoldedLog {
  /** What the state was begun from: the one kept, or all entries of the log. */
  readonly begunFrom: 'snapshot' | 'log'
  nursery(): Nursery
  throughSeq(): number
  /** Takes in what the log has up to this entry. */
  catchUp(throughSeq: number): void
  /** Takes in what was appended after the last entry taken in. */
  add(entries: readonly LoggedEntry[]): void
  close(): void
}

/**
 * A state kept up to the log's last entry is taken as it is, and the entries are folded in between other work, for only
 * a new entry needs them. A state kept earlier, by another version or of another log is no use: then all is folded first.
 */
export const foldLog = (log: Log): FoldedLog => {
  const fold: Fold = createFold()
  let throughSeq = log.lastSeq()
  const snapshot = log.loadSnapshot()
  /** The state as it was kept, until the fold has caught up with it. */
  let asKept: Nursery | null = snapshot !== null && snapshot.seq === throughSeq ? snapshot.nursery : null
  let foldedTo = 0
  let isOpen = true

  /** Folds one page of what is not folded yet; false when there is no more. */
  const foldPage = (most: number): boolean => {
    if (foldedTo >= throughSeq) return false
    const page = log.read({ afterSeq: foldedTo, limit: Math.min(most, throughSeq - foldedTo) })
    fold.add(page)
    foldedTo = page.at(-1)?.seq ?? throughSeq
    return true
  }
  const foldAll = (): void => {
    while (foldPage(PAGE));
    asKept = null
  }
  const foldInBetween = (): void => {
    if (!isOpen || asKept === null) return
    if (foldPage(PAGE_BETWEEN)) {
      setImmediate(foldInBetween)
      return
    }
    fold.nursery()
    asKept = null
  }
  if (asKept === null) foldAll()
  else setImmediate(foldInBetween)

  return {
    begunFrom: asKept === null ? 'log' : 'snapshot',
    nursery: () => asKept ?? fold.nursery(),
    throughSeq: () => throughSeq,
    catchUp: seq => {
      if (seq <= throughSeq) return
      throughSeq = seq
      foldAll()
    },
    add: entries => {
      const last = entries.at(-1)
      if (last === undefined) return
      foldAll()
      fold.add(entries)
      throughSeq = last.seq
      foldedTo = last.seq
    },
    close: () => {
      isOpen = false
    },
  }
}
