import * as z from 'zod'
import species from './species.json' with { type: 'json' }
import { Species } from './species.ts'

let byId: ReadonlyMap<string, Species> | undefined

const read = (): ReadonlyMap<string, Species> => {
  byId ??= new Map(
    z
      .array(Species)
      .parse(species)
      .map(one => [one.id, one]),
  )
  return byId
}

export const allSpecies = (): readonly Species[] => [...read().values()]
export const speciesById = (id: string): Species | undefined => read().get(id)
