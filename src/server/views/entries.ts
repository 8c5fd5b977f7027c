import type { ShownEntry } from '../../api/index.ts'
import { changePhrase, entryPhrase, type LoggedEntry, madeAt } from '../../record/index.ts'
import type { EntryId, Phrase } from '../../trade/index.ts'
import type { NurseryMemory } from '../nursery-memory.ts'

/** What was said of a thing and what was noted about it, in the order in which it happened. */
export const entriesAbout = (memory: NurseryMemory, id: string, entries: readonly EntryId[]): ShownEntry[] =>
  inOrder([...memory.entries(entries), ...memory.notesAbout(id)]).map(entry => shownEntry(memory, entry))

/** Those of the entries that the log has, in the order in which they happened. */
export const shownEntries = (memory: NurseryMemory, ids: readonly EntryId[]): ShownEntry[] =>
  inOrder(memory.entries(ids)).map(entry => shownEntry(memory, entry))

const inOrder = (entries: readonly LoggedEntry[]): LoggedEntry[] =>
  [...entries].sort((a, b) => a.on.localeCompare(b.on) || a.seq - b.seq)

/** What an entry says; of a thing that was there before, what of it changed. */
export const saidIn = (memory: NurseryMemory, { id, body }: LoggedEntry): Phrase => {
  const nursery = memory.nursery()
  const earlier = nursery.insteadOf.get(id)
  const before = earlier && memory.entry(earlier)
  return (before && changePhrase(before.body, body, nursery)) ?? entryPhrase(body, nursery)
}

export const shownEntry = (memory: NurseryMemory, entry: LoggedEntry): ShownEntry => {
  const nursery = memory.nursery()
  const struck = nursery.struck.get(entry.id)
  return {
    id: entry.id,
    seq: entry.seq,
    on: entry.on,
    at: entry.at,
    by: entry.by,
    kind: entry.body.kind,
    says: saidIn(memory, entry),
    picture: 'file' in entry.body ? String(entry.body.file) : null,
    made: madeAt(entry),
    struck: struck ? { on: struck.on, by: memory.entry(struck.by)?.by ?? null, why: struck.why } : null,
  }
}
