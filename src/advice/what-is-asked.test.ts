import { expect, test } from 'vitest'
import { annuityFactor } from '../science/index.ts'
import { allSpecies, speciesById } from '../trade/facts/index.ts'
import type { Answer, WayAnswer } from './answer.ts'
import { thirtyClimates } from './climate/thirty-climates.ts'
import { Question } from './question.ts'
import { whichTree } from './which-tree.ts'

/** What a buyer says moves the answer as it must, by hand or by the trade's rules. */

const garden = { kind: 'normals', coldestNightCelsius: -6, coldestMonthCelsius: 3, warmestMonthCelsius: 21 }
const ask = (species: string, more: object = {}): Answer =>
  whichTree(Question.parse({ species, climate: garden, ...more }), speciesById(species)!, 80)
const way = (answer: Answer, id: string): WayAnswer => answer.ways.find(one => one.way.id === id)!

test('of a seedling worked over, as many bear the named fruit as take, and a second try follows a failure', () => {
  const share = (take: number) =>
    way(
      ask('apple', {
        wouldRework: true,
        amount: { kind: 'trees', trees: 400 },
        set: { reworkTakeShare: take },
      }),
      'reworked',
    ).trueShare
  expect(share(0)).toBe(0)
  expect(share(1)).toBeGreaterThan(0.95)
  // Two tries at one half leave a quarter of them seedlings.
  expect(Math.abs(share(0.5) - 0.75)).toBeLessThan(0.06)
})

test('a tree that is promised for later fruits as much later, and a year later still where the promise fails', () => {
  const promised = (waitYears: number, chance = 1) =>
    way(
      ask('apple', {
        yearsAhead: 20,
        offers: [{ form: 'worked', rootstock: 'dwarfing', label: 'promised', price: 20, waitYears, chance }],
      }),
      'worked/dwarfing',
    )
  expect(promised(3).firstFruit.middle).toBeCloseTo(promised(0).firstFruit.middle + 3, 6)
  expect(promised(3, 0.5).firstFruit.middle).toBeGreaterThan(promised(3).firstFruit.middle)
  expect(promised(3).cropSoFar.mean.at(-1)!).toBeLessThan(promised(0).cropSoFar.mean.at(-1)!)
})

test('a way that fruits too late for the wish is said to, and leads in nothing while another is left', () => {
  const answer = ask('apple', { firstFruitWithinYears: 3, partner: 'near' })
  expect(way(answer, 'worked/vigorous').against).toContain('too late')
  expect(way(answer, 'worked/dwarfing').against).not.toContain('too late')
  for (const id of Object.values(answer.best))
    if (id !== null) expect(way(answer, id).against).not.toContain('too late')
})

test('what a planting costs is by hand: price, planting and stake, and the share planted again', () => {
  const offers = [
    { form: 'worked', rootstock: 'vigorous', label: 'standard', price: 20 },
    { form: 'worked', rootstock: 'dwarfing', label: 'dwarf', price: 20 },
  ]
  const answer = ask('apple', { offers, partner: 'near' })
  // Planting 8, a stake 6, one in twenty worked trees planted again: 1.05 · (20 + 8) and 1.05 · (20 + 8 + 6).
  expect(way(answer, 'worked/vigorous').spend).toBeCloseTo(29.4, 9)
  expect(way(answer, 'worked/dwarfing').spend).toBeCloseTo(35.7, 9)
})

test('the worth a year for as long is worth what the planting is worth, and a square metre its part of it', () => {
  for (const one of ask('pear', { interest: 0.06, yearsAhead: 18 }).ways) {
    expect(one.equivalentYearlyValue * annuityFactor(0.06, 18)).toBeCloseTo(one.presentValue.mean, 6)
    expect(one.presentValuePerSquareMetre * one.stand.squareMetres).toBeCloseTo(one.presentValue.mean, 6)
  }
})

test('a fruit that needs a partner bears the share that it bears alone, where none is there', () => {
  const crop = (partner: string) =>
    way(ask('apple', { partner, set: { cropAloneShare: 0.2 } }), 'worked/semi-dwarfing').cropSoFar.mean.at(
      -1,
    )!
  // Of the spread from 0 to 0.67 about the middle, the mean lies somewhat above it.
  expect(crop('none') / crop('near')).toBeGreaterThan(0.15)
  expect(crop('none') / crop('near')).toBeLessThan(0.35)
  expect(crop('planted too')).toBeCloseTo(crop('near'), 6)
})

test('chill and warmth are counted by years: none too mild for a peach in the tropics, all cold enough farther north', () => {
  const peach = (climate: object) => ask('peach', { climate })
  const tropics = peach({
    kind: 'normals',
    coldestNightCelsius: 16,
    coldestMonthCelsius: 24,
    warmestMonthCelsius: 28,
  })
  expect(tropics.climate.enoughChill).toBe(0)
  expect(tropics.cautions.some(({ kind }) => kind === 'climate')).toBe(true)
  expect(peach(garden).climate.enoughChill).toBeGreaterThan(0.95)
})

test('seedlings of fruits with nucellar embryos come true as often as said, one or none where a single tree is planted', () => {
  const seedling = (trees: number) =>
    way(
      ask('orange_sweet', {
        amount: { kind: 'trees', trees },
        climate: { ...garden, coldestNightCelsius: 4, coldestMonthCelsius: 13 },
        set: { trueFromSeedShare: 0.88 },
      }),
      'seedling',
    ).trueShare
  expect(Math.abs(seedling(500) - 0.88)).toBeLessThan(0.03)
  expect(Math.abs(seedling(1) - 0.88)).toBeLessThan(0.05)
})

const someAnswers = allSpecies().flatMap((species, i) =>
  [thirtyClimates[i % 30]!, thirtyClimates[(i + 7) % 30]!].map(climate =>
    whichTree(Question.parse({ species: species.id, climate, wouldRework: true }), species, 40),
  ),
)

test('in each year the way that is said to lead has given most, and the year of a change is the first of it', () => {
  for (const { ways, leaders, years } of someAnswers)
    for (let year = 1; year <= years; year++) {
      const most = Math.max(...ways.map(({ cropSoFar }) => cropSoFar.mean[year]!))
      const leader = leaders.filter(({ fromYear }) => fromYear <= year).at(-1)
      if (leader === undefined) expect(most).toBe(0)
      else {
        const given = ways.find(one => one.way.id === leader.way)!.cropSoFar.mean[year]!
        expect(given).toBeGreaterThanOrEqual(most * (1 - 1e-6))
      }
    }
})

test('a way is greyed only where another is as good in every column and better in one', () => {
  const columns = (one: WayAnswer) => [
    -one.firstFruit.middle,
    one.trueShare,
    one.survives,
    -one.spend,
    one.cropSoFar.mean.at(-1)!,
    one.presentValue.mean,
  ]
  let greyed = 0
  for (const { ways, beaten } of someAnswers)
    for (const pair of beaten) {
      greyed += 1
      const [own, other] = [pair.way, pair.by].map(id => columns(ways.find(one => one.way.id === id)!))
      own!.forEach((value, i) => {
        expect(other![i]!).toBeGreaterThanOrEqual(value)
      })
    }
  expect(greyed).toBeGreaterThan(10)
})
