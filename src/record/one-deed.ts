import type { AnyEntry } from './entry.ts'
import { instantIn } from './entry-made.ts'

/** No two deeds are done on one device within so many milliseconds; the entries of one deed are made at once. */
const AT_ONCE_MS = 100

const isTaskDone = (kind: string): boolean => kind.startsWith('task-done/')

/**
 * What was said in the same deed as that a task is done, itself included, the last first: a ticked task says what happened, and
 * that it is done last.
 * @param before what the record had before it, the newest first
 */
export const deedOf = <E extends AnyEntry>(done: E, before: readonly E[]): readonly E[] => {
  const deed = [done]
  const made = instantIn(done.id)
  for (const entry of made === 0 ? [] : before) {
    if (entry.device !== done.device) continue
    const { kind } = entry.body
    if (isTaskDone(kind) || kind === 'struck/1') break
    if (entry.by !== done.by || Math.abs(made - instantIn(entry.id)) > AT_ONCE_MS) break
    deed.push(entry)
  }
  return deed
}
