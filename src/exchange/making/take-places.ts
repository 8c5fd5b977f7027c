import { Bench, Person, Site } from '../../record/index.ts'
import { type BenchId, foldName, type PersonId, PlaceKind, Skill } from '../../trade/index.ts'
import { spansIn } from '../cells/spans.ts'
import {
  type BadRow,
  bad,
  known,
  made,
  numberIn,
  type RowOutcome,
  type RowTold,
  type SheetRow,
  textIn,
} from '../reading/sheet-row.ts'
import { placeByWord, skillByWord } from '../words/trade-words.ts'
import type { Making } from './making.ts'
import { freeId, slug } from './slug.ts'

export function takeNursery(making: Making, row: SheetRow): RowOutcome {
  const latitudeDegrees = numberIn(row, 'latitude') ?? 0
  if (Math.abs(latitudeDegrees) > 90) return bad('latitude', 'latitude goes from -90 to 90')
  const site = Site.parse({
    name: textIn(row, 'name'),
    latitudeDegrees,
    longitudeDegrees: numberIn(row, 'longitude'),
    heightMetres: numberIn(row, 'height') ?? making.nursery.site?.heightMetres ?? 0,
  })
  return making.setSite(site) ? made : known
}

/** By id or by name, whatever its capitals and signs. */
export const byName = <I extends string, T extends { readonly id: I; readonly name: string }>(
  map: ReadonlyMap<I, T>,
  name: string,
): T | undefined =>
  map.get(name as I) ??
  [...map.values()].find(one => foldName(one.name) === foldName(name) || foldName(one.id) === foldName(name))

export function takeBench(making: Making, row: SheetRow, told: RowTold): RowOutcome {
  const name = textIn(row, 'bench')!
  const before = byName(making.benches, name)
  const found = placeByWord(textIn(row, 'place') ?? name) ?? before?.place ?? answeredPlace(row, told, name)
  if (typeof found !== 'string') return found
  const place = found
  const length = numberIn(row, 'length') ?? before?.lengthMetres ?? null
  const width = numberIn(row, 'width') ?? before?.widthMetres ?? null
  const area =
    numberIn(row, 'area') ??
    (length !== null && width !== null ? length * width : null) ??
    before?.areaSquareMetres
  if (area === undefined || area === null)
    return bad('area', 'neither its area nor its length and width are said')
  if (area < 0 || (length ?? 0) < 0 || (width ?? 0) < 0)
    return bad('area', 'a bench is not smaller than nothing')
  const areaSquareMetres = Math.round(area * 100) / 100
  const closed = textIn(row, 'closed')
  const bench = Bench.parse({
    ...before,
    id: before?.id ?? freeId(slug(name), id => making.benches.has(id as BenchId)),
    name: before?.name ?? name,
    place,
    areaSquareMetres,
    lengthMetres: length,
    widthMetres: width,
    closed:
      closed === null
        ? (before?.closed ?? [])
        : spansIn(closed).map(({ squareMetres, ...span }) => ({
            ...span,
            areaSquareMetres: squareMetres ?? areaSquareMetres,
          })),
  })
  return making.setBench(bench) ? made : known
}

function answeredPlace(row: SheetRow, told: RowTold, name: string): PlaceKind | BadRow {
  const said = textIn(row, 'place')
  const id = `place: ${foldName(said ?? name)}`
  const answer = PlaceKind.safeParse(told.answer(id))
  if (answer.success) return answer.data
  told.ask({
    id,
    asks: `What kind of place is "${said ?? name}"?`,
    choices: PlaceKind.options.map(option => ({ id: option, says: option })),
    example: said ?? name,
    suggested: null,
  })
  return bad(said === null ? 'bench' : 'place', 'it is not known what kind of place this is')
}

const USUAL_HOURS = 38

export function takePerson(making: Making, row: SheetRow, told: RowTold): RowOutcome {
  const name = textIn(row, 'person')!
  const before = byName(making.people, name)
  const words = (textIn(row, 'skills') ?? '')
    .split(/\s*[,;/+&]\s*|\s+(?:and|und|et|y|e|en)\s+/iu)
    .filter(word => word !== '')
  const isAll = words.some(word => /^(all|everything|alles|tout|todo|tutto)$/iu.test(word))
  const unknown = words.filter(word => !isAll && skillByWord(word) === undefined)
  if (unknown.length > 0)
    told.noted(
      'skills',
      `no task is known as "${unknown.join('", "')}"`,
      'passed over; the others were taken',
    )
  const found = [...new Set(words.flatMap(word => skillByWord(word) ?? []))]
  const saysNone = !isAll && found.length === 0
  const skills =
    isAll || (saysNone && before === undefined) ? Skill.options : saysNone ? before!.skills : found
  if (saysNone && before === undefined)
    making.assume(name, `It is not said what ${name} can do: taken as able to do everything.`)
  const hours = numberIn(row, 'hours') ?? before?.hoursPerWeek
  if (hours === undefined)
    making.assume(
      `${name}, hours`,
      `It is not said how long ${name} works: taken as ${USUAL_HOURS} hours a week.`,
    )
  const away = textIn(row, 'away')
  const person = Person.safeParse({
    ...before,
    id: before?.id ?? freeId(slug(name), id => making.people.has(id as PersonId)),
    name: before?.name ?? name,
    skills,
    hoursPerWeek: hours ?? USUAL_HOURS,
    overtimeHoursPerWeek: numberIn(row, 'overtime') ?? before?.overtimeHoursPerWeek ?? 0,
    pace: numberIn(row, 'pace') ?? before?.pace ?? 1,
    away: away === null ? (before?.away ?? []) : spansIn(away).map(({ from, to }) => ({ from, to })),
  })
  if (!person.success) {
    const field = { hoursPerWeek: 'hours', overtimeHoursPerWeek: 'overtime', pace: 'pace' }[
      String(person.error.issues[0]?.path[0])
    ]
    return bad(
      field ?? 'person',
      'no one works so: a week has at most 120 hours, 60 of overtime; pace is above 0',
    )
  }
  return making.setPerson(person.data) ? made : known
}
