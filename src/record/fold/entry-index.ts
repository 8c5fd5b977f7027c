import type { EntryId } from '../../trade/index.ts'
import type { AnyEntry } from '../entry.ts'

/** Entries by their ids. */
export interface EntryIndex {
  readonly get: (id: EntryId) => AnyEntry | undefined
  /** Takes an entry in if none of its id is there; gives the one that is. */
  readonly add: (entry: AnyEntry) => AnyEntry | undefined
  /** Puts an entry in the place of the one of its id. */
  readonly replace: (entry: AnyEntry) => void
}

/**
 * Ids rise with the moment at which an entry was made, and a log comes nearly in that order: so those that come in
 * order are kept in a list and found by halving it, which costs a tenth of hashing each; only stragglers are hashed.
 */
export function newEntryIndex(): EntryIndex {
  const rising: AnyEntry[] = []
  const stragglers = new Map<EntryId, AnyEntry>()

  const placeOf = (id: EntryId): number => {
    let low = 0
    let high = rising.length - 1
    while (low <= high) {
      const middle = (low + high) >> 1
      const there = rising[middle]!.id
      if (there === id) return middle
      if (there < id) low = middle + 1
      else high = middle - 1
    }
    return -1
  }
  const get = (id: EntryId): AnyEntry | undefined => {
    const place = placeOf(id)
    return place < 0 ? stragglers.get(id) : rising[place]
  }
  return {
    get,
    add(entry) {
      const newest = rising.at(-1)
      if (newest === undefined || entry.id > newest.id) {
        rising.push(entry)
        return undefined
      }
      const known = get(entry.id)
      if (known === undefined) stragglers.set(entry.id, entry)
      return known
    },
    replace(entry) {
      const place = placeOf(entry.id)
      if (place < 0) stragglers.set(entry.id, entry)
      else rising[place] = entry
    },
  }
}
