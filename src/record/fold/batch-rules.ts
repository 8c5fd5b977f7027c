import type { BenchId, StepId } from '../../trade/index.ts'
import type { BodyOf, Entry } from '../entry.ts'
import { type Query, raise } from '../query.ts'
import type { QueryKind } from '../query-text.ts'
import {
  aliveIn,
  closeStays,
  type Draft,
  type DraftPortion,
  finishedStep,
  outcomeOf,
  portionsIn,
  putDown,
  putFinished,
  standingIn,
  unknownStep,
} from './batch-draft.ts'
import { type Drawn, drawBeyond, drawPlants, type Part } from './draw-plants.ts'
import type { Registers } from './register-questions.ts'

/** What the rules of a batch ask of the rest of the record. */
export interface Surroundings {
  readonly query: (query: Query) => void
  readonly registers: Registers
}

export const ask = (draft: Draft, entry: Entry, kind: QueryKind, facts: Query['facts'] = {}): Query =>
  raise(entry.id, kind, { batch: draft.id }, { batch: draft.name, ...facts })

/** A step that the protocol has not: said, and used all the same. */
export function checkStep(draft: Draft, entry: Entry, step: StepId, around: Surroundings): void {
  if (step === finishedStep || draft.steps.length === 0 || draft.steps.includes(step)) return
  around.query(ask(draft, entry, 'unknown-step', { step }))
}

/** Draws plants out of a step, and asks if too few stood there. */
export function drawOrAsk(
  draft: Draft,
  entry: Entry,
  step: StepId,
  number: number,
  did: string,
  around: Surroundings,
  first: 'taken' | 'undecided' = 'taken',
  notFrom: BenchId | null = null,
): Drawn {
  checkStep(draft, entry, step, around)
  const drawn = drawPlants(draft, { step, number, on: entry.on, first, notFrom })
  const { stood, elsewhere, found } = drawn
  // Without a protocol no one can say in which step plants stand, and another query says that it is missing.
  if (found > 0 || (elsewhere > 0 && draft.steps.length > 0)) {
    around.query(
      step === finishedStep
        ? ask(draft, entry, 'not-finished-yet', { asked: number, did, finished: stood, found })
        : ask(draft, entry, 'more-than-stood', { step, asked: number, did, stood, elsewhere, found }),
    )
  }
  return drawn
}

/** Records that so many left a step alive. Plants already finished have no step to leave. */
export function leave(draft: Draft, entry: Entry, step: StepId, number: number, across = 0): void {
  if (step === finishedStep) return
  const outcome = outcomeOf(draft, step, entry.on)
  outcome.left += number
  outcome.wentAcross += across
  outcome.lastLeft = entry.on
}

/** One look: what was seen is true. Too many come from elsewhere or are found; too few are missing. */
export function count(draft: Draft, entry: Entry, body: BodyOf<'counted/1'>, around: Surroundings): void {
  const { step, sign, taken, dead, undecided } = body
  const { on } = entry
  checkStep(draft, entry, step, around)
  const stood = standingIn(draft, step)
  const difference = taken + dead + undecided - stood
  if (difference > 0) {
    const { parts } = drawBeyond(draft, { step, number: difference, on, first: 'taken', notFrom: null })
    const bench = benchOf(draft, step)
    for (const part of parts) settle(draft, step, { ...part, bench: bench ?? part.bench })
  }
  if (dead > 0) die(draft, entry, step, dead, 'found dead at count')
  if (difference < 0) {
    drawPlants(draft, { step, number: -difference, on, first: 'undecided', notFrom: null })
    draft.missing -= difference
    if (step !== finishedStep) outcomeOf(draft, step, on).missing -= difference
  }
  if (difference !== 0) {
    around.query(
      ask(draft, entry, 'count-does-not-close', { step, stood, taken, dead, undecided, difference }),
    )
  }
  if (step !== finishedStep) {
    const outcome = outcomeOf(draft, step, on)
    outcome.looks.push({ entry: entry.id, on, sign, taken, dead, undecided })
    const portions = portionsIn(draft, step)
    shareTaken(portions, taken)
    for (const portion of portions) portion.countedOn = on
  }
  closeStays(draft, on)
}

/** Shares those seen to have taken out over the portions by their size, in whole plants, largest remainders first. */
function shareTaken(portions: readonly DraftPortion[], taken: number): void {
  let stand = 0
  for (const portion of portions) stand += portion.number
  let left = taken
  for (const portion of portions) {
    portion.taken = Math.floor((taken * portion.number) / stand)
    left -= portion.taken
  }
  for (; left > 0; left--) {
    let most = portions[0]!
    let remainder = -Infinity
    for (const portion of portions) {
      const its = taken * portion.number - portion.taken * stand
      if (its > remainder) [most, remainder] = [portion, its]
    }
    most.taken += 1
  }
}

/** Where plants of a step stand. */
const benchOf = (draft: Draft, step: StepId): BenchId | null =>
  step === finishedStep
    ? (draft.finishedPortions[0]?.bench ?? null)
    : (draft.portions.find(portion => portion.step === step)?.bench ?? null)

/** Puts a drawn part down again in a step, be it a living one or among the finished. */
export function settle(draft: Draft, step: StepId, part: Part): void {
  const { bench, since, number, taken, countedOn, grade } = part
  if (step === finishedStep) putFinished(draft, { bench, grade, since, number })
  else putDown(draft, { step, bench, since, number, taken, countedOn })
}

function die(draft: Draft, entry: Entry, step: StepId, number: number, cause: string): void {
  drawPlants(draft, { step, number, on: entry.on, first: 'undecided', notFrom: null })
  if (step !== finishedStep) outcomeOf(draft, step, entry.on).lost += number
  draft.losses.push({ entry: entry.id, on: entry.on, step, number, cause })
}

export function lose(draft: Draft, entry: Entry, body: BodyOf<'lost/1'>, around: Surroundings): void {
  const { step, number, cause } = body
  drawOrAsk(draft, entry, step, number, 'were lost', around, 'undecided')
  if (step !== finishedStep) outcomeOf(draft, step, entry.on).lost += number
  draft.losses.push({ entry: entry.id, on: entry.on, step, number, cause })
  closeStays(draft, entry.on)
}

/** Whole into the next step, or a part: the rest stays where it is. */
export function advance(draft: Draft, entry: Entry, body: BodyOf<'advanced/1'>, around: Surroundings): void {
  const { from, to, number, bench } = body
  if (from === to) {
    around.query(ask(draft, entry, 'same-step', { step: from }))
    if (bench !== null) move(draft, entry, from, number, bench, around)
    return
  }
  if (to === finishedStep) {
    finish(draft, entry, number, '', around, from, bench)
    return
  }
  checkStep(draft, entry, to, around)
  const { parts } = drawOrAsk(draft, entry, from, number, 'went on', around)
  leave(draft, entry, from, number)
  for (const part of parts) {
    const onto = bench ?? part.bench
    putDown(draft, { step: to, bench: onto, since: entry.on, number: part.number, taken: 0, countedOn: null })
  }
  outcomeOf(draft, to, entry.on, bench ?? parts[0]?.bench ?? null).entered += number
  closeStays(draft, entry.on)
}

/** Finished plants come from the last step, where no other is named. */
export function finish(
  draft: Draft,
  entry: Entry,
  number: number,
  grade: string,
  around: Surroundings,
  from: StepId = draft.steps.at(-1) ?? draft.portions[0]?.step ?? unknownStep,
  bench: BenchId | null = null,
): void {
  const { parts } = drawOrAsk(draft, entry, from, number, 'were finished', around)
  leave(draft, entry, from, number)
  for (const part of parts) {
    putFinished(draft, { bench: bench ?? part.bench, grade, since: entry.on, number: part.number })
  }
  closeStays(draft, entry.on)
}

export function move(
  draft: Draft,
  entry: Entry,
  step: StepId,
  number: number,
  to: BenchId,
  around: Surroundings,
): void {
  const { parts } = drawOrAsk(draft, entry, step, number, 'were moved', around, 'taken', to)
  for (const part of parts) settle(draft, step, { ...part, bench: to })
  closeStays(draft, entry.on)
}

/** Goes out of the batch from its finished plants: to a buyer, or into another batch. */
export function takeFinished(
  draft: Draft,
  entry: Entry,
  number: number,
  did: string,
  around: Surroundings,
): void {
  drawOrAsk(draft, entry, finishedStep, number, did, around)
  closeStays(draft, entry.on)
}

export function comeBack(draft: Draft, entry: Entry, body: BodyOf<'returned/1'>, around: Surroundings): void {
  const { number, order } = body
  draft.cameBack.push({ entry: entry.id, order, on: entry.on, number })
  const gone = draft.dispatched.reduce((sum, sent) => sum + sent.number, 0)
  draft.returned += number
  putFinished(draft, { bench: null, grade: 'returned', since: entry.on, number })
  if (draft.returned > gone) {
    around.query(ask(draft, entry, 'returned-more', { returned: draft.returned, dispatched: gone }))
  }
}

export function grade(draft: Draft, entry: Entry, body: BodyOf<'graded/1'>, around: Surroundings): void {
  const { step, grades } = body
  checkStep(draft, entry, step, around)
  const graded = Object.values(grades).reduce((sum, number) => sum + number, 0)
  const stood = standingIn(draft, step)
  if (graded > stood) around.query(ask(draft, entry, 'grades-do-not-close', { step, graded, stood }))
  draft.grades.push({ entry: entry.id, on: entry.on, step, grades })
}

/** Wholly worked over, the batch is of the new kind. In part, it keeps the old one until that part is split off. */
export function rework(draft: Draft, entry: Entry, body: BodyOf<'reworked/1'>, around: Surroundings): void {
  const { number, kindOfTree, step } = body
  checkStep(draft, entry, step, around)
  const alive = aliveIn(draft)
  if (kindOfTree !== draft.kind)
    draft.reworks.push({ entry: entry.id, on: entry.on, number, was: draft.kind, kind: kindOfTree })
  if (number >= alive) draft.kind = kindOfTree
  else around.query(ask(draft, entry, 'reworked-in-part', { number, alive }))
  if (number > alive) {
    around.query(
      ask(draft, entry, 'more-than-stood', {
        step,
        asked: number,
        did: 'were worked over',
        stood: alive,
        elsewhere: 0,
        found: 0,
      }),
    )
  }
  if (entry.by !== null) draft.blades.push({ on: entry.on, person: entry.by })
}

export function settleName(
  draft: Draft,
  entry: Entry,
  body: BodyOf<'name-settled/1'>,
  around: Surroundings,
): void {
  const { cultivar } = body
  if (draft.candidates.length > 0 && !draft.candidates.includes(cultivar)) {
    around.query(ask(draft, entry, 'name-not-among-candidates', { cultivar }))
  }
  draft.candidates = []
  draft.settledAs = cultivar
}
