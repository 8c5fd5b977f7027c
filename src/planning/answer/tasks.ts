import { dayNumber, weekNumber } from '../../science/index.ts'
import { phrase } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { PlannedStart, Task } from '../plan.ts'
import { batchJobs } from './batch-jobs.ts'
import { blankTask, WEEKS_AHEAD } from './blank-task.ts'
import { giveDays, type Job } from './give-days.ts'
import { type Planned, weekName } from './planned.ts'
import type { MotherShare } from './share-mothers.ts'
import { startJobs } from './start-jobs.ts'
import { workWeek } from './work-diary.ts'

/**
 * What is to be done in the next weeks, by whom and on which day: before starts, starts, at the benches, and out of the
 * gate. What was ticked keeps its day and takes nobody's time.
 */
export function tasksOf(
  planned: Planned,
  starts: readonly PlannedStart[],
  shares: readonly MotherShare[],
): Task[] {
  const { season, nursery, today } = planned
  const ofBatches = season.batches.flatMap(batch => batchJobs(planned, batch))
  const jobs = [...startJobs(planned, starts, shares), ...ofBatches, ...dispatchJobs(planned, ofBatches)]
  const tasks = [...grouped(jobs, ({ task }) => task.week)].flatMap(([week, ofWeek]) => {
    const [done, open] = [true, false].map(is =>
      ofWeek.filter(({ task }) => nursery.tasksDone.has(task.id) === is),
    ) as [Job[], Job[]]
    return [
      ...done.map(({ task }) => ({ ...task, day: nursery.tasksDone.get(task.id)!.on })),
      ...giveDays(open, workWeek(nursery, weekNumber(week), dayNumber(today))),
    ]
  })
  return tasks.sort(
    (a, b) => compare(a.week, b.week) || compare(a.day ?? '~', b.day ?? '~') || orderOf(a) - orderOf(b),
  )
}

const compare = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1)
/** As the work of one day is done, one after the other. */
const kindsOfTask = ['prepare', 'collect', 'start', 'count', 'work', 'advance', 'finish', 'dispatch'] as const
const orderOf = ({ kindOfTask }: Task) => kindsOfTask.indexOf(kindOfTask)

/**
 * Trees that go out in the next weeks, once those of their kind that are finished in that week are. As many as were
 * ordered: the number planned for differs by the margin, and one that the margin plans for nothing goes out when it is due.
 */
function dispatchJobs({ season, solution, nursery, margins }: Planned, ofBatches: readonly Job[]): Job[] {
  const unplanned = season.orders.flatMap((order, o) =>
    margins.plannedNumber[o]! > 0.5
      ? []
      : [{ order: o, kind: order.kinds[0]!.kind, week: Math.max(0, order.dueWeek), number: order.number }],
  )
  const planned = solution.deliveries.flatMap(delivery => {
    const margin = margins.plannedNumber[delivery.order]!
    return margin > 0.5
      ? [{ ...delivery, number: (delivery.number * season.orders[delivery.order]!.number) / margin }]
      : []
  })
  const byOrder = grouped(
    [...planned, ...unplanned].filter(({ week }) => week < WEEKS_AHEAD),
    ({ order, week }) => `${order}\n${week}`,
  )
  return [...byOrder.values()].flatMap((of): Job[] => {
    const { order, week, kind } = of[0]!
    const id = season.orders[order]!.id
    const number = Math.round(of.reduce((sum, delivery) => sum + delivery.number, 0))
    if (number <= 0) return []
    const { id: kindId } = season.kinds[kind]!
    const finishing = ofBatches.findLast(
      ({ task }) =>
        task.kindOfTask === 'finish' && task.kind === kindId && task.week === weekName(season, week),
    )
    const asked = nursery.orders.get(id)?.order
    return [
      {
        task: {
          ...blankTask,
          id: `${id}/dispatch/${weekName(season, week)}`,
          week: weekName(season, week),
          task: phrase('Dispatch to {buyer}', { buyer: asked?.buyer ?? id }),
          kindOfTask: 'dispatch',
          order: id,
          kind: kindId,
          number,
        },
        ...(finishing ? { after: finishing.task.id } : {}),
        ...(asked ? { by: asked.due } : {}),
      },
    ]
  })
}
