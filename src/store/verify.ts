import { sql } from 'kysely'
import { entryLine, parseEntryLine } from '../record/index.ts'
import { chainHash, noHash } from './chain.ts'
import { queries } from './schema.ts'
import type { Sqlite } from './sqlite.ts'

/** Hears how much of what takes long is done, 0 to 1. */
export type ShareTold = (share: number) => void

const TOLD_EACH = 5_000

export type Verified =
  | { readonly ok: true; readonly entries: number; readonly head: string }
  /** `seq`: the first entry that is not as it was written. */
  | { readonly ok: false; readonly seq: number; readonly why: string }

/**
 * Reads every entry again: numbers without a gap, each the text that was written, each hash following from the
 * one before, nothing cut off at the end, and a file in order. Note the head elsewhere (a backup has it) to find
 * out a log that was rewritten from some entry on.
 */
export const verifyLog = (db: Sqlite, tell: ShareTold = () => undefined): Verified =>
  db.reading(() => verifyNow(db, tell))

function verifyNow(db: Sqlite, tell: ShareTold): Verified {
  let seq = 0
  let head = noHash
  const wrong = (why: string): Verified => ({ ok: false, seq: seq + 1, why })
  try {
    const given = sql<{ seq: number }>`SELECT seq FROM sqlite_sequence WHERE name = 'entries'`
    const highest = db.all(given.compile(queries))[0]?.seq ?? 0
    const rows = db.iterate(queries.selectFrom('entries').selectAll().orderBy('seq').compile())
    for (const row of rows) {
      if (row.seq !== seq + 1) return wrong(`it is missing; the next one there has the number ${row.seq}`)
      const hash = chainHash(head, row.received_at, row.line)
      if (hash !== row.hash) return wrong('its text or time does not give the hash that was written with it')
      const parsed = parseEntryLine(row.line)
      if (parsed.kind === 'malformed') return wrong(`its text is not an entry (${parsed.problems[0]?.what})`)
      if (parsed.entry.id !== row.id) return wrong('it is filed under the id of another entry')
      if (entryLine(parsed.entry) !== row.line)
        return wrong('its text is not in the form in which it is written')
      seq = row.seq
      if (seq % TOLD_EACH === 0) tell(Math.min(1, seq / highest))
      head = hash
    }
    if (highest !== seq) return wrong(`it is missing; entries up to ${highest} were written`)
    const file = db.pragma('integrity_check(1)')
    if (file !== 'ok') return { ok: false, seq: 0, why: `the file is damaged (${file})` }
  } catch (error) {
    return wrong(`it cannot be read (${error instanceof Error ? error.message : String(error)})`)
  }
  return { ok: true, entries: seq, head }
}
