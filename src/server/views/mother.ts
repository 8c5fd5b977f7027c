import type { LicenceRow, MotherView } from '../../api/index.ts'
import { fruitsOf, givenInSeason, heldMothers, licenceTally, type Nursery } from '../../record/index.ts'
import { scionKeeping } from '../../trade/facts/index.ts'
import { type CultivarId, cultivarWriting, MotherId } from '../../trade/index.ts'
import type { NurseryMemory } from '../nursery-memory.ts'
import { entriesAbout, shownEntry } from './entries.ts'
import { holdRow } from './holds.ts'
import { motherRow } from './mothers.ts'
import { queryRow } from './queries.ts'

/** The name as the code for cultivated plants has it; the id where the cultivar is not entered. */
const writingOf = (nursery: Nursery, id: CultivarId): string => {
  const cultivar = nursery.cultivars.get(id)
  if (cultivar === undefined) return id
  const fruit = fruitsOf(nursery).byId(cultivar.species)
  return fruit === undefined ? `‘${cultivar.name}’` : cultivarWriting(fruit, cultivar)
}

const keepingOf = (nursery: Nursery, id: CultivarId): Pick<MotherView, 'keeping' | 'seedKeeping'> => {
  const species = nursery.cultivars.get(id)?.species
  const fruit = species === undefined ? undefined : fruitsOf(nursery).byId(species)
  if (fruit === undefined) return { keeping: null, seedKeeping: null }
  const { how, days } = scionKeeping(fruit)
  const seed = fruit.seed?.viabilityDays ?? null
  return {
    keeping: { how, days: days.typical, basis: days.basis },
    seedKeeping: seed && { how: seed.note ?? '', days: seed.typical, basis: seed.basis },
  }
}

export const licenceRow = (nursery: Nursery, cultivar: CultivarId, today: string): LicenceRow | null => {
  const tally = licenceTally(nursery, cultivar, today)
  return (
    tally && {
      ...tally,
      years: tally.years.map(year => ({ ...year, begunBy: [...year.begunBy], sentBy: [...year.sentBy] })),
      cultivarName: nursery.cultivars.get(cultivar)?.name ?? cultivar,
    }
  )
}

export const motherView = (memory: NurseryMemory, id: string, today: string): MotherView | null => {
  const nursery = memory.nursery()
  const state = nursery.mothers.get(MotherId.parse(id))
  if (state === undefined) return null
  const { mother } = state
  const lots = [...nursery.lots.values()].filter(lot => lot.mother === mother.id)
  return {
    row: motherRow(nursery, state, today),
    writing: writingOf(nursery, mother.cultivar),
    tests: state.tests.map(({ by: _, ...test }) => ({
      ...test,
      isOver: test.validUntil !== null && test.validUntil < today,
    })),
    observations: [...state.observations],
    lots: lots
      .map(({ id: lot, material, on, number, used, discarded, stored, goodUntil, entries }) => ({
        lot,
        material,
        on,
        number,
        left: Math.max(0, number - used - discarded),
        stored,
        goodUntil,
        entries: memory.entries(entries).map(entry => shownEntry(memory, entry)),
      }))
      .filter(({ left }) => left > 0)
      .sort((a, b) => (a.on < b.on ? -1 : 1)),
    ...keepingOf(nursery, mother.cultivar),
    season: givenInSeason(mother.gives, state.given, today).map(({ supply, season, given, takings }) => ({
      material: supply.material,
      season,
      months: supply.months,
      perWeek: supply.perWeek,
      given,
      mayGive: supply.perYear,
      givenBy: takings.map(({ entry }) => entry),
    })),
    licence: licenceRow(nursery, mother.cultivar, today),
    holds: (heldMothers(nursery).get(mother.id) ?? []).map(hold => holdRow(memory, hold)),
    queries: nursery.queries
      .filter(query => query.about.mother === mother.id)
      .map(query => queryRow(memory, query)),
    entries: entriesAbout(memory, mother.id, state.entries),
  }
}
