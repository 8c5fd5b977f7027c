import { allSpecies, speciesById } from './all-species.ts'
import { withFact } from './fact.ts'
import type { FactSaid } from './fact-key.ts'
import type { Species } from './species.ts'

/** What a nursery states of fruits beside the facts that come with the program. */
export interface OwnFacts {
  /** Fruits that the facts do not know, or that the nursery describes anew as a whole. */
  readonly fruits: readonly Species[]
  readonly sets: readonly ({ readonly species: string } & FactSaid)[]
}

/** The fruits as the nursery has them. */
export interface Fruits {
  readonly all: readonly Species[]
  readonly byId: (id: string) => Species | undefined
  /** Before any figure of it was overruled. */
  readonly asGiven: (id: string) => Species | undefined
}

/** The built-in fruits and the nursery's, every fact that it states in the place of the one given. */
export function fruitsWith({ fruits, sets }: OwnFacts): Fruits {
  const added = new Map<string, Species>(fruits.map(species => [species.id, species]))
  const asGiven = (id: string) => added.get(id) ?? speciesById(id)
  const changed = new Map<string, Species>()
  // A success may add a method to a fruit; what else is said of the method comes after.
  const first = sets.filter(({ fact }) => fact.endsWith('.success'))
  for (const { species: id, fact, value } of [...first, ...sets.filter(set => !first.includes(set))]) {
    const species = changed.get(id) ?? asGiven(id)
    const next = species && withFact(species, fact, value)
    if (next !== undefined) changed.set(id, next)
  }
  const byId = (id: string) => changed.get(id) ?? asGiven(id)
  const builtIn = allSpecies()
  const ids = [...builtIn.map(({ id }) => id), ...fruits.map(({ id }) => id)]
  const all = [...new Set<string>(ids)].map(id => byId(id)!)
  return { all, byId, asGiven }
}
