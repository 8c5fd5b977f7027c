import { expect, test } from 'vitest'
import { REFUSALS } from '../src/api/index.ts'
import { terms } from '../src/app/text/es.ts'
import { termOf } from '../src/app/text/use-term.ts'
import { historyOfNursery } from '../src/record/fold/random-history.ts'
import { foldEntries, queryPhrase } from '../src/record/index.ts'
import { measureByKey } from '../src/trade/facts/fact-key.ts'
import {
  allMethods,
  allSpecies,
  canBeUnited,
  quantityByKey,
  severalUnions,
  starterProtocol,
} from '../src/trade/facts/index.ts'
import { timingByKey } from '../src/trade/facts/timing.ts'
import { guideCautions } from '../src/trade/guides/caution.ts'
import {
  Basis,
  Material,
  MethodId,
  type Part,
  type Phrase,
  PlaceKind,
  Sign,
  Skill,
} from '../src/trade/index.ts'
import { phrasesInCode, refusalsInCode } from './phrases-in-code.ts'

const term = termOf(terms)
const UNIONS = [
  { cultivars: 3, hasInterstem: false },
  { cultivars: 1, hasInterstem: true },
  { cultivars: 2, hasInterstem: true },
]
const placesOf = (said: string) => (said.match(/\{\w+\}/g) ?? []).map(place => place.toLowerCase()).sort()
/** Those that Spanish leaves as they are: nothing but places, measures and names that are the same. */
const isSaid = (english: string) => Object.hasOwn(terms, english) || term(english) !== english

test('whatever the office may say has its Spanish', () => {
  const phrases = phrasesInCode()
  expect(phrases.length).toBeGreaterThan(200)
  expect(phrases.filter(said => !isSaid(said))).toEqual([])
})

test('every refusal of the server has a code with its sentences in each language, and none that it never says', () => {
  const codes = Object.entries(REFUSALS)
  const lacking = codes.flatMap(([code, words]) =>
    Object.values<string>(words).flatMap(said => (said === '' || !isSaid(said) ? [`${code}: ${said}`] : [])),
  )
  // What is but a place for a part is the same in every language.
  expect(lacking.filter(line => !/: \{\w+\}$/.test(line))).toEqual([])
  const said = refusalsInCode()
  const begun = [...said].filter(code => code.endsWith('-'))
  expect(
    codes
      .map(([code]) => code)
      .filter(code => !said.has(code) && !begun.some(start => code.startsWith(start))),
  ).toEqual([])
})

test('Spanish puts in the same parts as the English, no more and no less', () => {
  const otherwise = Object.entries(terms).filter(
    ([english, spanish]) => String(placesOf(english)) !== String(placesOf(spanish)),
  )
  expect(otherwise).toEqual([])
})

test('words within what does not add up have their Spanish too', () => {
  const wordsOf = (part: Part): string[] => {
    if (typeof part !== 'object') return []
    if ('says' in part) return [part.says, ...Object.values((part as Phrase).of).flatMap(wordsOf)]
    return 'day' in part || 'amount' in part ? [] : part.flatMap(wordsOf)
  }
  const queries = Array.from(
    { length: 8 },
    (_, i) => foldEntries(historyOfNursery(i + 1, 250)).queries,
  ).flat()
  const words = new Set(queries.map(queryPhrase).flatMap(wordsOf))
  expect(words.size).toBeGreaterThan(30)
  expect([...words].filter(said => said !== '' && !isSaid(said))).toEqual([])
})

test('methods, fruits, steps, work, cautions, measures, units and words of the trade have their Spanish', () => {
  const english = new Set<string>([
    ...Basis.options,
    ...Material.options,
    ...PlaceKind.options,
    ...Sign.options,
    ...Skill.options,
    ...Object.values(guideCautions),
    ...[quantityByKey, measureByKey, timingByKey].flatMap(measures =>
      Object.values(measures).flatMap(({ name, unit }) => [name, unit]),
    ),
    ...allMethods().map(({ label }) => label),
  ])
  for (const fruit of allSpecies()) {
    english.add(fruit.commonName)
    // How a method is written down differs by climate and leaf alone: the fruit's own ways, and all of two fruits.
    const isWhole = fruit.id === 'mango' || fruit.id === 'apple'
    for (const method of isWhole ? MethodId.options : fruit.ways.map(way => way.method))
      for (const product of ['tree', 'rootstock'] as const) {
        const one = starterProtocol(method, fruit, product)
        const { name, steps, before, settings, cautions } = one
        for (const unions of UNIONS)
          if (product === 'tree' && canBeUnited(one, unions)) english.add(severalUnions(one, unions).name)
        const isOfFacts = (text: string) =>
          fruit.hazards.some(hazard => hazard.text === text) || text === fruit.seed?.pretreatment?.text
        for (const said of [
          name,
          ...steps.flatMap(step => [step.name, ...step.work.map(({ task }) => task)]),
          ...before.map(({ task }) => task),
          ...(settings ?? []).map(setting => setting.name),
          ...cautions,
        ])
          if (!isOfFacts(said)) english.add(said)
      }
  }
  /** Signs of measures, the same everywhere. */
  const signs = new Set(['', '°C', '± °C', 'mm', 'cm', 'm', 'm²', 'kg', '%', 'ppm', 'share', 'money'])
  expect([...english].filter(said => !signs.has(said) && !isSaid(said))).toEqual([])
})
