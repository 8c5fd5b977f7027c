import type { StepId } from '../../trade/index.ts'
import type { BodyOf, Entry } from '../entry.ts'
import { type Draft, finishedStep, newDraft, outcomeOf, putDown, putFinished } from './batch-draft.ts'
import { ask, type Surroundings } from './batch-rules.ts'
import type { Part } from './draw-plants.ts'

/** A batch split off goes on from where its parent stood. */
export function splitChild(
  parent: Draft,
  { id: entry, on }: Entry,
  body: BodyOf<'split/1'>,
  parts: readonly Part[],
): Draft {
  const begin = {
    name: body.name,
    kindOfTree: parent.kind,
    protocol: parent.protocol,
    workedBy: parent.workedBy,
    candidates: parent.candidates,
  }
  const child = newDraft(body.into, begin, entry, parent.startedOn, body.number, parent.steps)
  child.splitFrom = parent.id
  child.nucellar = parent.nucellar
  child.settledAs = parent.settledAs
  const { number } = body
  child.origins.push({ entry, on, from: 'batch', id: parent.id, as: 'rest', number, atBirth: true })
  receive(child, on, body.step, parts)
  return child
}

/** Plants of one batch are put with another. */
export function join(
  into: Draft,
  from: Draft,
  entry: Entry,
  step: StepId,
  parts: readonly Part[],
  around: Surroundings,
): void {
  const number = parts.reduce((sum, part) => sum + part.number, 0)
  const { id, on } = entry
  into.joinedIn += number
  receive(into, on, step, parts)
  into.origins.push({ entry: id, on, from: 'batch', id: from.id, as: 'joined', number, atBirth: false })
  if (into.kind !== from.kind) {
    around.query(ask(into, entry, 'kinds-mixed', { number, kind: into.kind, other: from.kind }))
  }
}

/** Plants that came over from another batch stand as they stood there. */
export function receive(draft: Draft, on: string, step: StepId, parts: readonly Part[]): void {
  let came = 0
  for (const { bench, since, number, taken, countedOn, grade } of parts) {
    came += number
    if (step === finishedStep) putFinished(draft, { bench, grade, since, number })
    else putDown(draft, { step, bench, since, number, taken, countedOn })
  }
  if (step === finishedStep) return
  const outcome = outcomeOf(draft, step, on, parts[0]?.bench ?? null)
  outcome.entered += came
  outcome.cameAcross += came
}
