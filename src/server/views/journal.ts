import type { JournalEntry, JournalPage, TaskDeed } from '../../api/index.ts'
import type { Task } from '../../planning/index.ts'
import { deedOf, type LoggedEntry, visitSubjects } from '../../record/index.ts'
import { type EntryId, inEnglish, type OrderId, type PersonId, type Phrase } from '../../trade/index.ts'
import type { NurseryMemory } from '../nursery-memory.ts'
import { saidIn, shownEntry } from './entries.ts'
import { named } from './named.ts'

/** So many entries are looked through for one answer, and so many read at once: nobody else waits long for it. */
const MOST_LOOKED_AT = 1_000
const AT_ONCE = 500

/** What was said, the newest first: all, or what has the words in it; of a batch's name all that is about it. */
export const journalPage = (
  memory: NurseryMemory,
  tasks: readonly Task[],
  { before, find = '', limit }: { before?: number | undefined; find?: string | undefined; limit: number },
): JournalPage => {
  const words = folded(find).split(/\s+/).filter(Boolean)
  const taskOf = new Map(tasks.map(task => [task.id, task.task]))
  const batch = [...(words.length === 0 ? [] : memory.nursery().batches.values())].find(
    ({ name }) => folded(name) === words.join(' '),
  )
  if (batch !== undefined) {
    const about = [...memory.entries(batch.entries), ...memory.notesAbout(batch.id)]
    const newest = about.sort((a, b) => b.seq - a.seq).map(entry => journalEntry(memory, taskOf, entry))
    return { entries: newest, before: null, backTo: null }
  }
  const entries: JournalEntry[] = []
  let last: LoggedEntry | undefined
  let from = before ?? Number.MAX_SAFE_INTEGER
  for (let seen = 0; seen < MOST_LOOKED_AT && entries.length < limit; ) {
    const page = memory.before(from, words.length === 0 ? limit : AT_ONCE)
    if (page.length === 0) return { entries, before: null, backTo: last?.on ?? null }
    for (const entry of page) {
      last = entry
      from = entry.seq
      seen += 1
      const shown = journalEntry(memory, taskOf, entry)
      if (words.length === 0 || hasAll(memory, shown, words)) entries.push(shown)
      if (entries.length === limit) break
    }
  }
  return { entries, before: from > 1 ? from : null, backTo: last?.on ?? null }
}

/** Of those of the tasks that are done: what was said in the same deed, the newest first. */
export const deedsOf = (memory: NurseryMemory, tasks: readonly string[]): TaskDeed[] => {
  const { tasksDone, struck } = memory.nursery()
  return tasks.flatMap(task => {
    const said = tasksDone.get(task)
    const done = said && memory.entry(said.entry)
    if (done === undefined) return []
    const entries = deedOf(done, memory.before(done.seq, MOST_IN_A_DEED))
      .filter(({ id }) => !struck.has(id))
      .sort((a, b) => b.seq - a.seq)
    return [{ task, entries: entries.map(({ id }) => id) }]
  })
}
/** More than one ticked task ever says, with what other devices sent meanwhile. */
const MOST_IN_A_DEED = 60

const journalEntry = (
  memory: NurseryMemory,
  taskOf: ReadonlyMap<string, Phrase>,
  entry: LoggedEntry,
): JournalEntry => {
  const { body } = entry
  const about = new Map<string, JournalEntry['about'][number]>()
  visitSubjects(body as never, (type, id) => {
    const what = type === 'note' ? whatIs(memory, id) : type
    if (what === 'batch' || what === 'mother')
      about.set(id, { what, id, name: named(memory.nursery(), { what, id }).name })
    if (what === 'order') about.set(id, { what, id, name: id })
  })
  const target = body.kind === 'struck/1' && 'entry' in body ? memory.entry(body.entry as EntryId) : undefined
  const task =
    (body.kind === 'task-done/1' || body.kind === 'task-done/2') && 'task' in body
      ? taskOf.get(String(body.task))
      : undefined
  return {
    ...shownEntry(memory, entry),
    device: entry.device,
    about: [...about.values()],
    of: target === undefined ? (task ?? null) : saidIn(memory, target),
  }
}

/** What has this id, of what a note may be about. */
const whatIs = (memory: NurseryMemory, id: string) => {
  const { batches, mothers, orders } = memory.nursery()
  if (batches.has(id as never)) return 'batch'
  if (mothers.has(id as never)) return 'mother'
  return orders.has(id as OrderId) ? 'order' : null
}

const hasAll = (memory: NurseryMemory, shown: JournalEntry, words: readonly string[]): boolean => {
  const { people, former } = memory.nursery()
  const { by, says, of, about, device, on } = shown
  const person = by === null ? '' : ((people.get(by) ?? former.people.get(by as PersonId))?.name ?? by)
  const text = folded(
    [
      inEnglish(says),
      of === null ? '' : inEnglish(of),
      ...about.map(({ name }) => name),
      person,
      device,
      on,
    ].join(' '),
  )
  return words.every(word => text.includes(word))
}

/** Without accents, in small letters. */
const folded = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()
