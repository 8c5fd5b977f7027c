import { betaQuantile, stillToTake } from '../../science/index.ts'
import type { TakeTiming } from './take-curve-of.ts'

/** What is expected of those that were undecided at a look. */
export interface StillToCome {
  /** Chance that any one of them still takes. */
  readonly chance: number
  /** How many of them do; nine cases of ten lie from low to high, the spread of the batch's own share alone. */
  readonly mean: number
  readonly low: number
  readonly high: number
}

/**
 * How many of the undecided still take: the batch's own share is learnt from what was expected of it and from its count,
 * and those that take had so long a time to show it.
 * @param expected Beta of the step's share before it was counted
 * @param day days since the batch entered the step
 * @example half of the takers to come, nothing known of the share, one graft: chance 1/3
 */
export function undecidedThatTake(
  timing: Pick<TakeTiming, 'toTake' | 'toDie'>,
  expected: { readonly alpha: number; readonly beta: number },
  day: number,
  counted: { readonly taken: number; readonly dead: number; readonly undecided: number },
): StillToCome {
  const { chance, alpha, beta } = stillToTake({ curve: timing, expected, day, ...counted })
  const { undecided } = counted
  return {
    chance,
    mean: undecided * chance,
    low: undecided * betaQuantile(0.05, alpha, beta),
    high: undecided * betaQuantile(0.95, alpha, beta),
  }
}
