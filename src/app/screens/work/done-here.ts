import type { Entry } from '../../../record/index.ts'

/** Tasks that these entries say are done, without those that they take back. */
export const doneHere = (entries: readonly Entry[]): ReadonlySet<string> => {
  const struck = new Set(entries.flatMap(({ body }) => (body.kind === 'struck/1' ? [body.entry] : [])))
  return new Set(
    entries.flatMap(({ id, body }) => (body.kind === 'task-done/1' && !struck.has(id) ? [body.task] : [])),
  )
}
