import type { QueryRow } from '../../api/index.ts'
import { type Nursery, type Query, queryText } from '../../record/index.ts'

export const queryRow = (query: Query): QueryRow => ({
  id: query.id,
  entry: query.entry,
  batch: query.about.batch ?? null,
  mother: query.about.mother ?? null,
  order: query.about.order ?? null,
  says: queryText(query),
})

export const queryRows = (nursery: Nursery): QueryRow[] => nursery.queries.map(queryRow)
