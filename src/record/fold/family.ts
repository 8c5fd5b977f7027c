import type { BatchId, BenchId, EntryId } from '../../trade/index.ts'
import type { BodyOf, Entry, Source } from '../entry.ts'
import { type Query, raise } from '../query.ts'
import type { Batch } from '../state.ts'
import {
  closeStays,
  type Draft,
  finishedStep,
  newDraft,
  outcomeOf,
  putDown,
  putFinished,
  unknownStep,
} from './batch-draft.ts'
import * as rules from './batch-rules.ts'
import { countOnBench } from './count-on-bench.ts'
import { join, receive, splitChild } from './hand-over.ts'
import type { Registers } from './register-questions.ts'
import { addSources, takesPlants } from './sources.ts'
import { checkBench, tell } from './tell.ts'

type Step = (draft: Draft) => void

/** What a family is told: who belongs to it, and its entries that count, in the order in which they count. */
export interface FamilyTold {
  readonly members: ReadonlySet<BatchId>
  readonly entries: readonly Entry[]
  /** Ids of all entries that speak of a batch, for its own list. */
  readonly idsOf: (batch: BatchId) => EntryId[]
}

/** Folds a family: batches that were split from or joined to each other, and so must be told together. */
export function foldFamily(told: FamilyTold, registers: Registers): { batches: Batch[]; queries: Query[] } {
  const { members } = told
  const drafts = new Map<BatchId, Draft>()
  const queries: Query[] = []
  const waiting = new Map<BatchId, { readonly entry: Entry; readonly step: Step }[]>()
  const query = (raised: Query) => void queries.push(raised)
  const around = { query, registers }

  /** What cannot be done before the batch has begun is done as soon as it has. */
  const wait = (id: BatchId, entry: Entry, step: Step): void => {
    const list = waiting.get(id)
    if (list) list.push({ entry, step })
    else waiting.set(id, [{ entry, step }])
  }

  const begin = (draft: Draft, on: string): void => {
    drafts.set(draft.id, draft)
    const early = waiting.get(draft.id)
    if (!early) return
    waiting.delete(draft.id)
    for (const { entry, step } of early) {
      if (entry.on < on) {
        query(rules.ask(draft, entry, 'before-start', { says: entry.body.kind, on: entry.on, startedOn: on }))
      }
      step(draft)
    }
  }

  const start = (entry: Entry, body: BodyOf<'batch-started/1'>): void => {
    const { on } = entry
    const first = drafts.get(body.batch)
    if (first) {
      startAgain(first, entry, body)
      return
    }
    const { number, bench } = body
    const draft = newDraft(body.batch, body, on, number, registers.steps(body.protocol))
    if (draft.steps.length === 0)
      query(rules.ask(draft, entry, 'unknown-protocol', { protocol: body.protocol }))
    if (!registers.kind(body.kindOfTree)) {
      query(rules.ask(draft, entry, 'unknown-kind', { kind: body.kindOfTree }))
    }
    checkBench(draft, entry, bench, around)
    draft.nucellar = body.nucellar ?? false
    for (const person of body.workedBy) draft.blades.push({ on, person })
    if (body.takenOver) takeOver(draft, entry, body.takenOver, number, bench)
    else {
      const step = draft.steps[0] ?? unknownStep
      outcomeOf(draft, step, on, bench).entered += number
      putDown(draft, { step, bench, since: on, number, taken: 0, countedOn: null })
    }
    addSources(draft, entry, body.sources, true, around)
    let rootstocks = 0
    for (const source of body.sources) {
      const isOwn = source.from === 'batch' && source.as === 'rootstock'
      const isBought = source.from === 'bought' && source.material === 'rootstock'
      if (isOwn || isBought) rootstocks += source.number
    }
    if (rootstocks > 0 && rootstocks !== number) {
      query(rules.ask(draft, entry, 'rootstocks-do-not-match', { number, rootstocks }))
    }
    begin(draft, on)
  }

  /** Its plants are in the step as if they had come from another batch: the step's own start is not theirs to tell. */
  const takeOver = (
    draft: Draft,
    entry: Entry,
    { step, since }: NonNullable<BodyOf<'batch-started/1'>['takenOver']>,
    number: number,
    bench: BenchId | null,
  ): void => {
    if (step === finishedStep) {
      putFinished(draft, { bench, grade: '', since, number })
      return
    }
    rules.checkStep(draft, entry, step, around)
    const outcome = outcomeOf(draft, step, since, bench)
    outcome.entered += number
    outcome.cameAcross += number
    putDown(draft, { step, bench, since, number, taken: 0, countedOn: null })
  }

  /** The same name given to a second start: its plants are put with the first, so that none is lost from sight. */
  const startAgain = (draft: Draft, entry: Entry, body: BodyOf<'batch-started/1'>): void => {
    const { number, bench } = body
    query(rules.ask(draft, entry, 'started-twice', { number }))
    checkBench(draft, entry, bench, around)
    draft.joinedIn += number
    const part = { bench, since: entry.on, number, taken: 0, countedOn: null, grade: '' }
    receive(draft, entry.on, draft.steps[0] ?? unknownStep, [part])
    addSources(draft, entry, body.sources, false, around)
  }

  /** Another batch was worked on plants of this one, or made of them. */
  const use = (draft: Draft, entry: Entry, source: Extract<Source, { readonly from: 'batch' }>): void => {
    const asRootstock = source.as === 'rootstock'
    rules.takeFinished(draft, entry, source.number, asRootstock ? 'were worked on' : 'were used', around)
    if (asRootstock) draft.usedAsRootstock += source.number
    else draft.usedWhole += source.number
  }

  const handOver = (draft: Draft, entry: Entry, body: BodyOf<'split/1'> | BodyOf<'joined/1'>): void => {
    const splits = body.kind === 'split/1'
    if (body.into === body.batch) {
      query(rules.ask(draft, entry, 'into-itself', { did: splits ? 'split' : 'joined' }))
      return
    }
    const did = splits ? 'were split off' : 'were put with another batch'
    const { parts } = rules.drawOrAsk(draft, entry, body.step, body.number, did, around)
    rules.leave(draft, entry, body.step, body.number, body.number)
    closeStays(draft, entry.on)
    if (splits) draft.splitOff += body.number
    else draft.joinedAway += body.number
    const into = drafts.get(body.into)
    if (into) join(into, draft, entry, body.step, parts, around)
    else if (splits) begin(splitChild(draft, entry, body, parts), entry.on)
    else wait(body.into, entry, later => join(later, draft, entry, body.step, parts, around))
  }

  const hear = (draft: Draft, entry: Entry): void => {
    const { body } = entry
    if (body.kind === 'split/1' || body.kind === 'joined/1') handOver(draft, entry, body)
    else tell(draft, entry, around)
  }

  for (const entry of told.entries) {
    const { body } = entry
    if (body.kind === 'batch-started/1' || body.kind === 'reworked/1') {
      for (const source of body.sources) {
        if (source.from !== 'batch' || !members.has(source.batch) || !takesPlants(source)) continue
        const draft = drafts.get(source.batch)
        if (draft) use(draft, entry, source)
        else wait(source.batch, entry, begun => use(begun, entry, source))
      }
    }
    if (body.kind === 'bench-counted/1') {
      for (const line of body.lines) {
        if (!members.has(line.batch)) continue
        const count = (draft: Draft) => countOnBench(draft, entry, body.bench, line, around)
        const draft = drafts.get(line.batch)
        if (draft) count(draft)
        else wait(line.batch, entry, count)
      }
      continue
    }
    if (!('batch' in body) || !members.has(body.batch)) continue
    if (body.kind === 'batch-started/1') {
      start(entry, body)
      continue
    }
    const draft = drafts.get(body.batch)
    if (draft) hear(draft, entry)
    else wait(body.batch, entry, begun => hear(begun, entry))
  }

  for (const [batch, list] of waiting) {
    for (const { entry } of list) {
      query(raise(entry.id, 'unknown-batch', { batch }, { batch, says: entry.body.kind }))
    }
  }
  const batches: Batch[] = []
  for (const draft of drafts.values()) {
    askAboutRemovedBenches(draft, around)
    draft.entries = told.idsOf(draft.id)
    batches.push(finishDraft(draft))
  }
  return { batches, queries }
}

function askAboutRemovedBenches(draft: Draft, { query, registers }: rules.Surroundings): void {
  const number = new Map<BenchId, number>()
  for (const { bench, number: stands } of [...draft.portions, ...draft.finishedPortions]) {
    if (bench !== null) number.set(bench, (number.get(bench) ?? 0) + stands)
  }
  for (const [id, stands] of number) {
    const bench = registers.bench(id)
    if (!bench || bench.removedBy === null) continue
    const facts = { batch: draft.name, bench: bench.name, number: stands }
    query(raise(bench.removedBy, 'bench-removed', { batch: draft.id }, facts))
  }
}

function finishDraft(draft: Draft): Batch {
  const { steps: _, ...batch } = draft
  for (const outcome of batch.outcomes) {
    outcome.closed = !batch.portions.some(portion => portion.step === outcome.step)
  }
  return batch
}
