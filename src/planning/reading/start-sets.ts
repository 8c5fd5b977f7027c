import type { Nursery } from '../../record/index.ts'
import { weekNumber } from '../../science/index.ts'
import type { KindId, ProtocolId } from '../../trade/index.ts'
import { seasonWeeks } from './weeks.ts'

interface Said {
  readonly kind: KindId
  readonly protocol: ProtocolId
  readonly week: string
}

/** The starts that the nursery fixed itself and that are still to come, and which starts of a plan they stand for. */
export function readStartSets(nursery: Nursery, firstWeek: number, weeks: number) {
  const replaced = new Set(nursery.startSets.map(({ insteadOf }) => insteadOf))
  const set = nursery.startSets
    .map(start => ({
      kind: start.kind,
      protocol: start.protocol,
      week: weekNumber(start.week) - firstWeek,
      number: start.number - begunSince(nursery, start),
    }))
    .filter(({ week, number }) => week >= 0 && week < weeks && number > 0)
  return { set, isReplaced: (start: string) => replaced.has(start) }
}

/** Plants of a start that are begun already: batches of its kind and protocol begun in its week. */
export function begunSince(nursery: Nursery, { kind, protocol, week: weekText }: Said): number {
  const week = weekNumber(weekText)
  let begun = 0
  for (const batch of nursery.batches.values())
    if (
      batch.kind === kind &&
      batch.protocol === protocol &&
      batch.splitFrom === null &&
      seasonWeeks(batch.startedOn, 0).first === week
    )
      begun += batch.number
  return begun
}
