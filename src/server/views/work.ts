import type { WorkList } from '../../api/index.ts'
import type { Plan } from '../../planning/index.ts'
import { aliveIn, heldThings, type Nursery } from '../../record/index.ts'
import { mondayOf, weekOfDayText } from './week.ts'

type Task = Plan['tasks'][number]

/**
 * Whether a hold stops a task: a start or collecting from what is held, finishing any of it, or sending out more of a
 * kind than stands finished, or is finished in that week, in batches that are not held.
 */
const stoppedByHolds = (nursery: Nursery, plan: Plan | null): ((task: Task) => boolean) => {
  const { batches, mothers } = heldThings(nursery)
  const starts = new Map(plan?.starts.map(start => [start.id, start]))
  const sendable = ({ kind, week }: Task): number => {
    let number = 0
    for (const batch of nursery.batches.values())
      if (batch.kind === kind && !batches.has(batch.id)) number += batch.finished
    for (const task of plan?.tasks ?? [])
      if (task.kindOfTask === 'finish' && task.kind === kind && task.week === week)
        if (task.batch === null || !batches.has(task.batch)) number += task.number
    return number
  }
  const isHeldKind = (kind: Task['kind']) =>
    [...batches.keys()].some(id => {
      const batch = nursery.batches.get(id)
      return batch?.kind === kind && aliveIn(batch) > 0
    })
  return task => {
    const { kindOfTask, batch, kind, start: id } = task
    if (kindOfTask === 'finish') return batch !== null && batches.has(batch)
    if (kindOfTask === 'dispatch') return isHeldKind(kind) && sendable(task) < task.number
    const start = id === null ? undefined : starts.get(id)
    if (start === undefined || !['start', 'prepare', 'collect', 'work'].includes(kindOfTask)) return false
    return (
      start.mothers.some(({ mother }) => mothers.has(mother)) ||
      start.rootstocks.some(stock => stock.batch !== null && batches.has(stock.batch))
    )
  }
}

/** What is known of the batches of these tasks, and of those with finished plants of the kinds to be sent out. */
const batchesOf = (nursery: Nursery, tasks: readonly Task[]): WorkList['batches'] => {
  const about = new Set(tasks.map(({ batch }) => batch))
  const sent = new Set(tasks.flatMap(({ kindOfTask, kind }) => (kindOfTask === 'dispatch' ? [kind] : [])))
  const { batches: held } = heldThings(nursery)
  return [...nursery.batches.values()]
    .filter(({ id, kind, finished }) => about.has(id) || (finished > 0 && sent.has(kind)))
    .map(({ id, name, kind, protocol, startedOn, finished }) => ({
      id,
      name,
      kind,
      protocol,
      startedOn,
      finished,
      onHold: held.has(id),
    }))
}

/** What the latest plan asks for in a week, and which of it is done. */
export const workList = (
  nursery: Nursery,
  plan: Plan | null,
  week: string | undefined,
  today: string,
): WorkList => {
  const asked = week ?? weekOfDayText(today)
  const tasks = plan?.tasks.filter(task => task.week === asked) ?? []
  const starts = new Set(tasks.map(({ start }) => start))
  return {
    week: asked,
    monday: mondayOf(asked),
    tasks,
    starts: plan?.starts.filter(({ id }) => starts.has(id)) ?? [],
    batches: batchesOf(nursery, tasks),
    done: tasks.flatMap(({ id }) => {
      const done = nursery.tasksDone.get(id)
      return done === undefined ? [] : [{ task: id, entry: done.entry }]
    }),
    stopped: tasks.filter(stoppedByHolds(nursery, plan)).map(task => task.id),
    accepted: plan !== null && nursery.acceptedPlan?.plan === plan.id,
  }
}
