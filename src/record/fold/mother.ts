import type { MotherId } from '../../trade/index.ts'
import type { Entry } from '../entry.ts'
import { type Query, raise } from '../query.ts'
import type { Supply } from '../register.ts'
import type { MotherState } from '../state.ts'
import { countOnSupplies } from './supplies.ts'

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

/** Each taking that brings a season's sum over what a supply of the mother may give. */
function* overSupply(supplies: readonly Supply[], given: readonly Given[]) {
  for (const { supply, season, taking, sum } of countOnSupplies(supplies, given))
    if (sum > supply.perYear)
      yield { entry: taking.entry, material: taking.material, season, given: sum, mayGive: supply.perYear }
}
