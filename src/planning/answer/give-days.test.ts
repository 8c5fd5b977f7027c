import { expect, test } from 'vitest'
import { Person } from '../../record/index.ts'
import { dayNumber, weekNumber } from '../../science/index.ts'
import { inEnglish, type PersonId, phrase, type Skill } from '../../trade/index.ts'
import type { Task } from '../plan.ts'
import { giveDays, type Job } from './give-days.ts'
import { workWeek } from './work-diary.ts'

const WEEK = '2026-W20' // Monday 11 May to Sunday 17 May 2026
const MONDAY = '2026-05-11'
const people = (
  ...all: {
    id: string
    skills: Skill[]
    hours: number
    away?: { from: string; to: string }[]
    overtime?: number
  }[]
) => ({
  people: new Map(
    all.map(({ id, skills, hours, away = [], overtime = 0 }) => {
      const person = Person.parse({
        id,
        name: id,
        skills,
        hoursPerWeek: hours,
        overtimeHoursPerWeek: overtime,
        away,
      })
      return [person.id, person] as [PersonId, Person]
    }),
  ),
})
const week = (nursery: ReturnType<typeof people>, today = MONDAY) =>
  workWeek(nursery, weekNumber(WEEK), dayNumber(today))

const task = (id: string, skill: Skill | null, minutes: number, more: Partial<Task> = {}): Task =>
  ({
    id,
    week: WEEK,
    kindOfTask: 'work',
    skill,
    minutes,
    number: 10,
    bench: null,
    day: null,
    person: null,
    lacks: null,
    ...more,
  }) as Task
const dayOf = (tasks: readonly Task[], id: string) =>
  tasks.filter(one => one.id === id).map(({ day }) => day?.slice(8))
const whoOf = (tasks: readonly Task[], id: string) => tasks.find(one => one.id === id)?.person

test('equal work is spread evenly: ten jobs of an hour over two people and five days are one each', () => {
  const jobs = Array.from({ length: 10 }, (_, j): Job => ({ task: task(`j${j}`, 'general', 60) }))
  const given = giveDays(
    jobs,
    week(
      people({ id: 'Ada', skills: ['general'], hours: 40 }, { id: 'Ben', skills: ['general'], hours: 40 }),
    ),
  )
  expect(new Set(given.map(({ day, person }) => `${day} ${person}`)).size).toBe(10)
})

test('work goes to those who have the skill, and rare hands are left free for it', () => {
  // Both can weed; only Ada grafts. Her day has room for both, yet Ben weeds.
  const both = people(
    { id: 'Ada', skills: ['grafting', 'general'], hours: 40 },
    { id: 'Ben', skills: ['general'], hours: 40 },
  )
  const given = giveDays(
    [{ task: task('weed', 'general', 60) }, { task: task('graft', 'grafting', 60) }],
    week(both),
  )
  expect(whoOf(given, 'graft')).toBe('Ada')
  expect(whoOf(given, 'weed')).toBe('Ben')
})

test('nobody works on a day away, nor on a day that is over', () => {
  // Ada is away to Wednesday; today is Tuesday: she works on Thursday and Friday only.
  const ada = people({
    id: 'Ada',
    skills: ['general'],
    hours: 40,
    away: [{ from: '2026-05-01', to: '2026-05-13' }],
  })
  const given = giveDays(
    [1, 2, 3, 4].map(j => ({ task: task(`j${j}`, 'general', 60) })),
    week(ada, '2026-05-12'),
  )
  expect(given.map(({ day }) => day?.slice(8)).sort()).toEqual(['14', '14', '15', '15'])
})

test('wood is cut on the day of the grafting or the working day before, by the one who grafts', () => {
  // Grafting is fixed to Wednesday: budwood on Tuesday or Wednesday, and she has both.
  const jobs: Job[] = [
    { task: task('cut', null, 0, { kindOfTask: 'collect' }), before: 'graft' },
    { task: task('graft', 'grafting', 240, { kindOfTask: 'start' }), on: '2026-05-13' },
  ]
  const given = giveDays(
    jobs,
    week(
      people({ id: 'Ada', skills: ['grafting'], hours: 40 }, { id: 'Ben', skills: ['general'], hours: 40 }),
    ),
  )
  expect(dayOf(given, 'graft')).toEqual(['13'])
  expect(['12', '13']).toContain(dayOf(given, 'cut')[0])
  expect(whoOf(given, 'cut')).toBe('Ada')
})

test('what is counted before it moves on is counted on that day or the day before, and what goes out goes after it is finished', () => {
  const jobs: Job[] = [
    { task: task('move', 'potting', 200, { kindOfTask: 'advance' }), on: '2026-05-14' },
    { task: task('count', null, 0, { kindOfTask: 'count' }), before: 'move' },
    { task: task('dispatch', null, 0, { kindOfTask: 'dispatch' }), after: 'move', by: '2026-05-14' },
  ]
  const given = giveDays(jobs, week(people({ id: 'Ada', skills: ['potting'], hours: 40 })))
  expect(['13', '14']).toContain(dayOf(given, 'count')[0])
  // Due on Thursday and ready on Thursday: it cannot go on another day.
  expect(dayOf(given, 'dispatch')).toEqual(['14'])
})

test('wood that is cut already comes before other grafting, when there is not time for both', () => {
  // 8 hours a day, two jobs of 40 hours: only one fits.
  const jobs: Job[] = [
    { task: task('a fresh', 'grafting', 2400, { kindOfTask: 'start', number: 600 }), tray: 1 },
    { task: task('b cut', 'grafting', 2400, { kindOfTask: 'start', number: 600 }), tray: 1, isUrgent: true },
  ]
  const given = giveDays(jobs, week(people({ id: 'Ada', skills: ['grafting'], hours: 40 })))
  expect(given.filter(({ id, day }) => id.startsWith('b cut') && day !== null)).toHaveLength(5)
  expect(given.find(({ id }) => id === 'a fresh')).toMatchObject({
    day: null,
    person: null,
    lacks: phrase('No hours are left in this week for {skill}.', { skill: phrase('grafting') }),
  })
})

test('work larger than a day is shared out over days in whole trays, and adds up', () => {
  // 4 minutes each, 8 hours a day: 120 a day, but trays of 50 allow 100. 250 take Monday, Tuesday and half of Wednesday.
  const jobs: Job[] = [
    { task: task('graft', 'grafting', 1000, { kindOfTask: 'start', number: 250 }), tray: 50 },
  ]
  const given = giveDays(jobs, week(people({ id: 'Ada', skills: ['grafting'], hours: 40 })))
  expect(given.map(({ id, day, number, minutes }) => [id, day?.slice(8), number, minutes])).toEqual([
    ['graft/1', '11', 100, 400],
    ['graft/2', '12', 100, 400],
    ['graft/3', '13', 50, 200],
  ])
})

test('what does not fit is said: how many, and that hours, or the skill, are lacking', () => {
  const ada = people({ id: 'Ada', skills: ['grafting'], hours: 5 })
  // An hour a day is 60 grafts of a minute; five days are 300 of 350.
  const jobs: Job[] = [
    { task: task('graft', 'grafting', 350, { kindOfTask: 'start', number: 350 }), tray: 1 },
    { task: task('pot', 'potting', 30) },
  ]
  const given = giveDays(jobs, week(ada))
  expect(given.filter(({ day }) => day !== null).reduce((sum, { number }) => sum + number, 0)).toBe(300)
  expect(
    given
      .filter(({ lacks }) => lacks !== null)
      .map(({ number, lacks }) => [number, lacks && inEnglish(lacks)]),
  ).toEqual([
    [50, 'No hours are left in this week for grafting.'],
    [10, 'No one who is there has the skill: potting.'],
  ])
  expect(giveDays([{ task: task('pot', 'potting', 30) }], week(ada, '2026-05-16'))[0]!.lacks?.says).toBe(
    'No working day is left in this week.',
  )
})

test('overtime is used only when the week is full', () => {
  const ada = people({ id: 'Ada', skills: ['general'], hours: 10, overtime: 5 })
  // 120 minutes a day and 60 of overtime. Five jobs of 80 fill the days; the other two go over on two of them.
  const shorter = giveDays(
    Array.from({ length: 7 }, (_, j) => ({ task: task(`j${j}`, 'general', 80) })),
    week(ada),
  )
  const perDay = new Map<string, number>()
  for (const { day, minutes } of shorter) perDay.set(day!, (perDay.get(day!) ?? 0) + minutes)
  expect([...perDay.values()].sort()).toEqual([160, 160, 80, 80, 80])
})

test('the same round at one bench is made in one go, and one stays at a bench where one is already', () => {
  const round = (id: string, bench: string): Job => ({
    task: task(id, 'general', 10, { bench: bench as never }),
    round: `${bench} water`,
  })
  const given = giveDays(
    [
      round('a1', 'mist'),
      round('b1', 'shade'),
      round('a2', 'mist'),
      round('b2', 'shade'),
      round('a3', 'mist'),
    ],
    week(
      people({ id: 'Ada', skills: ['general'], hours: 40 }, { id: 'Ben', skills: ['general'], hours: 40 }),
    ),
  )
  for (const bench of ['mist', 'shade'])
    expect(
      new Set(given.filter(one => one.bench === bench).map(({ day, person }) => `${day} ${person}`)).size,
    ).toBe(1)
})

test('the same jobs in any order get the same days and people', () => {
  const jobs = Array.from(
    { length: 12 },
    (_, j): Job => ({ task: task(`j${j}`, j % 3 === 0 ? 'grafting' : 'general', 30 + 7 * j) }),
  )
  const both = () =>
    week(
      people(
        { id: 'Ada', skills: ['grafting', 'general'], hours: 30 },
        { id: 'Ben', skills: ['general'], hours: 38 },
      ),
    )
  const said = (tasks: readonly Task[]) => tasks.map(({ id, day, person }) => `${id} ${day} ${person}`).sort()
  expect(said(giveDays([...jobs].reverse(), both()))).toEqual(said(giveDays(jobs, both())))
})

test('a long round is shared: four hours of watering at one bench are not left to one person', () => {
  const jobs = Array.from(
    { length: 24 },
    (_, j): Job => ({
      task: task(`b${j}`, 'general', 10, { bench: 'mist' as never }),
      round: 'mist water',
    }),
  )
  const both = people(
    { id: 'Ada', skills: ['general'], hours: 40 },
    { id: 'Ben', skills: ['general'], hours: 40 },
  )
  const given = giveDays(jobs, week(both))
  const minutesOf = (id: string) => given.filter(({ person }) => person === id).length * 10
  expect(minutesOf('Ada')).toBe(120)
  expect(minutesOf('Ben')).toBe(120)
})
