import type { LoggedEntry } from './entry.ts'

/**
 * The instant at which an entry was made, ISO 8601 in UTC: its id holds it (UUIDv7, RFC 9562, section 5.7: the first 48 bits are
 * milliseconds since 1970). An id of another version says nothing, and no entry is made after it has arrived.
 */
export function madeAt({ id, receivedAt }: Pick<LoggedEntry, 'id' | 'receivedAt'>): string {
  if (id[14] !== '7') return receivedAt
  const made = Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16)
  return made > 0 && made < Date.parse(receivedAt) ? new Date(made).toISOString() : receivedAt
}
