import type { Plan } from '../planning/index.ts'
import { type Entry, isKnown } from '../record/index.ts'
import type { NurseryMemory } from './nursery-memory.ts'

/** More than these are no news but a record taken over: the newest are not looked through for reasons. */
const LOOKED_THROUGH = 10_000

/** What came in since the plan that the next one will be compared with: the one accepted, else the one made last. */
export const newsSince = (memory: NurseryMemory, latest: Plan | null): readonly Entry[] => {
  const { acceptedPlan } = memory.nursery()
  const since = acceptedPlan ? memory.entry(acceptedPlan.entry)?.seq : latest?.throughSeq
  if (since === undefined) return []
  return memory.after(since, LOOKED_THROUGH).flatMap(entry => (isKnown(entry) ? [entry] : []))
}
