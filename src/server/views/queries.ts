import type { QueryRow } from '../../api/index.ts'
import { entryPhrase, type Query, queryPhrase } from '../../record/index.ts'
import type { NurseryMemory } from '../nursery-memory.ts'

export const queryRow = (memory: NurseryMemory, query: Query): QueryRow => {
  const raised = memory.entry(query.entry)
  return {
    id: query.id,
    entry: query.entry,
    batch: query.about.batch ?? null,
    mother: query.about.mother ?? null,
    order: query.about.order ?? null,
    says: queryPhrase(query),
    raisedBy: raised
      ? { on: raised.on, by: raised.by, says: entryPhrase(raised.body, memory.nursery()) }
      : null,
  }
}

/** What was entered last stands first: a slip just made is in sight. */
export const queryRows = (memory: NurseryMemory): QueryRow[] =>
  memory
    .nursery()
    .queries.map(query => queryRow(memory, query))
    .sort((a, b) => (b.raisedBy?.on ?? '').localeCompare(a.raisedBy?.on ?? ''))
