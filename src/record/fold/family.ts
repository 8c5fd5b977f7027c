import type { BatchId, BenchId, KindId, Material, MotherId, Protocol, StepId } from '../../trade/index.ts'
import type { BodyOf, Entry, Source } from '../entry.ts'
import { type Query, raise } from '../query.ts'
import type { Mother, Order } from '../register.ts'
import type { Batch, Origin } from '../state.ts'
import {
  closeStays,
  type Draft,
  finishedStep,
  newDraft,
  outcomeOf,
  putDown,
  putFinished,
  stepsOf,
  unknownStep,
} from './batch-draft.ts'
import * as rules from './batch-rules.ts'
import type { Part } from './draw-plants.ts'

/** What a family asks of the registers; the fold notes each question, and asks again when an answer changes. */
export interface Registers {
  protocolVersions(id: string): readonly Protocol[]
  kind(id: KindId): { readonly name: string; readonly cultivars: readonly string[] } | undefined
  cultivarName(id: string): string
  bench(id: BenchId): { readonly name: string; readonly removedBy: Entry['id'] | null } | undefined
  mother(id: MotherId): Mother | undefined
  lot(id: string): { readonly mother: MotherId; readonly material: Material } | undefined
  order(id: string): Order | undefined
}

type Step = (draft: Draft) => void

/**
 * Folds a family: batches that split from or joined each other, and so must be told together. Their entries come
 * in the order in which they count, struck ones left out.
 */
export function foldFamily(
  members: ReadonlySet<BatchId>,
  entries: readonly Entry[],
  registers: Registers,
): { batches: Batch[]; queries: Query[] } {
  const drafts = new Map<BatchId, Draft>()
  const queries: Query[] = []
  const waiting = new Map<BatchId, { readonly entry: Entry; readonly step: Step }[]>()
  const query = (raised: Query) => void queries.push(raised)
  const around = { query }

  /** Does it now, or as soon as the batch has begun. */
  const whenBegun = (id: BatchId, entry: Entry, step: Step): void => {
    const draft = drafts.get(id)
    if (draft) {
      step(draft)
      return
    }
    const list = waiting.get(id)
    if (list) list.push({ entry, step })
    else waiting.set(id, [{ entry, step }])
  }

  const begin = (draft: Draft, bornOn: string): void => {
    drafts.set(draft.id, draft)
    const early = waiting.get(draft.id)
    if (!early) return
    waiting.delete(draft.id)
    for (const { entry, step } of early) {
      if (entry.on < bornOn) {
        const facts = { batch: draft.name, says: entry.body.kind, on: entry.on, startedOn: bornOn }
        query(raise(entry.id, 'before-start', { batch: draft.id }, facts))
      }
      step(draft)
    }
  }

  const start = (entry: Entry & { readonly body: BodyOf<'batch-started/1'> }): void => {
    const { body, on } = entry
    checkBench(entry, body.batch, body.name, body.bench)
    const first = drafts.get(body.batch)
    if (first) {
      startAgain(first, entry)
      return
    }
    const versions = registers.protocolVersions(body.protocol)
    const draft = newDraft(body.batch, body, on, body.number, stepsOf(versions))
    const ask = (kind: 'unknown-protocol' | 'unknown-kind', facts: Query['facts']) =>
      query(raise(entry.id, kind, { batch: body.batch }, { batch: body.name, ...facts }))
    if (versions.length === 0) ask('unknown-protocol', { protocol: body.protocol })
    if (!registers.kind(body.kindOfTree)) ask('unknown-kind', { kind: body.kindOfTree })
    draft.nucellar = body.nucellar ?? false
    draft.blades.push(...body.workedBy.map(person => ({ on, person })))
    const step = draft.steps[0] ?? unknownStep
    outcomeOf(draft, step, on, body.bench).entered += body.number
    putDown(draft, { step, bench: body.bench, since: on, number: body.number, taken: 0, countedOn: null })
    addSources(draft, entry, body.sources, true)
    const rootstocks = body.sources.reduce(
      (sum, source) => sum + (source.from === 'batch' && source.as === 'rootstock' ? source.number : 0),
      0,
    )
    if (rootstocks > 0 && rootstocks !== body.number) {
      const facts = { batch: body.name, number: body.number, rootstocks }
      query(raise(entry.id, 'rootstocks-do-not-match', { batch: body.batch }, facts))
    }
    begin(draft, on)
  }

  /** The same name given to a second start: its plants are put with the first, so that none is lost from sight. */
  const startAgain = (draft: Draft, entry: Entry & { readonly body: BodyOf<'batch-started/1'> }): void => {
    const { body, on } = entry
    query(raise(entry.id, 'started-twice', { batch: draft.id }, { batch: draft.name, number: body.number }))
    draft.joinedIn += body.number
    const part = { bench: body.bench, since: on, number: body.number, taken: 0, countedOn: null, grade: '' }
    receive(draft, entry, draft.steps[0] ?? unknownStep, [part])
    addSources(draft, entry, body.sources, false)
  }

  const checkBench = (entry: Entry, batch: BatchId, name: string, bench: BenchId | null): void => {
    if (bench === null || registers.bench(bench)) return
    query(raise(entry.id, 'unknown-bench', { batch }, { batch: name, bench }))
  }

  const addSources = (draft: Draft, entry: Entry, sources: readonly Source[], atBirth: boolean): void => {
    draft.sources.push(...sources)
    for (const source of sources) draft.origins.push(originOf(source, entry, atBirth))
    const wrong = wrongWood(draft.kind, sources, registers)
    if (wrong) query(raise(entry.id, 'wrong-wood', { batch: draft.id }, { batch: draft.name, ...wrong }))
  }

  /** Another batch was worked on plants of this one, or made of them. */
  const use = (entry: Entry, source: Extract<Source, { from: 'batch' }>): void => {
    whenBegun(source.batch, entry, draft => {
      if (source.as === 'scion' || source.as === 'interstem') return
      rules.takeFinished(
        draft,
        entry,
        source.number,
        source.as === 'rootstock' ? 'were worked on' : 'were used',
        around,
      )
      if (source.as === 'rootstock') draft.usedAsRootstock += source.number
      else draft.usedWhole += source.number
    })
  }

  const handOver = (entry: Entry & { readonly body: BodyOf<'split/1'> | BodyOf<'joined/1'> }): void => {
    const { body, on } = entry
    whenBegun(body.batch, entry, draft => {
      if (body.into === body.batch) {
        const did = body.kind === 'split/1' ? 'split' : 'joined'
        return query(raise(entry.id, 'into-itself', { batch: draft.id }, { batch: draft.name, did }))
      }
      const did = body.kind === 'split/1' ? 'were split off' : 'were put with another batch'
      const { parts } = rules.drawOrAsk(draft, entry, body.step, body.number, did, around)
      rules.leave(draft, entry, body.step, body.number, body.number)
      closeStays(draft, on)
      const splitsOff = body.kind === 'split/1' && !drafts.has(body.into)
      if (body.kind === 'split/1') draft.splitOff += body.number
      else draft.joinedAway += body.number
      if (splitsOff) return begin(splitChild(draft, entry, body as BodyOf<'split/1'>, parts), on)
      whenBegun(body.into, entry, into => {
        into.joinedIn += body.number
        receive(into, entry, body.step, parts)
        into.origins.push({
          entry: entry.id,
          on,
          from: 'batch',
          id: draft.id,
          as: 'joined',
          number: body.number,
          atBirth: false,
        })
        if (into.kind !== draft.kind) {
          const facts = { batch: into.name, number: body.number, kind: into.kind, other: draft.kind }
          query(raise(entry.id, 'kinds-mixed', { batch: into.id }, facts))
        }
      })
    })
  }

  for (const entry of entries) {
    const { body } = entry
    if (body.kind === 'batch-started/1' || body.kind === 'reworked/1') {
      for (const source of body.sources) {
        if (source.from === 'batch' && members.has(source.batch)) use(entry as Entry, source)
      }
    }
    if (!('batch' in body) || !members.has(body.batch)) continue
    if (body.kind === 'batch-started/1') start({ ...entry, body })
    else if (body.kind === 'split/1' || body.kind === 'joined/1') handOver({ ...entry, body })
    else whenBegun(body.batch, entry, draft => tell(draft, entry))
  }

  /** Everything that happens to one batch alone. */
  function tell(draft: Draft, entry: Entry): void {
    const { body } = entry
    if (body.kind === 'advanced/1') checkBench(entry, draft.id, draft.name, body.bench)
    if (body.kind === 'moved/1') checkBench(entry, draft.id, draft.name, body.to)
    switch (body.kind) {
      case 'counted/1':
        rules.count(draft, { ...entry, body }, around)
        return
      case 'lost/1':
        rules.lose(draft, { ...entry, body }, around)
        return
      case 'advanced/1':
        rules.advance(draft, { ...entry, body }, around)
        return
      case 'finished/1':
        rules.finish(draft, entry, body.number, body.grade, around)
        return
      case 'moved/1':
        rules.move(draft, entry, body.step, body.number, body.to, around)
        return
      case 'measured/1':
        rules.checkStep(draft, entry, body.step, around)
        draft.calipers.push({ on: entry.on, step: body.step, calipersMm: body.calipersMm })
        return
      case 'graded/1':
        rules.grade(draft, { ...entry, body }, around)
        return
      case 'potted-on/1':
        rules.checkStep(draft, entry, body.step, around)
        draft.pottings.push({ on: entry.on, step: body.step, number: body.number, potLitres: body.potLitres })
        return
      case 'reworked/1':
        rules.rework(draft, { ...entry, body }, around)
        addSources(draft, entry, body.sources, false)
        return
      case 'name-settled/1':
        rules.settleName(draft, { ...entry, body }, around)
        return
      case 'dispatched/1': {
        rules.takeFinished(draft, entry, body.number, 'went out', around)
        draft.dispatched.push({ entry: entry.id, order: body.order, on: entry.on, number: body.number })
        const order = body.order === null ? undefined : registers.order(body.order)
        if (order && order.kind !== draft.kind && !order.instead.some(other => other.kind === draft.kind)) {
          const facts = {
            batch: draft.name,
            number: body.number,
            order: order.id,
            kind: draft.kind,
            wanted: order.kind,
          }
          query(raise(entry.id, 'not-what-was-ordered', { batch: draft.id, order: order.id }, facts))
        }
        return
      }
      case 'returned/1':
        rules.comeBack(draft, { ...entry, body }, around)
        return
      default:
        return
    }
  }

  for (const [batch, list] of waiting) {
    for (const { entry } of list)
      query(raise(entry.id, 'unknown-batch', { batch }, { batch, says: entry.body.kind }))
  }
  for (const draft of drafts.values()) for (const raised of benchQueries(draft, registers)) query(raised)
  return { batches: [...drafts.values()].map(finishDraft), queries }
}

/** A batch split off goes on from where its parent stood. */
function splitChild(parent: Draft, entry: Entry, body: BodyOf<'split/1'>, parts: readonly Part[]): Draft {
  const begin = {
    name: body.name,
    kindOfTree: parent.kind,
    protocol: parent.protocol,
    workedBy: parent.workedBy,
    candidates: parent.candidates,
  }
  const child = newDraft(body.into, begin, parent.startedOn, body.number, parent.steps)
  child.splitFrom = parent.id
  child.nucellar = parent.nucellar
  child.settledAs = parent.settledAs
  child.origins.push({
    entry: entry.id,
    on: entry.on,
    from: 'batch',
    id: parent.id,
    as: 'rest',
    number: body.number,
    atBirth: true,
  })
  receive(child, entry, body.step, parts)
  return child
}

/** Plants that came over from another batch stand as they stood there. */
function receive(draft: Draft, entry: Entry, step: StepId, parts: readonly Part[]): void {
  for (const part of parts) {
    const { bench, since, number, taken, countedOn, grade } = part
    if (step === finishedStep) putFinished(draft, { bench, grade, since, number })
    else putDown(draft, { step, bench, since, number, taken, countedOn })
  }
  if (step === finishedStep) return
  const number = parts.reduce((sum, part) => sum + part.number, 0)
  const outcome = outcomeOf(draft, step, entry.on, parts[0]?.bench ?? null)
  outcome.entered += number
  outcome.cameAcross += number
}

function originOf(source: Source, entry: Entry, atBirth: boolean): Origin {
  const { id: entryId, on } = entry
  const common = { entry: entryId, on, number: source.number, atBirth }
  switch (source.from) {
    case 'mother':
      return { ...common, from: 'mother', id: source.mother, as: source.material }
    case 'lot':
      return { ...common, from: 'lot', id: source.lot, as: 'lot' }
    case 'batch':
      return { ...common, from: 'batch', id: source.batch, as: source.as }
    case 'bought':
      return { ...common, from: 'bought', id: source.supplier, as: source.material }
  }
}

/** Wood of a cultivar that the kind does not name. Seed is left out: its seedlings are of no cultivar. */
function wrongWood(kindId: KindId, sources: readonly Source[], registers: Registers): Query['facts'] | null {
  const kind = registers.kind(kindId)
  if (!kind || kind.cultivars.length === 0) return null
  for (const source of sources) {
    const taken =
      source.from === 'mother' ? source : source.from === 'lot' ? registers.lot(source.lot) : undefined
    if (!taken || taken.material === 'seed') continue
    const mother = registers.mother(taken.mother)
    if (!mother || mother.rootstockKind !== null || kind.cultivars.includes(mother.cultivar)) continue
    return { wanted: kind.name, got: registers.cultivarName(mother.cultivar), from: mother.name }
  }
  return null
}

function* benchQueries(draft: Draft, registers: Registers): Generator<Query> {
  const number = new Map<BenchId, number>()
  for (const { bench, number: stands } of [...draft.portions, ...draft.finishedPortions]) {
    if (bench !== null) number.set(bench, (number.get(bench) ?? 0) + stands)
  }
  for (const [id, stands] of number) {
    const bench = registers.bench(id)
    if (!bench || bench.removedBy === null) continue
    const facts = { batch: draft.name, bench: bench.name, number: stands }
    yield raise(bench.removedBy, 'bench-removed', { batch: draft.id }, facts)
  }
}

function finishDraft(draft: Draft): Batch {
  const { steps: _, ...batch } = draft
  for (const outcome of batch.outcomes) {
    outcome.closed = !batch.portions.some(portion => portion.step === outcome.step)
  }
  return batch
}
