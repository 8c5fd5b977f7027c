import type { BatchView } from '../../api/index.ts'
import type { Plan } from '../../planning/index.ts'
import type { Batch, Nursery } from '../../record/index.ts'
import { dayNumber, dayText } from '../../science/index.ts'

type Task = Plan['tasks'][number]

/** What does not fit into a day of its week comes at the week's end. */
const order = ({ week, day }: Task): string => `${week} ${day ?? '~'}`

const byPlan = (nursery: Nursery, plan: Plan | null, batch: Batch): BatchView['next'] => {
  const [first] = (plan?.tasks ?? [])
    .filter(task => task.batch === batch.id && !nursery.tasksDone.has(task.id))
    .sort((a, b) => (order(a) < order(b) ? -1 : 1))
  if (first === undefined) return null
  const { task, week, day, number } = first
  return { by: 'plan', task, week, day, number }
}

/** The plants whose step is over first, if it takes what the protocol says is typical. */
const byProtocol = (nursery: Nursery, batch: Batch): BatchView['next'] => {
  const steps = nursery.protocols.get(batch.protocol)?.steps ?? []
  const ends = batch.portions.flatMap(({ step: id, since, number }) => {
    const step = steps.find(one => one.id === id)
    if (step === undefined || number <= 0) return []
    const days = Math.round(step.days.typical)
    return [{ step: id, on: dayText(dayNumber(since) + days), days, number }]
  })
  const [first] = ends.sort((a, b) => (a.on < b.on ? -1 : 1))
  if (first === undefined) return null
  const together = ends.filter(({ step, on }) => step === first.step && on === first.on)
  return { by: 'protocol', ...first, number: together.reduce((sum, { number }) => sum + number, 0) }
}

/** What is due next with a batch: the plan's first task that is not done, or else the end of the step that it stands in. */
export const nextOfBatch = (nursery: Nursery, plan: Plan | null, batch: Batch): BatchView['next'] =>
  byPlan(nursery, plan, batch) ?? byProtocol(nursery, batch)
