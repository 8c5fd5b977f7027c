import { rowsOf, type WeekWork, type WorkBatch } from '../../../api/index.ts'
import type { PlannedStart } from '../../../planning/index.ts'
import type { Entry } from '../../../record/index.ts'
import { struckHere } from '../../data/struck-here.ts'
import { doneHere } from './done-here.ts'

/** `waiting`: done, and not yet at the office. `stopped`: a hold forbids it. */
export type TaskState = 'open' | 'stopped' | 'waiting' | 'done'

/** What the lines of a week's work rest on, looked up once for all of them. */
export interface TaskGround {
  readonly stateOf: (task: string) => TaskState
  /** To how many it was done; null where it is not done, or nobody said so. */
  readonly numberDone: (task: string) => number | null
  readonly start: (id: string | null) => PlannedStart | undefined
  readonly batch: (id: string | null) => WorkBatch | undefined
  /** Batches with finished plants of a kind that may be sent out, the oldest first. */
  readonly finished: (kind: string | null) => readonly WorkBatch[]
}

/**
 * @param lately entries of this device that the office took, which its list may not show yet
 * @param waiting entries of this device that the office does not have
 */
export const taskGround = (
  list: WeekWork,
  lately: readonly Entry[],
  waiting: readonly Entry[],
): TaskGround => {
  const struck = struckHere([...lately, ...waiting])
  const here = doneHere([...lately, ...waiting])
  const took = doneHere(lately)
  const done = new Map(
    list.done.flatMap(({ task, entry, number }) => (struck.has(entry) ? [] : [[task, number] as const])),
  )
  const stopped = new Set(list.stopped)
  const starts = new Map(list.planned.starts.map(start => [start.id, start]))
  const rows = rowsOf(list.batches)
  const batches = new Map<string | null, WorkBatch>(rows.map(batch => [batch.id, batch]))
  return {
    stateOf: task =>
      done.has(task) || (here.has(task) && took.has(task))
        ? 'done'
        : here.has(task)
          ? 'waiting'
          : stopped.has(task)
            ? 'stopped'
            : 'open',
    numberDone: task => here.get(task) ?? done.get(task) ?? null,
    start: id => (id === null ? undefined : starts.get(id)),
    batch: id => batches.get(id),
    finished: kind =>
      rows
        .filter(batch => batch.kind === kind && batch.finished > 0 && !batch.onHold)
        .sort((a, b) => a.startedOn.localeCompare(b.startedOn)),
  }
}
