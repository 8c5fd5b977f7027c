import fc from 'fast-check'
import { expect, test } from 'vitest'
import { Question } from '../../../advice/index.ts'
import { linkFromSearch, linkOfQuestion, questionFromLink, searchOfLink } from './question-link.ts'

const maybe = (of: fc.Arbitrary<number>) => fc.option(of, { nil: null })
const degrees = fc.integer({ min: -30, max: 30 })
const climates = fc.oneof(
  fc.record({
    kind: fc.constant('normals'),
    coldestNightCelsius: degrees,
    coldestInTenYearsCelsius: maybe(degrees),
    coldestMonthCelsius: degrees,
    warmestMonthCelsius: degrees,
  }),
  fc.record({
    kind: fc.constant('place'),
    latitude: fc.integer({ min: -60, max: 60 }),
    heightMetres: fc.integer({ min: 0, max: 3000 }),
    sea: fc.constantFrom('near', 'some way off', 'far'),
  }),
  fc.record({
    kind: fc.constant('record'),
    yearlyMinimaCelsius: fc.array(degrees, { minLength: 5, maxLength: 40 }),
    coldestMonthCelsius: degrees,
    warmestMonthCelsius: degrees,
    monthMeansCelsius: fc.array(degrees, { minLength: 12, maxLength: 12 }),
  }),
)
const questions = fc.record({
  species: fc.constantFrom('apple', 'orange_sweet', 'fig'),
  wanted: fc.constantFrom('named', 'any'),
  cultivar: fc.constantFrom('', 'Golden Wonder & Co'),
  amount: fc.oneof(
    fc.record({ kind: fc.constant('trees'), trees: fc.integer({ min: 1, max: 500 }) }),
    fc.record({ kind: fc.constant('area'), squareMetres: fc.integer({ min: 1, max: 50_000 }) }),
  ),
  ground: fc.oneof(
    fc.record({
      kind: fc.constant('ground'),
      exposure: fc.constantFrom('sheltered', 'open', 'windy'),
      staked: fc.boolean(),
      covered: fc.boolean(),
    }),
    fc.record({
      kind: fc.constant('container'),
      litres: fc.integer({ min: 5, max: 400 }),
      winter: fc.constantFrom('outside', 'by a warm wall', 'moved inside'),
    }),
  ),
  climate: climates,
  yearsAhead: fc.integer({ min: 1, max: 40 }),
  partner: fc.constantFrom('near', 'planted too', 'none'),
  wouldRework: fc.boolean(),
  heightAtMostMetres: maybe(fc.integer({ min: 1, max: 20 })),
  firstFruitWithinYears: maybe(fc.integer({ min: 1, max: 20 })),
  spendAtMost: maybe(fc.integer({ min: 0, max: 9999 })),
  interest: fc.constantFrom(0, 0.05, 0.08),
  set: fc.constantFrom({}, { fruitWorthPerKg: 2.5, minMatureCelsius: -7 }),
  offers: fc.constantFrom(
    [],
    [{ form: 'worked', rootstock: 'dwarfing', label: 'Pippin, 5 l', price: 24.5, waitYears: 1, chance: 0.8 }],
  ),
})

test('a link reopens the very question', () => {
  fc.assert(
    fc.property(questions, said => {
      const question = Question.parse(said)
      const link = linkFromSearch(`?${searchOfLink(linkOfQuestion(question, true))}`)
      expect(questionFromLink(link, 'pear')).toEqual(question)
    }),
    { numRuns: 60 },
  )
})

test('without being asked to, a link carries no price', () => {
  const question = Question.parse({
    species: 'apple',
    climate: { kind: 'place', latitude: 50, heightMetres: 0, sea: 'far' },
    offers: [{ form: 'worked', label: 'Pippin', price: 31 }],
  })
  expect(searchOfLink(linkOfQuestion(question, false))).not.toMatch(/31|Pippin|offers/)
})

test('an address with nonsense in it still gives a question', () => {
  expect(questionFromLink({ fruit: 'fig', trees: 'many', pot: -5, lat: 900 }, 'apple').species).toBe('apple')
  expect(questionFromLink({ fruit: 'fig', trees: -4 }, 'apple').species).toBe('fig')
  expect(questionFromLink({}, 'apple').species).toBe('apple')
})
