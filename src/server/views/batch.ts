import type { BatchView } from '../../api/index.ts'
import type { Plan } from '../../planning/index.ts'
import {
  type Batch,
  batchSums,
  childrenOf,
  entryPhrase,
  heldBatches,
  identityOf,
  identityPhrase,
  type Nursery,
  numbersBehind,
  type Source,
} from '../../record/index.ts'
import { dayNumber } from '../../science/index.ts'
import { BatchId, type EntryId } from '../../trade/index.ts'
import type { NurseryMemory } from '../nursery-memory.ts'
import { rowMaker } from './batch-rows.ts'
import { entriesAbout } from './entries.ts'
import { holdRow } from './holds.ts'
import { licenceRow } from './mother.ts'
import { nextOfBatch } from './next-of-batch.ts'
import { queryRow } from './queries.ts'

const sourceRow = (nursery: Nursery, source: Source): BatchView['from'][number] => {
  switch (source.from) {
    case 'mother': {
      const mother = nursery.mothers.get(source.mother)?.mother
      return {
        what: 'mother',
        id: source.mother,
        name: mother?.name ?? source.mother,
        number: source.number,
        as: source.material,
      }
    }
    case 'lot':
      return {
        what: 'lot',
        id: source.lot,
        name: source.lot,
        number: source.number,
        as: nursery.lots.get(source.lot)?.material ?? '',
      }
    case 'batch':
      return {
        what: 'batch',
        id: source.batch,
        name: nursery.batches.get(source.batch)?.name ?? source.batch,
        number: source.number,
        as: source.as,
      }
    case 'bought':
      return {
        what: 'bought',
        id: source.supplier,
        name: source.supplier,
        number: source.number,
        as: source.material,
      }
  }
}

/** Plants alive after each count, from the first day on. */
const countsOf = (batch: Batch): BatchView['counts'] => {
  const began = dayNumber(batch.startedOn)
  return batch.outcomes
    .flatMap(outcome => outcome.looks)
    .sort((a, b) => a.on.localeCompare(b.on))
    .map(look => ({
      entry: look.entry,
      on: look.on,
      day: dayNumber(look.on) - began,
      alive: look.taken + look.undecided,
      taken: look.taken,
      dead: look.dead,
      undecided: look.undecided,
    }))
}

/** By number, the entries that have a part in it. */
export const behindOf = (memory: NurseryMemory, batch: Batch): BatchView['behind'] => {
  const behind: Record<string, EntryId[]> = {}
  const entries = memory.entries(batch.entries)
  for (const [entry, numbers] of numbersBehind(memory.nursery(), batch, entries))
    for (const number of numbers) {
      const list = behind[number]
      if (list) list.push(entry)
      else behind[number] = [entry]
    }
  return behind
}

/** What was measured, graded and potted on, newest first. */
const sizesOf = (memory: NurseryMemory, { calipers, grades, pottings }: Batch): BatchView['sizes'] =>
  memory
    .entries([...calipers, ...grades, ...pottings].map(({ entry }) => entry))
    .map(({ id, on, body }) => ({ entry: id, on, says: entryPhrase(body, memory.nursery()) }))
    .sort((a, b) => b.on.localeCompare(a.on))

export const batchView = (
  memory: NurseryMemory,
  plan: Plan | null,
  id: string,
  today: string,
): BatchView | null => {
  const nursery = memory.nursery()
  const batch = nursery.batches.get(BatchId.parse(id))
  const protocol = batch && nursery.protocols.get(batch.protocol)
  if (batch === undefined || protocol === undefined) return null
  const outcomes = new Map(batch.outcomes.map(outcome => [outcome.step, outcome]))
  return {
    row: rowMaker(nursery)(batch),
    portions: [...batch.portions],
    steps: protocol.steps.map(step => {
      const outcome = outcomes.get(step.id)
      return {
        step: step.id,
        name: step.name,
        sign: step.sign,
        place: step.place,
        entered: outcome?.entered ?? 0,
        left: outcome?.left ?? 0,
        lost: outcome?.lost ?? 0,
        firstEntered: outcome?.firstEntered ?? null,
      }
    }),
    counts: countsOf(batch),
    losses: batch.losses.map(({ on, step, number, cause }) => ({ on, step, number, cause })),
    sums: batchSums(batch),
    finished: batch.finishedPortions.map(({ bench, grade, number }) => ({ bench, grade, number })),
    sent: batch.dispatched.map(({ order, to, number }) => ({ order, to, number })),
    sizes: sizesOf(memory, batch),
    candidates: batch.candidates.map(cultivar => ({
      cultivar,
      name: nursery.cultivars.get(cultivar)?.name ?? cultivar,
    })),
    from: batch.sources.map(source => sourceRow(nursery, source)),
    into: childrenOf(nursery, batch.id).map(({ batch: child, number }) => ({
      batch: child,
      name: nursery.batches.get(child)?.name ?? child,
      number,
    })),
    identity: identityPhrase(identityOf(nursery, batch.id), nursery),
    entries: entriesAbout(memory, batch.id, batch.entries),
    behind: behindOf(memory, batch),
    holds: (heldBatches(nursery).get(batch.id) ?? []).map(hold => holdRow(memory, hold)),
    licences:
      nursery.kinds.get(batch.kind)?.cultivars.flatMap(id => licenceRow(nursery, id, today) ?? []) ?? [],
    queries: nursery.queries
      .filter(query => query.about.batch === batch.id)
      .map(query => queryRow(memory, query)),
    next: nextOfBatch(nursery, plan, batch),
    orders:
      plan?.orders
        .filter(order => order.ladders.some(ladder => ladder.batch === batch.id))
        .map(({ order, chance }) => ({ order, chance })) ?? [],
    protocol,
  }
}
