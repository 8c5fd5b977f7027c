import fc from 'fast-check'
import { expect, test } from 'vitest'
import { allSpecies, speciesById, starterProtocol } from '../../trade/facts/index.ts'
import { commonPractice, type Protocol, type Step, StepId } from '../../trade/index.ts'
import { makingOfOne, type WayToMake } from './cost-of-way.ts'
import { usualWays } from './usual-ways.ts'
import { breakEven, whichWay } from './which-way.ts'

const costs = { hour: 20, squareMetreWeek: 0.4 }

const step = (id: string, share: number, materialCostPerPlant: number): Step => ({
  id: StepId.parse(id),
  name: id,
  place: 'mist bed',
  days: commonPractice(7, 7, 7),
  survival: commonPractice(share, share, share),
  sign: 'alive',
  plantsPerSquareMetre: null,
  work: [],
  materialCostPerPlant,
})
const bare: Protocol = {
  ...starterProtocol('hardwood_cutting', speciesById('fig')!),
  before: [],
  takes: [],
  steps: [step('rooting', 0.7, 0.4), step('growing', 0.9, 0.6)],
}
const way = (more: Partial<WayToMake> = {}): WayToMake => ({
  protocol: bare,
  price: 10,
  setUp: 0,
  materialCost: 0.85,
  rootstock: null,
  rootstockPrice: 0,
  ...more,
})

test('what a survivor costs, losses rolled in: 0.85 to start, 0.40 and 0.60 on those entering, 70 % and 90 % live', () => {
  // Constructed; recomputed with R 4.2.2: 1670 spent on 630 out of 1000, 2.650793651 each.
  const { cost, started } = makingOfOne(way(), costs)
  expect(cost).toBeCloseTo(2.650793651, 9)
  expect(started).toBeCloseTo(1000 / 630, 12)
})

test('work counts the plants alive when it is done, and benches those that enter', () => {
  const minutes = commonPractice(1, 2, 3)
  const worked: Step = {
    ...step('rooting', 0.5, 0),
    plantsPerSquareMetre: commonPractice(50, 100, 200),
    work: [
      { task: 'stick', skill: 'cuttings', when: 'begin', minutesPerPlant: minutes, minutesPerBatch: 0 },
      { task: 'pot', skill: 'potting', when: 'end', minutesPerPlant: minutes, minutesPerBatch: 0 },
    ],
  }
  const one = makingOfOne(way({ protocol: { ...bare, steps: [worked] }, materialCost: 0 }), costs)
  // Two start for one that lives: 2 · 2 minutes to stick, 2 to pot; a week on 2/100 m².
  expect(one.minutesBySkill).toEqual({ cuttings: 4, potting: 2 })
  expect(one.squareMetreWeeks).toBeCloseTo(0.02, 12)
  expect(one.cost).toBeCloseTo((6 / 60) * 20 + 0.02 * 0.4, 12)
})

test('every fruit has ways with finite costs, dearer in bad years and cheaper in good ones', () => {
  for (const species of allSpecies())
    for (const made of whichWay(usualWays(species), costs)) {
      const name = made.way.protocol.id
      expect(Number.isFinite(made.one.cost) && made.one.cost > 0, name).toBe(true)
      expect(made.cost.low, name).toBeLessThanOrEqual(made.cost.middle + 1e-12)
      expect(made.cost.middle, name).toBeLessThanOrEqual(made.cost.high + 1e-12)
      expect(made.one.started, name).toBeGreaterThanOrEqual(1)
      expect(made.through.low, name).toBeLessThanOrEqual(made.through.high)
    }
})

test('a seedling costs least to make, and a worked tree takes its rootstock’s labour too (common practice)', () => {
  for (const id of ['mango', 'orange_sweet', 'avocado', 'guava', 'jackfruit']) {
    const all = whichWay(usualWays(speciesById(id)!), costs)
    const seed = all.find(({ way: { protocol } }) => protocol.method === 'seed')
    if (seed === undefined) continue
    for (const made of all)
      if (made.way.rootstock !== null)
        expect(made.one.cost, made.way.protocol.id).toBeGreaterThan(seed.one.cost)
  }
})

test('at the break-even number both ways cost the same, and on each side the named one is cheaper', () => {
  const money = fc.double({ min: 0, max: 500, noNaN: true })
  fc.assert(
    fc.property(money, money, money, money, (setUpA, setUpB, eachA, eachB) => {
      const [a] = whichWay([way({ setUp: setUpA, materialCost: eachA })], costs)
      const [b] = whichWay([way({ setUp: setUpB, materialCost: eachB })], costs)
      const total = (made: typeof a, number: number) => made!.way.setUp + number * made!.one.cost
      const found = breakEven(a!, b!)
      if (found.kind === 'always') {
        const other = found.cheaper === a ? b : a
        for (const number of [1, 50, 5000])
          expect(total(found.cheaper, number)).toBeLessThanOrEqual(total(other, number) + 1e-6)
        return
      }
      const { number, below, above } = found
      const even = total(below, number)
      // Two ways that differ by the last bit cost the same at a number with fifteen digits.
      const dust = 1e-9 * (1 + even)
      expect(Math.abs(even - total(above, number))).toBeLessThanOrEqual(dust)
      expect(total(below, number / 2)).toBeLessThanOrEqual(total(above, number / 2) + dust)
      expect(total(above, number * 2)).toBeLessThanOrEqual(total(below, number * 2) + dust)
    }),
  )
})

test('a way that saves next to nothing each never earns its set-up back', () => {
  const [a] = whichWay([way({ setUp: 0, materialCost: 2 })], costs)
  const [b] = whichWay([way({ setUp: 2, materialCost: 2 })], costs)
  const dust = { ...a!, one: { ...a!.one, cost: a!.one.cost } }
  expect(breakEven(dust, b!)).toMatchObject({ kind: 'always', cheaper: { way: { setUp: 0 } } })
  const free = { ...a!, one: { ...a!.one, cost: 5e-324 } }
  const freer = { ...b!, one: { ...b!.one, cost: 0 } }
  expect(breakEven(free, freer)).toMatchObject({ kind: 'always', cheaper: { way: { setUp: 0 } } })
})
