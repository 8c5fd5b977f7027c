import { describe, expect, test } from 'vitest'
import { speciesById } from '../trade/facts/index.ts'
import type { Answer, WayAnswer } from './answer.ts'
import { Question } from './question.ts'
import { whichTree } from './which-tree.ts'

/** Twelve buyers, and what a nurseryman would hand them. The reasons are common practice, no source, unless said. */

const place = (coldestNight: number, coldestMonth: number, warmestMonth: number) => ({
  kind: 'normals',
  coldestNightCelsius: coldestNight,
  coldestMonthCelsius: coldestMonth,
  warmestMonthCelsius: warmestMonth,
})
const ask = (said: Record<string, unknown> & { readonly species: string }): Answer =>
  whichTree(Question.parse(said), speciesById(said.species)!)
const way = (answer: Answer, id: string | null): WayAnswer => answer.ways.find(one => one.way.id === id)!
const formOf = (answer: Answer, wish: keyof Answer['best']) => way(answer, answer.best[wish])?.way.form

describe('the way that leads is the one the trade would hand to', () => {
  test('1. a balcony, a pot, lemons next year: the air layer, which is bearing wood from the day it is cut', () => {
    const answer = ask({
      species: 'lemon',
      ground: { kind: 'container', litres: 50, winter: 'moved inside' },
      climate: place(-6, 4, 22),
      yearsAhead: 8,
    })
    expect(formOf(answer, 'soonest')).toBe('layered')
    expect(way(answer, answer.best.soonest).firstFruit.low).toBeLessThan(2)
    expect(way(answer, 'seedling').firstFruit.middle).toBeGreaterThan(4)
  })

  test('2. oranges in a frost pocket: worked on trifoliate, which the facts name for cool places', () => {
    const answer = ask({ species: 'orange_sweet', climate: place(-4, 7, 25), yearsAhead: 20 })
    expect(answer.best['most fruit']).toBe('worked/trifoliate')
    expect(way(answer, 'worked/trifoliate').survives).toBeGreaterThan(
      1.3 * way(answer, 'worked/rough-lemon').survives,
    )
    expect(answer.cautions.some(({ kind }) => kind === 'frost')).toBe(true)
  })

  test('3. two hectares of plums and little money: seedlings, worked by the buyer in their third year', () => {
    const answer = ask({
      species: 'plum',
      amount: { kind: 'area', squareMetres: 20_000 },
      climate: place(-9, 2, 21),
      wouldRework: true,
      spendAtMost: 12_000,
      yearsAhead: 20,
    })
    expect(formOf(answer, 'cheapest')).toBe('reworked')
    const cheap = way(answer, answer.best.cheapest)
    for (const other of answer.ways)
      if (other.way.form === 'worked') expect(other.spend).toBeGreaterThan(1.3 * cheap.spend)
    expect(way(answer, 'worked/semi-dwarfing').against).toContain('too dear')
  })

  test('4. a rare named lychee: an air layer is worth two years of waiting, a seedling in stock is not it', () => {
    const offers = [
      { form: 'layered', label: 'promised', price: 25, waitYears: 2, chance: 0.8 },
      { form: 'seedling', label: 'in stock', price: 6 },
    ]
    const answer = ask({
      species: 'lychee',
      climate: place(3, 13, 27),
      yearsAhead: 15,
      offers,
      onlyOffered: true,
    })
    expect(formOf(answer, 'most fruit')).toBe('layered')
    expect(way(answer, 'layered').firstFruit.middle).toBeGreaterThan(5)
    expect(way(answer, 'seedling').trueShare).toBe(0)
    expect(way(answer, 'seedling').seedlingsForGood?.plant).toBe(Number.POSITIVE_INFINITY)
  })

  test('5. an apple that one picks standing, in a small garden: on the dwarfing stock', () => {
    const answer = ask({
      species: 'apple',
      climate: place(-10, 1, 19),
      heightAtMostMetres: 2.5,
      partner: 'near',
    })
    for (const wish of ['soonest', 'most fruit', 'sure to live'] as const)
      expect(way(answer, answer.best[wish]).way.rootstock?.id).toBe('dwarfing')
    expect(way(answer, 'worked/vigorous').against).toContain('too big')
  })

  test('6. mangoes on a windy hill, without stakes: worked on a seedling, which has its taproot', () => {
    const answer = ask({
      species: 'mango',
      climate: place(8, 17, 28),
      ground: { kind: 'ground', exposure: 'windy', staked: false },
      yearsAhead: 20,
    })
    expect(formOf(answer, 'sure to live')).toBe('worked')
    expect(way(answer, 'worked/usual').survives).toBeGreaterThan(way(answer, 'layered').survives + 0.1)
  })

  test('7. a walnut for the grandchildren, any good nut will do: the seedling is cheapest, the worked tree first', () => {
    const answer = ask({
      species: 'walnut',
      wanted: 'any',
      climate: place(-7, 3, 24),
      yearsAhead: 40,
      amount: { kind: 'trees', trees: 10 },
    })
    expect(formOf(answer, 'cheapest')).toBe('seedling')
    expect(formOf(answer, 'soonest')).toBe('worked')
  })

  test('8. a smallholder’s mangoes by the hundred, any good ones: many seedlings are good enough, and cheapest', () => {
    const answer = ask({
      species: 'mango',
      wanted: 'any',
      amount: { kind: 'area', squareMetres: 10_000 },
      climate: place(14, 22, 29),
    })
    expect(formOf(answer, 'cheapest')).toBe('seedling')
    expect(way(answer, 'seedling').trueShare).toBeGreaterThan(0.4)
    expect(['layered', 'worked']).toContain(formOf(answer, 'most fruit'))
  })

  test('9. a fig where it freezes to the ground: on its own roots, for it comes again true', () => {
    const answer = ask({ species: 'fig', climate: place(-9, 3, 22), yearsAhead: 20 })
    expect(['cutting-grown', 'layered', 'divided']).toContain(formOf(answer, 'sure to live'))
    expect(way(answer, 'worked/usual').survives).toBeLessThan(way(answer, 'cutting-grown').survives)
  })

  test('10. one kiwifruit on a pergola: from a cutting, and a male with it (KIWI sources of the facts: 1 to 8)', () => {
    const answer = ask({ species: 'kiwifruit', climate: place(-3, 5, 23) })
    const best = way(answer, answer.best['most fruit'])
    expect(best.way.form).toBe('cutting-grown')
    expect(best.stand.partners).toBe(1)
    expect(answer.cautions.some(({ kind }) => kind === 'partner')).toBe(true)
  })

  test('11. a market grower’s oranges in a mild place, to pay back soon: worked trees', () => {
    const answer = ask({
      species: 'orange_sweet',
      climate: place(3, 12, 26),
      amount: { kind: 'area', squareMetres: 5_000 },
      yearsAhead: 15,
    })
    expect(formOf(answer, 'money')).toBe('worked')
    const best = way(answer, answer.best.money)
    expect(best.payback).not.toBeNull()
    expect(best.payback!).toBeLessThan(10)
    expect(way(answer, 'seedling').presentValue.mean).toBeLessThan(best.presentValue.mean)
  })

  test('12. arabica coffee: seedlings, for they come true (facts: self-pollinated), and cost a fraction', () => {
    const answer = ask({
      species: 'coffee',
      amount: { kind: 'area', squareMetres: 5_000 },
      climate: place(9, 17, 23),
    })
    expect(formOf(answer, 'cheapest')).toBe('seedling')
    const [first] = [...answer.ways].sort((a, b) => b.presentValue.mean - a.presentValue.mean)
    expect(first!.way.form).toBe('seedling')
    expect(first!.trueShare).toBeGreaterThan(0.85)
  })
})
