import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  renameSync,
  rmSync,
} from 'node:fs'
import { dirname } from 'node:path'
import { sql } from 'kysely'
import { phrase } from '../trade/index.ts'
import { logFile } from './log-file.ts'
import { LogTrouble, toTrouble } from './log-trouble.ts'
import { queries, readVersion } from './schema.ts'
import { openSqlite, type Sqlite } from './sqlite.ts'
import { type ShareTold, type Verified, verifyLog } from './verify.ts'

/** Writes a copy beside its place first, checks it, and only then gives it its name. */
export function backUp(db: Sqlite, toFile: string, tell?: ShareTold): void {
  if (existsSync(toFile)) {
    throw new LogTrouble(
      'already-there',
      phrase('{path} is there already. Choose another name for the backup.', { path: toFile }),
    )
  }
  const half = `${toFile}.half`
  try {
    mkdirSync(dirname(toFile), { recursive: true })
    rmSync(half, { force: true })
    db.run(sql`VACUUM INTO ${half}`.compile(queries))
    requireWhole(half, verifyFile(half, tell))
    putInPlace(half, toFile)
  } catch (error) {
    rmSync(half, { force: true })
    throw toTrouble(error, toFile)
  }
}

/**
 * Brings a nursery back from a backup into a folder that holds none yet.
 * @returns how many entries it has
 */
export async function restoreLog(fromFile: string, folder: string): Promise<number> {
  if (!existsSync(fromFile)) {
    throw new LogTrouble(
      'not-a-log',
      phrase('There is no file {path}. Name the backup to restore.', { path: fromFile }),
    )
  }
  const file = logFile(folder)
  if (existsSync(file)) {
    throw new LogTrouble(
      'already-there',
      phrase('{path} holds a nursery already. Restore into an empty folder.', { path: folder }),
    )
  }
  const entries = requireWhole(fromFile, verifyFile(fromFile))
  const half = `${file}.half`
  try {
    mkdirSync(folder, { recursive: true })
    copyFileSync(fromFile, half)
    requireWhole(half, verifyFile(half))
    putInPlace(half, file)
  } catch (error) {
    rmSync(half, { force: true })
    throw toTrouble(error, folder)
  }
  return entries
}

/** Writes the nursery of a folder, whoever has it open, as a backup. It leaves at most `FILE.half` behind when it is broken off. */
export function writeBackup(folder: string, toFile: string, tell?: ShareTold): void {
  const db = openSqlite(logFile(folder))
  try {
    backUp(db, toFile, tell)
  } finally {
    db.close()
  }
}

/**
 * Reads a backup whole and lays a copy of it ready, to be put in the place of a nursery.
 * @returns how many entries it has; throws `LogTrouble` where it is damaged or none
 */
export function layReady(fromFile: string, ready: string, tell?: ShareTold): number {
  // What is no backup at all is found out before it is copied.
  openBackup(fromFile).close()
  try {
    copyFileSync(fromFile, ready)
    return requireWhole(fromFile, verifyFile(ready, tell))
  } catch (error) {
    rmSync(ready, { force: true })
    throw toTrouble(error, fromFile)
  }
}

/** Puts a backup that was laid ready in the place of the nursery of a folder, which nobody has open and which was kept already. */
export function replaceLog(ready: string, folder: string, keptAs: string): void {
  try {
    clearPlace(folder, keptAs)
    putInPlace(ready, logFile(folder))
  } catch (error) {
    rmSync(ready, { force: true })
    throw toTrouble(error, folder)
  }
}

/** The number and the hash of the last entry, and how many pictures: logs that have the same are the same. */
function lastOf(file: string): string {
  const db = openSqlite(file)
  try {
    const last = queries.selectFrom('entries').select(['seq', 'hash']).orderBy('seq', 'desc').limit(1)
    const pictures = queries.selectFrom('pictures').select(({ fn }) => fn.countAll().as('number'))
    return JSON.stringify([db.all(last.compile()), db.all(pictures.compile())])
  } finally {
    db.close()
  }
}

/** Leaves a folder, which nobody has open and whose nursery was kept already, without one. */
export function putLogAside(folder: string, keptAs: string): void {
  try {
    clearPlace(folder, keptAs)
    rmSync(logFile(folder))
  } catch (error) {
    throw toTrouble(error, folder)
  }
}

/**
 * The log alone, and kept whole: where entries have come since it was kept, it is kept once more. What it has not yet
 * written back must not be read into the next one.
 */
function clearPlace(folder: string, keptAs: string): void {
  const file = logFile(folder)
  if (lastOf(file) !== lastOf(keptAs)) {
    rmSync(keptAs)
    writeBackup(folder, keptAs)
  }
  for (const rest of ['-wal', '-shm']) rmSync(file + rest, { force: true })
}

function verifyFile(path: string, tell?: ShareTold): Verified {
  const db = openBackup(path)
  try {
    return verifyLog(db, tell)
  } finally {
    db.close()
  }
}

function openBackup(path: string): Sqlite {
  const db = openSqlite(path, { readOnly: true })
  try {
    if (readVersion(db, path) === 0)
      throw new LogTrouble(
        'not-a-log',
        phrase('{path} is not a nursery’s backup. Name another file.', { path }),
      )
    return db
  } catch (error) {
    db.close()
    throw error
  }
}

function requireWhole(path: string, found: Verified): number {
  if (found.ok) return found.entries
  throw new LogTrouble(
    'damaged',
    phrase('{path} is damaged: entry {seq}, {why}. Use another backup.', {
      path,
      seq: found.seq,
      why: found.why,
    }),
  )
}

/** Makes sure that the bytes are on the disk before the name is. */
function putInPlace(half: string, whole: string): void {
  sync(half)
  renameSync(half, whole)
  if (process.platform !== 'win32') sync(dirname(whole))
}

function sync(path: string): void {
  const handle = openSync(path, 'r')
  try {
    fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}
