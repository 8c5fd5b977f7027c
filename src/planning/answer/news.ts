import { type BodyOf, type Entry, fruitsOf, type Held } from '../../record/index.ts'
import {
  type BatchId,
  type BenchId,
  type CultivarId,
  type KindId,
  type OrderId,
  type Phrase,
  type ProtocolId,
  phrase,
  type Skill,
} from '../../trade/index.ts'
import { meanRate } from './mean-rate.ts'
import type { Planned } from './planned.ts'

/** Something entered since the plan before that may have changed it, and what it bears on. */
export interface News {
  /** In words, to follow "since": "batch 118 counted 61 where 84 were expected". */
  readonly text: Phrase
  readonly order: OrderId | null
  readonly batch: BatchId | null
  readonly kinds: readonly KindId[]
  /** By what is learnt from it, it bears on all that is made by the same protocol. */
  readonly protocol: ProtocolId | null
  readonly cultivar: CultivarId | null
  readonly bench: BenchId | null
  readonly skills: readonly Skill[]
  /** How much it weighs beside others that are as near: plants, roughly. */
  readonly weight: number
}

const bare = {
  order: null,
  batch: null,
  kinds: [],
  protocol: null,
  cultivar: null,
  bench: null,
  skills: [],
} as const

/** More than any number of plants: what is gone or stopped altogether. */
const ALL = 1e6
/** What was to be expected changes a plan the least. */
const AS_PLANNED = 1

const WAS_DONE = {
  'advanced/1': '{name} moved on',
  'measured/1': '{name} was measured',
  'split/1': '{name} was split',
  'joined/1': '{name} was put with another',
  'reworked/1': '{name} was worked over',
} as const

/** What came in, as reasons. Of several counts of one step of a batch the last speaks. */
export function newsOf(planned: Planned): News[] {
  const reasons = new Map<string, News>()
  for (const { body } of planned.news) {
    const reason = reasonOf(planned, body)
    if (reason) reasons.set(`${body.kind} ${reason.batch ?? reason.order ?? ''} ${keyOf(body)}`, reason)
  }
  return [...reasons.values()]
}

const keyOf = (body: Entry['body']): string =>
  body.kind === 'counted/1' ? body.step : 'batch' in body || 'order' in body ? '' : JSON.stringify(body)

function reasonOf(planned: Planned, body: Entry['body']): News | null {
  const { nursery } = planned
  switch (body.kind) {
    case 'counted/1':
      return counted(planned, body)
    case 'lost/1':
      return ofBatch(
        planned,
        body.batch,
        name => phrase('{name} lost {number} ({cause})', { name, number: body.number, cause: body.cause }),
        body.number,
      )
    case 'batch-started/1': {
      const weight = wasPlanned(planned, body) ? AS_PLANNED : body.number
      return ofBatch(
        planned,
        body.batch,
        name => phrase('{name} was begun with {number}', { name, number: body.number }),
        weight,
      )
    }
    case 'finished/1':
      return ofBatch(
        planned,
        body.batch,
        name => phrase('{number} of {name} are finished', { name, number: body.number }),
        AS_PLANNED,
      )
    case 'advanced/1':
    case 'measured/1':
    case 'split/1':
    case 'joined/1':
    case 'reworked/1':
      return ofBatch(planned, body.batch, name => phrase(WAS_DONE[body.kind], { name }), AS_PLANNED)
    case 'dispatched/1':
    case 'returned/1': {
      const words =
        body.kind === 'dispatched/1' ? '{number} of {name} went out' : '{number} of {name} came back'
      const reason = ofBatch(
        planned,
        body.batch,
        name => phrase(words, { name, number: body.number }),
        body.number,
      )
      return reason && { ...reason, order: body.order }
    }
    case 'order-placed/1':
    case 'order-changed/1':
    case 'order-cancelled/1':
      return ofOrder(planned, body)
    case 'mother-retired/1':
      return ofMother(
        planned,
        body.mother,
        name => phrase('{name} is lost ({why})', { name, why: body.why }),
        ALL,
      )
    case 'mother-set/1':
      return ofMother(planned, body.mother.id, name => phrase('{name} was entered anew', { name }), 10)
    case 'mother-tested/1':
      return body.result === 'positive'
        ? ofMother(
            planned,
            body.mother,
            name => phrase('{name} was tested positive ({test})', { name, test: body.test }),
            ALL,
          )
        : null
    case 'material-collected/1':
      return ofMother(
        planned,
        body.mother,
        name =>
          phrase('{number} {material} of {name} are in store', {
            name,
            number: body.number,
            material: phrase(body.material),
          }),
        body.number,
      )
    case 'material-discarded/1': {
      const lot = nursery.lots.get(body.lot)
      return lot
        ? ofMother(
            planned,
            lot.mother,
            name =>
              phrase('{number} {material} of {name} were thrown out', {
                name,
                number: body.number,
                material: phrase(lot.material),
              }),
            body.number,
          )
        : null
    }
    case 'hold-placed/1':
      return ofHold(planned, body.on, name => phrase('{name} is on hold ({why})', { name, why: body.why }))
    case 'hold-released/1': {
      const hold = nursery.holds.get(body.hold)
      return hold ? ofHold(planned, hold.on, name => phrase('{name} is no longer on hold', { name })) : null
    }
    case 'bench-set/1':
      return {
        ...bare,
        text: phrase('bench {bench} was changed', { bench: body.bench.name }),
        bench: body.bench.id,
        weight: 100,
      }
    case 'bench-removed/1': {
      const name = nursery.former.benches.get(body.bench)?.name ?? body.bench
      return {
        ...bare,
        text: phrase('bench {bench} is gone', { bench: name }),
        bench: body.bench,
        weight: ALL,
      }
    }
    case 'person-set/1': {
      const { name, skills } = body.person
      return {
        ...bare,
        text: phrase('the hours, skills or days away of {person} were changed', { person: name }),
        skills,
        weight: 100,
      }
    }
    case 'person-left/1': {
      const left = nursery.former.people.get(body.person)
      return left
        ? { ...bare, text: phrase('{person} left', { person: left.name }), skills: left.skills, weight: ALL }
        : null
    }
    case 'rate-set/1': {
      const kinds = body.kindOfTree ? [body.kindOfTree] : []
      const protocol = body.kindOfTree ? null : body.protocol
      return {
        ...bare,
        text: phrase('the rate was set anew ({why})', { why: body.why }),
        kinds,
        protocol,
        weight: 1000,
      }
    }
    case 'start-set/1': {
      const { kindOfTree, week, number } = body
      const text = phrase('a start of {number} {kind} was set in week {week}', {
        number,
        kind: nursery.kinds.get(kindOfTree)?.name ?? kindOfTree,
        week: Number(week.slice(6)),
      })
      return { ...bare, text, kinds: [kindOfTree], weight: ALL }
    }
    case 'fact-set/1': {
      const kinds = [...nursery.kinds.values()].filter(({ species }) => species === body.species)
      const fruit = fruitsOf(nursery).byId(body.species)?.commonName ?? body.species
      const text = phrase('a figure of {fruit} was set anew ({why})', { fruit: phrase(fruit), why: body.why })
      return { ...bare, text, kinds: kinds.map(({ id }) => id), weight: 1000 }
    }
    case 'protocol-set/1':
      return {
        ...bare,
        text: phrase('the protocol “{protocol}” was changed', { protocol: body.protocol.name }),
        protocol: body.protocol.id,
        weight: 1000,
      }
    case 'kind-set/1':
      return {
        ...bare,
        text: phrase('{name} was entered anew', { name: body.kindOfTree.name }),
        kinds: [body.kindOfTree.id],
        weight: 100,
      }
    case 'cultivar-set/1': {
      const { id, name } = body.cultivar
      return { ...bare, text: phrase('{name} was entered anew', { name }), cultivar: id, weight: 100 }
    }
    case 'struck/1': {
      const batch = [...nursery.batches.values()].find(({ entries }) => entries.includes(body.entry))
      return batch
        ? ofBatch(
            planned,
            batch.id,
            name => phrase('an entry about {name} was struck ({why})', { name, why: body.why }),
            10,
          )
        : null
    }
    default:
      return null
  }
}

const wasPlanned = ({ nursery, before }: Planned, body: BodyOf<'batch-started/1'>): boolean =>
  nursery.acceptedPlan
    ? nursery.acceptedPlan.starts.some(
        start => start.kindOfTree === body.kindOfTree && start.protocol === body.protocol,
      )
    : (before?.starts.some(start => start.kind === body.kindOfTree && start.protocol === body.protocol) ??
      false)

/** A count, against what the step's rate let expect of those that it looked at and those already dead. */
function counted(planned: Planned, body: BodyOf<'counted/1'>): News | null {
  const batch = planned.nursery.batches.get(body.batch)
  const outcome = batch?.outcomes.find(({ step }) => step === body.step)
  if (!batch || !outcome) return null
  const { taken, dead, undecided } = body
  const mean = meanRate(planned.season, batch, body.step)
  const lostBefore = Math.max(0, outcome.lost - dead)
  const expected = mean === null ? null : Math.round((taken + dead + undecided + lostBefore) * mean)
  const off = expected === null ? dead : Math.abs(taken + undecided * mean! - expected)
  const reason = ofBatch(
    planned,
    batch.id,
    name =>
      phrase(wordsOfCount(undecided > 0, expected !== null && expected !== taken), {
        name,
        taken,
        undecided,
        expected: expected ?? '',
      }),
    Math.max(AS_PLANNED, off),
  )
  return reason && { ...reason, protocol: batch.protocol }
}

const wordsOfCount = (isOpen: boolean, isOff: boolean): string => {
  if (isOpen && isOff)
    return '{name} counted {taken} and {undecided} not yet to tell, where {expected} were expected'
  if (isOpen) return '{name} counted {taken} and {undecided} not yet to tell'
  return isOff ? '{name} counted {taken} where {expected} were expected' : '{name} counted {taken}'
}

function ofBatch(
  { nursery }: Planned,
  id: BatchId,
  says: (name: Phrase) => Phrase,
  weight: number,
): News | null {
  const batch = nursery.batches.get(id)
  if (!batch) return null
  return {
    ...bare,
    text: says(phrase('batch {batch}', { batch: batch.name })),
    batch: id,
    kinds: [batch.kind],
    weight,
  }
}

function ofOrder(
  { nursery, before }: Planned,
  body: BodyOf<'order-placed/1' | 'order-changed/1' | 'order-cancelled/1'>,
): News | null {
  const id = body.kind === 'order-cancelled/1' ? body.order : body.order.id
  const state = nursery.orders.get(id)
  if (!state) return null
  const { order, cancelled } = state
  const known = before?.orders.find(one => one.order === id)
  const was = known && known.wanted + known.already
  const text = cancelled
    ? phrase('order {order} was cancelled', { order: id })
    : body.kind === 'order-placed/1'
      ? phrase('order {order} came in ({number})', { order: id, number: order.number })
      : was !== undefined && was !== order.number
        ? phrase('order {order} is now {number} instead of {was}', { order: id, number: order.number, was })
        : phrase('order {order} was changed', { order: id })
  const kinds = [order.kind, ...order.instead.map(({ kind }) => kind)]
  return { ...bare, text, order: id, kinds, weight: Math.abs(order.number - (cancelled ? 0 : (was ?? 0))) }
}

function ofMother(
  { nursery }: Planned,
  id: BodyOf<'mother-retired/1'>['mother'],
  says: (name: Phrase) => Phrase,
  weight: number,
): News | null {
  const state = nursery.mothers.get(id)
  if (!state) return null
  const { name, cultivar, rootstockKind } = state.mother
  return {
    ...bare,
    text: says(phrase('mother tree {mother}', { mother: name })),
    cultivar,
    kinds: rootstockKind ? [rootstockKind] : [],
    weight,
  }
}

function ofHold(planned: Planned, on: Held, says: (name: Phrase) => Phrase): News | null {
  switch (on.what) {
    case 'mother':
      return ofMother(planned, on.mother, says, ALL)
    case 'batch':
      return ofBatch(planned, on.batch, says, ALL)
    case 'bench': {
      const name = planned.nursery.benches.get(on.bench)?.name ?? on.bench
      return { ...bare, text: says(phrase('bench {bench}', { bench: name })), bench: on.bench, weight: ALL }
    }
    case 'lineage':
      return 'mother' in on.of
        ? ofMother(planned, on.of.mother, says, ALL)
        : ofBatch(planned, on.of.batch, says, ALL)
  }
}
