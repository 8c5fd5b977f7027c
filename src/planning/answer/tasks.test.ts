import { expect, test } from 'vitest'
import { BatchId, inEnglish, KindId, ProtocolId, phrase, StepId } from '../../trade/index.ts'

import { order, smallNursery } from '../fixtures/small-nursery.ts'
import { planSeason } from '../plan-season.ts'

const weekOf = (week: string) => Number(week.slice(6))

test('work of the weeks: shoots are prepared and wood is cut before the graft, which carries its caution', async () => {
  const nursery = smallNursery(
    {
      on: '2025-09-01',
      body: {
        kind: 'batch-started/1',
        batch: BatchId.parse('stocks'),
        name: 'stocks',
        kindOfTree: KindId.parse('seedling'),
        protocol: ProtocolId.parse('sowing'),
        number: 100,
        sources: [],
        bench: null,
        workedBy: [],
        candidates: [],
      },
    },
    {
      on: '2025-10-01',
      body: {
        kind: 'advanced/1',
        batch: BatchId.parse('stocks'),
        from: StepId.parse('germinating'),
        to: StepId.parse('growing to pencil'),
        number: 100,
        bench: null,
      },
    },
    {
      on: '2026-06-22',
      body: { kind: 'finished/1', batch: BatchId.parse('stocks'), number: 100, grade: '' },
    },
    order('pears', 'pear', 40, '2027-01-31'),
  )
  const plan = await planSeason(nursery, {
    today: '2026-06-29',
    throughSeq: 1,
    seasons: 200,
    seed: 1,
    proveSeconds: 0.5,
  })
  const graft = plan.starts.find(({ kind: of }) => of === 'pear')!
  const of = (kindOfTask: string) =>
    plan.tasks.filter(task => task.kindOfTask === kindOfTask && task.start === graft.id)
  // Ten days before the Monday of the graft, by someone who has the skill, on a day of its own.
  expect(of('prepare')).toHaveLength(1)
  expect(of('prepare')[0]).toMatchObject({
    task: phrase('Defoliate the shoots'),
    number: graft.number,
    skill: 'general',
  })
  expect(weekOf(of('prepare')[0]!.week)).toBe(weekOf(graft.week) - 2)
  expect(of('collect').reduce((sum, { number }) => sum + number, 0)).toBe(Math.ceil(graft.number / 4))
  expect(of('start')).toHaveLength(1)
  expect(of('start')[0]).toMatchObject({
    task: phrase('Graft'),
    person: 'Ada',
    bench: 'healing tent',
    minutes: graft.number * 4,
    caution: 'Sharp blade: cut away from the body.',
  })
  expect(of('start')[0]!.from.map(inEnglish)).toContain(`${graft.number} seedling from batch stocks`)
})
