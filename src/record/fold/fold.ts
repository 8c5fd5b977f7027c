import type { BatchId, EntryId, MaterialLotId, MotherId, OrderId } from '../../trade/index.ts'
import { type AnyEntry, type Entry, isKnown, type LaterEntry } from '../entry.ts'
import { sameIdWinner } from '../entry-line.ts'
import { sortEntries } from '../entry-order.ts'
import { brokenHolds } from '../lineage/broken-holds.ts'
import { type Query, raise, type SettledQuery } from '../query.ts'
import type { Batch, Hold, MaterialLot, MotherState, Nursery, OrderState, Struck } from '../state.ts'
import { newFamilies } from './families.ts'
import { foldFamily } from './family.ts'
import { foldHolds } from './holds.ts'
import { foldLot } from './lot.ts'
import { foldMother } from './mother.ts'
import { foldOrder } from './order.ts'
import { askRegisters, foldRegister, newRegisters, showRegisters } from './registers.ts'
import { foldStrikes, type Strike } from './strikes.ts'
import { type SubjectType, visitSubjects } from './subjects.ts'

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

const subjectTypes = ['register', 'mother', 'lot', 'batch', 'order', 'hold', 'query'] as const

/**
 * Folds again only what new entries speak of: a batch (with those it was split from or joined to), a mother tree,
 * a lot, an order, a register. Nothing depends on the order of arrival, and no history makes it throw.
 */
export function createFold(): Fold {
  const entryById = new Map<EntryId, AnyEntry>()
  const lists = Object.fromEntries(subjectTypes.map(type => [type, new Map()])) as Record<
    SubjectType,
    Map<string, Entry[]>
  >
  const touched = Object.fromEntries(subjectTypes.map(type => [type, new Set()])) as Record<
    SubjectType,
    Set<string>
  >
  const strikes = new Map<EntryId, Strike>()
  const later = new Map<EntryId, LaterEntry>()
  let struck = new Map<EntryId, Struck>()
  let strikesTouched = false

  const families = newFamilies()
  const registers = newRegisters()
  /** Which families asked after a register key. */
  const askers = new Map<string, Set<BatchId>>()
  const queries = new Map<string, readonly Query[]>()
  const results = {
    batches: new Map<BatchId, Batch>(),
    mothers: new Map<MotherId, MotherState>(),
    lots: new Map<MaterialLotId, MaterialLot>(),
    orders: new Map<OrderId, OrderState>(),
  }
  let holds = new Map<EntryId, Hold>()
  let shown: Nursery | null = null

  const setQueries = (key: string, raised: readonly Query[]) => {
    if (raised.length > 0) queries.set(key, raised)
    else queries.delete(key)
  }

  function take(entry: AnyEntry): void {
    const known = entryById.get(entry.id)
    if (known) {
      const winner = sameIdWinner(known, entry)
      if (winner === known) return
      drop(known)
    }
    entryById.set(entry.id, entry)
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
    visitSubjects(body, (type, id) => {
      const list = lists[type].get(id)
      if (list) list.push(entry)
      else lists[type].set(id, [entry])
      touched[type].add(id)
    })
    if (body.kind === 'split/1' || body.kind === 'joined/1') {
      const gone = families.link(body.batch, body.into)
      if (gone !== null) queries.delete(`batch ${gone}`)
    }
  }

  /** Takes one of two entries of the same id out again. */
  function drop(entry: AnyEntry): void {
    later.delete(entry.id)
    if (!isKnown(entry)) return
    strikes.delete(entry.id)
    strikesTouched = true
    visitSubjects(entry.body, (type, id) => {
      lists[type].set(
        id,
        lists[type].get(id)!.filter(other => other !== entry),
      )
      touched[type].add(id)
    })
  }

  function touch(id: EntryId): void {
    const entry = entryById.get(id)
    if (entry && isKnown(entry)) visitSubjects(entry.body, (type, subject) => touched[type].add(subject))
  }

  /** The entries of a subject that count. */
  function counting(type: SubjectType, id: string): readonly Entry[] {
    const list = sortEntries(lists[type].get(id) ?? [])
    return struck.size === 0 ? list : list.filter(entry => !struck.has(entry.id))
  }

  function refoldFamily(head: BatchId): void {
    const members = families.members(head)
    const entries =
      members.length === 1
        ? counting('batch', head)
        : sortEntries([...new Set(members.flatMap(member => counting('batch', member)))])
    const asked = askRegisters(registers, key => {
      const set = askers.get(key)
      if (set) set.add(head)
      else askers.set(key, new Set([head]))
    })
    const { batches, queries: raised } = foldFamily(new Set(members), entries, asked)
    if (members.length > 1) for (const member of members) results.batches.delete(member)
    else if (batches.length === 0) results.batches.delete(head)
    for (const batch of batches) {
      results.batches.set(batch.id, { ...batch, entries: idsOf('batch', batch.id) })
    }
    setQueries(`batch ${head}`, raised)
  }

  const idsOf = (type: SubjectType, id: string): EntryId[] =>
    (lists[type].get(id) ?? []).map(entry => entry.id)

  function refold(): void {
    if (strikesTouched) {
      const before = struck
      const folded = foldStrikes([...strikes.values()], id => entryById.get(id))
      struck = folded.struck
      setQueries('strikes', folded.queries)
      for (const id of before.keys()) if (!struck.has(id)) touch(id)
      for (const id of struck.keys()) if (!before.has(id)) touch(id)
      strikesTouched = false
    }
    const heads = new Set<BatchId>()
    for (const key of touched.register) {
      foldRegister(registers, key, counting('register', key))
      for (const head of askers.get(key) ?? []) heads.add(families.headOf(head))
    }
    for (const id of touched.batch) heads.add(families.headOf(id as BatchId))
    for (const head of heads) refoldFamily(head)
    for (const id of touched.mother as Set<MotherId>) {
      const { mother, queries: raised } = foldMother(id, counting('mother', id))
      if (mother) results.mothers.set(id, { ...mother, entries: idsOf('mother', id) })
      else results.mothers.delete(id)
      setQueries(`mother ${id}`, raised)
    }
    for (const id of touched.lot as Set<MaterialLotId>) {
      const { lot, queries: raised } = foldLot(id, counting('lot', id))
      if (lot) results.lots.set(id, lot)
      else results.lots.delete(id)
      setQueries(`lot ${id}`, raised)
    }
    for (const id of touched.order as Set<OrderId>) {
      const { order, queries: raised } = foldOrder(id, counting('order', id))
      if (order) results.orders.set(id, order)
      else results.orders.delete(id)
      setQueries(`order ${id}`, raised)
    }
    if (touched.hold.size > 0) {
      const folded = foldHolds(counting('hold', ''))
      holds = folded.holds
      setQueries('holds', folded.queries)
    }
    for (const type of subjectTypes) touched[type].clear()
  }

  function nursery(): Nursery {
    if (shown) return shown
    refold()
    const waiting = [...later.values()].sort((a, b) => (a.id < b.id ? -1 : 1))
    const { batches, mothers, lots } = results
    const things = { batches: new Map(batches), mothers: new Map(mothers), lots: new Map(lots), holds }
    const all = [...queries.values()].flat()
    all.push(
      ...brokenHolds(
        things,
        id => (struck.has(id) ? undefined : entryById.get(id)),
        id => counting('lot', id),
      ),
    )
    for (const { id, body } of waiting) all.push(raise(id, 'not-understood', {}, { says: body.kind }))
    shown = {
      ...showRegisters(registers),
      ...things,
      orders: new Map(results.orders),
      struck: new Map(struck),
      waiting,
      ...settle(all),
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
