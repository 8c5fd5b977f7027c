import type { EntryId } from '../../trade/index.ts'
import type { AnyEntry } from '../entry.ts'

/** Entries by their ids. */
export interface EntryIndex {
  readonly get: (id: EntryId) => AnyEntry | undefined
  readonly set: (entry: AnyEntry) => void
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
  const isNewest = (id: EntryId): boolean => rising.length === 0 || id > rising.at(-1)!.id
  return {
    get(id) {
      if (isNewest(id)) return undefined
      const place = placeOf(id)
      return place < 0 ? stragglers.get(id) : rising[place]
    },
    set(entry) {
      if (isNewest(entry.id)) rising.push(entry)
      else {
        const place = placeOf(entry.id)
        if (place < 0) stragglers.set(entry.id, entry)
        else rising[place] = entry
      }
    },
  }
}
