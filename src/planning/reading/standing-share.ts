import type { Portion } from '../../record/index.ts'
import type { CourseStep } from '../season.ts'

/** Of those that took once, a quarter of the step's losses are still to come. Our choice, no source. */
const LOSSES_AFTER_TAKING = 0.25

/**
 * The Beta for the share of the plants standing in a step that will leave it alive, given what was counted.
 * Never counted: the share of the step. Counted: those seen to have taken keep only a small part of the step's risk;
 * those not yet to tell take later with the chance p(1 − f) / (p(1 − f) + 1 − p), f being the part of the step's time
 * that is over and taking being equally likely at any time of it. The counts make it surer than a new batch's rate.
 * @example p = 0.8, half of the time over, 60 taken and 40 undecided: (60 · 0.946 + 40 · 0.667) / 100 = 0.834
 */
export function standingShare(
  step: Pick<CourseStep, 'alpha' | 'beta' | 'medianDays'>,
  portion: Pick<Portion, 'number' | 'taken' | 'countedOn'>,
  daysIn: number,
): { alpha: number; beta: number } {
  const { alpha, beta, medianDays } = step
  if (portion.countedOn === null || portion.number <= 0) return { alpha, beta }
  const p = alpha / (alpha + beta)
  const over = medianDays > 0 ? Math.min(1, daysIn / medianDays) : 1
  const taken = Math.min(portion.taken, portion.number)
  const undecided = portion.number - taken
  const later = (p * (1 - over)) / (p * (1 - over) + 1 - p)
  const mean = (taken * p ** LOSSES_AFTER_TAKING + undecided * later) / portion.number
  const kept = Math.min(Math.max(mean, 1e-6), 1 - 1e-6)
  const precision = (alpha + beta) * (1 + (3 * taken) / portion.number)
  return { alpha: kept * precision, beta: (1 - kept) * precision }
}
