import type { ProtocolSummary } from '../../../api/index.ts'
import { Mother, type Supply } from '../../../record/index.ts'
import { monthsOfSupply, usualYield } from '../../../trade/facts/index.ts'
import type { Cultivar, Kind, Material } from '../../../trade/index.ts'
import { freeId } from './typed.ts'

/** What a mother tree gives: wood of a cultivar, or what a rootstock is raised from. */
export interface GivenOf {
  readonly id: string
  readonly name: string
  readonly cultivar: Cultivar | null
  readonly stock: Kind | null
}

interface Ground {
  readonly cultivars: readonly Cultivar[]
  readonly kinds: readonly Kind[]
  readonly protocols: readonly Pick<ProtocolSummary, 'id' | 'takes' | 'window'>[]
}

export const givenIn = ({ cultivars, kinds }: Ground): readonly GivenOf[] => [
  ...cultivars.map(cultivar => ({ id: cultivar.id as string, name: cultivar.name, cultivar, stock: null })),
  ...kinds
    .filter(({ form }) => form === 'rootstock')
    .map(stock => ({ id: `stock ${stock.id}`, name: stock.name, cultivar: null, stock })),
]

/** What its kinds take of it, in the months of their starts; how much is what a grown tree gives (common practice). */
export function usualGives(
  { kinds, protocols }: Pick<Ground, 'kinds' | 'protocols'>,
  of: Pick<GivenOf, 'cultivar' | 'stock'>,
): readonly Supply[] {
  const ways = kinds
    .filter(kind =>
      of.stock !== null
        ? kind.id === of.stock.id
        : of.cultivar !== null && kind.cultivars.includes(of.cultivar.id),
    )
    .flatMap(kind => kind.ways.flatMap(way => protocols.find(({ id }) => id === way.protocol) ?? []))
  const taken = (protocol: (typeof ways)[number]): readonly Material[] =>
    protocol.takes.flatMap(one =>
      one.what === 'material' && (of.stock !== null || one.part !== 'rootstock') ? [one.material] : [],
    )
  return [...new Set(ways.flatMap(taken))].map(material => ({
    material,
    perYear: usualYield(material),
    perWeek: null,
    months: monthsOfSupply(
      ways.filter(way => taken(way).includes(material)).map(({ window }) => window.months),
    ),
  }))
}

/** A new mother tree; a rootstock's gets the cultivar that it stands under, where there is none yet. */
export function motherMade(
  said: { readonly name: string; readonly block: string; readonly provenance: string },
  of: GivenOf,
  rest: Pick<Mother, 'position' | 'planted' | 'gives'>,
  taken: { readonly mothers: readonly string[]; readonly cultivars: readonly Cultivar[] },
): { readonly mother: Mother; readonly cultivar: Cultivar | null } {
  const species = of.stock?.species
  const known =
    of.cultivar ?? taken.cultivars.find(one => one.species === species && one.name === of.stock?.name) ?? null
  const made: Cultivar | null =
    known !== null || of.stock === null
      ? null
      : {
          id: freeId(
            of.stock.name,
            taken.cultivars.map(({ id }) => id),
          ) as Cultivar['id'],
          name: of.stock.name,
          species: of.stock.species,
          synonyms: [],
          licence: null,
          pollination: '',
        }
  return {
    cultivar: made,
    mother: Mother.parse({
      id: freeId(said.name, taken.mothers),
      name: said.name.trim(),
      cultivar: (known ?? made)?.id,
      rootstockKind: of.stock?.id ?? null,
      block: said.block.trim(),
      provenance: said.provenance.trim(),
      ...rest,
    }),
  }
}
