import { toTable, type WeekPlanned, type WorkBatch, type WorkList } from '../../api/index.ts'
import type { Plan } from '../../planning/index.ts'
import { aliveIn, heldThings, type Nursery } from '../../record/index.ts'
import { onceForState } from './once-for-state.ts'
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
const batchesOf = (nursery: Nursery, tasks: readonly Task[]): readonly WorkBatch[] => {
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

interface Week extends WeekPlanned {
  readonly rows: readonly Task[]
}

/** A plan is never changed: what it asks for in a week is put together once. */
const weeks = new WeakMap<Plan, Map<string, Week>>()

const weekOf = (plan: Plan | null, week: string): Week => {
  if (plan === null) return { rows: [], tasks: toTable<Task>([]), starts: [] }
  const known = weeks.get(plan) ?? new Map<string, Week>()
  weeks.set(plan, known)
  const before = known.get(week)
  if (before !== undefined) return before
  const rows = plan.tasks.filter(task => task.week === week)
  const about = new Set(rows.map(({ start }) => start))
  const made = { rows, tasks: toTable(rows), starts: plan.starts.filter(({ id }) => about.has(id)) }
  known.set(week, made)
  return made
}

/**
 * What the latest plan asks for in a week, and which of it is done.
 * @param asked `known`: the mark of what the asker has already, which is then not sent again
 */
export const workList = (
  nursery: Nursery,
  plan: Plan | null,
  asked: { readonly week?: string | undefined; readonly known?: string | undefined },
  today: string,
): WorkList => {
  const week = asked.week ?? weekOfDayText(today)
  const mark = `${plan?.id ?? ''} ${week}`
  const list = lists(nursery, mark, () => wholeList(nursery, plan, week, mark))
  return asked.known === mark ? { ...list, planned: null } : list
}

const lists = onceForState<WorkList>()

const wholeList = (nursery: Nursery, plan: Plan | null, week: string, mark: string): WorkList => {
  const { rows, ...planned } = weekOf(plan, week)
  return {
    week,
    monday: mondayOf(week),
    mark,
    planned,
    batches: toTable(batchesOf(nursery, rows)),
    done: rows.flatMap(({ id }) => {
      const done = nursery.tasksDone.get(id)
      return done === undefined ? [] : [{ task: id, entry: done.entry, number: done.number }]
    }),
    stopped: rows.filter(stoppedByHolds(nursery, plan)).map(task => task.id),
    accepted: plan !== null && nursery.acceptedPlan?.plan === plan.id,
  }
}
