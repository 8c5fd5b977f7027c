import {
  canBeUnited,
  type Fruits,
  MOST_CULTIVARS,
  ONE_UNION,
  productsOf,
  type Species,
  severalUnions,
  starterProtocol,
  type Unions,
  unionsId,
} from '../../../trade/facts/index.ts'
import type { Cultivar, Kind, MethodId, Protocol, ProtocolId } from '../../../trade/index.ts'

export type Product = 'tree' | 'rootstock'

/** A way by which a kind may be made: a protocol that the nursery has, or one that the facts give and it takes over. */
export interface WayOffered {
  readonly protocol: ProtocolId
  readonly name: string
  readonly method: MethodId
  readonly onRootstock: boolean
  /** Null where the nursery has it. */
  readonly fromFacts: Protocol | null
}

/** What the nursery has already, as far as a kind can meet it. */
export interface Ground {
  readonly fruits: Fruits
  readonly cultivars: readonly Cultivar[]
  readonly kinds: readonly Kind[]
  readonly protocols: readonly Pick<Protocol, 'id' | 'name' | 'method' | 'species' | 'takes'>[]
}

export const isSameUnions = (one: Unions, other: Unions): boolean =>
  one.cultivars === other.cultivars && one.hasInterstem === other.hasInterstem

const anyUnions: readonly Unions[] = Array.from({ length: MOST_CULTIVARS }, (_, more) =>
  [false, true].map(hasInterstem => ({ cultivars: 1 + more, hasInterstem })),
).flat()

/** Whether a protocol of the nursery's own takes what these unions take; how many cultivars it is for, its name says. */
const takesUnions = ({ takes }: Pick<Protocol, 'takes'>, unions: Unions): boolean =>
  takes.some(one => one.what === 'material' && one.part === 'interstem') === unions.hasInterstem &&
  (unions.cultivars === 1 || takes.some(({ what }) => what === 'rootstock'))

const isFor = (species: Species, product: Product) => (way: Species['ways'][number]) =>
  productsOf(species, way.method).includes(product) &&
  way.importance !== 'experimental' &&
  !/^top-working|breeding/.test(way.role)

/**
 * The ways to make a fruit: its own protocols, copies among them, and those of the facts, the commonest first. For several
 * unions on a stock those of the facts are written for so many.
 * @param kept protocols that a kind goes by already
 */
export function waysOffered(
  ground: Ground,
  speciesId: string,
  product: Product,
  unions: Unions = ONE_UNION,
  kept: readonly string[] = [],
): readonly WayOffered[] {
  const species = ground.fruits.asGiven(speciesId)
  if (species === undefined) return []
  const order = ['main', 'common', 'minor']
  const starters = [...species.ways]
    .filter(isFor(species, product))
    .sort((a, b) => order.indexOf(a.importance) - order.indexOf(b.importance))
    .map(way => starterProtocol(way.method, species, product))
    .filter(one => isSameUnions(unions, ONE_UNION) || canBeUnited(one, unions))
    .map(one => (isSameUnions(unions, ONE_UNION) ? one : severalUnions(one, unions)))
  const others: ReadonlySet<string> = new Set(
    species.ways.flatMap(way =>
      productsOf(species, way.method).flatMap(each => {
        const { id } = starterProtocol(way.method, species, each)
        return anyUnions.map(any => unionsId(id, any))
      }),
    ),
  )
  const has = new Map(ground.protocols.map(protocol => [protocol.id, protocol]))
  const own = ground.protocols.filter(
    one =>
      (one.species === null || one.species === speciesId) &&
      (kept.includes(one.id) || (!others.has(one.id) && takesUnions(one, unions))),
  )
  return [
    ...own.map(one => offered(one, null)),
    ...starters
      .filter(({ id }) => !own.some(one => one.id === id))
      .map(one => offered(has.get(one.id) ?? one, has.has(one.id) ? null : one)),
  ]
}

const offered = (
  { id, name, method, takes }: Pick<Protocol, 'id' | 'name' | 'method' | 'takes'>,
  fromFacts: Protocol | null,
): WayOffered => ({
  protocol: id,
  name,
  method,
  onRootstock: takes.some(({ what }) => what === 'rootstock'),
  fromFacts,
})
