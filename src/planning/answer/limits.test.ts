import { expect, test } from 'vitest'
import { inEnglish } from '../../trade/index.ts'
import { everyWeek, solved, tinyPerson, tinyPlace } from '../fixtures/solved.ts'
import { certain, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import type { Solution } from '../model/season-model.ts'
import { limitsOf } from './limits.ts'

const season = tinySeason({
  weeks: 60,
  // 29 December 2025 is the Monday of week 1 of 2026.
  firstWeek: 2922,
  kinds: [tinyKind('fig')],
  places: [tinyPlace('mist bed', everyWeek(60, 5)), tinyPlace('shade house', everyWeek(60, 5))],
  people: [tinyPerson('Ada', ['grafting'], everyWeek(60, 100))],
  ways: [
    {
      kind: 0,
      steps: [{ ...certain(1), days: 28 }],
      course: { labour: [{ skill: 'grafting', perPlant: Float64Array.of(1), perBatch: Float64Array.of(0) }] },
    },
  ],
})
type Dual = Solution['duals'][number]
const full = (about: string, week: number, dual: number, rule = 'space', subject = 0): Dual => ({
  rule,
  subject,
  about,
  week,
  dual,
})
const limits = (...duals: readonly Dual[]) =>
  limitsOf({ season, relaxed: { duals } as unknown as Solution }).map(
    ({ from, to, worthPerUnit, sentence }) => ({
      from,
      to,
      worthPerUnit,
      says: inEnglish(sentence),
    }),
  )

test('neighbouring weeks of one place are one limit, worth what a metre in each is on average; a gap or another place is another', () => {
  const said = limits(
    full('mist bed', 10, -30),
    full('mist bed', 12, -50),
    full('mist bed', 11, -40),
    full('mist bed', 14, -7),
    full('shade house', 15, -6),
  )
  expect(said).toEqual([
    {
      from: '2026-W11',
      to: '2026-W13',
      worthPerUnit: 40,
      says: 'Mist bed, weeks 11 to 13: 1 m² more is worth 40 a week.',
    },
    { from: '2026-W15', to: '2026-W15', worthPerUnit: 7, says: 'Mist bed, week 15: 1 m² more is worth 7.' },
    {
      from: '2026-W16',
      to: '2026-W16',
      worthPerUnit: 6,
      says: 'Shade house, week 16: 1 m² more is worth 6.',
    },
  ])
})

test('what is worth most in all stands first, though it be worth less in each week', () => {
  const weeks = Array.from({ length: 8 }, (_, w) => full('shade house', 20 + w, -3))
  expect(limits(full('mist bed', 10, -20), ...weeks).map(({ says }) => says.split(',')[0])).toEqual([
    'Shade house',
    'Mist bed',
  ])
})

test('a minute of hands is told as an hour, and what is worth next to nothing is not told', () => {
  expect(limits(full('grafting', 10, -0.25, 'labour', 1)).map(({ says }) => says)).toEqual([
    'Grafting, week 11: one more hour is worth 15.',
  ])
  expect(limits(full('mist bed', 10, -0.04), full('mist bed', 30, 0))).toEqual([])
})

test('what the sentence says is what the optimum says: the bed that is full is worth its dual', async () => {
  // 5 m² hold 50 cuttings at a time for four weeks; 60 are ordered, at 15 when they lack and 1 when they are begun.
  const { short, relaxed } = await solved({
    ...season,
    people: [],
    ways: season.ways.map(way => ({
      ...way,
      open: way.open.map((_, week) => (week === 10 ? 1 : 0)),
      courses: way.courses.map(course => ({
        ...course,
        labour: [],
        area: [{ place: 0, squareMetres: Float64Array.of(0.1) }],
      })),
    })),
    orders: tinySeason({ kinds: season.kinds, orders: [{ kind: 0, number: 60, dueWeek: 20 }] }).orders,
  }).then(of => ({ short: of.short, relaxed: of }))
  expect(short[0]).toBeCloseTo(10, 4)
  // A metre more holds ten more: 10 · (15 − 1).
  expect(limitsOf({ season, relaxed }).map(({ sentence }) => inEnglish(sentence))).toEqual([
    'Mist bed, week 11: 1 m² more is worth 140.',
  ])
})
