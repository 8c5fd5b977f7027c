import { expect, test } from 'vitest'
import type { Nursery } from '../../record/index.ts'
import type { Plan } from '../plan.ts'
import { benchFill } from './bench-fill.ts'

const figure = (typical: number) => ({ typical })
const protocol = {
  id: 'p',
  method: 'softwood_cutting',
  usableDays: 100,
  steps: [
    {
      id: 'mist',
      name: 'Mist',
      place: 'mist bed',
      days: figure(30),
      survival: figure(0.5),
      plantsPerSquareMetre: figure(100),
    },
    {
      id: 'grow',
      name: 'Grow',
      place: 'tunnel',
      days: figure(60),
      survival: figure(1),
      plantsPerSquareMetre: figure(20),
    },
  ],
}
const bench = (id: string, place: string, areaSquareMetres: number) =>
  [id, { id, name: id, place, areaSquareMetres, closed: [] }] as const
const nursery = {
  protocols: new Map([['p', protocol]]),
  benches: new Map([
    bench('mist-1', 'mist bed', 10),
    bench('tunnel-1', 'tunnel', 5),
    bench('tunnel-2', 'tunnel', 50),
  ]),
  batches: new Map([
    [
      'b',
      {
        id: 'b',
        kind: 'fig',
        protocol: 'p',
        portions: [{ step: 'mist', bench: 'mist-1', since: '2026-01-05', number: 200 }],
        finishedPortions: [],
      },
    ],
  ]),
} as unknown as Nursery

const standsOn = (week: string, plan: Plan | null = null) =>
  Object.fromEntries(
    benchFill(nursery, plan, week, '2026-01-12').map(({ bench: id, stands }) => [
      id,
      stands.map(({ number, squareMetres, expected }) => [number, squareMetres, expected]),
    ]),
  )

test('this week it is what the entries say: 200 at 100 to the square metre take 2 m²', () => {
  expect(standsOn('2026-W03')).toEqual({ 'mist-1': [[200, 2, false]], 'tunnel-1': [], 'tunnel-2': [] })
})

test('once the step is over, the half that survives it goes to the roomiest bench of the next kind of place', () => {
  // Entered on 5 January, 30 days: in the week of 9 February 100 stand in the tunnel at 20 to the square metre.
  expect(standsOn('2026-W07')).toEqual({ 'mist-1': [], 'tunnel-1': [], 'tunnel-2': [[100, 5, true]] })
})

test('finished plants stand on as long as they are fit to be used, then no more', () => {
  // 30 + 60 + 100 days after 5 January is 14 July.
  expect(standsOn('2026-W28')['tunnel-2']).toHaveLength(1)
  expect(standsOn('2026-W30')['tunnel-2']).toEqual([])
})

test('a planned start joins on its own bench in its week, not before', () => {
  const plan = {
    starts: [{ id: 's', kind: 'fig', protocol: 'p', week: '2026-W20', number: 300, bench: 'mist-1' }],
  } as unknown as Plan
  expect(standsOn('2026-W19', plan)['mist-1']).toEqual([])
  expect(standsOn('2026-W20', plan)['mist-1']).toEqual([[300, 3, true]])
})
