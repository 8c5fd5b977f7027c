import type { ShownEntry } from '../../api/index.ts'
import { entryText, type LoggedEntry } from '../../record/index.ts'
import type { NurseryMemory } from '../nursery-memory.ts'

export const shownEntry = (memory: NurseryMemory, entry: LoggedEntry): ShownEntry => ({
  id: entry.id,
  seq: entry.seq,
  on: entry.on,
  at: entry.at,
  by: entry.by,
  kind: entry.body.kind,
  says: entryText(entry.body, memory.nursery()),
  struck: memory.nursery().struck.has(entry.id),
})
