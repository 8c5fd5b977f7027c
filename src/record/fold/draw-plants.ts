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
  const { step, number, first, notFrom } = draw
  let parts: readonly Part[]
  if (step === finishedStep) parts = drawFinished(draft, number)
  else {
    parts = drawPortions(byAge(portionsIn(draft, step), notFrom), number, first)
    sweep(draft)
  }
  const stood = numberIn(parts)
  if (stood === number) return { parts, stood, elsewhere: 0, found: 0 }
  const beyond = drawBeyond(draft, { ...draw, number: number - stood }, parts[0]?.bench)
  return { ...beyond, parts: [...parts, ...beyond.parts], stood }
}

/** Takes plants of a step from some benches only, as many as stand there. */
export function drawFromBenches(
  draft: Draft,
  step: StepId,
  want: number,
  first: Draw['first'],
  from: (bench: BenchId | null) => boolean,
): readonly Part[] {
  if (step === finishedStep) return drawFinished(draft, want, from)
  const portions = portionsIn(draft, step).filter(({ bench }) => from(bench))
  const parts = drawPortions(byAge(portions, null), want, first)
  sweep(draft)
  return parts
}

/**
 * The part of a draw that does not stand where the entry says.
 * @param bench where plants are found, if all others of the draw came from there
 */
export function drawBeyond(draft: Draft, draw: Draw, bench?: BenchId | null): Omit<Drawn, 'stood'> {
  const { step, on } = draw
  const parts = drawElsewhere(draft, draw)
  const elsewhere = numberIn(parts)
  const found = draw.number - elsewhere
  if (found > 0) {
    draft.found += found
    if (step !== finishedStep) outcomeOf(draft, step, on).found += found
    const onto = bench === undefined ? (parts[0]?.bench ?? null) : bench
    parts.push({ bench: onto, since: on, number: found, taken: 0, countedOn: null, grade: '' })
  }
  sweep(draft)
  return { parts, elsewhere, found }
}

export function numberIn(parts: readonly Part[]): number {
  let number = 0
  for (const part of parts) number += part.number
  return number
}

const sweep = (draft: Draft): void => {
  for (const { number } of draft.portions) {
    if (number > 0) continue
    draft.portions = draft.portions.filter(portion => portion.number > 0)
    return
  }
}

/** The oldest first; those on a bench that plants are not to come from, last. */
function compareAge(a: DraftPortion, b: DraftPortion, notFrom: BenchId | null): number {
  if (notFrom !== null && (a.bench === notFrom) !== (b.bench === notFrom)) return a.bench === notFrom ? 1 : -1
  if (a.since !== b.since) return a.since < b.since ? -1 : 1
  return (a.bench ?? '') < (b.bench ?? '') ? -1 : 1
}

/** Puts them in order, by insertion: they are few, and most often in order already. */
function byAge(portions: DraftPortion[], notFrom: BenchId | null): DraftPortion[] {
  for (let i = 1; i < portions.length; i++) {
    const portion = portions[i]!
    let place = i
    for (; place > 0 && compareAge(portions[place - 1]!, portion, notFrom) > 0; place--) {
      portions[place] = portions[place - 1]!
    }
    portions[place] = portion
  }
  return portions
}

/** Those that are to go first go first from each portion, then others. */
function drawPortions(
  portions: readonly DraftPortion[],
  want: number,
  first: Draw['first'],
): readonly Part[] {
  let ready = 0
  for (const portion of portions) ready += readyIn(portion, first)
  ready = Math.min(want, ready)
  let others = want - ready
  let parts: readonly Part[] = none
  for (const portion of portions) {
    const readyHere = Math.min(ready, readyIn(portion, first))
    const othersHere = Math.min(others, portion.number - readyHere)
    ready -= readyHere
    others -= othersHere
    if (readyHere + othersHere === 0) continue
    const part = take(portion, readyHere + othersHere, first === 'taken' ? readyHere : othersHere)
    // Most draws give one part: a list made by pushing onto an empty one has room for seventeen.
    parts = parts === none ? [part] : [...parts, part]
  }
  return parts
}

const none: readonly Part[] = []

const readyIn = ({ number, taken }: DraftPortion, first: Draw['first']): number =>
  first === 'taken' ? taken : number - taken

function take(portion: DraftPortion, number: number, taken: number): Part {
  portion.number -= number
  portion.taken -= taken
  const { bench, since, countedOn } = portion
  return { bench, since, number, taken, countedOn, grade: '' }
}

function drawFinished(
  draft: Draft,
  want: number,
  from: (bench: BenchId | null) => boolean = () => true,
): readonly Part[] {
  const parts: Part[] = []
  let left = want
  for (const portion of draft.finishedPortions) {
    const number = from(portion.bench) ? Math.min(left, portion.number) : 0
    if (number === 0) continue
    portion.number -= number
    left -= number
    const { bench, since, grade } = portion
    parts.push({ bench, since, number, taken: 0, countedOn: null, grade })
  }
  draft.finishedPortions = draft.finishedPortions.filter(portion => portion.number > 0)
  draft.finished -= want - left
  return parts
}

function drawElsewhere(draft: Draft, draw: Draw): Part[] {
  const { step, on, first } = draw
  const parts: Part[] = []
  let left = draw.number
  const others = draft.portions.filter(portion => portion.step !== step)
  const distance = distanceFrom(draft, step)
  others.sort((a, b) => distance(a.step) - distance(b.step) || compareAge(a, b, null))
  for (const portion of others) {
    if (left === 0) break
    const drawn = drawPortions([portion], left, first)
    const outcome = outcomeOf(draft, portion.step, on)
    outcome.left += numberIn(drawn)
    outcome.lastLeft = on
    left -= numberIn(drawn)
    parts.push(...drawn)
  }
  if (step === finishedStep) return parts
  if (left > 0) parts.push(...drawFinished(draft, left))
  const came = numberIn(parts)
  if (came > 0) {
    const outcome = outcomeOf(draft, step, on)
    outcome.entered += came
    outcome.unsaid += came
  }
  return parts
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
