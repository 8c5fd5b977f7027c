import type { Nursery } from '../../record/index.ts'
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
  const rows = seenSteps(nursery, today)
  const endedOn = endsOf(nursery)
  const from = dayNumber(today) - WATCHED_DAYS
  const endOf = ({ batch, step }: (typeof rows)[number]) =>
    endedOn.get(`${batch}\n${step}`) ?? Number.NEGATIVE_INFINITY
  const late = rows.filter(row => endOf(row) > from)
  if (late.length === 0 || late.length === rows.length) return []
  const before = learntSurvival(
    rows.filter(row => endOf(row) <= from),
    nursery.protocols,
  )
  return [...grouped(late, ({ protocol, step }) => `${protocol}\n${step}`).values()].flatMap(group => {
    const watched = group
      .flatMap(row => {
        const expected = before.share(row)
        return expected === null
          ? []
          : [{ row, ended: endOf(row), alpha: expected.alpha, beta: expected.beta }]
      })
      .sort((a, b) => a.ended - b.ended || (a.row.batch < b.row.batch ? -1 : 1))
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

/** The day on which the last plant left each step of each batch, or was lost from it. */
const endsOf = (nursery: Nursery): ReadonlyMap<string, number> => {
  const ends = new Map<string, number>()
  for (const { id, outcomes, losses } of nursery.batches.values()) {
    const tell = (step: StepId, on: string) => {
      const key = `${id}\n${step}`
      ends.set(key, Math.max(ends.get(key) ?? Number.NEGATIVE_INFINITY, dayNumber(on)))
    }
    for (const { step, lastLeft } of outcomes) if (lastLeft !== null) tell(step, lastLeft)
    for (const { step, on } of losses) tell(step, on)
  }
  return ends
}
