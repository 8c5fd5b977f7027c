import { capital, type Phrase, type Protocol, phrase } from '../../trade/index.ts'
import type { Task } from '../plan.ts'
import type { LiveBatch } from '../season.ts'
import { blankTask, doneBy, WEEKS_AHEAD } from './blank-task.ts'
import type { Job } from './give-days.ts'
import { type Planned, weekName } from './planned.ts'

/** A step of more days than this is counted when half of it is over, and again at its end. */
const LONG_STEP_DAYS = 21

/** Counting, care, moving on and finishing, for each portion of a living batch. */
export function batchJobs({ season, nursery }: Planned, live: LiveBatch): Job[] {
  const batch = nursery.batches.get(live.id)
  const protocol: Protocol | undefined = batch && nursery.protocols.get(batch.protocol)
  if (!batch || !protocol) return []
  const jobs: Job[] = []
  const about = { ...blankTask, batch: live.id, kind: batch.kind, method: protocol.method }
  for (const portion of live.portions) {
    const step = protocol.steps[portion.step]
    const timing = live.course.steps[portion.step]
    if (!step || !timing) continue
    const bench = batch.portions.find(p => p.step === step.id)?.bench ?? null
    const left = Math.max(0, timing.medianDays - portion.daysIn)
    const endWeek = Math.floor((3.5 + left) / 7)
    const expected = Math.round((portion.number * portion.alpha) / (portion.alpha + portion.beta))
    const at = (
      week: number,
      kindOfTask: Task['kindOfTask'],
      task: Phrase,
      more: Partial<Task> = {},
    ): Task => ({
      ...about,
      id: `${live.id}/${step.id}/${kindOfTask}/${weekName(season, week)}`,
      week: weekName(season, week),
      task,
      kindOfTask,
      step: step.id,
      number: portion.number,
      bench,
      ...more,
    })
    const count = (week: number) =>
      at(week, 'count', phrase('Count: {sign}, dead, not yet to tell', { sign: phrase(step.sign) }))
    const halfWeek = Math.floor((3.5 + timing.medianDays / 2 - portion.daysIn) / 7)
    if (timing.medianDays > LONG_STEP_DAYS && halfWeek >= 0 && halfWeek < Math.min(endWeek, WEEKS_AHEAD))
      jobs.push({ task: count(halfWeek) })
    for (let week = 0; week < Math.min(WEEKS_AHEAD, endWeek); week++)
      for (const work of step.work)
        if (work.when === 'each week')
          jobs.push({
            task: {
              ...at(week, 'work', phrase(capital(work.task)), doneBy(work, portion.number)),
              id: `${live.id}/${step.id}/work/${work.task}/${weekName(season, week)}`,
            },
            round: `${bench} ${work.task}`,
          })
    if (endWeek >= WEEKS_AHEAD) continue
    const next = protocol.steps[portion.step + 1]
    const [begin, ...others] = next?.work.filter(({ when }) => when === 'begin') ?? []
    const main = next
      ? at(
          endWeek,
          'advance',
          phrase('{step}: move to {place}', { step: phrase(next.name), place: phrase(next.place) }),
          {
            number: expected,
            ...(begin ? doneBy(begin, expected) : {}),
          },
        )
      : at(endWeek, 'finish', phrase('Grade and finish'), { number: expected })
    jobs.push({ task: main })
    for (const work of others)
      jobs.push({
        task: {
          ...at(endWeek, 'work', phrase(capital(work.task)), { number: expected, ...doneBy(work, expected) }),
          id: `${live.id}/${step.id}/begin/${work.task}`,
        },
        after: main.id,
      })
    let before = main.id
    for (const work of step.work.filter(({ when }) => when === 'end')) {
      const id = `${live.id}/${step.id}/end/${work.task}`
      jobs.push({
        task: {
          ...at(endWeek, 'work', phrase(capital(work.task)), doneBy(work, expected)),
          number: expected,
          id,
        },
        before,
      })
      before = id
    }
    jobs.push({ task: count(endWeek), before })
  }
  return jobs
}
