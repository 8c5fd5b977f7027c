import type { Batch, Nursery } from '../../record/index.ts'
import { dayNumber, watchForSlump } from '../../science/index.ts'
import type { BatchId, ProtocolId, StepId } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import { learntSurvival } from '../rates/learnt-survival.ts'
import { seenSteps } from '../rates/read-rate-book.ts'

/** One step of one protocol that has been doing worse than before, and how likely something is wrong. */
export interface Slump {
  readonly protocol: ProtocolId
  readonly step: StepId
  /** The batch with which it most likely began, and how many have ended since, this one counted. */
  readonly since: BatchId
  readonly batches: number
  /** Chance that a slump is on, were one to begin once in a hundred batches. */
  readonly chance: number
  /** Odds of survival against those before. */
  readonly oddsRatio: number
}

/** What ended so lately is watched; what ended before says what was to be expected. Our choice. */
const WATCHED_DAYS = 182
const LIKELY = 0.5

/**
 * Steps whose batches of the last half-year fall below what all batches before them had let expect. With nothing
 * wrong, the alarm behind it sounds no more often than once in two hundred batches (see `watchForSlump`).
 */
export const slumps = (nursery: Nursery, today: string): readonly Slump[] => {
  const rows = seenSteps(nursery, today).map(row => ({
    ...row,
    ended: lastDay(nursery.batches.get(row.batch), row.step),
  }))
  const from = dayNumber(today) - WATCHED_DAYS
  const late = rows.filter(({ ended }) => ended > from)
  if (late.length === 0 || late.length === rows.length) return []
  const before = learntSurvival(
    rows.filter(({ ended }) => ended <= from),
    nursery.protocols,
  )
  return [...grouped(late, ({ protocol, step }) => `${protocol}\n${step}`).values()].flatMap(group => {
    const watched = group
      .flatMap(row => {
        const expected = before.share(row)
        return expected === null ? [] : [{ row, alpha: expected.alpha, beta: expected.beta }]
      })
      .sort((a, b) => a.row.ended - b.row.ended || (a.row.batch < b.row.batch ? -1 : 1))
    const last = watchForSlump(
      watched.map(({ row, alpha, beta }) => ({ entered: row.entered, survived: row.survived, alpha, beta })),
    ).at(-1)
    if (last === undefined || last.chance < LIKELY) return []
    const { protocol, step, batch } = watched[last.since]!.row
    return [
      {
        protocol,
        step,
        since: batch,
        batches: watched.length - last.since,
        chance: last.chance,
        oddsRatio: last.oddsRatio,
      },
    ]
  })
}

/** The day on which the last plant left the step of the batch, or was lost from it. */
function lastDay(batch: Batch | undefined, step: StepId): number {
  let last = ''
  for (const outcome of batch?.outcomes ?? [])
    if (outcome.step === step && outcome.lastLeft !== null && outcome.lastLeft > last) last = outcome.lastLeft
  for (const loss of batch?.losses ?? []) if (loss.step === step && loss.on > last) last = loss.on
  return last === '' ? Number.NEGATIVE_INFINITY : dayNumber(last)
}
