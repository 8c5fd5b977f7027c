import { type BodyOf, type Entry, fruitsOf, type Held } from '../../record/index.ts'
import type { BatchId, BenchId, CultivarId, KindId, OrderId, ProtocolId, Skill } from '../../trade/index.ts'
import { meanRate } from './mean-rate.ts'
import type { Planned } from './planned.ts'

/** Something entered since the plan before that may have changed it, and what it bears on. */
export interface News {
  /** In words, to follow "since": "batch 118 counted 61 where 84 were expected". */
  readonly text: string
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
  'advanced/1': 'moved on',
  'measured/1': 'was measured',
  'split/1': 'was split',
  'joined/1': 'was put with another',
  'reworked/1': 'was worked over',
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
      return ofBatch(planned, body.batch, name => `${name} lost ${body.number} (${body.cause})`, body.number)
    case 'batch-started/1': {
      const weight = wasPlanned(planned, body) ? AS_PLANNED : body.number
      return ofBatch(planned, body.batch, name => `${name} was begun with ${body.number}`, weight)
    }
    case 'finished/1':
      return ofBatch(planned, body.batch, name => `${body.number} of ${name} are finished`, AS_PLANNED)
    case 'advanced/1':
    case 'measured/1':
    case 'split/1':
    case 'joined/1':
    case 'reworked/1':
      return ofBatch(planned, body.batch, name => `${name} ${WAS_DONE[body.kind]}`, AS_PLANNED)
    case 'dispatched/1':
    case 'returned/1': {
      const does = body.kind === 'dispatched/1' ? 'went out' : 'came back'
      const reason = ofBatch(planned, body.batch, name => `${body.number} of ${name} ${does}`, body.number)
      return reason && { ...reason, order: body.order }
    }
    case 'order-placed/1':
    case 'order-changed/1':
    case 'order-cancelled/1':
      return ofOrder(planned, body)
    case 'mother-retired/1':
      return ofMother(planned, body.mother, name => `mother tree ${name} is lost (${body.why})`, ALL)
    case 'mother-set/1':
      return ofMother(planned, body.mother.id, name => `mother tree ${name} was entered anew`, 10)
    case 'mother-tested/1':
      return body.result === 'positive'
        ? ofMother(
            planned,
            body.mother,
            name => `mother tree ${name} was tested positive (${body.test})`,
            ALL,
          )
        : null
    case 'material-collected/1':
      return ofMother(
        planned,
        body.mother,
        name => `${body.number} ${body.material} of ${name} are in store`,
        body.number,
      )
    case 'material-discarded/1': {
      const lot = nursery.lots.get(body.lot)
      return lot
        ? ofMother(
            planned,
            lot.mother,
            name => `${body.number} ${lot.material} of ${name} were thrown out`,
            body.number,
          )
        : null
    }
    case 'hold-placed/1':
      return ofHold(planned, body.on, name => `${name} is on hold (${body.why})`)
    case 'hold-released/1': {
      const hold = nursery.holds.get(body.hold)
      return hold ? ofHold(planned, hold.on, name => `${name} is no longer on hold`) : null
    }
    case 'bench-set/1':
      return { ...bare, text: `bench ${body.bench.name} was changed`, bench: body.bench.id, weight: 100 }
    case 'bench-removed/1': {
      const name = nursery.former.benches.get(body.bench)?.name ?? body.bench
      return { ...bare, text: `bench ${name} is gone`, bench: body.bench, weight: ALL }
    }
    case 'person-set/1': {
      const { name, skills } = body.person
      return { ...bare, text: `the hours or skills of ${name} were changed`, skills, weight: 100 }
    }
    case 'person-left/1': {
      const left = nursery.former.people.get(body.person)
      return left ? { ...bare, text: `${left.name} left`, skills: left.skills, weight: ALL } : null
    }
    case 'rate-set/1': {
      const kinds = body.kindOfTree ? [body.kindOfTree] : []
      const protocol = body.kindOfTree ? null : body.protocol
      return { ...bare, text: `the rate was set anew (${body.why})`, kinds, protocol, weight: 1000 }
    }
    case 'fact-set/1': {
      const kinds = [...nursery.kinds.values()].filter(({ species }) => species === body.species)
      const fruit = fruitsOf(nursery).byId(body.species)?.commonName ?? body.species
      const text = `a figure of ${fruit} was set anew (${body.why})`
      return { ...bare, text, kinds: kinds.map(({ id }) => id), weight: 1000 }
    }
    case 'protocol-set/1':
      return {
        ...bare,
        text: `the protocol “${body.protocol.name}” was changed`,
        protocol: body.protocol.id,
        weight: 1000,
      }
    case 'kind-set/1':
      return {
        ...bare,
        text: `${body.kindOfTree.name} was entered anew`,
        kinds: [body.kindOfTree.id],
        weight: 100,
      }
    case 'cultivar-set/1': {
      const { id, name } = body.cultivar
      return { ...bare, text: `${name} was entered anew`, cultivar: id, weight: 100 }
    }
    case 'struck/1': {
      const batch = [...nursery.batches.values()].find(({ entries }) => entries.includes(body.entry))
      return batch
        ? ofBatch(planned, batch.id, name => `an entry about ${name} was struck (${body.why})`, 10)
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
  const waits = undecided > 0 ? ` and ${undecided} not yet to tell` : ''
  const against =
    expected === null || expected === taken ? '' : `${waits ? ',' : ''} where ${expected} were expected`
  const off = expected === null ? dead : Math.abs(taken + undecided * mean! - expected)
  const reason = ofBatch(
    planned,
    batch.id,
    name => `${name} counted ${taken}${waits}${against}`,
    Math.max(AS_PLANNED, off),
  )
  return reason && { ...reason, protocol: batch.protocol }
}

function ofBatch(
  { nursery }: Planned,
  id: BatchId,
  says: (name: string) => string,
  weight: number,
): News | null {
  const batch = nursery.batches.get(id)
  if (!batch) return null
  return { ...bare, text: says(`batch ${batch.name}`), batch: id, kinds: [batch.kind], weight }
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
    ? `order ${id} was cancelled`
    : body.kind === 'order-placed/1'
      ? `order ${id} came in (${order.number})`
      : was !== undefined && was !== order.number
        ? `order ${id} is now ${order.number} instead of ${was}`
        : `order ${id} was changed`
  const kinds = [order.kind, ...order.instead.map(({ kind }) => kind)]
  return { ...bare, text, order: id, kinds, weight: Math.abs(order.number - (cancelled ? 0 : (was ?? 0))) }
}

function ofMother(
  { nursery }: Planned,
  id: BodyOf<'mother-retired/1'>['mother'],
  says: (name: string) => string,
  weight: number,
): News | null {
  const state = nursery.mothers.get(id)
  if (!state) return null
  const { name, cultivar, rootstockKind } = state.mother
  return { ...bare, text: says(name), cultivar, kinds: rootstockKind ? [rootstockKind] : [], weight }
}

function ofHold(planned: Planned, on: Held, says: (name: string) => string): News | null {
  switch (on.what) {
    case 'mother':
      return ofMother(planned, on.mother, says, ALL)
    case 'batch':
      return ofBatch(planned, on.batch, says, ALL)
    case 'bench': {
      const name = planned.nursery.benches.get(on.bench)?.name ?? on.bench
      return { ...bare, text: says(`bench ${name}`), bench: on.bench, weight: ALL }
    }
    case 'lineage':
      return 'mother' in on.of
        ? ofMother(planned, on.of.mother, says, ALL)
        : ofBatch(planned, on.of.batch, says, ALL)
  }
}
