import { rowsOf, type WeekWork } from '../../../api/index.ts'

/** The task of this week that asks for a count of a step of a batch: who counts does it, whichever way they came. */
export const countAsked = (week: WeekWork | undefined, batch: string, step: string): string | null => {
  if (week === undefined) return null
  const done = new Set(week.done.map(({ task }) => task))
  const asks = rowsOf(week.planned.tasks).find(
    task => task.kindOfTask === 'count' && task.batch === batch && task.step === step && !done.has(task.id),
  )
  return asks?.id ?? null
}
