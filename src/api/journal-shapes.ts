import * as z from 'zod'
import { EntryId, Phrase } from '../trade/index.ts'
import { ShownEntry } from './shapes.ts'

/** An entry among all others: what it is about is said with it. */
export const JournalEntry = ShownEntry.unwrap()
  .extend({
    device: z.string(),
    about: z.array(
      z.object({ what: z.enum(['batch', 'mother', 'order']), id: z.string(), name: z.string() }).readonly(),
    ),
    /** What it takes back, or the task that it says is done, where that is known. */
    of: Phrase.nullable(),
  })
  .readonly()
export type JournalEntry = z.infer<typeof JournalEntry>

/** Part of what was said, in order of arrival, the newest first. */
export const JournalPage = z
  .object({
    entries: z.array(JournalEntry),
    /** The number to go on before; null when all was looked through. */
    before: z.number().nullable(),
    /** The day on which the last entry that was looked at was made. */
    backTo: z.string().nullable(),
  })
  .readonly()
export type JournalPage = z.infer<typeof JournalPage>

/** Of a task that is done: the entry that says so and those of the same deed, the newest first. */
export const TaskDeed = z.object({ task: z.string(), entries: z.array(EntryId) }).readonly()
export type TaskDeed = z.infer<typeof TaskDeed>
