import type { BatchId, BenchId, EntryId } from '../../trade/index.ts'
import type { BodyOf, Entry, Source } from '../entry.ts'
import { type Query, raise } from '../query.ts'
import type { Batch } from '../state.ts'
import {
  batchOf,
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
  readonly members: readonly BatchId[]
  readonly entries: readonly Entry[]
  /** Ids of all entries that speak of a batch, for its own list. */
  readonly idsOf: (batch: BatchId) => readonly EntryId[]
}

/** Folds a family: batches that were split from or joined to each other, and so must be told together. */
export function foldFamily(
  { members, entries, idsOf }: FamilyTold,
  registers: Registers,
): { batches: Batch[]; queries: Query[] } {
  const family = new Family(members, registers)
  for (const entry of entries) family.hear(entry)
  return family.told(idsOf)
}

/** A family while it is told. A class, for a million entries would make millions of closures. */
class Family implements rules.Surroundings {
  readonly registers: Registers
  readonly #first: BatchId
  /** All members, where there are several. */
  readonly #members: ReadonlySet<BatchId> | null
  readonly #drafts = new Map<BatchId, Draft>()
  /** What cannot be done before a batch has begun. */
  readonly #waiting = new Map<BatchId, { readonly entry: Entry; readonly step: Step }[]>()
  readonly #queries: Query[] = []

  constructor(members: readonly BatchId[], registers: Registers) {
    this.registers = registers
    this.#first = members[0]!
    this.#members = members.length > 1 ? new Set(members) : null
  }

  query(raised: Query): void {
    this.#queries.push(raised)
  }

  hear(entry: Entry): void {
    const { body } = entry
    if (body.kind === 'batch-started/1' || body.kind === 'reworked/1') this.#drawSources(entry, body.sources)
    if (body.kind === 'bench-counted/1') this.#countBench(entry, body)
    if (!('batch' in body) || !this.#has(body.batch)) return
    const draft = this.#drafts.get(body.batch)
    if (body.kind === 'batch-started/1') {
      if (draft) this.#startAgain(draft, entry, body)
      else this.#start(entry, body)
    } else if (draft) this.#tell(draft, entry)
    else this.#wait(body.batch, entry, begun => this.#tell(begun, entry))
  }

  /** What has been told, when all entries are heard. */
  told(idsOf: FamilyTold['idsOf']): { batches: Batch[]; queries: Query[] } {
    for (const [batch, list] of this.#waiting) {
      for (const { entry } of list) {
        this.query(raise(entry.id, 'unknown-batch', { batch }, { batch, says: entry.body.kind }))
      }
    }
    const batches: Batch[] = []
    for (const draft of this.#drafts.values()) {
      askAboutRemovedBenches(draft, this)
      batches.push(batchOf(draft, idsOf(draft.id)))
    }
    return { batches, queries: this.#queries }
  }

  #has(batch: BatchId): boolean {
    return this.#members === null ? batch === this.#first : this.#members.has(batch)
  }

  /** Does it now, or as soon as the batch has begun. */
  #whenBegun(batch: BatchId, entry: Entry, step: Step): void {
    const draft = this.#drafts.get(batch)
    if (draft) step(draft)
    else this.#wait(batch, entry, step)
  }

  #wait(batch: BatchId, entry: Entry, step: Step): void {
    const list = this.#waiting.get(batch)
    if (list) list.push({ entry, step })
    else this.#waiting.set(batch, [{ entry, step }])
  }

  #begin(draft: Draft, on: string): void {
    this.#drafts.set(draft.id, draft)
    const early = this.#waiting.get(draft.id)
    if (!early) return
    this.#waiting.delete(draft.id)
    for (const { entry, step } of early) {
      if (entry.on < on) {
        const facts = { says: entry.body.kind, on: entry.on, startedOn: on }
        this.query(rules.ask(draft, entry, 'before-start', facts))
      }
      step(draft)
    }
  }

  #start(entry: Entry, body: BodyOf<'batch-started/1'>): void {
    const { on } = entry
    const { number, bench } = body
    const draft = newDraft(body.batch, body, entry.id, on, number, this.registers.steps(body.protocol))
    if (draft.steps.length === 0)
      this.query(rules.ask(draft, entry, 'unknown-protocol', { protocol: body.protocol }))
    if (!this.registers.kind(body.kindOfTree)) {
      this.query(rules.ask(draft, entry, 'unknown-kind', { kind: body.kindOfTree }))
    }
    checkBench(draft, entry, bench, this)
    draft.nucellar = body.nucellar ?? false
    for (const person of body.workedBy) draft.blades.push({ on, person })
    if (body.takenOver) this.#takeOver(draft, entry, body.takenOver, number, bench)
    else {
      const step = draft.steps[0] ?? unknownStep
      outcomeOf(draft, step, on, bench).entered += number
      putDown(draft, { step, bench, since: on, number, taken: 0, countedOn: null })
    }
    addSources(draft, entry, body.sources, true, this)
    let rootstocks = 0
    for (const source of body.sources) {
      const isOwn = source.from === 'batch' && source.as === 'rootstock'
      const isBought = source.from === 'bought' && source.material === 'rootstock'
      if (isOwn || isBought) rootstocks += source.number
    }
    if (rootstocks > 0 && rootstocks !== number) {
      this.query(rules.ask(draft, entry, 'rootstocks-do-not-match', { number, rootstocks }))
    }
    this.#begin(draft, on)
  }

  /** Its plants are in the step as if they had come from another batch: the step's own start is not theirs to tell. */
  #takeOver(
    draft: Draft,
    entry: Entry,
    { step, since }: NonNullable<BodyOf<'batch-started/1'>['takenOver']>,
    number: number,
    bench: BenchId | null,
  ): void {
    if (step === finishedStep) {
      putFinished(draft, { bench, grade: '', since, number })
      return
    }
    rules.checkStep(draft, entry, step, this)
    const outcome = outcomeOf(draft, step, since, bench)
    outcome.entered += number
    outcome.cameAcross += number
    putDown(draft, { step, bench, since, number, taken: 0, countedOn: null })
  }

  /** The same name given to a second start: its plants are put with the first, so that none is lost from sight. */
  #startAgain(draft: Draft, entry: Entry, body: BodyOf<'batch-started/1'>): void {
    const { number, bench } = body
    this.query(rules.ask(draft, entry, 'started-twice', { number }))
    checkBench(draft, entry, bench, this)
    draft.joinedIn += number
    const part = { bench, since: entry.on, number, taken: 0, countedOn: null, grade: '' }
    receive(draft, entry.on, draft.steps[0] ?? unknownStep, [part])
    addSources(draft, entry, body.sources, false, this)
  }

  /** Another batch was worked on plants of this family, or made of them. */
  #drawSources(entry: Entry, sources: readonly Source[]): void {
    for (const source of sources) {
      if (source.from !== 'batch' || !this.#has(source.batch) || !takesPlants(source)) continue
      this.#whenBegun(source.batch, entry, draft => {
        const asRootstock = source.as === 'rootstock'
        rules.takeFinished(draft, entry, source.number, asRootstock ? 'were worked on' : 'were used', this)
        if (asRootstock) draft.usedAsRootstock += source.number
        else draft.usedWhole += source.number
      })
    }
  }

  #countBench(entry: Entry, { bench, lines }: BodyOf<'bench-counted/1'>): void {
    for (const line of lines) {
      if (!this.#has(line.batch)) continue
      this.#whenBegun(line.batch, entry, draft => countOnBench(draft, entry, bench, line, this))
    }
  }

  #tell(draft: Draft, entry: Entry): void {
    const { body } = entry
    if (body.kind === 'split/1' || body.kind === 'joined/1') this.#handOver(draft, entry, body)
    else tell(draft, entry, this)
  }

  #handOver(draft: Draft, entry: Entry, body: BodyOf<'split/1'> | BodyOf<'joined/1'>): void {
    const splits = body.kind === 'split/1'
    if (body.into === body.batch) {
      this.query(rules.ask(draft, entry, 'into-itself', { did: splits ? 'split' : 'joined' }))
      return
    }
    const did = splits ? 'were split off' : 'were put with another batch'
    const { parts } = rules.drawOrAsk(draft, entry, body.step, body.number, did, this)
    rules.leave(draft, entry, body.step, body.number, body.number)
    closeStays(draft, entry.on)
    if (splits) draft.splitOff += body.number
    else draft.joinedAway += body.number
    const into = this.#drafts.get(body.into)
    if (into) join(into, draft, entry, body.step, parts, this)
    else if (splits) this.#begin(splitChild(draft, entry, body, parts), entry.on)
    else this.#wait(body.into, entry, later => join(later, draft, entry, body.step, parts, this))
  }
}

function askAboutRemovedBenches(draft: Draft, around: rules.Surroundings): void {
  if (draft.portions.length === 0 && draft.finishedPortions.length === 0) return
  const number = new Map<BenchId, number>()
  for (const { bench, number: stands } of [...draft.portions, ...draft.finishedPortions]) {
    if (bench !== null) number.set(bench, (number.get(bench) ?? 0) + stands)
  }
  for (const [id, stands] of number) {
    const bench = around.registers.bench(id)
    if (!bench || bench.removedBy === null) continue
    const facts = { batch: draft.name, bench: bench.name, number: stands }
    around.query(raise(bench.removedBy, 'bench-removed', { batch: draft.id }, facts))
  }
}
