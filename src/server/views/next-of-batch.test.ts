import { expect, test } from 'vitest'
import { nextOfBatch } from './next-of-batch.ts'

type Asked = Parameters<typeof nextOfBatch>

const steps = [
  { id: 'root', days: { typical: 42 } },
  { id: 'grow', days: { typical: 100 } },
]
const nursery = {
  tasksDone: new Map([['t1', {}]]),
  protocols: new Map([['p', { steps }]]),
} as unknown as Asked[0]
const batch = {
  id: 'b',
  protocol: 'p',
  portions: [
    { step: 'grow', since: '2026-05-01', number: 50 },
    { step: 'root', since: '2026-05-01', number: 20 },
    { step: 'root', since: '2026-05-01', number: 10 },
    { step: 'root', since: '2026-04-01', number: 0 },
  ],
} as unknown as Asked[2]
const task = (id: string, of: string, week: string, day: string | null) => ({
  id,
  batch: of,
  week,
  day,
  task: id,
  number: 7,
})

test('next is the first task of the plan about this batch that is not done, one without a day at the end of its week', () => {
  const tasks = [
    task('t4', 'b', '2026-W23', '2026-06-01'),
    task('t3', 'b', '2026-W22', null),
    task('t2', 'b', '2026-W22', '2026-05-28'),
    task('t1', 'b', '2026-W21', '2026-05-19'),
    task('t0', 'other', '2026-W20', '2026-05-12'),
  ]
  expect(nextOfBatch(nursery, { tasks } as unknown as Asked[1], batch)).toEqual({
    by: 'plan',
    task: 't2',
    week: '2026-W22',
    day: '2026-05-28',
    number: 7,
  })
})

test('without one it is the end of the step that is over first, for all who stand in it since the same day: 42 days from 1 May is 12 June', () => {
  expect(nextOfBatch(nursery, null, batch)).toEqual({
    by: 'protocol',
    step: 'root',
    on: '2026-06-12',
    days: 42,
    number: 30,
  })
})

test('nothing is due where nothing stands', () => {
  expect(nextOfBatch(nursery, null, { ...batch, portions: [] })).toBeNull()
})
