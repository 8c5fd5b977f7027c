import { phrase } from '../trade/index.ts'
import { LogTrouble } from './log-trouble.ts'
import { queriesOf, type Sqlite } from './sqlite.ts'

export interface LogTables {
  entries: {
    seq: number
    id: string
    received_at: string
    /** The entry's canonical text. */
    line: string
    hash: string
  }
  /** Values that are no part of the record: how a spreadsheet's columns were mapped, the last plan. */
  remembered: { key: string; json: string }
  /** Pictures that entries name, by the hash of their bytes. */
  pictures: { file: string; bytes: Uint8Array }
}

export const queries = queriesOf<LogTables>()

/** Written into the file, so that another program's database is not taken for a log: "Buds" in ASCII. */
const applicationId = 0x42756473

/**
 * Each only adds, and is never changed once it is out; the file's `user_version` says how many it has.
 * AUTOINCREMENT keeps the highest number given, so that a log cut off at its end is noticed.
 */
export const migrations: readonly string[] = [
  `CREATE TABLE entries (
     seq INTEGER PRIMARY KEY AUTOINCREMENT,
     id TEXT NOT NULL UNIQUE,
     received_at TEXT NOT NULL,
     line TEXT NOT NULL,
     hash TEXT NOT NULL
   ) STRICT;
   CREATE TABLE remembered (
     key TEXT PRIMARY KEY,
     json TEXT NOT NULL
   ) STRICT, WITHOUT ROWID;`,
  `CREATE TABLE pictures (
     file TEXT PRIMARY KEY,
     bytes BLOB NOT NULL
   ) STRICT;`,
]

/** Says whether the file is a log that this version can read, and how many migrations it has. */
export function readVersion(db: Sqlite, path: string): number {
  const version = Number(db.pragma('user_version'))
  const owner = Number(db.pragma('application_id'))
  if (version > 0 && owner !== applicationId) {
    throw new LogTrouble(
      'not-a-log',
      phrase('{path} belongs to another program. Choose another folder.', { path }),
    )
  }
  if (version > migrations.length) {
    throw new LogTrouble(
      'newer-version',
      phrase(
        '{path} was written by a newer Budstick (its form is {form}, this one knows {known}). Update Budstick, then open it again.',
        { path, form: version, known: migrations.length },
      ),
    )
  }
  return version
}

/** Brings the file to this version's form, one migration after the other, all or nothing. */
export function migrate(db: Sqlite, path: string): void {
  if (readVersion(db, path) === migrations.length) return
  db.inTransaction(() => {
    const version = readVersion(db, path)
    for (const migration of migrations.slice(version)) db.exec(migration)
    db.exec(`PRAGMA application_id = ${applicationId}`)
    db.exec(`PRAGMA user_version = ${migrations.length}`)
  })
}
