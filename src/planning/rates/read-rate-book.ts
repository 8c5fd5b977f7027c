import type { Nursery } from '../../record/index.ts'
import { dayNumber } from '../../science/index.ts'
import { type RateBook, rateBook, type SeenDays, type SeenStep } from './rate-book.ts'

/** The rates that a nursery plans with on a day: its protocols' figures, what its batches did, what it has set. */
export function readRateBook(nursery: Nursery, today: string): RateBook {
  const steps: SeenStep[] = []
  const days: SeenDays[] = []
  for (const batch of nursery.batches.values())
    for (const outcome of batch.outcomes) {
      if (!outcome.closed || outcome.entered === 0 || outcome.firstEntered > today) continue
      const { step, entered, left } = outcome
      const row = { protocol: batch.protocol, step, kind: batch.kind, closed: true }
      steps.push({ ...row, entered, survived: Math.min(left, entered) })
      if (outcome.lastLeft !== null)
        days.push({ ...row, days: dayNumber(outcome.lastLeft) - dayNumber(outcome.firstEntered) })
    }
  return rateBook({ steps, days, set: nursery.rateSets.filter(set => set.on <= today) })
}
