import type { BenchId } from '../../trade/index.ts'
import type { BodyOf, Entry } from '../entry.ts'
import { raise } from '../query.ts'
import type { Draft } from './batch-draft.ts'
import * as rules from './batch-rules.ts'
import { addSources } from './sources.ts'

/** Everything that happens to one batch alone, and not between batches. */
export function tell(draft: Draft, entry: Entry, around: rules.Surroundings): void {
  const { body, on } = entry
  switch (body.kind) {
    case 'counted/1':
      rules.count(draft, entry, body, around)
      return
    case 'lost/1':
      rules.lose(draft, entry, body, around)
      return
    case 'advanced/1':
      checkBench(draft, entry, body.bench, around)
      rules.advance(draft, entry, body, around)
      return
    case 'finished/1':
      rules.finish(draft, entry, body.number, body.grade, around)
      return
    case 'moved/1':
      checkBench(draft, entry, body.to, around)
      rules.move(draft, entry, body.step, body.number, body.to, around)
      return
    case 'measured/1':
      rules.checkStep(draft, entry, body.step, around)
      draft.calipers.push({ entry: entry.id, on, step: body.step, calipersMm: body.calipersMm })
      return
    case 'graded/1':
      rules.grade(draft, entry, body, around)
      return
    case 'potted-on/1':
      rules.checkStep(draft, entry, body.step, around)
      draft.pottings.push({
        entry: entry.id,
        on,
        step: body.step,
        number: body.number,
        potLitres: body.potLitres,
      })
      return
    case 'reworked/1':
      rules.rework(draft, entry, body, around)
      addSources(draft, entry, body.sources, false, around)
      return
    case 'name-settled/1':
      rules.settleName(draft, entry, body, around)
      return
    case 'dispatched/1':
      dispatch(draft, entry, body, around)
      return
    case 'returned/1':
      rules.comeBack(draft, entry, body, around)
  }
}

/** Asks about a bench that no one has entered. */
export function checkBench(
  draft: Draft,
  entry: Entry,
  bench: BenchId | null,
  around: rules.Surroundings,
): void {
  if (bench === null || around.registers.bench(bench)) return
  around.query(rules.ask(draft, entry, 'unknown-bench', { bench }))
}

function dispatch(
  draft: Draft,
  entry: Entry,
  body: BodyOf<'dispatched/1'>,
  around: rules.Surroundings,
): void {
  const { number, order: id, to } = body
  rules.takeFinished(draft, entry, number, 'went out', around)
  draft.dispatched.push({ entry: entry.id, order: id, to, on: entry.on, number })
  const order = id === null ? undefined : around.registers.order(id)
  if (!order || order.kind === draft.kind || order.instead.some(other => other.kind === draft.kind)) return
  const facts = { batch: draft.name, number, order: order.id, kind: draft.kind, wanted: order.kind }
  around.query(raise(entry.id, 'not-what-was-ordered', { batch: draft.id, order: order.id }, facts))
}
