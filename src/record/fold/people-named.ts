import type { EntryId, PersonId } from '../../trade/index.ts'
import type { Entry } from '../entry.ts'
import { type Query, raise } from '../query.ts'

/** Who is named by entries: as the one who says it, or as one who worked a batch. */
export interface PeopleNamed {
  readonly hear: (entry: Entry) => void
  /** Another entry has taken its place. */
  readonly forget: (entry: Entry) => void
  /** One query for each person named who is not entered, raised by the first entry that counts. */
  readonly askAfter: (isEntered: (id: PersonId) => boolean, isStruck: (id: EntryId) => boolean) => Query[]
}

export function newPeopleNamed(): PeopleNamed {
  const entriesOf = new Map<PersonId, Entry[]>()
  const note = (person: PersonId, entry: Entry): void => {
    const list = entriesOf.get(person)
    if (list) list.push(entry)
    else entriesOf.set(person, [entry])
  }
  return {
    hear(entry) {
      const { by, body } = entry
      if (by !== null) note(by, entry)
      if (body.kind !== 'batch-started/1') return
      for (const person of new Set(body.workedBy)) if (person !== by) note(person, entry)
    },
    forget(entry) {
      for (const [person, list] of entriesOf)
        entriesOf.set(
          person,
          list.filter(other => other !== entry),
        )
    },
    askAfter(isEntered, isStruck) {
      const queries: Query[] = []
      for (const [person, entries] of entriesOf) {
        if (isEntered(person)) continue
        let first: EntryId | null = null
        let number = 0
        for (const { id } of entries) {
          if (isStruck(id)) continue
          number += 1
          if (first === null || id < first) first = id
        }
        if (first !== null) queries.push(raise(first, 'unknown-person', { person }, { person, number }))
      }
      return queries
    },
  }
}
