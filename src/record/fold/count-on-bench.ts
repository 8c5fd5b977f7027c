import type { BenchId, StepId } from '../../trade/index.ts'
import type { BodyOf, Entry } from '../entry.ts'
import { closeStays, type Draft, finishedStep, outcomeOf } from './batch-draft.ts'
import { ask, checkStep, type Surroundings, settle } from './batch-rules.ts'
import { drawBeyond, drawFromBenches, numberIn } from './draw-plants.ts'
import { checkBench } from './tell.ts'

type Line = BodyOf<'bench-counted/1'>['lines'][number]

/**
 * One line of a bench that was counted against the record: what was seen there is true. Fewer plants were lost by the
 * cause that was said of them, or are missing; more came from the batch's other benches and steps, or are found.
 */
export function countOnBench(
  draft: Draft,
  entry: Entry,
  bench: BenchId,
  line: Line,
  around: Surroundings,
): void {
  const { step, stood: said, counted, cause } = line
  checkStep(draft, entry, step, around)
  checkBench(draft, entry, bench, around)
  const stood = standingOn(draft, step, bench)
  if (counted < stood) takeAway(draft, entry, bench, line, stood - counted)
  if (counted > stood) {
    const draw = { step, on: entry.on, first: 'taken' as const, notFrom: null }
    const more = counted - stood
    const near = drawFromBenches(draft, step, more, 'taken', b => b !== bench)
    const { parts: beyond } = drawBeyond(draft, { ...draw, number: more - numberIn(near) })
    for (const part of [...near, ...beyond]) settle(draft, step, { ...part, bench })
  }
  if (stood !== said || (counted !== stood && cause === '')) {
    const facts = { step, bench: around.registers.bench(bench)?.name ?? bench, stood, said, counted }
    around.query(ask(draft, entry, 'bench-count-does-not-close', facts))
  }
  closeStays(draft, entry.on)
}

/** The cause was said of so many as were thought to be fewer; what is fewer beyond that is missing. */
function takeAway(draft: Draft, entry: Entry, bench: BenchId, line: Line, number: number): void {
  const { step, stood: said, counted, cause } = line
  const { on } = entry
  const lost = cause === '' ? 0 : Math.min(number, Math.max(0, said - counted))
  drawFromBenches(draft, step, number, 'undecided', b => b === bench)
  if (lost > 0) draft.losses.push({ entry: entry.id, on, step, number: lost, cause })
  draft.missing += number - lost
  if (step === finishedStep) return
  const outcome = outcomeOf(draft, step, on)
  outcome.lost += lost
  outcome.missing += number - lost
}

function standingOn(draft: Draft, step: StepId, bench: BenchId): number {
  const portions =
    step === finishedStep ? draft.finishedPortions : draft.portions.filter(p => p.step === step)
  return portions.reduce((sum, portion) => sum + (portion.bench === bench ? portion.number : 0), 0)
}
