import type { ShownEntry } from '../../api/index.ts'
import type { Entry } from '../../record/index.ts'

/** What these entries, oldest first, strike, and by what: a striking can itself be struck by a later one. */
export const struckHere = (
  entries: readonly Entry[],
): ReadonlyMap<string, NonNullable<ShownEntry['struck']>> => {
  const struck = new Map<string, NonNullable<ShownEntry['struck']>>()
  for (const { id, on, by, body } of entries.toReversed())
    if (body.kind === 'struck/1' && !struck.has(id)) struck.set(body.entry, { on, by, why: body.why })
  return struck
}
