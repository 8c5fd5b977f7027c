import type { EntryId, PersonId } from '../../trade/index.ts'
import type { Entry } from '../entry.ts'
import { type Query, raise } from '../query.ts'

/** Who is named by entries: as the one who says it, or as one who worked a batch. */
export interface PeopleNamed {
  readonly hear: (entry: Entry) => void
  /** One query for each person named who is not entered, raised by the first entry that counts. */
  readonly askAfter: (
    isEntered: (id: PersonId) => boolean,
    counting: (id: EntryId) => Entry | null,
  ) => Query[]
}

export function newPeopleNamed(): PeopleNamed {
  const entriesOf = new Map<PersonId, EntryId[]>()
  const note = (person: PersonId, entry: EntryId): void => {
    const list = entriesOf.get(person)
    if (list) list.push(entry)
    else entriesOf.set(person, [entry])
  }
  return {
    hear({ id, by, body }) {
      if (by !== null) note(by, id)
      if (body.kind !== 'batch-started/1') return
      for (const person of body.workedBy) if (person !== by) note(person, id)
    },
    askAfter(isEntered, counting) {
      const queries: Query[] = []
      for (const [person, ids] of entriesOf) {
        if (isEntered(person)) continue
        const named = [...new Set(ids)]
          .flatMap(id => counting(id) ?? [])
          .filter(entry => names(entry, person))
        if (named.length === 0) continue
        const first = named.reduce((a, b) => (b.id < a.id ? b : a))
        queries.push(raise(first.id, 'unknown-person', { person }, { person, number: named.length }))
      }
      return queries
    },
  }
}

const names = ({ by, body }: Entry, person: PersonId): boolean =>
  by === person || (body.kind === 'batch-started/1' && body.workedBy.includes(person))
