import type { Task } from '../../../planning/index.ts'
import { routines } from './routines.ts'
import type { WorkDay, WorkPlace } from './walking-order.ts'

/** One line of a day's sheet. */
export type DayRow =
  | { readonly is: 'place'; readonly key: string; readonly place: WorkPlace }
  | { readonly is: 'routine'; readonly key: string; readonly tasks: readonly Task[] }
  | { readonly is: 'task'; readonly key: string; readonly task: Task; readonly ofRoutine: boolean }

/** A day's places and tasks one below the other; the batches of a routine only where it is open. */
export const dayRows = ({ places }: WorkDay, open: ReadonlySet<string>): readonly DayRow[] =>
  places.flatMap((place): DayRow[] => {
    const at = place.isAtMothers ? 'mothers' : (place.bench ?? '')
    return [
      { is: 'place', key: `place ${at}`, place },
      ...routines(place.tasks).flatMap((tasks): DayRow[] => {
        const first = tasks[0]!
        if (tasks.length === 1) return [{ is: 'task', key: first.id, task: first, ofRoutine: false }]
        const key = `routine ${first.id}`
        const each = open.has(key)
          ? tasks.map((task): DayRow => ({ is: 'task', key: task.id, task, ofRoutine: true }))
          : []
        return [{ is: 'routine', key, tasks }, ...each]
      }),
    ]
  })
