import { requireWhole, requireWithin } from '../bounds.ts'

/** One look over a batch: all that had taken and all that were dead by that day, since the start. */
export interface Look {
  /** Days (or degree-days) since the batch was worked. */
  readonly day: number
  readonly taken: number
  readonly dead: number
}

/** A batch of grafts or cuttings, looked at now and then. What is neither taken nor dead is undecided. */
export interface LookedAtBatch {
  readonly entered: number
  readonly looks: readonly Look[]
}

/** Plants decided between two looks, or (to = Infinity) still undecided at the last. */
export interface DecidedBetween {
  readonly after: number
  readonly to: number
  readonly outcome: 'taken' | 'dead' | 'undecided'
  readonly number: number
}

/**
 * What happened between the looks. Counts that fall back (a taken graft that died later, a miscount) count as nothing new.
 */
export function decidedBetween(batches: readonly LookedAtBatch[]): readonly DecidedBetween[] {
  const out: DecidedBetween[] = []
  for (const { entered, looks } of batches) {
    requireWhole('decidedBetween', 'entered', entered, 0)
    let day = 0
    let taken = 0
    let dead = 0
    for (const look of [...looks].sort((a, b) => a.day - b.day)) {
      requireWithin('decidedBetween', 'day', look.day, 0, Number.MAX_VALUE)
      requireWhole('decidedBetween', 'taken', look.taken, 0, entered)
      requireWhole('decidedBetween', 'dead', look.dead, 0, entered - look.taken)
      if (look.taken > taken)
        out.push({ after: day, to: look.day, outcome: 'taken', number: look.taken - taken })
      if (look.dead > dead) out.push({ after: day, to: look.day, outcome: 'dead', number: look.dead - dead })
      taken = Math.max(taken, look.taken)
      dead = Math.max(dead, look.dead)
      day = look.day
    }
    const undecided = entered - taken - dead
    if (undecided > 0 && looks.length > 0)
      out.push({ after: day, to: Number.POSITIVE_INFINITY, outcome: 'undecided', number: undecided })
  }
  return out.filter(({ after, to }) => to > after)
}
