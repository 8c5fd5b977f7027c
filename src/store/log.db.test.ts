import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { foldEntries, readHistory } from '../record/index.ts'
import { layReady, replaceLog, restoreLog, writeBackup } from './backup.ts'
import { type Log, openLog } from './log.ts'
import { logFile } from './log-file.ts'
import { migrations } from './schema.ts'
import { openSqlite } from './sqlite.ts'
import { toldEntry } from './told-entry.ts'

let folder: string
let log: Log
const arrival = '2026-05-04T06:30:00.000Z'
const told = (from: number, to: number) => Array.from({ length: to - from }, (_, i) => toldEntry(1, from + i))

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'log-'))
  log = await openLog(folder)
})
afterEach(() => {
  log.close()
  rmSync(folder, { recursive: true, force: true })
})

const trouble = async (work: () => unknown): Promise<string> => {
  try {
    await work()
  } catch (error) {
    return (error as { kind: string }).kind
  }
  return 'none'
}

/** Changes the file behind the log's back. */
function meddle(sql: string): void {
  log.close()
  const db = openSqlite(logFile(folder))
  db.exec(sql)
  db.close()
}

describe('append and read', () => {
  test('entries are numbered in order of arrival and read back word for word', () => {
    const entries = readHistory('B7[120] -14† -30→B9')
    const { accepted } = log.append(entries, arrival)
    expect(accepted.map(({ seq }) => seq)).toEqual([1, 2, 3])
    expect(log.read({ afterSeq: 0, limit: 10 })).toEqual(accepted)
    expect(log.read({ afterSeq: 1, limit: 1 })).toEqual([accepted[1]])
    expect(log.lastSeq()).toBe(3)
  })

  test('entries sent again are known, and written once', () => {
    log.append(told(0, 1200), arrival)
    const { accepted, known } = log.append(told(600, 1800), '2026-05-05T06:30:00.000Z')
    expect(accepted.length).toBe(600)
    expect(known.length).toBe(600)
    expect(log.lastSeq()).toBe(1800)
    expect(log.verify()).toMatchObject({ ok: true, entries: 1800 })
  })

  test('an entry twice in one sending is written once', () => {
    const [entry] = told(0, 1)
    expect(log.append([entry!, entry!], arrival)).toMatchObject({
      accepted: [{ seq: 1 }],
      known: [entry!.id],
    })
  })

  test('an id that the log has with other content is not written, and named; the rest of the sending is', () => {
    const [first, second] = told(0, 2) as [ReturnType<typeof toldEntry>, ReturnType<typeof toldEntry>]
    log.append([first], arrival)
    const changed = { ...first, on: '2026-05-05' }
    expect(log.append([changed, second], arrival)).toMatchObject({
      accepted: [{ id: second.id }],
      known: [],
      conflicting: [first.id],
    })
    expect(log.read({ afterSeq: 0, limit: 1 })[0]?.on).toBe('2026-05-04')
  })

  test('an entry of a newer version is kept word for word', () => {
    const later = { ...toldEntry(1, 1), body: { kind: 'roots-washed/1', batch: 'B7', litres: 3 } }
    log.append([later], arrival)
    expect(log.read({ afterSeq: 0, limit: 1 })).toMatchObject([later])
  })

  test('two logs that got the same entries at the same instants have the same head', async () => {
    const other = await openLog(join(folder, 'other'))
    for (const each of [log, other]) each.append(told(0, 30), arrival)
    expect(other.verify()).toEqual(log.verify())
    other.close()
  })

  test('what is remembered under a key is the last value, after opening again too', async () => {
    log.remember('columns of orders.csv', { kind: 'Sorte' })
    log.remember('columns of orders.csv', { kind: 'Cultivar' })
    log.close()
    log = await openLog(folder)
    expect(log.recall('columns of orders.csv')).toEqual({ kind: 'Cultivar' })
    expect(log.recall('never')).toBeUndefined()
  })
})

describe('verify finds', () => {
  beforeEach(() => void log.append(told(0, 50), arrival))

  const cases: readonly (readonly [what: string, sql: string, seq: number])[] = [
    ['a changed text', `UPDATE entries SET line = replace(line, 'look 20,', 'look 21,') WHERE seq = 21`, 21],
    [
      'a changed time of arrival',
      `UPDATE entries SET received_at = '2026-05-03T06:30:00.000Z' WHERE seq = 9`,
      9,
    ],
    ['an entry taken out', 'DELETE FROM entries WHERE seq = 30', 30],
    ['entries cut off at the end', 'DELETE FROM entries WHERE seq > 45', 46],
    [
      'an entry filed under another id',
      `UPDATE entries SET id = '019f0001-0000-7000-8000-ffffffffffff' WHERE seq = 5`,
      5,
    ],
    [
      'two entries changed about',
      `UPDATE entries SET seq = 1000 WHERE seq = 7; UPDATE entries SET seq = 7 WHERE seq = 8; UPDATE entries SET seq = 8 WHERE seq = 1000`,
      7,
    ],
  ]
  test.each(cases)('%s', async (_, sql, seq) => {
    meddle(sql)
    log = await openLog(folder)
    expect(log.verify()).toMatchObject({ ok: false, seq })
  })

  test('one bit turned over anywhere in an entry of the file', async () => {
    const { readFileSync } = await import('node:fs')
    log.close()
    const file = readFileSync(logFile(folder))
    const at = file.indexOf('look 33,')
    expect(at).toBeGreaterThan(0)
    file[at] = file[at]! ^ 1
    writeFileSync(logFile(folder), file)
    log = await openLog(folder)
    expect(log.verify()).toMatchObject({ ok: false, seq: 34 })
  })
})

describe('opening', () => {
  test('a log of a newer version is left alone, with a word to update', async () => {
    meddle('PRAGMA user_version = 99')
    expect(await trouble(() => openLog(folder))).toBe('newer-version')
  })

  test('a file that is no database, and a database of another program, are not taken for a log', async () => {
    const other = mkdtempSync(join(tmpdir(), 'other-'))
    writeFileSync(logFile(other), 'Dear diary, today the buds broke. '.repeat(100))
    expect(await trouble(() => openLog(other))).toBe('not-a-log')
    rmSync(logFile(other))
    const db = openSqlite(logFile(other))
    db.exec('CREATE TABLE songs (name TEXT); PRAGMA user_version = 1')
    db.close()
    expect(await trouble(() => openLog(other))).toBe('not-a-log')
    rmSync(other, { recursive: true })
  })

  test('a file where the folder should be is named as such', async () => {
    expect(await trouble(() => openLog(join(logFile(folder), 'deeper')))).toBe('not-a-folder')
  })

  test('the file has the form that its migrations give, each of which is never changed', () => {
    log.close()
    const db = openSqlite(logFile(folder))
    const tables = db.all<{ sql: string }>({
      sql: "SELECT sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite_%' ORDER BY name",
      parameters: [],
    } as never)
    db.close()
    expect(tables.map(({ sql }) => sql.replace(/\s+/g, ' '))).toEqual([
      'CREATE TABLE entries ( seq INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, received_at TEXT NOT NULL, line TEXT NOT NULL, hash TEXT NOT NULL ) STRICT',
      'CREATE TABLE pictures ( file TEXT PRIMARY KEY, bytes BLOB NOT NULL ) STRICT',
      'CREATE TABLE remembered ( key TEXT PRIMARY KEY, json TEXT NOT NULL ) STRICT, WITHOUT ROWID',
    ])
    expect(migrations.length).toBe(2)
  })
})

describe('backups', () => {
  test('a backup restored into an empty folder is the same log', async () => {
    log.append(told(0, 200), arrival)
    log.remember('plan', { weeks: 104 })
    const file = join(folder, 'backups', 'may.budstick')
    await log.backup(file)
    log.append(told(200, 210), arrival)
    const restored = join(folder, 'restored')
    expect(await restoreLog(file, restored)).toBe(200)
    const again = await openLog(restored)
    expect(again.read({ afterSeq: 0, limit: 1000 })).toEqual(log.read({ afterSeq: 0, limit: 200 }))
    expect(again.recall('plan')).toEqual({ weeks: 104 })
    again.append(told(200, 210), arrival)
    expect(again.verify()).toEqual(log.verify())
    again.close()
  })

  test('what comes while the nursery is kept and another laid ready is kept too, an entry or a picture', async () => {
    for (const come of [
      () => void log.append(told(100, 101), arrival),
      () => log.keepPicture('a.jpg', new Uint8Array([1])),
    ]) {
      if (log.lastSeq() === 0) log.append(told(0, 100), arrival)
      const [other, ready, kept] = ['other', 'ready', `kept-${log.lastSeq()}`].map(name => join(folder, name))
      await log.backup(other!)
      writeBackup(folder, kept!)
      expect(layReady(other!, ready!)).toBe(log.lastSeq())
      come()
      const [seq, picture] = [log.lastSeq(), log.picture('a.jpg')]
      log.close()
      replaceLog(ready!, folder, kept!)
      log = await openLog(folder)
      expect(log.lastSeq()).toBe(100)
      const restored = mkdtempSync(join(tmpdir(), 'kept-'))
      expect(await restoreLog(kept!, join(restored, 'in'))).toBe(seq)
      const again = await openLog(join(restored, 'in'))
      expect(again.picture('a.jpg')).toEqual(picture)
      again.close()
      rmSync(restored, { recursive: true })
      rmSync(other!)
      rmSync(kept!)
    }
  })

  test('nothing is written over: neither an older backup nor a nursery', async () => {
    log.append(told(0, 3), arrival)
    const file = join(folder, 'may.budstick')
    await log.backup(file)
    expect(await trouble(() => log.backup(file))).toBe('already-there')
    expect(await trouble(() => restoreLog(file, folder))).toBe('already-there')
  })

  test('a damaged backup is not restored, and leaves nothing behind', async () => {
    log.append(told(0, 30), arrival)
    const file = join(folder, 'may.budstick')
    await log.backup(file)
    const db = openSqlite(file)
    db.exec('DELETE FROM entries WHERE seq = 12')
    db.close()
    const restored = join(folder, 'restored')
    expect(await trouble(() => restoreLog(file, restored))).toBe('damaged')
    expect(await trouble(() => restoreLog(join(folder, 'none'), restored))).toBe('not-a-log')
    const empty = await openLog(restored)
    expect(empty.lastSeq()).toBe(0)
    empty.close()
  })
})

describe('snapshots', () => {
  const entries = readHistory('B7[120] -14† -30→B9')
  const nursery = foldEntries(entries)
  const snapshot = () => join(folder, 'nursery.snapshot')

  beforeEach(() => {
    log.append(entries, arrival)
    log.saveSnapshot(3, nursery)
  })

  test('the state saved is the state loaded, after opening again', async () => {
    log.close()
    log = await openLog(folder)
    expect(log.loadSnapshot()).toEqual({ seq: 3, nursery })
  })

  test('one cut off, changed, or of another log is passed over', async () => {
    const { readFileSync } = await import('node:fs')
    const whole = readFileSync(snapshot(), 'latin1')
    for (const bad of [
      whole.slice(0, -5),
      whole.replace('"rot"', '"rut"'),
      '',
      whole.replace('"foldVersion":', '"foldVersion":9'),
    ]) {
      writeFileSync(snapshot(), bad, 'latin1')
      expect(log.loadSnapshot()).toBeNull()
    }
    const other = await openLog(join(folder, 'other'))
    other.append(told(0, 5), arrival)
    writeFileSync(join(folder, 'other', 'nursery.snapshot'), whole, 'latin1')
    expect(other.loadSnapshot()).toBeNull()
    other.close()
  })

  test('there is none before one was saved', () => {
    rmSync(snapshot())
    expect(log.loadSnapshot()).toBeNull()
  })
})
