import type { EntryId } from '../trade/index.ts'
import type { AnyEntry } from './entry.ts'

/** A thing with an id, as entries name it: `batch B7`, `kind fig`. */
type Named = string

/** What stands under each word of an entry that holds an id, or several. */
const SPACES: Readonly<Record<string, string>> = {
  batch: 'batch',
  into: 'batch',
  mother: 'mother',
  lot: 'lot',
  order: 'order',
  bench: 'bench',
  kindOfTree: 'kind',
  rootstock: 'kind',
  rootstocks: 'kind',
  rootstockKind: 'kind',
  protocol: 'protocol',
  basedOn: 'protocol',
  cultivar: 'cultivar',
  cultivars: 'cultivar',
  candidates: 'cultivar',
  interstem: 'cultivar',
  person: 'person',
  workedBy: 'person',
  species: 'species',
}
/** Entries after which a thing is there that was not; of a batch also those that say how many of it there are. */
const BRINGERS: Readonly<Record<string, string>> = {
  'bench-set/1': 'bench',
  'person-set/1': 'person',
  'cultivar-set/1': 'cultivar',
  'kind-set/1': 'kindOfTree',
  'protocol-set/1': 'protocol',
  'species-set/1': 'species',
  'mother-set/1': 'mother',
  'material-collected/1': 'lot',
  'order-placed/1': 'order',
  ...Object.fromEntries(
    [
      ...[
        'batch-started/1',
        'counted/1',
        'lost/1',
        'advanced/1',
        'finished/1',
        'moved/1',
        'split/1',
        'joined/1',
      ],
      ...['graded/1', 'potted-on/1', 'reworked/1', 'dispatched/1', 'returned/1'],
    ].map(kind => [kind, 'batch']),
  ),
}
const isSaidAnew = (kind: string): boolean => kind.endsWith('-set/1')

const idOf = (value: unknown): string | null => {
  if (typeof value === 'string') return value
  const id = typeof value === 'object' && value !== null && 'id' in value ? value.id : null
  return typeof id === 'string' ? id : null
}

const broughtBy = (body: AnyEntry['body']): Named | null => {
  const word = BRINGERS[body.kind]
  if (word === undefined) return null
  const id = idOf((body as Readonly<Record<string, unknown>>)[word])
  return id === null ? null : `${SPACES[word]} ${id}`
}

/** All that an entry names, however deep, of a kind that is not known yet too. */
function namesIn({ body, by }: AnyEntry): ReadonlySet<Named> {
  const named = new Set<Named>(by === null ? [] : [`person ${by}`])
  const walk = (value: unknown): void => {
    if (Array.isArray(value)) for (const each of value) walk(each)
    if (Array.isArray(value) || typeof value !== 'object' || value === null) return
    for (const [word, inside] of Object.entries(value)) {
      const space = SPACES[word]
      if (space !== undefined)
        for (const one of Array.isArray(inside) ? inside : [inside]) {
          const id = idOf(one)
          if (id !== null) named.add(`${space} ${id}`)
        }
      // Of an order, and of what it would take instead; a body's own kind is what sort of entry it is.
      if (word === 'kind' && value !== body) named.add(`kind ${inside}`)
      if (word === 'about') for (const any of new Set(Object.values(SPACES))) named.add(`${any} ${inside}`)
      if (word === 'chances') for (const order of Object.keys(inside as object)) named.add(`order ${order}`)
      walk(inside)
    }
  }
  walk(body)
  if (body.kind === 'moved/1') named.add(`bench ${'to' in body ? body.to : ''}`)
  return named
}

/**
 * Which of some entries cannot be struck without taking the ground from under others, and which other rests on each:
 * a later one that names what the entry brought, or one of these entries that has to stay itself. What others had said
 * before, of a thing that is said anew as a whole, stands again once it is struck, so that nothing rests on the last word.
 *
 * @param entries the ones that are to be struck
 * @param later what was said after them and still counts
 * @param earlier what was said before them and still counts; asked for only where it matters
 */
export function restedOn<Of extends AnyEntry>(
  entries: readonly Of[],
  later: readonly AnyEntry[],
  earlier: () => readonly AnyEntry[],
): ReadonlyMap<EntryId, AnyEntry> {
  const bringers = new Map<Named, Of[]>()
  for (const entry of entries) {
    const brought = broughtBy(entry.body)
    if (brought === null) continue
    bringers.set(brought, [...(bringers.get(brought) ?? []), entry])
  }
  let saidBefore: ReadonlySet<Named> | null = null
  const standsAnyway = (brought: Named, { body }: Of): boolean => {
    if (!isSaidAnew(body.kind)) return false
    saidBefore ??= new Set(
      earlier().flatMap(before => {
        const said = broughtBy(before.body)
        return said === null ? [] : [said]
      }),
    )
    return saidBefore.has(brought)
  }
  const rested = new Map<EntryId, AnyEntry>()
  const standing = [...later]
  for (let next = standing.pop(); next !== undefined; next = standing.pop())
    for (const named of namesIn(next))
      for (const entry of bringers.get(named) ?? []) {
        if (entry.id === next.id || rested.has(entry.id) || standsAnyway(named, entry)) continue
        rested.set(entry.id, next)
        standing.push(entry)
      }
  return rested
}
