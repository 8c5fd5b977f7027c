import type { ShownEntry } from '../../api/index.ts'
import { entryText, type LoggedEntry, madeAt } from '../../record/index.ts'
import type { EntryId } from '../../trade/index.ts'
import type { NurseryMemory } from '../nursery-memory.ts'

/** What was said of a thing and what was noted about it, in the order in which it happened. */
export const entriesAbout = (memory: NurseryMemory, id: string, entries: readonly EntryId[]): ShownEntry[] =>
  [...memory.entries(entries), ...memory.notesAbout(id)]
    .sort((a, b) => a.on.localeCompare(b.on) || a.seq - b.seq)
    .map(entry => shownEntry(memory, entry))

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
    says: entryText(entry.body, nursery),
    made: madeAt(entry),
    struck: struck ? { on: struck.on, by: memory.entry(struck.by)?.by ?? null, why: struck.why } : null,
  }
}
