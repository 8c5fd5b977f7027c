import type { Task } from '../../../planning/index.ts'
import { inEnglish } from '../../../trade/index.ts'

/** The same round made for many batches in one place is one thing to do; everything else stands alone. */
export const routines = (tasks: readonly Task[]): readonly (readonly Task[])[] => {
  const rounds = new Map<string, Task[]>()
  const groups: Task[][] = []
  for (const task of tasks) {
    const round = rounds.get(inEnglish(task.task))
    if (task.kindOfTask === 'work' && round !== undefined) {
      round.push(task)
      continue
    }
    const group = [task]
    if (task.kindOfTask === 'work') rounds.set(inEnglish(task.task), group)
    groups.push(group)
  }
  return groups
}
