import { dayNumber, dayText } from '../../science/index.ts'
import { type Phrase, phrase, type Skill } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { Task } from '../plan.ts'
import { giveMinutes, type PersonDay, type WorkWeek } from './work-diary.ts'

/**
 * A piece of work that waits for a day and a person.
 *
 * The main work of a start or a batch is given its day first: the grafting, the moving on. What must come before it (wood
 * cut, plants counted) is led by it: it is done on the day of the main work or the working day before, earlier only where
 * it does not fit, by the same person where nothing speaks against it. What must come after it follows on the same day or later.
 */
export interface Job {
  readonly task: Task
  /** Task id of the work that this leads to: the same day or the working day before. */
  readonly before?: string
  /** Task id of the work that must be done first. */
  readonly after?: string
  /** On this day, where it is a working day that is left. */
  readonly on?: string
  /** Not later than this day of the week. */
  readonly by?: string
  /** The same round at one bench is made in one go. */
  readonly round?: string
  /** Can be shared between people and days, in multiples of this. */
  readonly tray?: number
  /** Given its day before all others: wood that is already cut, a day that is fixed. */
  readonly isUrgent?: boolean
}

/** Work without a rate still takes someone's time: counted as so much when work is spread. Our choice, no source. */
const MINUTES_WITHOUT_RATE = 10
/** Minutes of a round that one person makes in one go. Our choice, no source. */
const LONGEST_ROUND = 60
/** Work at a bench where one is already is worth this part of a day: less walking. Our choice, no source. */
const SAME_BENCH = 0.1
/** Each further skill of a person counts as this part of a day: rare hands stay free. Our choice, no source. */
const RARE_HANDS = 0.01

/** Gives every piece of work of a week its day and person; what does not fit says what is lacking. */
export function giveDays(jobs: readonly Job[], week: WorkWeek): Task[] {
  const given = new Map<string, Task[]>()
  const put = (job: Job, tasks: Task[]) => void given.set(job.task.id, tasks)
  const daysOf = (id: string | undefined) =>
    id === undefined ? [] : (given.get(id) ?? []).flatMap(t => t.day ?? [])
  const led = jobs.filter(({ before }) => before !== undefined)
  const free = jobs.filter(({ before }) => before === undefined)

  const rounds = grouped(free, ({ round, task }) => round ?? task.id)
  const blocks = [...rounds.values()].flatMap(inOneGo)
  // Skilled and long work first, rounds that anyone can make last; what waits for other work after that.
  blocks.sort(
    (a, b) =>
      rankOf(a.of[0]!) - rankOf(b.of[0]!) ||
      b.minutes - a.minutes ||
      (a.of[0]!.task.id < b.of[0]!.task.id ? -1 : 1),
  )
  for (const { of, minutes } of blocks) {
    const [first] = of
    const done = daysOf(first!.after).map(dayNumber)
    const from = Math.max(0, ...done, ...(first!.on === undefined ? [] : [dayNumber(first!.on)]))
    const by = first!.on ?? first!.by
    const may = daysWithin(week, from, by === undefined ? Number.POSITIVE_INFINITY : dayNumber(by))
    if (of.length > 1) {
      const whole = take(week, first!.task, minutes, may)
      for (const job of of) put(job, [whole ? withDay(job.task, whole) : shareOut(job, week, may)[0]!])
    } else put(first!, shareOut(first!, week, may))
  }
  // The nearest to the main work first, so that what leads to it can lead on.
  for (const job of led) {
    const main = given.get(job.before!) ?? []
    const first = main.flatMap(({ day }) => day ?? []).sort()[0]
    if (first === undefined) put(job, shareOut(job, week, week.days))
    else {
      const day = dayNumber(first)
      const until = week.days.filter(d => d <= day)
      const may = fits(job, week, until.slice(-2)) ? until.slice(-2) : until
      put(job, shareOut(job, week, may, main.find(task => task.day === first)?.person ?? null))
    }
  }
  return jobs.flatMap(({ task }) => given.get(task.id) ?? [])
}

/** A long round is cut into goes of their own. */
function inOneGo(round: readonly Job[]): { of: Job[]; minutes: number }[] {
  const goes: { of: Job[]; minutes: number }[] = []
  for (const job of round.toSorted((a, b) => (a.task.id < b.task.id ? -1 : 1))) {
    const minutes = timeOf(job.task)
    const go = goes.at(-1)
    if (go && go.minutes + minutes <= LONGEST_ROUND) {
      go.of.push(job)
      go.minutes += minutes
    } else goes.push({ of: [job], minutes })
  }
  return goes
}

const fits = ({ task }: Job, { personDays }: WorkWeek, days: readonly number[]): boolean =>
  personDays.some(
    own => days.includes(own.day) && isFor(own, task.skill) && own.given + timeOf(task) <= own.minutes,
  )
const timeOf = ({ minutes }: Task): number => (minutes > 0 ? minutes : MINUTES_WITHOUT_RATE)
const isFor = ({ skills }: PersonDay, skill: Skill | null): boolean =>
  skill === null || skills.includes(skill)
const withDay = (task: Task, { day, person }: PersonDay): Task => ({ ...task, day: dayText(day), person })

function rankOf({ isUrgent, on, after, task: { kindOfTask, skill } }: Job): number {
  if (after !== undefined) return 4
  if (isUrgent || on !== undefined) return 0
  if (kindOfTask === 'start') return 1
  return skill !== null && skill !== 'general' ? 2 : 3
}

/** Days of the week within bounds; where none is left, the nearest. */
function daysWithin({ days }: WorkWeek, from: number, to: number): readonly number[] {
  const within = days.filter(day => day >= from && day <= to)
  if (within.length > 0 || days.length === 0) return within
  return to < from || to < days[0]! ? days.slice(0, 1) : days.slice(-1)
}

/** The person and day with the smallest part of the day given away, where the whole of it fits; null where none has it. */
function take(
  { personDays }: WorkWeek,
  task: Task,
  minutes: number,
  days: readonly number[],
  favoured: string | null = null,
): PersonDay | null {
  const find = (isOvertime: boolean): PersonDay | null => {
    let best: PersonDay | null = null
    let least = Number.POSITIVE_INFINITY
    for (const own of personDays) {
      if (!days.includes(own.day) || !isFor(own, task.skill)) continue
      const whole = own.minutes + (isOvertime ? own.overtimeMinutes : 0)
      if (own.given + minutes > whole + 1e-6) continue
      const isNear = (task.bench !== null && own.benches.has(task.bench)) || own.person === favoured
      const ofDay = (own.given + minutes) / whole
      const ofWeek = (own.week.given + minutes) / own.week.minutes
      const cost = ofDay + ofWeek + RARE_HANDS * own.skills.length - (isNear ? SAME_BENCH : 0)
      if (cost < least - 1e-9) {
        best = own
        least = cost
      }
    }
    return best
  }
  const found = find(false) ?? find(true)
  if (!found) return null
  giveMinutes(found, minutes, task.bench)
  return found
}

/** One person on one day where that can be; else shared out over people and days, and what is left says what is lacking. */
function shareOut(job: Job, week: WorkWeek, days: readonly number[], favoured: string | null = null): Task[] {
  const { task } = job
  const whole = take(week, task, timeOf(task), days, favoured)
  if (whole) return [withDay(task, whole)]
  const each = task.number > 0 ? timeOf(task) / task.number : 0
  const parts: { own: PersonDay; number: number }[] = []
  let left = task.number
  const tray = job.tray ?? 1
  if (each > 0 && task.minutes > 0) {
    const able = week.personDays
      .filter(own => days.includes(own.day) && isFor(own, task.skill))
      .sort((a, b) => a.day - b.day || b.minutes - b.given - (a.minutes - a.given))
    for (const isOvertime of [false, true])
      for (const own of able) {
        const free = own.minutes + (isOvertime ? own.overtimeMinutes : 0) - own.given
        const number = Math.min(left, tray * Math.floor((free + 1e-6) / each / tray))
        if (number <= 0) continue
        giveMinutes(own, number * each, task.bench)
        const known = parts.find(part => part.own === own)
        if (known) known.number += number
        else parts.push({ own, number })
        left -= number
      }
  }
  if (parts.length === 0) return [{ ...task, lacks: lackOf(task, week) }]
  const told = parts.map(({ own, number }) => ({ task: withDay(task, own), number }))
  if (left > 0) told.push({ task: { ...task, lacks: lackOf(task, week) }, number: left })
  return told.map(({ task: part, number }, index) => ({
    ...part,
    id: told.length === 1 ? task.id : `${task.id}/${index + 1}`,
    number,
    minutes: Math.round(number * each),
  }))
}

function lackOf({ skill }: Task, { days, personDays }: WorkWeek): Phrase {
  if (days.length === 0) return phrase('No working day is left in this week.')
  if (!personDays.some(own => isFor(own, skill)))
    return skill === null
      ? phrase('No one is there in this week.')
      : phrase('No one who is there has the skill: {skill}.', { skill: phrase(skill) })
  return skill === null
    ? phrase('No hours are left in this week.')
    : phrase('No hours are left in this week for {skill}.', { skill: phrase(skill) })
}
