import type { WorkList } from '../../api/index.ts'
import type { Plan } from '../../planning/index.ts'
import type { Nursery } from '../../record/index.ts'
import { mondayOf, weekOfDayText } from './week.ts'

/** What the latest plan asks for in a week, and which of it is done. */
export const workList = (
  nursery: Nursery,
  plan: Plan | null,
  week: string | undefined,
  today: string,
): WorkList => {
  const asked = week ?? weekOfDayText(today)
  const tasks = plan?.tasks.filter(task => task.week === asked) ?? []
  return {
    week: asked,
    monday: mondayOf(asked),
    tasks,
    done: tasks.filter(task => nursery.tasksDone.has(task.id)).map(task => task.id),
    accepted: plan !== null && nursery.acceptedPlan?.plan === plan.id,
  }
}
