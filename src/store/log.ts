import { existsSync, mkdirSync } from 'node:fs'
import { type AnyEntry, entryLine, type LoggedEntry, type Nursery } from '../record/index.ts'
import type { EntryId } from '../trade/index.ts'
import { backUp } from './backup.ts'
import { chainHash, noHash } from './chain.ts'
import { logFile } from './log-file.ts'
import { toTrouble } from './log-trouble.ts'
import { type LogTables, migrate, queries } from './schema.ts'
import { readSnapshot, type Snapshot, writeSnapshot } from './snapshot.ts'
import { openSqlite } from './sqlite.ts'
import { type Verified, verifyLog } from './verify.ts'
import { claimWriting } from './writer-lock.ts'

export interface Appended {
  /** New entries, with their numbers. They are on the disk: neither a crash nor a power cut loses them. */
  readonly accepted: readonly LoggedEntry[]
  /** Those that the log had already, word for word. */
  readonly known: readonly EntryId[]
  /** Those whose id the log has with other content. They are not written: an entry is never edited. */
  readonly conflicting: readonly EntryId[]
}

/** The nursery's memory on disk: entries in order of arrival, chained by hashes. */
export interface Log {
  /** Where it is kept. */
  readonly folder: string
  /** Writes entries in one transaction: all that are new, or none. Sending them again does no harm. */
  readonly append: (entries: readonly AnyEntry[], receivedAt: string) => Appended
  /** Entries after a number, oldest first. */
  readonly read: (range: { readonly afterSeq: number; readonly limit: number }) => readonly LoggedEntry[]
  /** The last entries before a number, newest first. */
  readonly readBack: (range: { readonly beforeSeq: number; readonly limit: number }) => readonly LoggedEntry[]
  /** Those of the entries that are there, in order of arrival. */
  readonly entriesById: (ids: readonly EntryId[]) => readonly LoggedEntry[]
  /** Number of the newest entry; 0 while there is none. */
  readonly lastSeq: () => number
  /** Reads everything again and checks that nothing was lost or changed since it was written. */
  readonly verify: () => Verified
  /** Keeps the state folded from all entries up to `seq`, for a fast start. */
  readonly saveSnapshot: (seq: number, nursery: Nursery) => void
  /** The state kept last; null if there is none, or it does not fit this log and this version. */
  readonly loadSnapshot: () => Snapshot | null
  readonly remember: (key: string, value: unknown) => void
  readonly recall: <T>(key: string) => T | undefined
  /** Keeps a picture under its name; one that is there already stays. */
  readonly keepPicture: (file: string, bytes: Uint8Array) => void
  readonly picture: (file: string) => Uint8Array | undefined
  /** Copies the whole log into one new file, while others go on writing, and checks the copy. */
  readonly backup: (toFile: string) => Promise<void>
  readonly close: () => void
}

/** Rows written by one statement, well under SQLite's bound on values. */
const rowsAtOnce = 500

/**
 * Opens the log in a folder, making both if they are not there. Many may read; the first that appends keeps the
 * right to write until it closes. Throws `LogTrouble` with what is wrong and what to do.
 * @param how `write: true` takes the right to write at once, so that a second server fails when it starts.
 */
export async function openLog(folder: string, how: { readonly write?: boolean } = {}): Promise<Log> {
  try {
    if (!existsSync(folder)) mkdirSync(folder, { recursive: true })
  } catch (error) {
    throw toTrouble(error, folder)
  }
  const path = logFile(folder)
  let releaseWriting: (() => void) | null = how.write ? claimWriting(folder) : null
  const db = (() => {
    try {
      const opened = openSqlite(path)
      opened.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;')
      migrate(opened, path)
      return opened
    } catch (error) {
      releaseWriting?.()
      throw error
    }
  })()

  const last = () =>
    db.all(queries.selectFrom('entries').select(['seq', 'hash']).orderBy('seq', 'desc').limit(1).compile())[0]

  function append(entries: readonly AnyEntry[], receivedAt: string): Appended {
    releaseWriting ??= claimWriting(folder)
    return db.inTransaction(() => {
      const known: EntryId[] = []
      const conflicting: EntryId[] = []
      const fresh = new Map<EntryId, { readonly entry: AnyEntry; readonly line: string }>()
      for (const part of chunks(entries)) {
        const there = linesById(part.map(entry => entry.id))
        for (const entry of part) {
          const line = entryLine(entry)
          const before = there.get(entry.id) ?? fresh.get(entry.id)?.line
          if (before === undefined) fresh.set(entry.id, { entry, line })
          else if (before === line) known.push(entry.id)
          else conflicting.push(entry.id)
        }
      }
      let { seq, hash } = last() ?? { seq: 0, hash: noHash }
      const accepted: LoggedEntry[] = []
      const rows = [...fresh.values()].map(({ entry, line }) => {
        seq += 1
        hash = chainHash(hash, receivedAt, line)
        accepted.push({ ...entry, seq, receivedAt, hash })
        return { seq, id: entry.id, received_at: receivedAt, line, hash }
      })
      for (const part of chunks(rows)) db.run(queries.insertInto('entries').values(part).compile())
      return { accepted, known, conflicting }
    })
  }

  function linesById(ids: readonly EntryId[]): Map<string, string> {
    const query = queries.selectFrom('entries').select(['id', 'line']).where('id', 'in', ids).compile()
    return new Map(db.all(query).map(({ id, line }) => [id, line]))
  }

  function read({
    afterSeq,
    limit,
  }: {
    readonly afterSeq: number
    readonly limit: number
  }): readonly LoggedEntry[] {
    const query = queries
      .selectFrom('entries')
      .select(['seq', 'received_at', 'line', 'hash'])
      .where('seq', '>', afterSeq)
      .orderBy('seq')
      .limit(limit)
      .compile()
    return db.all(query).map(logged)
  }

  function readBack(range: { readonly beforeSeq: number; readonly limit: number }): readonly LoggedEntry[] {
    const query = queries
      .selectFrom('entries')
      .select(['seq', 'received_at', 'line', 'hash'])
      .where('seq', '<', range.beforeSeq)
      .orderBy('seq', 'desc')
      .limit(range.limit)
      .compile()
    return db.all(query).map(logged)
  }

  function entriesById(ids: readonly EntryId[]): LoggedEntry[] {
    const found = [...chunks(ids)].flatMap(part =>
      db.all(
        queries
          .selectFrom('entries')
          .select(['seq', 'received_at', 'line', 'hash'])
          .where('id', 'in', part)
          .compile(),
      ),
    )
    return found.map(logged).sort((a, b) => a.seq - b.seq)
  }

  const hashAt = (seq: number): string | undefined =>
    seq === 0
      ? noHash
      : db.all(queries.selectFrom('entries').select('hash').where('seq', '=', seq).compile())[0]?.hash

  let open = true
  return {
    folder,
    append,
    read,
    readBack,
    entriesById,
    lastSeq: () => last()?.seq ?? 0,
    verify: () => verifyLog(db),
    saveSnapshot: (seq, nursery) => writeSnapshot(folder, { seq, nursery }, hashAt(seq)),
    loadSnapshot: () => readSnapshot(folder, hashAt),
    remember(key, value) {
      const json = JSON.stringify(value)
      const query = queries.insertInto('remembered').values({ key, json })
      db.run(query.onConflict(conflict => conflict.column('key').doUpdateSet({ json })).compile())
    },
    recall<T>(key: string) {
      const row = db.all(queries.selectFrom('remembered').select('json').where('key', '=', key).compile())[0]
      return row && (JSON.parse(row.json) as T)
    },
    keepPicture(file, bytes) {
      const query = queries.insertInto('pictures').values({ file, bytes })
      db.run(query.onConflict(conflict => conflict.doNothing()).compile())
    },
    picture: file =>
      db.all(queries.selectFrom('pictures').select('bytes').where('file', '=', file).compile())[0]?.bytes,
    backup: async toFile => backUp(db, toFile),
    close() {
      if (!open) return
      open = false
      if (releaseWriting) db.exec('PRAGMA wal_checkpoint(TRUNCATE)')
      db.close()
      releaseWriting?.()
    },
  }
}

/** An entry as its row tells it. Added to what was read: a spread of it would take twice the memory, and most of the time. */
const logged = ({ seq, received_at, line, hash }: Omit<LogTables['entries'], 'id'>): LoggedEntry =>
  Object.assign(JSON.parse(line) as AnyEntry, { seq, receivedAt: received_at, hash })

function* chunks<T>(items: readonly T[]): Generator<readonly T[]> {
  for (let i = 0; i < items.length; i += rowsAtOnce) yield items.slice(i, i + rowsAtOnce)
}
