import { dayText, weekStart } from '../../science/index.ts'
import type { Protocol, Work } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { PlannedStart, Task } from '../plan.ts'
import type { LiveBatch } from '../season.ts'
import type { Hands } from './give-people.ts'
import { capital } from './limits.ts'
import { type Planned, startedNoun, weekName } from './planned.ts'
import type { MotherShare } from './share-mothers.ts'

/** Tasks are written out for so many weeks from this one. */
const WEEKS_AHEAD = 8
/** A step of more days than this is counted when half of it is over, and again at its end. */
const LONG_STEP_DAYS = 21

const nothing = {
  day: null,
  method: null,
  start: null,
  batch: null,
  order: null,
  step: null,
  kind: null,
  from: '',
  bench: null,
  person: null,
  skill: null,
  minutes: 0,
  caution: null,
} as const

/** What is to be done in the next weeks: before starts, starts, at the benches, and out of the gate. */
export function tasksOf(
  planned: Planned,
  starts: readonly PlannedStart[],
  shares: readonly MotherShare[],
  hands: Hands,
): Task[] {
  const tasks = [
    ...startTasks(planned, starts, shares, hands),
    ...planned.season.batches.flatMap(batch => batchTasks(planned, batch, hands)),
    ...dispatchTasks(planned),
  ]
  return tasks.sort((a, b) => (a.week === b.week ? orderOf(a) - orderOf(b) : a.week < b.week ? -1 : 1))
}

const kindsOfTask = ['prepare', 'collect', 'start', 'advance', 'count', 'work', 'finish', 'dispatch'] as const
const orderOf = ({ kindOfTask }: Task) => kindsOfTask.indexOf(kindOfTask)

function startTasks(
  planned: Planned,
  starts: readonly PlannedStart[],
  shares: readonly MotherShare[],
  hands: Hands,
): Task[] {
  const { season, nursery } = planned
  const sharesOf = grouped(shares, share => share.start)
  return starts.flatMap((start, s) => {
    const { week, way } = planned.starts[s]!
    const { protocol } = season.ways[way]!
    const about = { method: start.method, start: start.id, kind: start.kind }
    const tasks: Task[] = []
    protocol.before.forEach((preparation, p) => {
      const at = week - Math.ceil(preparation.daysBefore / 7)
      if (at < 0 || at >= WEEKS_AHEAD) return
      const minutes = preparation.minutesPerPlant.typical * start.number
      const given = hands.give(preparation.skill, at, minutes)
      tasks.push({
        ...nothing,
        ...about,
        id: `${start.id}/prepare/${p}`,
        week: weekName(season, at),
        day: dayText(weekStart(season.firstWeek + week) - preparation.daysBefore),
        task: capital(preparation.task),
        kindOfTask: 'prepare',
        number: start.number,
        person: given[0]?.person ?? null,
        skill: preparation.skill,
        minutes: Math.round(minutes),
        caution: preparation.caution ?? null,
      })
    })
    for (const [cut, of] of grouped(sharesOf.get(s) ?? [], share => share.week)) {
      if (cut >= WEEKS_AHEAD) continue
      for (const { mother, number, pool } of of)
        tasks.push({
          ...nothing,
          ...about,
          id: `${start.id}/collect/${mother}/${weekName(season, cut)}`,
          week: weekName(season, cut),
          task: `Collect ${season.pools[pool]!.material}`,
          kindOfTask: 'collect',
          number,
          from: nursery.mothers.get(mother)?.mother.name ?? mother,
        })
    }
    if (week < WEEKS_AHEAD) {
      const first = protocol.steps[0]!
      const act = first.work.find(({ when }) => when === 'begin')
      const noun = startedNoun(start.method, start.number)
      tasks.push({
        ...nothing,
        ...about,
        id: `${start.id}/start`,
        week: start.week,
        task: act ? capital(act.task) : `Begin ${noun}`,
        kindOfTask: 'start',
        step: first.id,
        number: start.number,
        from: sourcesSaid(planned, start),
        bench: start.bench,
        person: start.people[0]?.person ?? null,
        skill: start.people[0]?.skill ?? act?.skill ?? null,
        minutes: start.people.reduce((sum, { minutes }) => sum + minutes, 0),
        caution: act?.caution ?? protocol.cautions[0] ?? null,
      })
    }
    return tasks
  })
}

function sourcesSaid({ nursery }: Planned, { mothers, rootstocks }: PlannedStart): string {
  return [
    ...mothers.map(
      ({ mother, material, number }) =>
        `${number} ${material} of ${nursery.mothers.get(mother)?.mother.name ?? mother}`,
    ),
    ...rootstocks.map(({ kind, batch, number }) =>
      batch === null
        ? `${number} ${nursery.kinds.get(kind)?.name ?? kind}`
        : `${number} ${nursery.kinds.get(kind)?.name ?? kind} from batch ${nursery.batches.get(batch)?.name ?? batch}`,
    ),
  ].join('; ')
}

/** Counting, care, moving on and finishing, for each portion of a living batch. */
function batchTasks({ season, nursery }: Planned, live: LiveBatch, hands: Hands): Task[] {
  const batch = nursery.batches.get(live.id)
  const protocol: Protocol | undefined = batch && nursery.protocols.get(batch.protocol)
  if (!batch || !protocol) return []
  const tasks: Task[] = []
  const about = { batch: live.id, kind: batch.kind, method: protocol.method }
  for (const portion of live.portions) {
    const step = protocol.steps[portion.step]
    const timing = live.course.steps[portion.step]
    if (!step || !timing) continue
    const stands = batch.portions.find(p => p.step === step.id)
    const bench = stands?.bench ?? null
    const left = Math.max(0, timing.medianDays - portion.daysIn)
    const endWeek = Math.floor((3.5 + left) / 7)
    const expected = Math.round((portion.number * portion.alpha) / (portion.alpha + portion.beta))
    const at = (week: number, kindOfTask: Task['kindOfTask'], task: string, more: Partial<Task>): Task => ({
      ...nothing,
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
    const halfWeek = Math.floor((3.5 + timing.medianDays / 2 - portion.daysIn) / 7)
    if (timing.medianDays > LONG_STEP_DAYS && halfWeek >= 0 && halfWeek < Math.min(endWeek, WEEKS_AHEAD))
      tasks.push(at(halfWeek, 'count', `Count: ${step.sign}, dead, not yet to tell`, {}))
    for (let week = 0; week < Math.min(WEEKS_AHEAD, endWeek); week++)
      for (const work of step.work)
        if (work.when === 'each week')
          tasks.push(at(week, 'work', capital(work.task), doneBy(work, portion.number, week, hands)))
    if (endWeek >= WEEKS_AHEAD) continue
    tasks.push(at(endWeek, 'count', `Count: ${step.sign}, dead, not yet to tell`, {}))
    for (const work of step.work)
      if (work.when === 'end')
        tasks.push({
          ...at(endWeek, 'work', capital(work.task), doneBy(work, expected, endWeek, hands)),
          id: `${live.id}/${step.id}/end/${work.task}`,
        })
    const next = protocol.steps[portion.step + 1]
    if (!next) {
      tasks.push(at(endWeek, 'finish', 'Grade and finish', { number: expected }))
      continue
    }
    const begin = next.work.find(({ when }) => when === 'begin')
    tasks.push(
      at(endWeek, 'advance', `${next.name}: move to ${next.place}`, {
        number: expected,
        ...(begin ? doneBy(begin, expected, endWeek, hands) : {}),
      }),
    )
  }
  return tasks
}

function doneBy(work: Work, number: number, week: number, hands: Hands): Partial<Task> {
  const minutes = work.minutesPerPlant.typical * number + work.minutesPerBatch
  return {
    skill: work.skill,
    minutes: Math.round(minutes),
    person: hands.give(work.skill, week, minutes)[0]?.person ?? null,
    caution: work.caution ?? null,
  }
}

/** Trees that go out in the next weeks, from what is finished. */
function dispatchTasks({ season, solution, nursery }: Planned): Task[] {
  const byOrder = grouped(
    solution.deliveries.filter(({ week }) => week < WEEKS_AHEAD),
    ({ order, week }) => `${order}\n${week}`,
  )
  return [...byOrder.values()].flatMap(of => {
    const { order, week, kind } = of[0]!
    const id = season.orders[order]!.id
    const number = Math.round(of.reduce((sum, delivery) => sum + delivery.number, 0))
    const most = Math.min(number, season.orders[order]!.number)
    if (most <= 0) return []
    return [
      {
        ...nothing,
        id: `${id}/dispatch/${weekName(season, week)}`,
        week: weekName(season, week),
        task: `Dispatch to ${nursery.orders.get(id)?.order.buyer ?? id}`,
        kindOfTask: 'dispatch' as const,
        order: id,
        kind: season.kinds[kind]!.id,
        number: most,
      },
    ]
  })
}
