import { type Answer, type Question, treeFigures } from '../../../advice/index.ts'
import { type Species, speciesById, withFact } from '../../../trade/facts/index.ts'
import { MethodId, SpeciesId } from '../../../trade/index.ts'
import { asLanguage, type Language } from '../../text/language.ts'
import type { Units } from '../../text/shown-unit.ts'
import { newFruit } from '../species/new-fruit.ts'
import { linkFromSearch, linkOfQuestion, questionFromLink, searchOfLink } from './question-link.ts'

/** What the page for a web site answers. It asks nobody, so that its address says what the built-in facts do not. */
export interface PageAsked {
  readonly question: Question
  readonly species: Species
  readonly units: Units
  /** The language that the nursery made the page in; null: that of the reader's system. */
  readonly language: Language | null
}

/** The built-in fruit that the page begins from: the fruit itself, or the one that an added fruit is like. */
const begunFrom = ({ id, like }: Pick<Species, 'id' | 'like'>): Species | undefined =>
  speciesById(id) ?? speciesById(like ?? '')

/** What is said of the one is not of the other: figures and cautions say of which fruit they are. */
function lentTo(id: SpeciesId, called: string | null, like: Species): Species | null {
  const fruit = newFruit({ commonName: called ?? id, botanical: id, family: '', like })
  return fruit && { ...fruit, id }
}

/** The fruit with the ways that an address adds to it, or of which it says another success. */
function withWays(species: Species, made: string): Species {
  return made
    .split(' ')
    .map(part => part.split(':'))
    .reduce((fruit, [method, said]) => {
      const share = Number(said)
      if (!MethodId.safeParse(method).success || !(share >= 0 && share <= 1)) return fruit
      const figure = {
        low: share,
        typical: share,
        high: share,
        basis: 'set by the nursery',
        sources: [],
      } as const
      return withFact(fruit, `ways.${method}.success`, figure) ?? fruit
    }, species)
}

/** The part of the page's address after the question mark; undefined where no built-in fruit stands behind this one. */
export function pageSearch(
  question: Question,
  answer: Pick<Answer, 'assumptions'>,
  species: Species,
  units: Units,
  language: Language,
  withPrices: boolean,
): string | undefined {
  const begun = begunFrom(species)
  if (begun === undefined) return undefined
  const known = treeFigures(begun)
  const set = Object.fromEntries(
    answer.assumptions.flatMap(({ key, figure: { typical } }) =>
      typical === known[key].typical ? [] : [[key, typical]],
    ),
  )
  const successOf = (method: MethodId) => begun.ways.find(way => way.method === method)?.success.typical
  const made = species.ways
    .filter(({ method, success }) => successOf(method) !== success.typical)
    .map(({ method, success }) => `${method}:${success.typical}`)
    .join(' ')
  return searchOfLink({
    ...linkOfQuestion({ ...question, set }, withPrices),
    ...(begun.id === species.id ? {} : { like: begun.id, called: species.commonName }),
    ...(made === '' ? {} : { made }),
    ...(units === 'metric' ? {} : { units }),
    ...(language === 'en' ? {} : { language }),
  })
}

/** What an address asks of the page; null where it names a fruit that nothing is known of. */
export function pageFromSearch(search: string): PageAsked | null {
  const said = new URLSearchParams(search)
  const question = questionFromLink(linkFromSearch(search), 'apple')
  const like = SpeciesId.safeParse(said.get('like')).data
  const begun = begunFrom({ id: question.species, like })
  if (begun === undefined) return null
  const species = begun.id === question.species ? begun : lentTo(question.species, said.get('called'), begun)
  if (species === null) return null
  return {
    question: { ...question, onlyOffered: question.offers.length > 0 },
    species: withWays(species, said.get('made') ?? ''),
    units: said.get('units') === 'us' ? 'us' : 'metric',
    language: asLanguage(said.get('language')),
  }
}
