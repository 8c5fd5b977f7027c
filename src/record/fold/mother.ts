import type { Material, MotherId } from '../../trade/index.ts'
import type { Entry } from '../entry.ts'
import { type Query, raise } from '../query.ts'
import type { Day, Supply } from '../register.ts'
import type { MotherState } from '../state.ts'

type Given = MotherState['given'][number]

/** Folds a mother tree from the entries that speak of it, struck ones left out, in the order in which they count. */
export function foldMother(
  id: MotherId,
  entries: readonly Entry[],
): { mother: MotherState | null; queries: Query[] } {
  const queries: Query[] = []
  const observations: MotherState['observations'][number][] = []
  const tests: MotherState['tests'][number][] = []
  const given: Given[] = []
  let mother: MotherState['mother'] | null = null
  let retired: MotherState['retired'] = null
  for (const entry of entries) {
    const { body, on } = entry
    if (body.kind === 'mother-set/1') mother = body.mother
    else if (body.kind === 'mother-observed/1')
      observations.push({ on, bbch: stageIn(body.bbch), health: body.health })
    else if (body.kind === 'mother-tested/1') {
      const { test, result, laboratory, reference = '', validUntil } = body
      tests.push({ on, test, result, laboratory, reference, validUntil, by: entry.by, entry: entry.id })
    } else if (body.kind === 'mother-retired/1') retired = { on, why: body.why }
    else given.push(...givenBy(id, entry))
  }
  if (!mother) {
    for (const { id: entry, body } of entries) {
      queries.push(raise(entry, 'unknown-mother', { mother: id }, { mother: id, says: body.kind }))
    }
    return { mother: null, queries }
  }
  const about = { mother: id }
  for (const { id: entry, body } of entries) {
    if (body.kind !== 'mother-observed/1' || body.bbch === stageIn(body.bbch)) continue
    queries.push(raise(entry, 'no-growth-stage', about, { mother: mother.name, says: body.bbch ?? '' }))
  }
  for (const { entry, on, material } of given) {
    if (!retired || on <= retired.on) continue
    queries.push(
      raise(entry, 'mother-retired', about, { mother: mother.name, material, on, retiredOn: retired.on }),
    )
  }
  for (const facts of overSupply(mother.gives, given)) {
    const { entry, ...rest } = facts
    queries.push(raise(entry, 'mother-over-supply', about, { mother: mother.name, ...rest }))
  }
  return { mother: { mother, observations, tests, retired, given, entries: [] }, queries }
}

/**
 * A growth stage by the BBCH scale: the figure of the principal stage, then that of the secondary one, with one for the
 * mesostage between them in the scales of some crops. Null: anything else, which is asked about.
 * @source Meier (ed.) 2001, Growth stages of mono- and dicotyledonous plants, BBCH Monograph, 2nd ed., general scale
 */
const stageIn = (code: string | null): string | null =>
  code !== null && /^[0-9]{2,3}$/.test(code) ? code : null

function givenBy(id: MotherId, entry: Entry): Given[] {
  const { body, on, by } = entry
  if (body.kind === 'material-collected/1') {
    const { material, number, lot } = body
    return [{ on, material, number, batch: null, lot, by, entry: entry.id }]
  }
  if (body.kind !== 'batch-started/1' && body.kind !== 'reworked/1') return []
  return body.sources.flatMap(source =>
    source.from === 'mother' && source.mother === id
      ? [
          {
            on,
            material: source.material,
            number: source.number,
            batch: body.batch,
            lot: null,
            by,
            entry: entry.id,
          },
        ]
      : [],
  )
}

/**
 * The year in which a season began that holds the day. A season of months that run over the turn of the year
 * (November to February) is one season; any other is a calendar year.
 */
export function seasonYear(months: readonly number[], on: Day): number {
  const year = Number(on.slice(0, 4))
  const runsOver = months.includes(12) && months.includes(1) && months.length < 12
  if (!runsOver) return year
  let first = 12
  while (months.includes(first - 1)) first -= 1
  return Number(on.slice(5, 7)) < first ? year - 1 : year
}

/** What it gave in the season of a day, and may give. Several supplies of one material add up. */
export function givenInSeason(
  supplies: readonly Supply[],
  given: readonly Pick<Given, 'on' | 'material' | 'number'>[],
  material: Material,
  on: Day,
): { season: number; given: number; mayGive: number } {
  const months = supplies.filter(supply => supply.material === material).flatMap(supply => supply.months)
  const season = seasonYear(months, on)
  return {
    season,
    given: given.reduce(
      (sum, g) => sum + (g.material === material && seasonYear(months, g.on) === season ? g.number : 0),
      0,
    ),
    mayGive: supplies.reduce((sum, supply) => sum + (supply.material === material ? supply.perYear : 0), 0),
  }
}

/** Each taking that brings a season's sum over what the mother may give. A material not named has no bound yet. */
function* overSupply(supplies: readonly Supply[], given: readonly Given[]) {
  const sums = new Map<string, number>()
  for (const { entry, on, material, number } of given) {
    const own = supplies.filter(supply => supply.material === material)
    if (own.length === 0) continue
    const season = seasonYear(
      own.flatMap(supply => supply.months),
      on,
    )
    const mayGive = own.reduce((sum, supply) => sum + supply.perYear, 0)
    const key = `${material} ${season}`
    const sum = (sums.get(key) ?? 0) + number
    sums.set(key, sum)
    if (sum > mayGive) yield { entry, material, season, given: sum, mayGive }
  }
}
