import { dayNumber, dayText } from '../../science/index.ts'
import {
  bad,
  known,
  made,
  numberIn,
  type RowOutcome,
  type RowTold,
  type SheetRow,
  textIn,
} from '../reading/sheet-row.ts'
import { batchSaid, earlierOf, isThere, tellStart, tellStep } from './batch-said.ts'
import { kindOfRow } from './kind-of-row.ts'
import type { Making } from './making.ts'
import { spreadLosses } from './spread-losses.ts'

/** A batch of a season gone by. Nothing of it stands any more; what it tells is how many came through. */
export function takePast(making: Making, row: SheetRow, told: RowTold): RowOutcome {
  const started = numberIn(row, 'started') ?? 0
  const alive = numberIn(row, 'alive') ?? 0
  const taken = numberIn(row, 'taken')
  const startedOn = textIn(row, 'startedOn')!
  if (started < 1) return bad('started', 'a batch begins with at least one plant')
  if (alive < 0 || alive > started) return bad('alive', `of ${started} begun, ${alive} cannot be alive`)
  if (isThere(making, row)) return known
  const named = kindOfRow(making, row, told)
  if (named.kind === 'bad') return named
  const said = batchSaid(making, row, told, named.kindOfTree, started)
  if (said === null) return bad('tree', `no way to make ${named.kindOfTree.name} is known`)
  const { steps } = said.protocol
  const usual = steps.reduce((sum, { days }) => sum + days.typical, 0)
  const ended = textIn(row, 'aliveOn') ?? dayText(dayNumber(startedOn) + Math.round(usual))
  const endedOn = earlierOf(ended, making.today)
  if (endedOn < startedOn) return bad('aliveOn', 'it ended before it began')

  const isTakenUsed = taken !== null && taken >= alive && taken <= started && steps.length > 1
  if (taken !== null && !isTakenUsed && steps.length > 1)
    told.noted(
      'taken',
      `of ${started} begun and ${alive} alive in the end, ${taken} cannot have taken`,
      'taken as not said',
    )
  const first = dayText(
    Math.min(dayNumber(endedOn), dayNumber(startedOn) + Math.round(steps[0]!.days.typical)),
  )
  const gone = isTakenUsed
    ? [
        ...spreadLosses(steps.slice(0, 1), started, taken, startedOn, first),
        ...spreadLosses(steps.slice(1), taken, alive, first, endedOn),
      ]
    : spreadLosses(steps, started, alive, startedOn, endedOn)
  if (!isTakenUsed)
    making.assume(
      'losses shared out over steps',
      'Of past batches only the beginning and the end are known: their losses are shared out over the steps as the protocol expects them. The whole is right; a single step’s rate is as good as that guess.',
    )
  tellStart(making, said, startedOn, started)
  gone.forEach((one, nth) => {
    if (nth > 0 && gone[nth - 1]!.left === 0) return
    const next = steps[nth + 1]
    tellStep(making, said.batch, steps[nth]!, one, next === undefined ? null : { step: next.id, bench: null })
  })
  if (alive > 0)
    making.tell(endedOn, {
      kind: 'dispatched/1',
      batch: said.batch,
      order: null,
      number: alive,
      to: 'buyers of that time',
    })
  return made
}
