import type { Phrase, Work } from '../../trade/index.ts'
import type { Task } from '../plan.ts'

/** Tasks are written out for so many weeks from this one. */
export const WEEKS_AHEAD = 8

/** A task before anything is said of it. */
export const blankTask = {
  day: null,
  lacks: null,
  method: null,
  start: null,
  batch: null,
  order: null,
  step: null,
  kind: null,
  from: [] as Phrase[],
  bench: null,
  person: null,
  skill: null,
  minutes: 0,
  caution: null,
} as const

export function doneBy(work: Work, number: number): Partial<Task> {
  const minutes = work.minutesPerPlant.typical * number + work.minutesPerBatch
  return { skill: work.skill, minutes: Math.round(minutes), caution: work.caution ?? null }
}
