import { expect, test } from 'vitest'
import { PersonId } from '../../trade/index.ts'
import { everyWeek, tinyPerson } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import type { PlannedStart, Task } from '../plan.ts'
import type { SeasonPerson, SeasonStart } from '../season.ts'
import { withPeople } from './give-people.ts'
import { chosenStarts, type Planned } from './planned.ts'

/** Grafts of one minute each, in the week of the start. */
function given(people: readonly SeasonPerson[], begun: readonly SeasonStart[], tasks: readonly Task[] = []) {
  const season = tinySeason({
    weeks: 10,
    kinds: [tinyKind('pear')],
    people,
    ways: [
      {
        kind: 0,
        steps: [{ ...certain(1), days: 7 }],
        course: {
          labour: [{ skill: 'grafting', perPlant: Float64Array.of(1), perBatch: Float64Array.of(0) }],
        },
      },
    ],
  })
  const starts = chosenStarts(season, begun)
  const asPlanned = starts.map(({ id }) => ({ id, people: [] }) as unknown as PlannedStart)
  return withPeople({ season, starts } as unknown as Planned, asPlanned, tasks).map(start =>
    start.people.map(({ person, minutes }) => [person, minutes]),
  )
}
const Ada = tinyPerson('Ada', ['grafting', 'cuttings'], everyWeek(10, 100))
const Bea = tinyPerson('Bea', ['grafting'], everyWeek(10, 60))
const Cem = tinyPerson('Cem', ['cuttings'], everyWeek(10, 500))
const start = (week: number, number: number) => ({ way: 0, week, number })

test('a job goes to one who can do all of it, of these to the one with the fewest skills, and never to one without the skill', () => {
  expect(given([Ada, Bea, Cem], [start(3, 50)])).toEqual([[['Bea', 50]]])
  expect(given([Ada, Bea, Cem], [start(3, 90)])).toEqual([[['Ada', 90]]])
  expect(given([Cem], [start(3, 50)])).toEqual([[]])
})

test('what is too much for one is shared, the fewest skills first; what is too much for all is given as far as they have hours', () => {
  expect(given([Ada, Bea], [start(3, 130)])).toEqual([
    [
      ['Bea', 60],
      ['Ada', 70],
    ],
  ])
  expect(given([Ada, Bea], [start(3, 200)])).toEqual([
    [
      ['Bea', 60],
      ['Ada', 100],
    ],
  ])
})

test('an hour is given once: a second start of the week gets what is left, one of the next week has all again', () => {
  expect(given([Bea], [start(3, 40), start(4, 40)])).toEqual([[['Bea', 40]], [['Bea', 40]]])
  const twoKinds = given([Ada, Bea], [start(3, 60), start(3, 60)])
  expect(twoKinds).toEqual([[['Bea', 60]], [['Ada', 60]]])
})

test('overtime is given after the hours', () => {
  const over = tinyPerson('Bea', ['grafting'], everyWeek(10, 60), everyWeek(10, 30))
  expect(given([over], [start(3, 100)])).toEqual([[['Bea', 90]]])
})

test('where the work of a start is given out by the day already, those to whom it is given are named', () => {
  const id = chosenStarts(
    tinySeason({
      weeks: 10,
      kinds: [tinyKind('pear')],
      ways: [{ kind: 0, steps: [{ ...certain(1), days: 7 }] }],
    }),
    [start(0, 50)],
  )[0]!.id
  const task = (person: string | null, minutes: number) =>
    ({
      kindOfTask: 'start',
      start: id,
      person: person === null ? null : PersonId.parse(person),
      skill: 'grafting',
      minutes,
    }) as unknown as Task
  const tasks = [task('Ada', 20), task('Ada', 10), task(null, 20)]
  expect(given([Ada, Bea], [start(0, 50)], tasks)).toEqual([[['Ada', 30]]])
})
