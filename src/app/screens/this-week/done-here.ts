import type { Entry } from '../../../record/index.ts'
import { struckHere } from '../../data/struck-here.ts'

/** Tasks that these entries say are done, without those that they take back. */
export const doneHere = (entries: readonly Entry[]): ReadonlySet<string> => {
  const struck = struckHere(entries)
  return new Set(
    entries.flatMap(({ id, body }) => (body.kind === 'task-done/1' && !struck.has(id) ? [body.task] : [])),
  )
}
