import type { ProtocolSummary } from '../../../api/index.ts'
import { Mother, type Supply } from '../../../record/index.ts'
import { monthsOfSupply, usualYield } from '../../../trade/facts/index.ts'
import type { Cultivar, Kind } from '../../../trade/index.ts'
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
  // What a rootstock is raised from stands under a cultivar of its name: the rootstock itself is offered.
  ...cultivars
    .filter(
      ({ name, species }) =>
        !kinds.some(kind => kind.form === 'rootstock' && kind.name === name && kind.species === species),
    )
    .map(cultivar => ({ id: cultivar.id as string, name: cultivar.name, cultivar, stock: null })),
  ...kinds
    .filter(({ form }) => form === 'rootstock')
    .map(stock => ({ id: `stock ${stock.id}`, name: stock.name, cultivar: null, stock })),
]

/** What its kinds take of it, in the months of their starts; how much is what a grown tree gives (common practice). */
export function usualGives(
  { kinds, protocols }: Pick<Ground, 'kinds' | 'protocols'>,
  of: Pick<GivenOf, 'cultivar' | 'stock'>,
): readonly Supply[] {
  const { cultivar, stock } = of
  const taken = kinds.flatMap(kind => {
    const isTop =
      stock !== null ? kind.id === stock.id : cultivar !== null && kind.cultivars.includes(cultivar.id)
    const isBetween = stock === null && cultivar !== null && kind.interstem === cultivar.id
    if (!isTop && !isBetween) return []
    return kind.ways.flatMap(way => {
      const protocol = protocols.find(({ id }) => id === way.protocol)
      return (protocol?.takes ?? []).flatMap(one => {
        if (one.what !== 'material') return []
        const fits =
          one.part === 'interstem' ? isBetween : isTop && (stock !== null || one.part !== 'rootstock')
        return fits ? [{ material: one.material, months: protocol!.window.months }] : []
      })
    })
  })
  return [...new Set(taken.map(({ material }) => material))].map(material => ({
    material,
    perYear: usualYield(material),
    perWeek: null,
    months: monthsOfSupply(taken.flatMap(one => (one.material === material ? [one.months] : []))),
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
