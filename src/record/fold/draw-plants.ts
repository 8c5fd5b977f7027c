import type { BenchId, StepId } from '../../trade/index.ts'
import type { Day } from '../register.ts'
import { type Draft, type DraftPortion, finishedStep, outcomeOf, portionsIn } from './batch-draft.ts'

/** Plants of one portion, taken out of it. */
export interface Part {
  readonly bench: BenchId | null
  readonly since: Day
  readonly number: number
  readonly taken: number
  readonly countedOn: Day | null
  /** Of finished plants; else empty. */
  readonly grade: string
}

/** Plants taken out of where they stood, part by part as they stood there. */
export interface Drawn {
  readonly parts: readonly Part[]
  /** How many stood where the entry says. */
  readonly stood: number
  /** Taken from other steps, since too few stood there. */
  readonly elsewhere: number
  /** More than the whole batch had: they were there all the same. */
  readonly found: number
}

export interface Draw {
  readonly step: StepId
  readonly number: number
  readonly on: Day
  /** Those seen to have taken go on first; those that die are first the undecided. */
  readonly first: 'taken' | 'undecided'
  /** Plants on this bench stay unless no others are left. */
  readonly notFrom: BenchId | null
}

/**
 * Takes plants out of a step. If too few stand there, others must have come without its being said: they are
 * taken from the nearest other step of the batch, first those before, then those after. If the whole batch has
 * too few, the rest is found: what was seen at the bench is true, and the record was short.
 */
export function drawPlants(draft: Draft, draw: Draw): Drawn {
  const parts: Part[] = []
  let drawn: number
  if (draw.step === finishedStep) drawn = drawFinished(draft, draw.number, parts)
  else {
    const here = portionsIn(draft, draw.step)
    if (here.length > 1) here.sort(byAge(draw.notFrom))
    drawn = drawPortions(here, draw.number, draw.first, parts)
    sweep(draft)
  }
  if (drawn === draw.number) return { parts, stood: drawn, elsewhere: 0, found: 0 }
  return { ...drawBeyond(draft, { ...draw, number: draw.number - drawn }, parts), stood: drawn }
}

/** Takes plants of a step from some benches only, as many as stand there; gives how many. */
export function drawFromBenches(
  draft: Draft,
  step: StepId,
  want: number,
  first: Draw['first'],
  from: (bench: BenchId | null) => boolean,
  parts: Part[],
): number {
  if (step === finishedStep) return drawFinished(draft, want, parts, from)
  const portions = portionsIn(draft, step).filter(({ bench }) => from(bench))
  portions.sort(byAge(null))
  const drawn = drawPortions(portions, want, first, parts)
  sweep(draft)
  return drawn
}

/** The part of a draw that does not stand where the entry says. */
export function drawBeyond(draft: Draft, draw: Draw, parts: Part[] = []): Omit<Drawn, 'stood'> {
  const elsewhere = drawElsewhere(draft, draw, parts)
  const found = draw.number - elsewhere
  if (found > 0) {
    draft.found += found
    if (draw.step !== finishedStep) outcomeOf(draft, draw.step, draw.on).found += found
    const bench = parts[0]?.bench ?? null
    parts.push({ bench, since: draw.on, number: found, taken: 0, countedOn: null, grade: '' })
  }
  sweep(draft)
  return { parts, elsewhere, found }
}

const sweep = (draft: Draft): void => {
  for (const { number } of draft.portions) {
    if (number > 0) continue
    draft.portions = draft.portions.filter(portion => portion.number > 0)
    return
  }
}

const byAge = (notFrom: BenchId | null) => (a: DraftPortion, b: DraftPortion) =>
  Number(a.bench === notFrom && notFrom !== null) - Number(b.bench === notFrom && notFrom !== null) ||
  (a.since < b.since ? -1 : a.since > b.since ? 1 : (a.bench ?? '') < (b.bench ?? '') ? -1 : 1)

function drawPortions(
  portions: readonly DraftPortion[],
  want: number,
  first: Draw['first'],
  parts: Part[],
): number {
  let left = want
  const [only] = portions
  if (only && portions.length === 1) {
    const ready = Math.min(want, first === 'taken' ? only.taken : only.number - only.taken)
    const number = Math.min(want, only.number)
    if (number > 0) take(only, number, first === 'taken' ? ready : number - ready, parts)
    return number
  }
  // Across several portions, those that are to go first go first from each.
  const preferred = portions.map(portion => {
    const now = Math.min(left, first === 'taken' ? portion.taken : portion.number - portion.taken)
    left -= now
    return now
  })
  for (const [i, portion] of portions.entries()) {
    const ready = preferred[i]!
    const rest = Math.min(left, portion.number - ready)
    left -= rest
    const number = ready + rest
    if (number === 0) continue
    take(portion, number, first === 'taken' ? ready : rest, parts)
  }
  return want - left
}

function take(portion: DraftPortion, number: number, taken: number, parts: Part[]): void {
  portion.number -= number
  portion.taken -= taken
  const { bench, since, countedOn } = portion
  parts.push({ bench, since, number, taken, countedOn, grade: '' })
}

function drawFinished(
  draft: Draft,
  want: number,
  parts: Part[],
  from: (bench: BenchId | null) => boolean = () => true,
): number {
  let left = want
  for (const portion of draft.finishedPortions) {
    const now = from(portion.bench) ? Math.min(left, portion.number) : 0
    if (now === 0) continue
    portion.number -= now
    left -= now
    const { bench, since, grade } = portion
    parts.push({ bench, since, number: now, taken: 0, countedOn: null, grade })
  }
  draft.finishedPortions = draft.finishedPortions.filter(portion => portion.number > 0)
  draft.finished -= want - left
  return want - left
}

function drawElsewhere(draft: Draft, draw: Draw, parts: Part[]): number {
  const want = draw.number
  let left = want
  const others = draft.portions.filter(portion => portion.step !== draw.step)
  const distance = distanceFrom(draft, draw.step)
  others.sort((a, b) => distance(a.step) - distance(b.step) || byAge(null)(a, b))
  for (const portion of others) {
    if (left === 0) break
    const now = drawPortions([portion], left, draw.first, parts)
    const outcome = outcomeOf(draft, portion.step, draw.on)
    outcome.left += now
    outcome.lastLeft = draw.on
    left -= now
  }
  if (left > 0 && draw.step !== finishedStep) left -= drawFinished(draft, left, parts)
  if (left < want && draw.step !== finishedStep) {
    const outcome = outcomeOf(draft, draw.step, draw.on)
    outcome.entered += want - left
    outcome.unsaid += want - left
  }
  return want - left
}

/** How near another step is: first those before, the nearest first, then those after, then those not in the protocol. */
function distanceFrom(draft: Draft, step: StepId): (other: StepId) => number {
  const { steps } = draft
  const place = (id: StepId) => (id === finishedStep ? steps.length : steps.indexOf(id))
  const here = place(step)
  return other => {
    const there = place(other)
    if (there < 0 || here < 0) return 2 * steps.length + 2
    return there < here ? here - there : steps.length + there - here
  }
}
