import type { EntryId } from '../../trade/index.ts'
import type { BodyOf, Entry } from '../entry.ts'
import { compareEntries, sortEntries } from '../entry-order.ts'
import { type Query, raise } from '../query.ts'
import type { Struck } from '../state.ts'

export type Strike = Entry & { readonly body: BodyOf<'struck/1'> }

/**
 * Which entries are struck, and by what. A striking can itself be struck, by a later one; so they are read from
 * the last to the first. A striking that names a striking not older than itself has no effect.
 */
export function foldStrikes(
  strikes: Strike[],
  entryById: (id: EntryId) => unknown,
): { struck: Map<EntryId, Struck>; queries: Query[] } {
  const struck = new Map<EntryId, Struck>()
  const queries: Query[] = []
  const strikeById = new Map(strikes.map(strike => [strike.id, strike]))
  for (const strike of sortEntries(strikes).toReversed()) {
    if (struck.has(strike.id)) continue
    const target = strike.body.entry
    const targetStrike = strikeById.get(target)
    if (targetStrike && compareEntries(targetStrike, strike) >= 0) {
      queries.push(raise(strike.id, 'strikes-later-strike', {}, { entry: target }))
      continue
    }
    if (!entryById(target)) queries.push(raise(strike.id, 'strikes-nothing', {}, { entry: target }))
    struck.set(target, { by: strike.id, on: strike.on, why: strike.body.why })
  }
  return { struck, queries }
}
