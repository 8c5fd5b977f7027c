import { parseName } from '../names/parse-name.ts'
import { foldName } from '../names/same-name.ts'
import { allSpecies } from './all-species.ts'
import type { Species } from './species.ts'

let byFold: ReadonlyMap<string, Species | null> | undefined

/** Id, common name, each botanical name, and the genus where only one fruit has it. */
function names(): ReadonlyMap<string, Species | null> {
  if (byFold !== undefined) return byFold
  const map = new Map<string, Species | null>()
  for (const species of allSpecies()) {
    for (const name of [species.id, species.commonName, ...species.taxa]) map.set(foldName(name), species)
    for (const genus of new Set(species.taxa.map(taxon => foldName(taxon.split(' ')[0] ?? ''))))
      map.set(genus, (map.get(genus) ?? species) === species && map.get(genus) !== null ? species : null)
  }
  byFold = map
  return map
}

/**
 * The fruit meant by a text: its common or botanical name, with or without a cultivar. Undefined where the facts
 * do not know it, or where the text names only a genus that several fruits share.
 * @example speciesByName("Malus domestica 'Elstar'")?.id // 'apple'
 */
export function speciesByName(text: string): Species | undefined {
  const whole = names().get(foldName(text))
  if (whole) return whole
  const reading = parseName(text)
  if (reading.kind === 'no name') return undefined
  const { genus, species } = reading.name
  const botanical = species === null ? genus : `${genus} ${species}`
  return names().get(foldName(botanical)) ?? undefined
}
