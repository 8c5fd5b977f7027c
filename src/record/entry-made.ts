import type { LoggedEntry } from './entry.ts'

/**
 * The instant at which an entry was made, ISO 8601 in UTC: its id holds it (UUIDv7, RFC 9562, section 5.7: the first 48 bits are
 * milliseconds since 1970). An id of another version says nothing, and no entry is made after it has arrived.
 */
export function madeAt({ id, receivedAt }: Pick<LoggedEntry, 'id' | 'receivedAt'>): string {
  const made = instantIn(id)
  return made > 0 && made < Date.parse(receivedAt) ? new Date(made).toISOString() : receivedAt
}

/** Milliseconds since 1970 that an id holds; 0 where it holds none. */
export const instantIn = (id: LoggedEntry['id']): number =>
  id[14] === '7' ? Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16) : 0
