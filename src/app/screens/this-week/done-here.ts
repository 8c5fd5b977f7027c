import type { Body, Entry } from '../../../record/index.ts'
import { struckHere } from '../../data/struck-here.ts'

type TaskDone = Extract<Body, { readonly kind: 'task-done/1' | 'task-done/2' }>

export const isTaskDone = (body: Body): body is TaskDone =>
  body.kind === 'task-done/1' || body.kind === 'task-done/2'

/** Tasks that these entries say are done, without those that they take back: to how many, null where that is not said. */
export const doneHere = (entries: readonly Entry[]): ReadonlyMap<string, number | null> => {
  const struck = struckHere(entries)
  return new Map(
    entries.flatMap(({ id, body }) =>
      isTaskDone(body) && !struck.has(id)
        ? [[body.task, body.kind === 'task-done/2' ? body.number : null] as const]
        : [],
    ),
  )
}
