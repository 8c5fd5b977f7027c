import type { BatchId, EntryId, MaterialLotId, MotherId, OrderId } from '../../trade/index.ts'
import { type AnyEntry, type Entry, isKnown, type LaterEntry } from '../entry.ts'
import { sameIdWinner } from '../entry-line.ts'
import { sortEntries } from '../entry-order.ts'
import { brokenHolds } from '../lineage/broken-holds.ts'
import { type Query, raise, type SettledQuery } from '../query.ts'
import type { Batch, Hold, MaterialLot, MotherState, Nursery, OrderState, Struck } from '../state.ts'
import { askRegisters } from './ask-registers.ts'
import { newEntryIndex } from './entry-index.ts'
import { newFamilies } from './families.ts'
import { foldFamily } from './family.ts'
import { foldHolds } from './holds.ts'
import { foldLot } from './lot.ts'
import { foldMother } from './mother.ts'
import { foldOrder } from './order.ts'
import { newPeopleNamed } from './people-named.ts'
import { foldRegister, newRegisters, showRegisters } from './registers.ts'
import { foldStrikes, type Strike } from './strikes.ts'
import { newSubjectLists } from './subject-lists.ts'
import type { SubjectType } from './subjects.ts'

/** A nursery that grows with its entries. */
export interface Fold {
  /** Takes entries in, in any order and as often as they come. Those it has already change nothing. */
  readonly add: (entries: Iterable<AnyEntry>) => void
  /** The state that all entries so far give. What it hands out never changes afterwards. */
  readonly nursery: () => Nursery
}

/** Folds a history at once. */
export function foldEntries(entries: Iterable<AnyEntry>): Nursery {
  const fold = createFold()
  fold.add(entries)
  return fold.nursery()
}

/**
 * Folds again only what new entries speak of: a batch (with those it was split from or joined to), a mother tree,
 * a lot, an order, a register. Nothing depends on the order of arrival, and no history makes it throw.
 */
export function createFold(): Fold {
  const index = newEntryIndex()
  const strikes = new Map<EntryId, Strike>()
  const later = new Map<EntryId, LaterEntry>()
  let struck = new Map<EntryId, Struck>()
  let strikesTouched = false

  const lists = newSubjectLists()
  const families = newFamilies()
  const registers = newRegisters()
  const people = newPeopleNamed()
  const asking = askRegisters(registers)
  const queries = new Map<string, readonly Query[]>()
  const batches = new HandedOut<BatchId, Batch>()
  const mothers = new HandedOut<MotherId, MotherState>()
  const lots = new HandedOut<MaterialLotId, MaterialLot>()
  const orders = new HandedOut<OrderId, OrderState>()
  const notes = new HandedOut<string, readonly EntryId[]>()
  let holds: ReadonlyMap<EntryId, Hold> = new Map()
  let shown: Nursery | null = null

  const setQueries = (key: string, raised: readonly Query[]) => {
    if (raised.length > 0) queries.set(key, raised)
    else queries.delete(key)
  }

  function take(entry: AnyEntry): void {
    const known = index.add(entry)
    if (known) {
      if (sameIdWinner(known, entry) === known) return
      drop(known)
      index.replace(entry)
    }
    shown = null
    if (!isKnown(entry)) {
      later.set(entry.id, entry)
      return
    }
    const { body } = entry
    if (body.kind === 'struck/1') {
      strikes.set(entry.id, { ...entry, body })
      strikesTouched = true
      return
    }
    if (strikes.size > 0) strikesTouched = true
    lists.add(entry)
    people.hear(entry)
    if (body.kind === 'split/1' || body.kind === 'joined/1') {
      const gone = families.link(body.batch, body.into)
      if (gone !== null) queries.delete(`batch ${gone}`)
    }
  }

  /** Takes one of two entries of the same id out again. */
  function drop(entry: AnyEntry): void {
    later.delete(entry.id)
    strikes.delete(entry.id)
    strikesTouched = true
    if (!isKnown(entry)) return
    lists.remove(entry)
    people.forget(entry)
  }

  function touch(id: EntryId): void {
    const entry = index.get(id)
    if (entry && isKnown(entry)) lists.touch(entry)
  }

  /** The entries of a subject that count. */
  function counting(type: SubjectType, id: string): readonly Entry[] {
    const list = lists.entriesOf(type, id)
    return struck.size === 0 ? list : list.filter(entry => !struck.has(entry.id))
  }

  const idsOf = (type: SubjectType, id: string): EntryId[] => lists.entriesOf(type, id).map(entry => entry.id)

  function refoldStrikes(): void {
    const before = struck
    const folded = foldStrikes([...strikes.values()], id => index.get(id))
    struck = folded.struck
    setQueries('strikes', folded.queries)
    for (const id of before.keys()) if (!struck.has(id)) touch(id)
    for (const id of struck.keys()) if (!before.has(id)) touch(id)
    strikesTouched = false
  }

  function refoldFamily(head: BatchId): void {
    const members = families.members(head)
    const entries =
      members.length === 1
        ? counting('batch', head)
        : sortEntries([...new Set(members.flatMap(member => counting('batch', member)))])
    const told = { members, entries, idsOf: (batch: BatchId) => idsOf('batch', batch) }
    const folded = asking.fold(head, registers => foldFamily(told, registers))
    for (const id of members) batches.delete(id)
    for (const batch of folded.batches) batches.set(batch.id, batch)
    setQueries(`batch ${head}`, folded.queries)
  }

  function refold(): void {
    if (strikesTouched) refoldStrikes()
    const heads = new Set<BatchId>()
    const keys = lists.takeTouched('register')
    for (const key of keys) foldRegister(registers, key, counting('register', key))
    for (const head of asking.askers(keys)) heads.add(families.headOf(head))
    for (const id of lists.takeTouched('batch')) heads.add(families.headOf(id as BatchId))
    for (const head of heads) refoldFamily(head)
    for (const id of lists.takeTouched('mother') as readonly MotherId[]) {
      const { mother, queries: raised } = foldMother(id, counting('mother', id))
      mothers.put(id, mother && { ...mother, entries: idsOf('mother', id) })
      setQueries(`mother ${id}`, raised)
    }
    for (const id of lists.takeTouched('lot') as readonly MaterialLotId[]) {
      const { lot, queries: raised } = foldLot(id, counting('lot', id))
      lots.put(id, lot && { ...lot, entries: idsOf('lot', id) })
      setQueries(`lot ${id}`, raised)
    }
    for (const id of lists.takeTouched('order') as readonly OrderId[]) {
      const { order, queries: raised } = foldOrder(id, counting('order', id))
      orders.put(id, order && { ...order, entries: idsOf('order', id) })
      setQueries(`order ${id}`, raised)
    }
    if (lists.takeTouched('hold').length > 0) {
      const folded = foldHolds(counting('hold', ''))
      holds = folded.holds
      setQueries('holds', folded.queries)
    }
    for (const about of lists.takeTouched('note')) notes.put(about, idsOf('note', about))
    lists.takeTouched('query')
  }

  function nursery(): Nursery {
    if (shown) return shown
    refold()
    const waiting = [...later.values()].sort((a, b) => (a.id < b.id ? -1 : 1))
    const things = { batches: batches.show(), mothers: mothers.show(), lots: lots.show(), holds }
    const broken = brokenHolds(
      things,
      id => (struck.has(id) ? undefined : index.get(id)),
      id => counting('lot', id),
    )
    const strangers = people.askAfter(
      id => registers.people.has(id) || registers.formerPeople.has(id),
      id => struck.has(id),
    )
    const unread = waiting.map(({ id, body }) => raise(id, 'not-understood', {}, { says: body.kind }))
    shown = {
      ...showRegisters(registers),
      ...things,
      orders: orders.show(),
      notes: notes.show(),
      struck,
      waiting,
      ...settle([...[...queries.values()].flat(), ...broken, ...strangers, ...unread]),
    }
    return shown
  }

  /** Parts the queries that someone has answered from those that still stand. */
  function settle(all: readonly Query[]): Pick<Nursery, 'queries' | 'settledQueries'> {
    const open: Query[] = []
    const settled: SettledQuery[] = []
    const byId = new Map<string, Query>()
    for (const query of all) if (!byId.has(query.id)) byId.set(query.id, query)
    for (const query of [...byId.values()].sort((a, b) => (a.id < b.id ? -1 : 1))) {
      const answer = counting('query', query.id).at(-1)
      if (answer?.body.kind === 'query-settled/1') {
        settled.push({ ...query, settled: { entry: answer.id, on: answer.on, how: answer.body.how } })
      } else open.push(query)
    }
    return { queries: open, settledQueries: settled }
  }

  return {
    add(entries) {
      for (const entry of entries) take(entry)
    },
    nursery,
  }
}

/** A map that is handed out as it stands, and copied only when it changes after that. */
class HandedOut<K, V> {
  #map = new Map<K, V>()
  #shown = false

  show(): ReadonlyMap<K, V> {
    this.#shown = true
    return this.#map
  }

  set(key: K, value: V): void {
    this.#own().set(key, value)
  }

  put(key: K, value: V | null): void {
    if (value === null) this.delete(key)
    else this.set(key, value)
  }

  delete(key: K): void {
    if (this.#map.has(key)) this.#own().delete(key)
  }

  #own(): Map<K, V> {
    if (this.#shown) {
      this.#map = new Map(this.#map)
      this.#shown = false
    }
    return this.#map
  }
}
