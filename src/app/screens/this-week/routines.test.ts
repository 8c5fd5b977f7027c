import { expect, test } from 'vitest'
import type { Task } from '../../../planning/index.ts'
import { phrase } from '../../../trade/index.ts'
import { routines } from './routines.ts'

const task = (id: string, kindOfTask: Task['kindOfTask'], said: string): Task =>
  ({ id, kindOfTask, task: phrase(said) }) as Task

test('the same round is one thing to do, in the place of its first; counts and starts stand alone', () => {
  const groups = routines([
    task('a', 'work', 'Water'),
    task('b', 'count', 'Count'),
    task('c', 'work', 'Water'),
    task('d', 'count', 'Count'),
    task('e', 'work', 'Stake'),
  ])
  expect(groups.map(group => group.map(({ id }) => id))).toEqual([['a', 'c'], ['b'], ['d'], ['e']])
})
