import { finishedStep } from '../../record/index.ts'
import { dayNumber, dayText } from '../../science/index.ts'
import type { Protocol } from '../../trade/index.ts'
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
import { BEFORE, batchSaid, earlierOf, isThere, tellStart, tellStep } from './batch-said.ts'
import { kindOfRow } from './kind-of-row.ts'
import type { Making } from './making.ts'
import { spreadLosses } from './spread-losses.ts'
import { stepByWord } from './step-by-word.ts'

/** Plants that stand in the nursery today. Where it is known with how many they began, their losses teach. */
export function takeBatch(making: Making, row: SheetRow, told: RowTold): RowOutcome {
  const number = numberIn(row, 'number') ?? 0
  if (number < 1) return bad('number', 'none stand there')
  if (isThere(making, row)) return known
  const named = kindOfRow(making, row, told)
  if (named.kind === 'bad') return named
  const begun = numberIn(row, 'started')
  const started = begun !== null && begun >= number ? begun : null
  if (begun !== null && started === null)
    told.noted('started', 'more are alive than were begun with', 'taken as not said')
  const said = batchSaid(making, row, told, named.kindOfTree, started ?? number)
  if (said === null) return bad('tree', `no way to make ${named.kindOfTree.name} is known`)
  const countedOn = earlierOf(textIn(row, 'countedOn') ?? making.today, making.today)
  const startedOn = textIn(row, 'startedOn')
  if (startedOn !== null && startedOn > countedOn)
    return bad('startedOn', 'it was started after it was counted')

  const { steps } = said.protocol
  const at = stageOf(making, row, told, said.protocol, startedOn, countedOn)
  if (startedOn !== null && started !== null && at > 0) {
    const gone = spreadLosses(steps.slice(0, at), started, number, startedOn, countedOn)
    tellStart(making, said, startedOn, started)
    gone.forEach((one, nth) => {
      const next = steps[nth + 1]
      tellStep(
        making,
        said.batch,
        steps[nth]!,
        one,
        next === undefined ? null : { step: next.id, bench: said.bench },
      )
    })
    return made
  }
  if (at === 0) {
    tellStart(making, said, startedOn ?? countedOn, started ?? number)
    if (started !== null && started > number)
      making.tell(countedOn, {
        kind: 'lost/1',
        batch: said.batch,
        step: steps[0]!.id,
        number: started - number,
        cause: BEFORE,
      })
    return made
  }
  const usual = steps.slice(0, at).reduce((sum, { days }) => sum + days.typical, 0)
  const entered =
    startedOn === null
      ? countedOn
      : dayText(Math.min(dayNumber(countedOn), dayNumber(startedOn) + Math.round(usual)))
  tellStart(making, said, startedOn ?? countedOn, number, {
    step: steps[at]?.id ?? finishedStep,
    since: entered,
  })
  return made
}

/** Index of the step in which the plants stand; past the last for finished ones. Told by the stage, else by age. */
function stageOf(
  making: Making,
  row: SheetRow,
  told: RowTold,
  { steps, name }: Protocol,
  startedOn: string | null,
  countedOn: string,
): number {
  const said = textIn(row, 'stage')
  const found = said === null ? undefined : stepByWord(said, steps)
  if (found !== undefined) return found
  let left = startedOn === null ? 0 : dayNumber(countedOn) - dayNumber(startedOn)
  let at = 0
  while (at < steps.length && left >= steps[at]!.days.typical) left -= steps[at++]!.days.typical
  if (said !== null)
    told.noted('stage', `"${name}" has no such step`, `told by its age: ${steps[at]?.name ?? 'finished'}`)
  else
    making.assume(
      'stages told by age',
      'Where the stage of a batch is not said, it is told by its age and the usual days of its protocol; without a day of start it is taken as just begun.',
    )
  return at
}
