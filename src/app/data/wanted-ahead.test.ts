import { expect, test } from 'vitest'
import { wantedAhead } from './wanted-ahead.ts'

type Week = Parameters<typeof wantedAhead>[0]

const task = (id: string, person: string | null, batch: string | null, start: string | null = null) => ({
  id,
  person,
  batch,
  start,
  bench: batch && `bench of ${batch}`,
})
const week = (tasks: readonly ReturnType<typeof task>[], done: readonly string[] = []): Week =>
  ({
    tasks,
    done: done.map(id => ({ task: id, entry: id })),
    starts: [{ id: 's1', mothers: [{ mother: 'old-fig' }] }],
  }) as unknown as Week
const nothing = { batches: [], mothers: [], benches: [] }

test('what a person is to do comes before what others are to do, and both before what stands anyhow; what is done waits with the rest', () => {
  const tasks = [
    task('1', 'ana', 'b1'),
    task('2', 'ben', 'b2'),
    task('3', 'ben', 'b3'),
    task('4', null, 'b2'),
  ]
  const { batches, benches } = wantedAhead(week(tasks, ['3']), 'ben', {
    ...nothing,
    batches: ['b9', 'b3', 'b1'],
  })
  expect(batches).toEqual(['b2', 'b1', 'b9', 'b3'])
  expect(benches).toEqual(['bench of b2', 'bench of b1'])
})

test('the mother trees of what is started this week come before the others', () => {
  const { mothers } = wantedAhead(week([task('1', null, null, 's1')]), null, {
    ...nothing,
    mothers: ['young-fig', 'old-fig'],
  })
  expect(mothers).toEqual(['old-fig', 'young-fig'])
})

test('of a nursery of 6,000 batches so many are kept as a device holds easily, the tasks’ among them', () => {
  const batches = Array.from({ length: 6000 }, (_, index) => `b${index}`)
  const wanted = wantedAhead(week([task('1', 'ana', 'b5999')]), 'ana', { ...nothing, batches }).batches
  expect(wanted).toHaveLength(400)
  expect(wanted.slice(0, 2)).toEqual(['b5999', 'b0'])
})
