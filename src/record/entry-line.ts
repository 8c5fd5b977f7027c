import { type AnyEntry, Entry, LaterEntry } from './entry.ts'

/** JSON with the keys of every object in one order and nothing between: the same fact is the same text. */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`
  if (value === null || typeof value !== 'object') return JSON.stringify(value) ?? 'null'
  const fields = Object.entries(value)
    .filter(([, held]) => held !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
  return `{${fields.map(([key, held]) => `${JSON.stringify(key)}:${canonicalJson(held)}`).join(',')}}`
}

/** An entry as one line of text: the form that is hashed, stored and handed out. Numbering and hash stay out. */
export const entryLine = ({ id, on, at, by, device, body }: AnyEntry): string =>
  canonicalJson({ id, on, at, by, device, body })

export type ParsedEntry =
  | { readonly kind: 'entry'; readonly entry: AnyEntry }
  | {
      readonly kind: 'malformed'
      readonly problems: readonly { readonly where: string; readonly what: string }[]
    }

/** Reads an entry of this version or of a later one from what came in. */
export function parseEntry(data: unknown): ParsedEntry {
  const parsed = Entry.safeParse(data)
  if (parsed.success) return { kind: 'entry', entry: parsed.data }
  const later = LaterEntry.safeParse(data)
  if (later.success) return { kind: 'entry', entry: later.data }
  return {
    kind: 'malformed',
    problems: parsed.error.issues.map(({ path, message }) => ({ where: path.join('.'), what: message })),
  }
}

/** Reads back what `entryLine` wrote. */
export function parseEntryLine(line: string): ParsedEntry {
  try {
    return parseEntry(JSON.parse(line))
  } catch {
    return { kind: 'malformed', problems: [{ where: '', what: 'the line is not JSON' }] }
  }
}

/** Of two entries with one id, the one that counts: the same on every device, whichever came first. */
export const sameIdWinner = (a: AnyEntry, b: AnyEntry): AnyEntry =>
  a === b || entryLine(a) <= entryLine(b) ? a : b
