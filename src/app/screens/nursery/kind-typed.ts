import type { Body } from '../../../record/index.ts'
import { type Fruits, productsOf, type Species, starterProtocol } from '../../../trade/facts/index.ts'
import {
  Cultivar,
  formOfMethod,
  Kind,
  type KindId,
  type MethodId,
  type Protocol,
  type ProtocolId,
  sameName,
} from '../../../trade/index.ts'
import { freeId } from './typed.ts'

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

/** A kind of tree as it is being typed. */
export interface KindTyped {
  readonly product: Product
  readonly species: string
  readonly cultivar: string
  /** Empty: it is named after fruit and cultivar. */
  readonly name: string
  readonly size: string
  readonly price: number | null
  readonly ways: readonly string[]
  /** A kind of the nursery, or the next of the facts. */
  readonly rootstock: KindId | 'new'
  /** What a bought one costs; null: it is not bought in. */
  readonly boughtAt: number | null
  readonly weeksNotice: number
}

/** To keep a tree for another week, as a share of its price: ours, no source. */
const HOLDING_SHARE_A_WEEK = 0.004
const BOUGHT_MOST_PER_WEEK = 500
/** A rootstock that is made along with a kind, until the nursery says its own: ours, no source. */
export const NEW_STOCK = { price: 3, weeksNotice: 8 }

const isFor = (species: Species, product: Product) => (way: Species['ways'][number]) =>
  productsOf(species, way.method).includes(product) &&
  way.importance !== 'experimental' &&
  !/^top-working|breeding/.test(way.role)

/** The ways to make a fruit: its own protocols, copies among them, and those of the facts, the commonest first. */
export function waysOffered(ground: Ground, speciesId: string, product: Product): readonly WayOffered[] {
  const species = ground.fruits.asGiven(speciesId)
  if (species === undefined) return []
  const order = ['main', 'common', 'minor']
  const starters = [...species.ways]
    .filter(isFor(species, product))
    .sort((a, b) => order.indexOf(a.importance) - order.indexOf(b.importance))
    .map(way => starterProtocol(way.method, species, product))
  const others: readonly string[] = species.ways.flatMap(way =>
    productsOf(species, way.method).map(each => starterProtocol(way.method, species, each).id),
  )
  const has = new Map(ground.protocols.map(protocol => [protocol.id, protocol]))
  return [
    ...ground.protocols
      .filter(one => (one.species === null || one.species === speciesId) && !others.includes(one.id))
      .map(one => offered(one, null)),
    ...starters.map(one => offered(has.get(one.id) ?? one, has.has(one.id) ? null : one)),
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

const shortName = ({ commonName }: Species): string => commonName.replace(/ \(.*| and .*|, .*| \/ .*/, '')

const boughtIn = (price: number | null, weeksNotice: number): Kind['buyIn'] =>
  price === null ? null : { price, weeksNotice, mostPerWeek: BOUGHT_MOST_PER_WEEK }

const nameOf = (typed: KindTyped, species: Species, form: string): string => {
  const fruit = shortName(species)
  const cultivar = typed.cultivar.trim()
  if (typed.product === 'rootstock') return [`${fruit} rootstock`, cultivar].filter(Boolean).join(' ')
  if (cultivar !== '') return `${fruit} ‘${cultivar}’`
  return form === 'seedling' ? `${fruit} seedling` : fruit
}

/**
 * What is said so that the nursery makes this kind: its cultivar, the protocols that it takes over from the facts, the
 * rootstock that it stands on where there is none yet, and the kind itself. Of a kind that is changed, what the form
 * does not ask stays as it is. Null while something lacks.
 */
export function kindBodies(ground: Ground, typed: KindTyped, before: Kind | null): readonly Body[] | null {
  const species = ground.fruits.byId(typed.species)
  const all = waysOffered(ground, typed.species, typed.product)
  const ways = all.filter(({ protocol }) => typed.ways.includes(protocol))
  const [first] = ways
  if (species === undefined || first === undefined || typed.price === null) return null
  const bodies: Body[] = ways.flatMap(({ fromFacts }) =>
    fromFacts === null ? [] : [{ kind: 'protocol-set/1', protocol: fromFacts }],
  )
  const form = typed.product === 'rootstock' ? 'rootstock' : formOfMethod(first.method)
  const said = typed.cultivar.trim()
  // Of a rootstock the name alone tells which it is, for its mother beds are known by the kind.
  const named = typed.product === 'rootstock' || said === '' ? null : cultivarOf(ground, species, said)
  if (named !== null && !ground.cultivars.includes(named))
    bodies.push({ kind: 'cultivar-set/1', cultivar: named })
  const isWorked = ways.some(({ onRootstock }) => onRootstock)
  const stock = !isWorked ? null : typed.rootstock === 'new' ? newStock(ground, species) : null
  if (stock !== null) bodies.push(...stock.bodies)
  const rootstock = !isWorked ? null : (stock?.kind.id ?? (typed.rootstock as KindId))
  const taken = [...ground.kinds, ...(stock === null ? [] : [stock.kind])]
  const plain = nameOf(typed, species, form)
  const size = typed.size.trim()
  const isTwice = taken.some(({ id, name }) => id !== before?.id && sameName(name, plain))
  const name = typed.name.trim() || (isTwice && size !== '' ? `${plain}, ${size}` : plain)
  const kindOfTree = Kind.parse({
    ...before,
    id:
      before?.id ??
      freeId(
        name,
        taken.map(({ id }) => id),
      ),
    name,
    species: species.id,
    cultivars:
      before !== null && before.cultivars.length > 1 ? before.cultivars : named === null ? [] : [named.id],
    form: before?.form === 'multi-worked' || before?.form === 'reworked' ? before.form : form,
    rootstock,
    size,
    price: typed.price,
    holdingCostPerWeek:
      before !== null && before.price === typed.price
        ? before.holdingCostPerWeek
        : Math.round(typed.price * HOLDING_SHARE_A_WEEK * 1000) / 1000,
    buyIn: boughtIn(typed.boughtAt, typed.weeksNotice),
    ways: ways.map(({ protocol, onRootstock }) => {
      const was = before?.ways.find(way => way.protocol === protocol)
      if (was !== undefined && rootstock === before?.rootstock) return was
      return { protocol, rootstocks: onRootstock && rootstock !== null ? [rootstock] : [] }
    }),
  })
  return [...bodies, { kind: 'kind-set/1', kindOfTree }]
}

const cultivarOf = ({ cultivars }: Ground, species: Species, name: string): Cultivar =>
  cultivars.find(
    one => one.species === species.id && [one.name, ...one.synonyms].some(each => sameName(each, name)),
  ) ??
  Cultivar.parse({
    id: freeId(
      `${species.id} ${name}`,
      cultivars.map(({ id }) => id),
    ),
    name,
    species: species.id,
    pollination: species.reproduction.pollination.text,
  })

/** A rootstock of the same fruit, raised in the commonest way that the facts know, and bought in where that is too few. */
function newStock(
  ground: Ground,
  species: Species,
): { readonly kind: Kind; readonly bodies: readonly Body[] } {
  const way = waysOffered(ground, species.id, 'rootstock')[0]
  const name = `${shortName(species)} rootstock`
  const kind = Kind.parse({
    id: freeId(
      name,
      ground.kinds.map(({ id }) => id),
    ),
    name,
    species: species.id,
    cultivars: [],
    form: 'rootstock',
    size: '',
    price: NEW_STOCK.price,
    holdingCostPerWeek: NEW_STOCK.price * HOLDING_SHARE_A_WEEK,
    buyIn: boughtIn(NEW_STOCK.price, NEW_STOCK.weeksNotice),
    ways: way === undefined ? [] : [{ protocol: way.protocol, rootstocks: [] }],
  })
  return {
    kind,
    bodies: [
      ...(way?.fromFacts == null ? [] : [{ kind: 'protocol-set/1' as const, protocol: way.fromFacts }]),
      { kind: 'kind-set/1', kindOfTree: kind },
    ],
  }
}

/** A kind as the form shows it, to be changed. */
export const typedOf = (kind: Kind, cultivars: readonly Cultivar[]): KindTyped => ({
  product: kind.form === 'rootstock' ? 'rootstock' : 'tree',
  species: kind.species,
  cultivar: cultivars.find(({ id }) => id === kind.cultivars[0])?.name ?? '',
  name: kind.name,
  size: kind.size,
  price: kind.price,
  ways: kind.ways.map(({ protocol }) => protocol),
  rootstock: kind.rootstock ?? 'new',
  boughtAt: kind.buyIn?.price ?? null,
  weeksNotice: kind.buyIn?.weeksNotice ?? NEW_STOCK.weeksNotice,
})
