import type { Cultivar } from '../kind.ts'

/** A plant's name in its parts, free of signs and quotation marks. */
export interface PlantName {
  readonly genus: string
  /** × before the genus: a hybrid of two genera; +: a graft-chimaera. */
  readonly genusSign: '' | '×' | '+'
  /** The species epithet; null where only the genus is known. */
  readonly species: string | null
  readonly isHybrid: boolean
  readonly infraspecific: { readonly rank: 'subsp.' | 'var.' | 'f.'; readonly epithet: string } | null
  /** The other parent of a hybrid formula, as it is written: "S. caprea". */
  readonly crossedWith: string | null
  readonly cultivar: string | null
  /** Not sure (cf.), or near it and not it (aff.); of the species, or of the cultivar alone. */
  readonly doubt: { readonly sign: 'cf.' | 'aff.'; readonly of: 'species' | 'cultivar' } | null
  /** Species not determined (sp.), or several (spp.). */
  readonly open: 'sp.' | 'spp.' | null
  /** Words that are no part of a name, kept as they were. */
  readonly remark: string
}

/**
 * A name as the codes write it: hybrid sign joined to its epithet, cultivar in single quotation marks.
 * @source International Code of Nomenclature (Shenzhen Code), art. H.1 to H.3; International Code of Nomenclature
 *   for Cultivated Plants, 9th ed. 2016
 * @example writeName({ …, genus: 'Malus', species: 'domestica', cultivar: 'Elstar' }) // "Malus domestica 'Elstar'"
 */
export const writeName = (name: PlantName): string =>
  [
    `${name.genusSign}${name.genus}`,
    name.doubt?.of === 'species' ? name.doubt.sign : null,
    name.species === null ? name.open : `${name.isHybrid ? '×' : ''}${name.species}`,
    name.infraspecific === null ? null : `${name.infraspecific.rank} ${name.infraspecific.epithet}`,
    name.crossedWith === null ? null : `× ${name.crossedWith}`,
    name.doubt?.of === 'cultivar' ? name.doubt.sign : null,
    name.cultivar === null ? null : `'${name.cultivar}'`,
  ]
    .filter(part => part !== null && part !== '')
    .join(' ')

/**
 * The full name of a cultivar. A fruit of one species gives its name, a fruit of several only the genus,
 * which is enough for a cultivar. In the quotation marks in which the screens write every cultivar: the code allows both.
 * @source International Code of Nomenclature for Cultivated Plants, 9th ed. 2016, art. 14.1, from memory
 * @example cultivarWriting({ taxa: ['Malus domestica'] }, { name: 'Elstar' }) // "Malus domestica ‘Elstar’"
 */
export const cultivarWriting = (
  species: { readonly taxa: readonly string[] },
  cultivar: Pick<Cultivar, 'name'>,
): string => {
  const [taxon = ''] = species.taxa
  return `${species.taxa.length === 1 ? taxon : taxon.split(' ')[0]} ‘${cultivar.name}’`
}
