import { type BatchId, type BenchId, type EntryId, type Protocol, StepId } from '../../trade/index.ts'
import type { BodyOf } from '../entry.ts'
import type { Day } from '../register.ts'
import type { Batch, FinishedPortion, Portion, StepOutcome } from '../state.ts'

/** The step that holds plants past the protocol's last: finished, and still in the nursery. */
export const finishedStep = StepId.parse('finished')

/** Where plants stand whose protocol no one has written down. */
export const unknownStep = StepId.parse('not known')

type Writable<T> = { -readonly [K in keyof T]: T[K] extends readonly (infer E)[] ? E[] : T[K] }
export type DraftPortion = Writable<Portion>
export type DraftOutcome = Writable<StepOutcome>
type DraftFinished = Writable<FinishedPortion>

/** A batch while its entries are folded into it. */
export interface Draft
  extends Omit<Writable<Batch>, 'portions' | 'finishedPortions' | 'outcomes' | 'stays' | 'entries'> {
  portions: DraftPortion[]
  finishedPortions: DraftFinished[]
  outcomes: DraftOutcome[]
  stays: Writable<Batch['stays'][number]>[]
  /** The protocol's steps in their order, as known of any of its versions. */
  readonly steps: readonly StepId[]
}

export type Begin = Pick<
  BodyOf<'batch-started/1'>,
  'name' | 'kindOfTree' | 'protocol' | 'workedBy' | 'candidates'
>

export function newDraft(
  id: BatchId,
  begin: Begin,
  begunBy: EntryId,
  startedOn: Day,
  number: number,
  steps: readonly StepId[],
): Draft {
  return {
    id,
    name: begin.name,
    kind: begin.kindOfTree,
    protocol: begin.protocol,
    startedOn,
    begunBy,
    number,
    workedBy: [...begin.workedBy],
    sources: [],
    origins: [],
    splitFrom: null,
    candidates: [...begin.candidates],
    settledAs: null,
    nucellar: false,
    portions: [],
    finished: 0,
    finishedOn: null,
    finishedPortions: [],
    outcomes: [],
    losses: [],
    dispatched: [],
    cameBack: [],
    returned: 0,
    usedAsRootstock: 0,
    usedWhole: 0,
    splitOff: 0,
    joinedIn: 0,
    joinedAway: 0,
    found: 0,
    missing: 0,
    calipers: [],
    grades: [],
    pottings: [],
    reworks: [],
    stays: [],
    blades: [],
    steps,
  }
}

const none: readonly never[] = []
/** A list as it is kept: as long as what is in it. Most lists of a batch are empty, and those share one. */
const kept = <T>(list: readonly T[]): readonly T[] => (list.length === 0 ? none : list.slice())

/** The batch when all its entries are folded. */
export function batchOf(draft: Draft, entries: readonly EntryId[]): Batch {
  for (const outcome of draft.outcomes) {
    outcome.closed = !draft.portions.some(portion => portion.step === outcome.step)
    outcome.looks = outcome.looks.slice()
  }
  return {
    id: draft.id,
    name: draft.name,
    kind: draft.kind,
    protocol: draft.protocol,
    startedOn: draft.startedOn,
    begunBy: draft.begunBy,
    number: draft.number,
    workedBy: kept(draft.workedBy),
    sources: kept(draft.sources),
    origins: kept(draft.origins),
    splitFrom: draft.splitFrom,
    candidates: kept(draft.candidates),
    settledAs: draft.settledAs,
    nucellar: draft.nucellar,
    portions: kept(draft.portions),
    finished: draft.finished,
    finishedOn: draft.finishedOn,
    finishedPortions: kept(draft.finishedPortions),
    outcomes: kept(draft.outcomes),
    losses: kept(draft.losses),
    dispatched: kept(draft.dispatched),
    cameBack: kept(draft.cameBack),
    returned: draft.returned,
    usedAsRootstock: draft.usedAsRootstock,
    usedWhole: draft.usedWhole,
    splitOff: draft.splitOff,
    joinedIn: draft.joinedIn,
    joinedAway: draft.joinedAway,
    found: draft.found,
    missing: draft.missing,
    calipers: kept(draft.calipers),
    grades: kept(draft.grades),
    pottings: kept(draft.pottings),
    reworks: kept(draft.reworks),
    stays: kept(draft.stays),
    blades: kept(draft.blades),
    entries,
  }
}

/** What one step has done so far; made when the step is first touched. */
export function outcomeOf(draft: Draft, step: StepId, on: Day, bench: BenchId | null = null): DraftOutcome {
  for (const known of draft.outcomes) {
    if (known.step !== step) continue
    known.bench ??= bench
    return known
  }
  const outcome: DraftOutcome = {
    step,
    entered: 0,
    firstEntered: on,
    left: 0,
    cameAcross: 0,
    wentAcross: 0,
    lastLeft: null,
    lost: 0,
    found: 0,
    missing: 0,
    unsaid: 0,
    bench,
    closed: false,
    looks: [],
  }
  draft.outcomes.push(outcome)
  return outcome
}

/** The portions of a step: most often one. */
export function portionsIn(draft: Draft, step: StepId): DraftPortion[] {
  const portions: DraftPortion[] = []
  for (const portion of draft.portions) if (portion.step === step) portions.push(portion)
  return portions
}

/** Living plants in a step, on all its benches. */
export function standingIn(draft: Draft, step: StepId): number {
  if (step === finishedStep) return draft.finished
  let standing = 0
  for (const portion of draft.portions) if (portion.step === step) standing += portion.number
  return standing
}

export function aliveIn(batch: Pick<Batch, 'portions' | 'finished'>): number {
  let alive = batch.finished
  for (const portion of batch.portions) alive += portion.number
  return alive
}

/** Keeps the batch's stays on benches in step with its portions. */
function openStay(draft: Draft, bench: BenchId | null, on: Day): void {
  if (bench === null) return
  if (!draft.stays.some(stay => stay.bench === bench && stay.to === null)) {
    draft.stays.push({ bench, from: on, to: null })
  }
}

export function closeStays(draft: Draft, on: Day): void {
  for (const stay of draft.stays) {
    if (stay.to !== null || standsOn(draft.portions, stay.bench)) continue
    if (!standsOn(draft.finishedPortions, stay.bench)) stay.to = on
  }
}

function standsOn(
  portions: readonly { readonly bench: BenchId | null; readonly number: number }[],
  bench: BenchId,
): boolean {
  for (const portion of portions) if (portion.bench === bench && portion.number > 0) return true
  return false
}

/** Sets plants down in a step on a bench, beside those that stand there already. */
export function putDown(draft: Draft, plants: Omit<Portion, 'number'> & { readonly number: number }): void {
  if (plants.number === 0) return
  openStay(draft, plants.bench, plants.since)
  const there = draft.portions.find(p => p.step === plants.step && p.bench === plants.bench)
  if (!there) {
    draft.portions.push({ ...plants })
    return
  }
  there.number += plants.number
  there.taken += plants.taken
  if (plants.since < there.since) there.since = plants.since
  if (plants.countedOn !== null && (there.countedOn === null || there.countedOn < plants.countedOn)) {
    there.countedOn = plants.countedOn
  }
}

/** Sets finished plants down. */
export function putFinished(draft: Draft, plants: FinishedPortion): void {
  if (plants.number === 0) return
  openStay(draft, plants.bench, plants.since)
  draft.finished += plants.number
  draft.finishedOn ??= plants.since
  const there = draft.finishedPortions.find(p => p.bench === plants.bench && p.grade === plants.grade)
  if (there) there.number += plants.number
  else draft.finishedPortions.push({ ...plants })
}

/** Every step that an entry may name: those of the protocol in any version, and `finished`. */
export const stepsOf = (versions: readonly Protocol[]): StepId[] => {
  const steps: StepId[] = []
  for (const version of versions) {
    for (const [i, step] of version.steps.entries()) {
      if (steps.includes(step.id)) continue
      const before = version.steps[i - 1]
      steps.splice(before ? steps.indexOf(before.id) + 1 : 0, 0, step.id)
    }
  }
  return steps
}
