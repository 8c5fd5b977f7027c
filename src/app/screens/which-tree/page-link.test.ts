import { expect, test } from 'vitest'
import { Question, whichTree } from '../../../advice/index.ts'
import { allSpecies, fruitsWith, type Species, speciesById } from '../../../trade/facts/index.ts'
import { newFruit } from '../species/new-fruit.ts'
import { pageFromSearch, pageSearch } from './page-link.ts'

const climate = { kind: 'normals', coldestNightCelsius: -6, coldestMonthCelsius: 4, warmestMonthCelsius: 21 }
const ask = (species: Species, more: object = {}) =>
  Question.parse({ species: species.id, climate, wouldRework: true, ...more })

/** What the page answers to the address that the screen gives for a fruit, beside what the screen itself answers. */
function onScreenAndPage(species: Species, more: object = {}) {
  const question = ask(species, more)
  const screen = whichTree(question, species, 40)
  const page = pageFromSearch(`?${pageSearch(question, screen, species, 'metric', 'en', true)}`)!
  return { screen, page, answer: whichTree(page.question, page.species, 40) }
}
const sizes = ({ ways }: ReturnType<typeof whichTree>) =>
  ways.map(({ way, presentValue, spend, survives }) => [way.id, presentValue.mean, spend, survives])

test('the page answers for every built-in fruit as the screen does', () => {
  for (const species of allSpecies()) {
    const { screen, answer } = onScreenAndPage(species)
    expect(sizes(answer), species.id).toEqual(sizes(screen))
  }
})

test('and for a fruit that the nursery added, by its name, with the figures and the method that it states', () => {
  const sets = (fact: string, typical: number, spread = 0) => ({
    species: 'medlar',
    fact,
    value: {
      low: typical * (1 - spread),
      typical,
      high: typical * (1 + spread),
      basis: 'set by the nursery' as const,
      sources: [],
    },
  })
  const pear = speciesById('pear')!
  const begun = newFruit({ commonName: 'Medlar', botanical: 'Crataegus germanica', family: '', like: pear })!
  const medlar = fruitsWith({
    fruits: [begun],
    sets: [
      sets('ways.air_layer.success', 0.45),
      sets('orchard.chillHours', 0),
      sets('orchard.fruitWorthPerKg', 9),
    ],
  }).byId('medlar')!
  const { screen, page, answer } = onScreenAndPage(medlar)
  expect([page.species.commonName, page.species.id]).toEqual(['Medlar', 'medlar'])
  expect(answer.ways.map(({ way }) => way.id)).toEqual(screen.ways.map(({ way }) => way.id))
  expect(answer.ways.some(({ way }) => way.method === 'air_layer')).toBe(true)
  answer.ways.forEach((way, i) => {
    expect(way.spend).toBe(screen.ways[i]!.spend)
    expect(way.cropSoFar.mean.at(-1)).toBeCloseTo(screen.ways[i]!.cropSoFar.mean.at(-1)!, 6)
  })
})

test('its address carries no price unless it is asked to, and units and language only where they are not metric and English', () => {
  const apple = speciesById('apple')!
  const question = ask(apple, { offers: [{ form: 'worked', label: 'Pippin', price: 31 }] })
  const answer = whichTree(question, apple, 20)
  expect(pageSearch(question, answer, apple, 'metric', 'en', false)).not.toMatch(/31|Pippin|units|language/)
  expect(pageFromSearch(`?${pageSearch(question, answer, apple, 'us', 'es', true)}`)).toMatchObject({
    units: 'us',
    language: 'es',
    question: { onlyOffered: true, offers: [{ price: 31 }] },
  })
})

test('a fruit of which nothing is known has no page, and an address with nonsense in it still gives a question', () => {
  const { like: _, ...strange } = newFruit({
    commonName: 'Strange',
    botanical: 'Nescio quid',
    family: '',
    like: speciesById('fig')!,
  })!
  const question = ask(strange)
  expect(
    pageSearch(question, whichTree(question, strange, 20), strange, 'metric', 'en', false),
  ).toBeUndefined()
  expect(pageFromSearch('?fruit=strange')).toBeNull()
  const fig = pageFromSearch('?fruit=fig&made=air_layer:7 nothing:0.5 :&units=ells')!
  expect(fig).toMatchObject({ units: 'metric', species: speciesById('fig') })
})
