import type { Entry } from '../entry.ts'
import { compareEntries } from '../entry-order.ts'
import { type SubjectType, visitSubjects } from './subjects.ts'

interface Subject {
  entries: Entry[]
  /** Those entries are known to be in the order in which they count. */
  inOrder: boolean
  touched: boolean
}

/** The entries of each subject, and which subjects have changed since they were last folded. */
export interface SubjectLists {
  readonly add: (entry: Entry) => void
  readonly remove: (entry: Entry) => void
  /** Its subjects must be folded again, for the entry counts now and did not before, or the other way round. */
  readonly touch: (entry: Entry) => void
  /** In the order in which they count. */
  readonly entriesOf: (type: SubjectType, id: string) => readonly Entry[]
  /** Ids of the subjects that have changed; they are asked for once. */
  readonly takeTouched: (type: SubjectType) => readonly string[]
}

export function newSubjectLists(): SubjectLists {
  const eachType = <T>(make: () => T): Record<SubjectType, T> => ({
    register: make(),
    mother: make(),
    lot: make(),
    batch: make(),
    order: make(),
    hold: make(),
    query: make(),
    note: make(),
  })
  const subjects = eachType(() => new Map<string, Subject>())
  const touched = eachType((): string[] => [])
  let told: Entry

  const touchSubject = (type: SubjectType, id: string): Subject => {
    let subject = subjects[type].get(id)
    if (!subject) {
      subject = { entries: [], inOrder: true, touched: false }
      subjects[type].set(id, subject)
    }
    if (!subject.touched) {
      subject.touched = true
      touched[type].push(id)
    }
    return subject
  }
  const addTo = (type: SubjectType, id: string): void => {
    const subject = touchSubject(type, id)
    const last = subject.entries.at(-1)
    if (last !== undefined && subject.inOrder) subject.inOrder = compareEntries(last, told) <= 0
    subject.entries.push(told)
  }
  const removeFrom = (type: SubjectType, id: string): void => {
    const subject = touchSubject(type, id)
    subject.entries = subject.entries.filter(entry => entry !== told)
  }
  return {
    add(entry) {
      told = entry
      visitSubjects(entry.body, addTo)
    },
    remove(entry) {
      told = entry
      visitSubjects(entry.body, removeFrom)
    },
    touch: entry => visitSubjects(entry.body, touchSubject),
    entriesOf(type, id) {
      const subject = subjects[type].get(id)
      if (!subject) return []
      if (!subject.inOrder) subject.entries.sort(compareEntries)
      subject.inOrder = true
      return subject.entries
    },
    takeTouched(type) {
      const ids = touched[type]
      touched[type] = []
      for (const id of ids) subjects[type].get(id)!.touched = false
      return ids
    },
  }
}
