import { expect, test } from 'vitest'
import type { Skill } from '../../trade/index.ts'
import { everyWeek, solved, tinyPerson } from '../fixtures/solved.ts'
import { certain, finishedBatch, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import type { SeasonPerson } from '../season.ts'
import { crewsOf } from './labour.ts'

/** Grafts at 6 minutes each in the week of the start, all of which take. */
const needs = (skill: Skill, minutes: number) => ({
  labour: [{ skill, perPlant: Float64Array.of(minutes), perBatch: Float64Array.of(0) }],
})
const pear = (people: readonly SeasonPerson[], minute = 0) =>
  tinySeason({
    weeks: 12,
    kinds: [tinyKind('pear'), tinyKind('fig')],
    ways: [
      { kind: 0, steps: [{ ...certain(1), days: 7 }], openWeeks: [3], course: needs('grafting', 6) },
      { kind: 1, steps: [{ ...certain(1), days: 7 }], openWeeks: [3], course: needs('cuttings', 2) },
    ],
    orders: [
      { kind: 0, number: 100, dueWeek: 6, price: 20 },
      { kind: 1, number: 300, dueWeek: 6, price: 4 },
    ],
    people,
    more: {
      prices: {
        minute,
        overtimeMinute: minute + 1,
        missedShare: 0.1,
        latePerWeekShare: 0.05,
        shortShare: 1.5,
      },
    },
  })

test('a shared skilled hand: her hour is spent once, on what is worth more by the minute', async () => {
  // 600 minutes of grafting and 600 of cuttings; Ada can do both and has 900, nobody else.
  const { short, objective, dual } = await solved(
    pear([tinyPerson('Ada', ['grafting', 'cuttings'], everyWeek(12, 900))]),
  )
  // A graft saves 30 − 1 for 6 minutes (4.83 a minute), a cutting 6 − 1 for 2 (2.5 a minute): grafts first.
  expect(short[0]).toBeCloseTo(0, 4)
  expect(short[1]).toBeCloseTo(150, 4)
  // 100 grafts and 150 cuttings at 1, 150 figs short at 1.5 · 4.
  expect(objective).toBeCloseTo(100 + 150 + 150 * 6, 4)
  expect(dual('labour/cuttings + grafting/3')).toBeCloseTo(-2.5, 6)
  expect(dual('labour/grafting/3')).toBeCloseTo(0, 6)
})

test('a second person with only the simple skill frees the grafter', async () => {
  const { short, dual } = await solved(
    pear([
      tinyPerson('Ada', ['grafting', 'cuttings'], everyWeek(12, 600)),
      tinyPerson('Ben', ['cuttings'], everyWeek(12, 500)),
    ]),
  )
  expect(short[0]).toBeCloseTo(0, 4)
  expect(short[1]).toBeCloseTo(50, 4)
  expect(dual('labour/cuttings + grafting/3')).toBeCloseTo(-2.5, 6)
})

test('overtime is worked when it costs less than what it saves, and hours are paid', async () => {
  const { short, objective, dual } = await solved(
    pear([tinyPerson('Ada', ['grafting', 'cuttings'], everyWeek(12, 900), everyWeek(12, 200))], 0.5),
  )
  // 200 minutes of overtime make 100 more cuttings; a minute costs 0.5, of overtime 1.5.
  expect(short[1]).toBeCloseTo(50, 4)
  expect(objective).toBeCloseTo(100 + 250 + 900 * 0.5 + 200 * 1.5 + 50 * 6, 3)
  // At the margin a minute makes half a fig that saves 6 and costs 1: 2.5, less the 0.5 that it is paid.
  expect(dual('labour/cuttings + grafting/3')).toBeCloseTo(-2, 6)
})

test('without anyone who can graft nothing is grafted, and the plan still exists', async () => {
  const { outcome, short } = await solved(pear([tinyPerson('Ben', ['cuttings'], everyWeek(12, 5000))]))
  expect(outcome).toBe('optimal')
  expect(short[0]).toBeCloseTo(100, 4)
  expect(short[1]).toBeCloseTo(0, 4)
})

test('care of living batches comes before new starts, and is left undone only where there are no hands', async () => {
  const season = pear([tinyPerson('Ben', ['cuttings'], everyWeek(12, 500))])
  const care = (minutes: number) => ({
    ...season,
    batches: [
      finishedBatch(0, 0, { labour: [{ skill: 'cuttings' as const, minutes: everyWeek(12, minutes) }] }),
    ],
  })
  expect((await solved(care(300))).short[1]).toBeCloseTo(200, 4)
  const tooMuch = await solved(care(700))
  expect(tooMuch.outcome).toBe('optimal')
  expect(tooMuch.short[1]).toBeCloseTo(300, 4)
})

test('people with the same skills are one crew, in whatever order their skills are written', () => {
  const season = pear([
    tinyPerson('Ada', ['grafting', 'cuttings'], everyWeek(12, 100)),
    tinyPerson('Ben', ['cuttings'], everyWeek(12, 10)),
    tinyPerson('Cem', ['cuttings', 'grafting'], everyWeek(12, 50)),
  ])
  expect(crewsOf(season).map(({ people, minutes }) => [people, minutes[0]])).toEqual([
    [[1], 10],
    [[0, 2], 150],
  ])
})
