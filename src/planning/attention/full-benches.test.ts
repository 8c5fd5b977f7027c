import { expect, test } from 'vitest'
import type { Nursery } from '../../record/index.ts'
import type { Plan } from '../plan.ts'
import { fullBenches } from './full-benches.ts'

/** Hand-solved; weeks by ISO 8601. */
const figure = (typical: number) => ({ typical })
const protocol = {
  id: 'p',
  method: 'softwood_cutting',
  usableDays: 0,
  steps: [
    {
      id: 'mist',
      name: 'Mist',
      place: 'mist bed',
      days: figure(28),
      survival: figure(0.5),
      plantsPerSquareMetre: figure(100),
    },
  ],
}
const closure = { from: '2026-02-02', to: '2026-02-08', areaSquareMetres: 9 }
const bench = (id: string, areaSquareMetres: number, closed: readonly (typeof closure)[] = []) =>
  [id, { id, name: id, place: 'mist bed', areaSquareMetres, closed }] as const
const nurseryOf = (...benches: ReturnType<typeof bench>[]) =>
  ({
    protocols: new Map([['p', protocol]]),
    benches: new Map(benches),
    batches: new Map([
      [
        'b',
        {
          id: 'b',
          kind: 'fig',
          protocol: 'p',
          portions: [{ step: 'mist', bench: 'one', since: '2026-01-12', number: 800 }],
          finishedPortions: [],
        },
      ],
    ]),
  }) as unknown as Nursery
const planOf = (...starts: { readonly week: string; readonly number: number }[]) =>
  ({
    starts: starts.map((start, index) => ({
      id: `s${index}`,
      kind: 'fig',
      protocol: 'p',
      bench: 'one',
      ...start,
    })),
  }) as unknown as Plan

test('one bench of a kind overflows though another is empty: 8 m² stand, 4 m² join in week 5, there are 10 m² until the 8 m² leave', () => {
  // 800 since 12 January for 28 days leave on 9 February, a Monday: week 7 is free of them.
  expect(
    fullBenches(
      nurseryOf(bench('one', 10), bench('two', 50)),
      planOf({ week: '2026-W05', number: 400 }),
      '2026-01-12',
      13,
    ),
  ).toEqual([
    {
      bench: 'one',
      week: '2026-W05',
      squareMetres: 12,
      areaSquareMetres: 10,
      weeks: ['2026-W05', '2026-W06'],
    },
  ])
})

test('what stands to the last square metre fits; a part of it closed for a week is too little in that week', () => {
  expect(fullBenches(nurseryOf(bench('one', 8)), null, '2026-01-12', 13)).toEqual([])
  expect(fullBenches(nurseryOf(bench('one', 10, [closure])), null, '2026-01-12', 13)).toEqual([
    { bench: 'one', week: '2026-W06', squareMetres: 8, areaSquareMetres: 1, weeks: ['2026-W06'] },
  ])
})

test('a bench too full by the entries is told from this week on, and no week past the last asked for is', () => {
  const small = nurseryOf(bench('one', 6))
  expect(fullBenches(small, null, '2026-01-12', 2)).toMatchObject([
    { week: '2026-W03', squareMetres: 8, weeks: ['2026-W03', '2026-W04'] },
  ])
  expect(
    fullBenches(nurseryOf(bench('one', 10)), planOf({ week: '2026-W05', number: 400 }), '2026-01-12', 2),
  ).toEqual([])
})

test('the bench that overflows first is told first', () => {
  const nursery = nurseryOf(bench('one', 10), bench('two', 1))
  const plan = planOf({ week: '2026-W06', number: 400 })
  const early = {
    ...plan,
    starts: [...plan.starts, { ...plan.starts[0]!, id: 'e', bench: 'two', week: '2026-W04', number: 200 }],
  }
  expect(
    fullBenches(nursery, early as unknown as Plan, '2026-01-12', 13).map(one => [one.bench, one.week]),
  ).toEqual([
    ['two', '2026-W04'],
    ['one', '2026-W06'],
  ])
})
