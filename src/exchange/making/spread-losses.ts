import { dayNumber, dayText } from '../../science/index.ts'
import type { Protocol, StepId } from '../../trade/index.ts'

/** What one step did to a batch of which only the beginning and the end are known. */
export interface StepGone {
  readonly step: StepId
  readonly left: number
  readonly dead: number
  /** When its plants went on. */
  readonly until: string
}

/**
 * Shares the known loss out over the steps that a batch went through, as the protocol expects it: of a survival S over
 * all, step k takes S to the power log(s_k) / Σ log(s). The product is right, and so is what rates learn of the whole.
 * Days are shared out in the proportion of the protocol's usual days.
 * @example of 200 started and 100 alive, steps that usually keep 0.5 and 1: the first loses all hundred
 */
export function spreadLosses(
  steps: Protocol['steps'],
  started: number,
  alive: number,
  from: string,
  to: string,
): StepGone[] {
  const losses = steps.map(({ survival }) => -Math.log(Math.max(1e-6, survival.typical)))
  const allLoss = losses.reduce((sum, loss) => sum + loss, 0)
  const allDays = steps.reduce((sum, { days }) => sum + days.typical, 0)
  const span = Math.max(0, dayNumber(to) - dayNumber(from))
  const logKept = alive === 0 ? Number.NEGATIVE_INFINITY : Math.log(alive / started)
  let lossSoFar = 0
  let daysSoFar = 0
  let standing = started
  return steps.map((step, at) => {
    lossSoFar += losses[at]!
    daysSoFar += step.days.typical
    const share = allLoss === 0 ? 1 : lossSoFar / allLoss
    const isLast = at === steps.length - 1
    const left = isLast
      ? alive
      : Math.min(standing, Math.max(alive, Math.round(started * keptAt(logKept, share))))
    const dead = standing - left
    standing = left
    const part = allDays === 0 ? 1 : daysSoFar / allDays
    return {
      step: step.id,
      left,
      dead,
      until: isLast ? to : dayText(dayNumber(from) + Math.round(span * part)),
    }
  })
}

/** Where all died, those steps that usually lose nothing lose nothing, and the last that does loses all. */
const keptAt = (logKept: number, share: number): number =>
  Number.isFinite(logKept) ? Math.exp(logKept * share) : share >= 1 ? 0 : 1 - share
