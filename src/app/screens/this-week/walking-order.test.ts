import { expect, test } from 'vitest'
import type { Task } from '../../../planning/index.ts'
import type { Bench } from '../../../record/index.ts'
import { walkingOrder } from './walking-order.ts'

const bench = (id: string, place: Bench['place'], xMetres: number, yMetres = 0): [string, Bench] => [
  id,
  {
    id,
    name: id,
    place,
    areaSquareMetres: 10,
    lengthMetres: null,
    widthMetres: null,
    position: { xMetres, yMetres },
    closed: [],
  } as unknown as Bench,
]
const benches = new Map([
  bench('ground', 'standing ground', 0),
  bench('mist-2', 'mist bed', 8),
  bench('mist-1', 'mist bed', 2),
  bench('mothers', 'mother block', 0),
])
const task = (id: string, day: string | null, at: string | null, minutes = 30): Task =>
  ({ id, day, bench: at, minutes }) as Task

test('wood is cut at the mother trees before the work of the benches', () => {
  const collect = { ...task('cut', '2026-03-17', null), kindOfTask: 'collect' } as Task
  const [day] = walkingOrder(
    [task('b', '2026-03-17', 'mist-1'), collect, task('x', '2026-03-17', null)],
    benches,
  )
  expect(day!.places.map(({ isAtMothers, tasks }) => [isAtMothers, tasks[0]!.id])).toEqual([
    [true, 'cut'],
    [false, 'b'],
    [false, 'x'],
  ])
})

test('days in order, what does not fit last; within a day from the mother block through the houses to the field', () => {
  const days = walkingOrder(
    [
      task('e', null, 'mist-1'),
      task('d', '2026-03-17', 'ground'),
      task('c', '2026-03-17', 'mist-2'),
      task('b', '2026-03-17', 'mist-1'),
      task('a', '2026-03-17', 'mothers'),
      task('first', '2026-03-16', null),
      task('x', '2026-03-17', null),
    ],
    benches,
  )
  expect(days.map(({ day }) => day)).toEqual(['2026-03-16', '2026-03-17', null])
  expect(days[1]!.places.map(({ bench }) => bench)).toEqual(['mothers', 'mist-1', 'mist-2', 'ground', null])
  expect(days[1]!.minutes).toBe(150)
})
