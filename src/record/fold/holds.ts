import type { EntryId } from '../../trade/index.ts'
import type { Entry } from '../entry.ts'
import { type Query, raise } from '../query.ts'
import type { Hold } from '../state.ts'

/** Folds the holds: placed, and released by the first release that names them. */
export function foldHolds(entries: readonly Entry[]): { holds: Map<EntryId, Hold>; queries: Query[] } {
  const holds = new Map<EntryId, Hold>()
  const queries: Query[] = []
  for (const { id, body, on } of entries) {
    if (body.kind === 'hold-placed/1')
      holds.set(id, { id, on: body.on, since: on, why: body.why, released: null })
  }
  for (const { id, body, on } of entries) {
    if (body.kind !== 'hold-released/1') continue
    const hold = holds.get(body.hold)
    if (!hold) queries.push(raise(id, 'unknown-hold', {}, { hold: body.hold }))
    else if (!hold.released) holds.set(hold.id, { ...hold, released: { by: id, on, why: body.why } })
  }
  return { holds, queries }
}
