import { describe, expect, test } from 'vitest'
import { inEnglish, PersonId, type Phrase, type PlaceKind, phrase, type Skill } from '../../trade/index.ts'
import { everyWeek, tinyPerson, tinyPlace } from '../fixtures/solved.ts'
import { certain, type TinySeason, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import type { Load, Plan } from '../plan.ts'
import type { Course, MotherPool, SeasonPerson } from '../season.ts'
import { earliestStart } from './earliest-start.ts'
import { freeInstead, leftFree } from './left-free.ts'

/**
 * One way to a fig: all cuttings live, 70 days from the middle of a week, ready ten weeks later. Open in weeks 2 to 6. With 95
 * in 100 waited for, a promise of 95 trees takes 100 cuttings.
 */
const weeks = 40
const fig = (course: Partial<Course>, more: Partial<TinySeason> = {}) =>
  tinySeason({
    weeks,
    firstWeek: 2921,
    kinds: [tinyKind('fig'), tinyKind('stock', { isRootstock: true })],
    ways: [{ kind: 0, steps: [{ ...certain(1), days: 70 }], openWeeks: [2, 3, 4, 5, 6], course }],
    ...more,
  })
const plan = (...loads: Partial<Load>[]): Pick<Plan, 'loads' | 'firstWeek'> => ({
  firstWeek: '2025-W52', // week 2921 since 1970-W01
  loads: loads as Load[],
})
const asked = { kind: 0, number: 95, sure: 0.9 }
const none = new Map<number, number[]>()

/** Mothers that give 60 sticks a week, and so many in a year. */
const sticks = (perYear: number): MotherPool => ({
  cultivar: null,
  rootstockKind: null,
  material: 'scion sticks',
  name: 'fig, scion sticks',
  mothers: [],
  perWeek: everyWeek(weeks, 60),
  perYear: [{ fromWeek: 0, toWeek: weeks - 1, most: perYear }],
  stored: [],
  keepsWeeks: 0,
  young: null,
})

test('with nothing in the way it begins in the first open week', () => {
  const season = fig({})
  expect(earliestStart(season, asked, leftFree(season, plan(), [], none))).toMatchObject({
    start: { week: 2, number: 100, readyWeek: 12 },
    lack: null,
  })
})

test('it begins when the bench has room: full to week 4, so in week 5, and the earlier weeks say why not', () => {
  // 100 cuttings at 50 to the square metre take 2 m² for one week; 10 m², of which 9 are taken until week 4.
  const season = fig(
    { area: [{ place: 0, squareMetres: Float64Array.of(0.02) }] },
    {
      places: [
        {
          place: 'mist bed' as PlaceKind,
          benches: [],
          squareMetres: everyWeek(weeks, 10),
          extraPricePerSquareMetreWeek: null,
          pricePerSquareMetreWeek: 0,
        },
      ],
    },
  )
  const taken = Array.from({ length: weeks }, (_, week) => (week <= 4 ? 9 : 3))
  const found = earliestStart(
    season,
    asked,
    leftFree(season, plan({ what: 'place', id: 'mist bed', expected: taken }), [], none),
  )
  expect(found.start).toMatchObject({ week: 5, readyWeek: 15 })
  expect(found.lack && inEnglish(found.lack)).toMatch(/^the mist bed is full in week \d+$/)
  const always = leftFree(
    season,
    plan({ what: 'place', id: 'mist bed', expected: taken.map(() => 9) }),
    [],
    none,
  )
  expect(earliestStart(season, asked, always).start).toBeNull()
})

describe('hands', () => {
  const person = (id: string, skills: Skill[], hours: number): SeasonPerson => ({
    id: PersonId.parse(id),
    skills,
    minutes: everyWeek(weeks, hours * 60),
    overtimeMinutes: everyWeek(weeks, 0),
  })
  const work = (skill: Skill, minutes: number): Partial<Course> => ({
    labour: [{ skill, perPlant: Float64Array.of(minutes), perBatch: Float64Array.of(0) }],
  })
  const load = (skill: Skill, until: number, hours: number): Partial<Load> => ({
    what: 'skill',
    id: skill,
    expected: Array.from({ length: weeks }, (_, week) => (week <= until ? hours : 0)),
  })

  test('it begins when those who can do it have the hours', () => {
    // 100 at 6 minutes are 10 hours; of 40 the plan takes 35 until week 3.
    const season = fig(work('grafting', 6), { people: [person('Ada', ['grafting'], 40)] })
    const found = earliestStart(season, asked, leftFree(season, plan(load('grafting', 3, 35)), [], none))
    expect(found.start).toMatchObject({ week: 4 })
    expect(found.lack && inEnglish(found.lack)).toContain('hands for grafting are all taken')
  })

  test('one hour is not given twice: a grafter who pots all week has none left to graft', () => {
    const season = fig(work('grafting', 6), { people: [person('Ada', ['grafting', 'potting'], 40)] })
    const found = earliestStart(season, asked, leftFree(season, plan(load('potting', 3, 35)), [], none))
    expect(found.start).toMatchObject({ week: 4 })
    // A second pair of hands that can pot takes the potting, and she is free.
    const two = fig(work('grafting', 6), {
      people: [person('Ada', ['grafting', 'potting'], 40), person('Ben', ['potting'], 40)],
    })
    expect(
      earliestStart(two, asked, leftFree(two, plan(load('potting', 3, 35)), [], none)).start,
    ).toMatchObject({
      week: 2,
    })
  })

  test('work that nobody can do is never promised', () => {
    const season = fig(work('grafting', 6), { people: [person('Ben', ['potting'], 40)] })
    expect(earliestStart(season, asked, leftFree(season, plan(), [], none))).toMatchObject({
      start: null,
      lack: phrase('no one has the skill: {skill}', { skill: phrase('grafting') }),
    })
  })
})

test('wood: what the plan takes is taken, in the week and in the year', () => {
  // A stick for two plants: 50 sticks. The mothers give 60 a week and 160 a year; the plan takes 20 in week 2 and 30 in week 3.
  const season = fig(
    { material: [{ pool: 0, offset: 0, perPlant: 0.5 }] },
    {
      pools: [sticks(160)],
    },
  )
  const planned = [
    { way: 0, week: 2, number: 40 },
    { way: 0, week: 3, number: 60 },
  ]
  const found = earliestStart(season, asked, leftFree(season, plan(), planned, none))
  expect(found).toMatchObject({
    start: { week: 4 },
    lack: phrase('the mother trees give no more ({wood})', {
      wood: phrase('{of}, {material}', { of: 'fig', material: phrase('scion sticks') }),
    }),
  })
  // 122 plants more in week 6 take 61 sticks: of 160 only 49 are left.
  const more = [...planned, { way: 0, week: 6, number: 122 }]
  expect(earliestStart(season, asked, leftFree(season, plan(), more, none)).start).toBeNull()
})

test('rootstocks: those that are free in the week of the graft, else bought in, else none', () => {
  const rootstock = { kinds: [1], offset: 0, perPlant: 1, minMm: 6, maxMm: 10 }
  const season = fig({ rootstock })
  const free = (from: number) =>
    new Map([[1, Array.from({ length: weeks }, (_, w) => (w >= from ? 100 : 99))]])
  expect(earliestStart(season, asked, leftFree(season, plan(), [], free(5)))).toMatchObject({
    start: { week: 5 },
    lack: { says: 'no rootstocks are free in week {week} ({kinds})' },
  })
  const bought = fig(
    { rootstock },
    {
      kinds: [
        tinyKind('fig'),
        tinyKind('stock', { isRootstock: true, buyIn: { price: 4, weeksNotice: 3, mostPerWeek: 500 } }),
      ],
    },
  )
  expect(earliestStart(bought, asked, leftFree(bought, plan(), [], none)).start).toMatchObject({ week: 3 })
})

test('a licence: what the plan begins of the cultivar counts', () => {
  const licence = (most: number) => ({
    licences: [{ name: 'Amber', kinds: [0], perYear: [{ fromWeek: 0, toWeek: weeks - 1, most }] }],
  })
  const planned = [{ way: 0, week: 8, number: 100 }]
  const enough = fig({}, { more: licence(200) })
  expect(earliestStart(enough, asked, leftFree(enough, plan(), planned, none)).start).not.toBeNull()
  const few = fig({}, { more: licence(199) })
  expect(earliestStart(few, asked, leftFree(few, plan(), planned, none))).toMatchObject({
    start: null,
    lack: phrase('the licence of {kind} is used up', { kind: 'Amber' }),
  })
})

describe('a start of the plan begun otherwise', () => {
  const was = { way: 0, week: 3, number: 100 }
  const lacks = (said: readonly Phrase[]) => said.map(inEnglish).join('; ')

  test('its own room is free again: it may move to weeks with room beside the others, and grow by what is left', () => {
    // 100 cuttings take 2 m² for a week; of 10 m² others take 7 in week 3, 9 in week 4 and 3 from week 5 on.
    const season = fig(
      { area: [{ place: 0, squareMetres: Float64Array.of(0.02) }] },
      { places: [tinyPlace('mist bed', everyWeek(weeks, 10))] },
    )
    const expected = Array.from({ length: weeks }, (_, week) => [7, 7, 7, 9, 9][week] ?? 3)
    const free = freeInstead(season, plan({ what: 'place', id: 'mist bed', expected }), [], was)
    expect(free(was)).toEqual([])
    expect(free({ ...was, number: 150 })).toEqual([])
    expect(lacks(free({ ...was, number: 160 }))).toMatch(/^the mist bed is full in week/)
    expect(lacks(free({ ...was, week: 4 }))).toMatch(/^the mist bed is full in week/)
    expect(free({ ...was, week: 4, number: 50 })).toEqual([])
    expect(free({ ...was, week: 5 })).toEqual([])
    // Planned over what there is, with area that is lent: what it was given it may take, and no more.
    const over = freeInstead(
      season,
      plan({ what: 'place', id: 'mist bed', expected: expected.map(() => 13) }),
      [],
      was,
    )
    expect(over(was)).toEqual([])
    expect(lacks(over({ ...was, number: 110 }))).toMatch(/^the mist bed is full/)
  })

  test('its own hours and sticks too, and all that lacks is told', () => {
    // 100 at 6 minutes are 10 of Ada's 12 hours, and 50 sticks of the 60 that the mothers give in a year; 5 went to others.
    const season = fig(
      {
        labour: [{ skill: 'grafting', perPlant: Float64Array.of(6), perBatch: Float64Array.of(0) }],
        material: [{ pool: 0, offset: 0, perPlant: 0.5 }],
      },
      {
        people: [tinyPerson('Ada', ['grafting'], everyWeek(weeks, 12 * 60))],
        pools: [sticks(60)],
      },
    )
    const expected = Array.from({ length: weeks }, (_, week) => (week === 3 ? 10 : week === 4 ? 4 : 0))
    const others = [{ way: 0, week: 6, number: 10 }]
    const free = freeInstead(season, plan({ what: 'skill', id: 'grafting', expected }), others, was)
    expect(free({ ...was, number: 110 })).toEqual([])
    expect(lacks(free({ ...was, week: 4 }))).toMatch(/^hands for grafting are all taken in week/)
    expect(lacks(free({ ...was, week: 5, number: 115 }))).toBe(
      'the mother trees give no more (fig, scion sticks)',
    )
    const both = lacks(free({ ...was, number: 125 }))
    expect(both).toContain('hands for grafting are all taken')
    expect(both).toContain('the mother trees give no more')
  })

  test('of a licence what it was to begin is free again', () => {
    const season = fig(
      {},
      {
        more: {
          licences: [{ name: 'Amber', kinds: [0], perYear: [{ fromWeek: 0, toWeek: 39, most: 150 }] }],
        },
      },
    )
    const free = freeInstead(season, plan(), [{ way: 0, week: 6, number: 30 }], was)
    expect(free({ ...was, number: 120 })).toEqual([])
    expect(lacks(free({ ...was, number: 121 }))).toBe('the licence of Amber is used up')
  })
})
