import { type Part, type Phrase, phrase } from '../trade/index.ts'
import type { AnyEntry, Body } from './entry.ts'
import { canonicalJson } from './entry-line.ts'
import type { EntryNames } from './entry-text.ts'
import type { Bench, Mother, Person, Supply } from './register.ts'

interface Field<T> {
  readonly name: Phrase
  readonly of: (one: T) => Part
}

const field = <T>(name: Phrase, of: (one: T) => Part | null): Field<T> => ({
  name,
  of: one => {
    const said = of(one)
    return said === null || said === '' || (Array.isArray(said) && said.length === 0) ? phrase('none') : said
  },
})
const measure = (amount: number | null | undefined, unit: string): Part | null =>
  amount === null || amount === undefined ? null : { amount, unit }
const position = <T extends Pick<Bench, 'position'>>() =>
  field<T>(
    phrase('position'),
    one =>
      one.position &&
      phrase('{x} east, {y} north', {
        x: { amount: one.position.xMetres, unit: 'm' },
        y: { amount: one.position.yMetres, unit: 'm' },
      }),
  )
const days = (span: { readonly from: string; readonly to: string }): Phrase =>
  phrase('{from} to {to}', { from: { day: span.from }, to: { day: span.to } })

/** Things that have commas of their own: apart by semicolons. */
const apart = ([first, ...more]: readonly Phrase[]): Phrase | null =>
  first === undefined ? null : more.reduce((some, next) => phrase('{some}; {next}', { some, next }), first)

const benchFields: readonly Field<Bench>[] = [
  field(phrase('name'), ({ name }) => name),
  field(phrase('kind of place'), ({ place }) => phrase(place)),
  field(phrase('area'), one => measure(one.areaSquareMetres, 'm²')),
  field(phrase('length'), one => measure(one.lengthMetres, 'm')),
  field(phrase('width'), one => measure(one.widthMetres, 'm')),
  position(),
  field(phrase('closed days'), ({ closed }) =>
    apart(
      closed.map(one =>
        phrase('{area} from {days}{because}', {
          area: { amount: one.areaSquareMetres, unit: 'm²' },
          days: days(one),
          because: one.why === '' ? '' : phrase(', {why}', { why: one.why }),
        }),
      ),
    ),
  ),
]

const personFields: readonly Field<Person>[] = [
  field(phrase('name'), ({ name }) => name),
  field(phrase('skills'), ({ skills }) => skills.map(skill => phrase(skill))),
  field(phrase('hours a week'), one => one.hoursPerWeek),
  field(phrase('overtime hours a week'), one => one.overtimeHoursPerWeek),
  field(phrase('pace'), ({ pace }) => pace),
  field(phrase('days away'), ({ away }) => apart(away.map(days))),
]

const supplySaid = ({ material, perYear, perWeek, months }: Supply): Phrase =>
  phrase('{number} {material} a year{when}{most}', {
    number: perYear,
    material: phrase(material),
    most: perWeek === null ? '' : phrase(', at most {most} a week', { most: perWeek }),
    when: months.length % 12 === 0 ? '' : phrase(' in months {months}', { months: months.join(', ') }),
  })

const motherFields = ({ cultivars, kinds }: EntryNames): readonly Field<Mother>[] => [
  field(phrase('name'), ({ name }) => name),
  field(phrase('cultivar'), one => cultivars.get(one.cultivar)?.name ?? one.cultivar),
  field(
    phrase('gives rootstock'),
    ({ rootstockKind: id }) => id && ((kinds as ReadonlyMap<string, { name: string }>).get(id)?.name ?? id),
  ),
  field(phrase('block'), ({ block }) => block),
  position(),
  field(phrase('planted'), ({ planted }) => planted && { day: planted }),
  field(phrase('where from'), ({ provenance }) => provenance),
  field(phrase('seen to be true to name'), ({ verifiedBy }) => verifiedBy ?? null),
  field(phrase('height'), one => measure(one.heightMetres, 'm')),
  field(phrase('passport data'), ({ passport = {} }) =>
    Object.entries(passport)
      .map(([name, value]) => `${name} ${value}`)
      .join(', '),
  ),
  field(phrase('gives'), ({ gives }) => apart(gives.map(supplySaid))),
]

const changes = <T>(fields: readonly Field<T>[], before: T, after: T): Phrase[] =>
  fields.flatMap(({ name, of }) => {
    const [was, is] = [of(before), of(after)]
    return canonicalJson(was) === canonicalJson(is)
      ? []
      : [phrase('{field} {is} (before {was})', { field: name, is, was })]
  })

/** What is other in a bench, a person or a mother tree that is said anew; null where nothing is, or of anything else. */
export function changePhrase(
  earlier: AnyEntry['body'],
  later: AnyEntry['body'],
  names: EntryNames,
): Phrase | null {
  const [before, after] = [earlier, later] as [Body, Body]
  const said = (words: string, name: string, changed: Phrase[]) =>
    changed.length === 0 ? null : phrase(words, { name, changed })
  if (before.kind === 'bench-set/1' && after.kind === 'bench-set/1')
    return said(
      'Bench {name} changed: {changed}',
      after.bench.name,
      changes(benchFields, before.bench, after.bench),
    )
  if (before.kind === 'person-set/1' && after.kind === 'person-set/1')
    return said(
      '{name} changed: {changed}',
      after.person.name,
      changes(personFields, before.person, after.person),
    )
  if (before.kind === 'mother-set/1' && after.kind === 'mother-set/1')
    return said(
      'Mother tree {name} changed: {changed}',
      after.mother.name,
      changes(motherFields(names), before.mother, after.mother),
    )
  return null
}
