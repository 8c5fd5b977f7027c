import { expect, test } from 'vitest'
import { inventedNursery } from '../fixtures/invented-nursery.ts'
import { MONDAY } from '../fixtures/small-nursery.ts'
import { readSeason } from '../reading/read-season.ts'
import type { Season, SeasonStart } from '../season.ts'
import { noneKept, runHereWith } from './part-runs.ts'
import { partsOf } from './parts.ts'
import { byComponent } from './simulate-by-component.ts'
import { nothingKept, simulateLoads, simulateSeasons } from './simulate-seasons.ts'

const season = readSeason(
  inventedNursery({ kinds: 24, ordersPerKind: 1, treesPerOrder: 60, today: MONDAY, seed: 3, room: 1 }),
  MONDAY,
)
const starts: SeasonStart[] = season.ways.flatMap((way, w) => {
  const week = way.open.indexOf(1)
  const isRootstock = season.kinds[way.kind]!.isRootstock
  return week < 0 ? [] : [{ way: w, week: isRootstock ? week : Math.min(week + 30, 60), number: 120 }]
})

const withOrder = (more: number): Season => ({
  ...season,
  orders: season.orders.map((order, o) => (o === 2 ? { ...order, number: order.number + more } : order)),
})
const withCourses = (
  change: (course: Season['ways'][number]['courses'][number]) => Season['ways'][number]['courses'][number],
): Season => ({
  ...season,
  ways: season.ways.map(way => ({ ...way, courses: way.courses.map(change) })),
})
const worse = withCourses(course => ({
  ...course,
  steps: course.steps.map(step => ({ ...step, beta: step.beta * 2 })),
}))
const longer = withCourses(course => ({
  ...course,
  labour: course.labour.map(work => ({ ...work, perPlant: work.perPlant.map(minutes => 2 * minutes) })),
}))

test('what is known of one season serves the next, in which orders have changed, and never changes what comes of it', async () => {
  const kept = noneKept()
  const memory = new Map()
  for (const each of [season, withOrder(10), worse, season, longer, withOrder(-10)]) {
    const { run, runFresh, loads } = byComponent(each, 5, memory, runHereWith(kept))
    const first = await run(starts, [], 24)
    expect(first.byDue).toEqual(simulateSeasons(each, starts, { from: 0, to: 24, seed: 5 }).byDue)
    const later = await runFresh(starts, [], 24)
    expect(later.weeksLate).toEqual(simulateSeasons(each, starts, { from: 24, to: 48, seed: 5 }).weeksLate)
    const { minutes } = await loads(starts, [], 24)
    const whole = simulateLoads(each, starts, { from: 0, to: 24, seed: 5 }, nothingKept(5))
    minutes.forEach((each, i) => {
      expect(Math.abs(each - whole.minutes[i]!)).toBeLessThan(1e-2)
    })
  }
})

test('a part says all that it rests on: what survives, how long it takes, where it stands, how much work it is', () => {
  const says = (of: Season) => partsOf(of).map(({ rests }) => rests)
  expect(says(withOrder(10))).toEqual(says(season))
  expect(partsOf(withOrder(10)).map(part => part.says)).not.toEqual(partsOf(season).map(part => part.says))
  const wider = withCourses(course => ({
    ...course,
    steps: course.steps.map(step => ({ ...step, squareMetresPerPlant: step.squareMetresPerPlant * 2 })),
  }))
  const slower = withCourses(course => ({
    ...course,
    steps: course.steps.map(step => ({ ...step, medianDays: step.medianDays + 7 })),
  }))
  for (const other of [worse, longer, wider, slower]) expect(says(other)).not.toEqual(says(season))
})
