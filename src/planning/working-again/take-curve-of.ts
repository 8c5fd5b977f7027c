import type { Batch, Nursery } from '../../record/index.ts'
import { dayNumber, fitTakeCurve, type TakeCurve, timeFromLowHigh } from '../../science/index.ts'
import type { Protocol, Step } from '../../trade/index.ts'

/** When takers and the others of a step are seen to be so. */
export type TakeTiming = Pick<TakeCurve, 'toTake' | 'toDie'> & {
  /** Batches of the nursery behind it; 0 where the protocol's days alone are. */
  readonly batches: number
}

/** With fewer batches looked at than this, the protocol's days speak. Our choice, no source. */
const ENOUGH_BATCHES = 4
/**
 * Without looks of one's own: nine of ten that take show it between this part of the step's days and its end. Our choice,
 * no source. Nothing is said of when the others show that they are dead: they stay undecided to the end.
 */
const FIRST_TAKES = 1 / 3

/** When the plants of a step take, from the looks of all batches under the protocol; else from the step's days. */
export function takeTiming(nursery: Nursery, protocol: Protocol, step: Step): TakeTiming {
  const looked = [...nursery.batches.values()].flatMap(batch =>
    batch.protocol === protocol.id ? lookedAt(batch, step) : [],
  )
  const curve = looked.length >= ENOUGH_BATCHES ? fitTakeCurve(looked) : null
  if (curve) return { toTake: curve.toTake, toDie: curve.toDie, batches: looked.length }
  const days = Math.max(3, step.days.typical)
  return { toTake: timeFromLowHigh(days * FIRST_TAKES, days), toDie: null, batches: 0 }
}

/** Looks of a batch in a step: all taken and all dead by each. */
function lookedAt({ outcomes }: Batch, step: Step) {
  const outcome = outcomes.find(({ step: id }) => id === step.id)
  if (!outcome || outcome.looks.length === 0) return []
  const { entered, firstEntered, looks } = outcome
  let dead = 0
  return [
    {
      entered,
      looks: looks.map(look => {
        dead = Math.min(entered, dead + look.dead)
        return {
          day: Math.max(0, dayNumber(look.on) - dayNumber(firstEntered)),
          taken: Math.min(look.taken, entered - dead),
          dead,
        }
      }),
    },
  ]
}
