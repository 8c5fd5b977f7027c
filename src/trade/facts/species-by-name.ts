import { parseName } from '../names/parse-name.ts'
import { foldName } from '../names/same-name.ts'
import type { Fruits } from './fruits.ts'
import type { Species } from './species.ts'

const kept = new WeakMap<Fruits, ReadonlyMap<string, Species | null>>()

/** Id, common name, each botanical name, and the genus where only one fruit has it. */
function namesOf(fruits: Fruits): ReadonlyMap<string, Species | null> {
  const known = kept.get(fruits)
  if (known !== undefined) return known
  const map = new Map<string, Species | null>()
  for (const species of fruits.all) {
    for (const name of [species.id, species.commonName, ...species.taxa]) map.set(foldName(name), species)
    for (const genus of new Set(species.taxa.map(taxon => foldName(taxon.split(' ')[0] ?? ''))))
      map.set(genus, (map.get(genus) ?? species) === species && map.get(genus) !== null ? species : null)
  }
  kept.set(fruits, map)
  return map
}

/**
 * The fruit meant by a text: its common or botanical name, with or without a cultivar. Undefined where none of the
 * fruits is meant, or where the text names only a genus that several fruits share.
 * @example speciesByName("Malus domestica 'Elstar'", fruits)?.id // 'apple'
 */
export function speciesByName(text: string, fruits: Fruits): Species | undefined {
  const names = namesOf(fruits)
  const whole = names.get(foldName(text))
  if (whole) return whole
  const reading = parseName(text)
  if (reading.kind === 'no name') return undefined
  const { genus, species } = reading.name
  const botanical = species === null ? genus : `${genus} ${species}`
  return names.get(foldName(botanical)) ?? undefined
}
