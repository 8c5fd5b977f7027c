import type { BatchId, EntryId, MaterialLotId, MotherId, OrderId, PersonId } from '../trade/index.ts'
import type { QueryKind } from './query-text.ts'
import type { Day } from './register.ts'

/** What does not add up: kept and shown until someone settles it by an entry. */
export interface Query {
  /** The entry that raised it, its kind, and what it is about: the same whatever order entries arrive in. */
  readonly id: string
  readonly about: {
    readonly batch?: BatchId
    readonly mother?: MotherId
    readonly order?: OrderId
    readonly lot?: MaterialLotId
    readonly person?: PersonId
  }
  readonly entry: EntryId
  readonly kind: QueryKind
  /** The facts of it; `queryText` words them for people. */
  readonly facts: Readonly<Record<string, string | number>>
}

export interface SettledQuery extends Query {
  readonly settled: { readonly entry: EntryId; readonly on: Day; readonly how: string }
}

/** Raises a query. Its id holds what it is about, for one entry may touch several things. */
export const raise = (
  entry: EntryId,
  kind: QueryKind,
  about: Query['about'],
  facts: Query['facts'],
): Query => ({
  id: [entry, kind, about.batch ?? about.mother ?? about.order ?? about.lot ?? about.person ?? ''].join(' '),
  about,
  entry,
  kind,
  facts,
})
