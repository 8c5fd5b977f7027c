import { expect, test } from 'vitest'
import { type Body, heldThings } from '../../record/index.ts'
import { BatchId, BenchId, StepId } from '../../trade/index.ts'
import { smallNursery } from '../fixtures/small-nursery.ts'
import { readSeason } from './read-season.ts'

const fig = BatchId.parse('figs')
const split = BatchId.parse('split figs')
const ready = BatchId.parse('ready figs')
const rooting = StepId.parse('rooting')
const bench = (id: string) => BenchId.parse(id)
const said = (on: string, body: Record<string, unknown>) => ({ on, body: body as Body })
const start = (batch: BatchId, on: string, at: string, takenOver?: object) =>
  said(on, {
    kind: 'batch-started/1',
    batch,
    name: batch,
    kindOfTree: 'fig',
    protocol: 'cutting',
    number: 40,
    sources: [],
    bench: bench(at),
    workedBy: [],
    candidates: [],
    ...(takenOver === undefined ? {} : { takenOver }),
  })

const history = [
  start(fig, '2026-03-02', 'mist bed'),
  start(ready, '2026-03-02', 'standing ground', { step: 'finished', since: '2026-03-02' }),
]
const today = '2026-03-20'

const heldIn = (...holds: ReturnType<typeof said>[]) => {
  const nursery = smallNursery(...history, ...holds)
  const season = readSeason(nursery, today)
  return {
    inSeason: season.batches.filter(({ onHold }) => onHold).map(({ id }) => id),
    inRecord: [...heldThings(nursery).batches.keys()],
    season,
  }
}

test('a batch split off after its batch was put on hold is on hold in the plan too', () => {
  const { inSeason, inRecord } = heldIn(
    said('2026-03-05', { kind: 'hold-placed/1', on: { what: 'batch', batch: fig }, why: 'leaf spot' }),
    said('2026-03-09', {
      kind: 'split/1',
      batch: fig,
      step: rooting,
      number: 15,
      into: split,
      name: split,
      why: '',
    }),
  )
  expect(inSeason).toEqual([fig, split])
  expect(inSeason).toEqual(inRecord)
})

test('finished plants that stand on a held bench are on hold in the plan, and the bench takes nothing', () => {
  const { inSeason, inRecord, season } = heldIn(
    said('2026-03-05', {
      kind: 'hold-placed/1',
      on: { what: 'bench', bench: bench('standing ground') },
      why: 'vine weevil',
    }),
  )
  expect(inSeason).toEqual([ready])
  expect(inSeason).toEqual(inRecord)
  expect(season.places.find(({ place }) => place === 'standing ground')!.squareMetres[0]).toBe(0)
  expect(season.places.find(({ place }) => place === 'mist bed')!.squareMetres[0]).toBe(20)
})
