import type { AffectedView } from '../../api/index.ts'
import type { Plan } from '../../planning/index.ts'
import { affectedBy, heldBatches, heldMothers, type Nursery, type SentOut } from '../../record/index.ts'
import type { BatchId, KindId, MotherId, OrderId } from '../../trade/index.ts'
import type { NurseryMemory } from '../nursery-memory.ts'
import { holdRow } from './holds.ts'
import { named } from './named.ts'

type Asked = { readonly what: 'batch' | 'mother'; readonly id: string }
type Letter = AffectedView['letters'][number]
type Drafted = { -readonly [K in keyof Letter]: Letter[K] }

const kindName = (nursery: Nursery, kind: KindId): string =>
  (nursery.kinds.get(kind) ?? nursery.former.kinds.get(kind))?.name ?? kind

/** Where something found in a mother tree or a batch may have got to, and who is to be told. */
export const affectedView = (memory: NurseryMemory, plan: Plan | null, of: Asked): AffectedView | null => {
  const nursery = memory.nursery()
  const exists =
    of.what === 'batch' ? nursery.batches.has(of.id as BatchId) : nursery.mothers.has(of.id as MotherId)
  if (!exists) return null
  const { carriers, sent, nearby } = affectedBy(nursery, of)
  const held = heldBatches(nursery)
  const holds = new Map(
    [
      ...(of.what === 'mother' ? (heldMothers(nursery).get(of.id as MotherId) ?? []) : []),
      ...carriers.flatMap(({ batch }) => held.get(batch) ?? []),
    ].map(hold => [hold.id, hold]),
  )
  const sentOf = new Map<BatchId, number>()
  for (const { batch, number } of sent) sentOf.set(batch, (sentOf.get(batch) ?? 0) + number)
  return {
    of: { ...of, name: named(nursery, of).name },
    carriers: carriers.map(({ batch: id, steps, came, since, alive, finished, benches }) => {
      const { name, detail, mark } = named(nursery, { what: 'batch', id })
      return {
        batch: id,
        name,
        kindName: detail,
        mark: mark ?? 'seed',
        generation: steps,
        came,
        since: since ?? nursery.batches.get(id)!.startedOn,
        alive,
        finished,
        sent: sentOf.get(id) ?? 0,
        benches: [...benches],
        onHold: held.has(id),
      }
    }),
    letters: lettersFor(
      nursery,
      plan,
      of,
      carriers.filter(({ alive }) => alive > 0).map(({ batch }) => batch),
      sent,
    ),
    sharedBenches: nearby.benches.map(({ batch, ...rest }) => ({
      batch,
      name: named(nursery, { what: 'batch', id: batch }).name,
      ...rest,
    })),
    sharedBlades: nearby.blades.map(({ ref, person, on }) => ({
      ...ref,
      name: named(nursery, ref).name,
      person,
      on,
    })),
    holds: [...holds.values()].map(hold => holdRow(memory, hold)),
  }
}

/** Trees that buyers have, that are promised to them, or for which they wait: one letter for each order or buyer. */
function lettersFor(
  nursery: Nursery,
  plan: Plan | null,
  of: Asked,
  alive: readonly BatchId[],
  sent: readonly SentOut[],
): Letter[] {
  const letters = new Map<string, Drafted>()
  const letterTo = (id: OrderId | null, to: string): Drafted => {
    const key = id === null ? `to ${to}` : `order ${id}`
    const before = letters.get(key)
    if (before) return before
    const order = id === null ? undefined : nursery.orders.get(id)?.order
    const letter: Drafted = {
      order: id,
      buyer: order?.buyer ?? to,
      kindNames: order === undefined ? [] : [kindName(nursery, order.kind)],
      wanted: order?.number ?? null,
      due: order?.due ?? null,
      sent: 0,
      sentBy: [],
      lastSent: null,
      promised: 0,
      planned: 0,
      batches: [],
      isWaiting: false,
    }
    letters.set(key, letter)
    return letter
  }
  const name = (letter: Drafted, id: BatchId): void => {
    const batch = nursery.batches.get(id)
    if (batch === undefined) return
    if (!letter.batches.includes(batch.name)) letter.batches = [...letter.batches, batch.name]
    const kind = kindName(nursery, batch.kind)
    if (!letter.kindNames.includes(kind)) letter.kindNames = [...letter.kindNames, kind]
  }

  for (const { batch, entry, order, to, on, number } of sent) {
    const letter = letterTo(order, to)
    letter.sent += number
    letter.sentBy = [...letter.sentBy, entry]
    if (number > 0) letter.lastSent = on
    name(letter, batch)
  }
  const carry = new Set<BatchId>(alive)
  for (const { order, ladders } of plan?.orders ?? [])
    for (const { batch, rungs } of ladders) {
      if (batch === null || !carry.has(batch)) continue
      const letter = letterTo(order, '')
      letter.promised += Math.round(rungs.at(-1)?.number ?? 0)
      name(letter, batch)
    }
  for (const start of plan?.starts ?? []) {
    const takes =
      (of.what === 'mother' && start.mothers.some(({ mother }) => mother === of.id)) ||
      start.rootstocks.some(({ batch }) => batch !== null && carry.has(batch))
    if (takes) for (const { order, number } of start.orders) letterTo(order, '').planned += Math.round(number)
  }
  const kinds = new Set<KindId>(alive.map(id => nursery.batches.get(id)!.kind))
  for (const { order, cancelled, dispatched } of nursery.orders.values()) {
    if (cancelled || dispatched >= order.number) continue
    if (![order.kind, ...order.instead.map(({ kind }) => kind)].some(kind => kinds.has(kind))) continue
    const letter = letterTo(order.id, '')
    letter.isWaiting = letter.promised === 0
  }
  return [...letters.values()].sort(
    (a, b) =>
      (a.buyer < b.buyer ? -1 : a.buyer > b.buyer ? 1 : 0) || ((a.order ?? '') < (b.order ?? '') ? -1 : 1),
  )
}
