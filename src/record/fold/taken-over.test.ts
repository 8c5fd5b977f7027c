import { expect, test } from 'vitest'
import { BatchId } from '../../trade/index.ts'
import { startOf, teller } from '../example-entries.ts'
import { exampleRegisters } from '../example-registers.ts'
import { observations } from '../observations.ts'
import { foldEntries } from './fold.ts'

const fold = (more: object, ...after: object[]) => {
  const tell = teller()
  const start = tell('2026-03-01', startOf('B1', 80, [], more))
  return foldEntries([...exampleRegisters, start, ...after.map(body => tell('2026-09-01', body))])
}
const batchOf = (nursery: ReturnType<typeof fold>) => nursery.batches.get(BatchId.parse('B1'))!

test('a batch taken over stands in the step in which it was found, since the day that is said', () => {
  const nursery = fold({ takenOver: { step: 'weaning', since: '2026-06-01' } })
  expect(batchOf(nursery).portions).toMatchObject([{ step: 'weaning', number: 80, since: '2026-06-01' }])
  expect(batchOf(nursery).startedOn).toBe('2026-03-01')
  expect(nursery.queries).toEqual([])
})

test('a batch taken over when it was finished is finished stock', () => {
  const nursery = fold({ takenOver: { step: 'finished', since: '2026-06-01' } })
  expect(batchOf(nursery)).toMatchObject({ finished: 80, finishedOn: '2026-06-01', portions: [] })
  expect(nursery.queries).toEqual([])
})

test('nothing is learnt from the step in which it was found; the steps after it teach as any', () => {
  const nursery = fold(
    { takenOver: { step: 'weaning', since: '2026-06-01' } },
    { kind: 'lost/1', batch: 'B1', step: 'weaning', number: 10, cause: 'rot' },
    { kind: 'advanced/1', batch: 'B1', from: 'weaning', to: 'growing on', number: 70, bench: null },
    { kind: 'lost/1', batch: 'B1', step: 'growing on', number: 7, cause: 'rot' },
    { kind: 'finished/1', batch: 'B1', number: 63, grade: '' },
  )
  expect(observations(nursery).map(({ step, survived, entered }) => [step, survived, entered])).toEqual([
    ['growing on', 63, 70],
  ])
  expect(nursery.queries).toEqual([])
})
