import type { AnyEntry } from './entry.ts'

const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

/**
 * The order in which entries count: by the day on which it happened, then the time of day, then the id (which
 * rises with the moment it was made). An entry without a time comes first on its day: what is said of the day
 * as a whole (a start, an opening stock) comes before what was tapped at the bench. The order of arrival plays
 * no part, so that every device that holds the same entries shows the same nursery.
 */
export const compareEntries = (a: AnyEntry, b: AnyEntry): number =>
  compareText(a.on, b.on) || compareText(a.at ?? '', b.at ?? '') || compareText(a.id, b.id)

/** Puts the list into the order in which entries count. Quick when it nearly is already. */
export function sortEntries<E extends AnyEntry>(entries: E[]): E[] {
  for (let i = 1; i < entries.length; i++) {
    if (compareEntries(entries[i - 1]!, entries[i]!) > 0) return entries.sort(compareEntries)
  }
  return entries
}
