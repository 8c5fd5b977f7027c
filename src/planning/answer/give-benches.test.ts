import { expect, test } from 'vitest'
import type { Nursery } from '../../record/index.ts'
import { BatchId, BenchId, StepId } from '../../trade/index.ts'
import { everyWeek, tinyPlace } from '../fixtures/solved.ts'
import { certain, finishedBatch, tinyCourse, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import type { Season, SeasonStart } from '../season.ts'
import { giveBenches } from './give-benches.ts'
import { chosenStarts } from './planned.ts'

const small = BenchId.parse('small')
const large = BenchId.parse('large')
const benches = [
  { id: small, squareMetres: everyWeek(30, 4) },
  { id: large, squareMetres: everyWeek(30, 10) },
]
/** Rooting takes four weeks at 0.1 m² a plant. */
const rooting = { ...certain(1), days: 28, place: 0, squareMetres: 0.1 }
const season = (more: Partial<Season> = {}) =>
  tinySeason({
    weeks: 30,
    kinds: [tinyKind('fig'), tinyKind('seedling')],
    places: [tinyPlace('mist bed', everyWeek(30, 14), { benches })],
    ways: [
      { kind: 0, steps: [rooting] },
      { kind: 1, steps: [{ ...certain(1), days: 28 }, rooting] },
    ],
    more,
  })
const nobody = { batches: new Map() } as unknown as Nursery
const given = (starts: readonly SeasonStart[], of: Season = season(), nursery: Nursery = nobody) =>
  giveBenches(nursery, of, chosenStarts(of, starts))
const start = (week: number, number: number, way = 0) => ({ way, week, number })

test('of the benches that have room the fullest is given, so that large room stays together', () => {
  expect(given([start(5, 30)])).toEqual([small])
  expect(given([start(5, 50)])).toEqual([large])
  // The second no longer fits beside the first.
  expect(given([start(5, 30), start(6, 20)])).toEqual([small, large])
})

test('a bench is taken for as long as the first stretch lasts, and then free again', () => {
  // From the middle of week 5 for 28 days: to the middle of week 9.
  expect(given([start(5, 40), start(9, 40)])).toEqual([small, large])
  expect(given([start(5, 40), start(10, 40)])).toEqual([small, small])
})

test('where none has room for all, the emptiest is given', () => {
  expect(given([start(5, 120)])).toEqual([large])
  // 2 m² are left on the large one, 4 on the small one.
  expect(given([start(5, 80), start(6, 60)])).toEqual([large, small])
})

test('what begins on no bench is given none', () => {
  expect(given([start(5, 30, 1)])).toEqual([null])
})

test('what stands on a bench keeps its room for what is left of its step', () => {
  const step = StepId.parse('step-0')
  const standing = finishedBatch(30, 0, {
    id: BatchId.parse('old'),
    course: tinyCourse([rooting]),
    portions: [{ number: 30, step: 0, daysIn: 14, alpha: 1, beta: 1 }],
  })
  const nursery = {
    batches: new Map([[standing.id, { portions: [{ bench: small, step, number: 30 }] }]]),
  } as unknown as Nursery
  const of = season({ batches: [standing] })
  // 3 of the 4 m² are taken for the 14 days that are left.
  expect(given([start(1, 20)], of, nursery)).toEqual([large])
  expect(given([start(2, 20)], of, nursery)).toEqual([small])
})
