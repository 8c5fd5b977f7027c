import type { Body } from '../../../record/index.ts'
import { ONE_UNION, type Species, type Unions } from '../../../trade/facts/index.ts'
import { Cultivar, formOfMethod, Kind, type KindId, sameName } from '../../../trade/index.ts'
import { freeId } from './typed.ts'
import { type Ground, type Product, waysOffered } from './ways-offered.ts'

/** A kind of tree as it is being typed. */
export interface KindTyped {
  readonly product: Product
  readonly species: string
  readonly cultivar: string
  /** What else is worked on the same tree; one left empty is none. */
  readonly others: readonly string[]
  /** The cultivar of the piece between stock and scion; empty: none. */
  readonly interstem: string
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

/** What is worked on one stock of it. */
export const unionsOf = ({ product, others, interstem }: KindTyped): Unions =>
  product === 'rootstock'
    ? ONE_UNION
    : {
        cultivars: 1 + others.filter(name => name.trim() !== '').length,
        hasInterstem: interstem.trim() !== '',
      }

const shortName = ({ commonName }: Species): string => commonName.replace(/ \(.*| and .*|, .*| \/ .*/, '')

const boughtIn = (price: number | null, weeksNotice: number): Kind['buyIn'] =>
  price === null ? null : { price, weeksNotice, mostPerWeek: BOUGHT_MOST_PER_WEEK }

/** What is typed of it, without what was left empty: the cultivars, the first one first. */
export const namesOf = ({ cultivar, others }: KindTyped): readonly string[] =>
  [cultivar, ...others].map(name => name.trim()).filter(name => name !== '')

const nameOf = (typed: KindTyped, species: Species, form: string): string => {
  const fruit = shortName(species)
  const cultivar = typed.cultivar.trim()
  if (typed.product === 'rootstock') return [`${fruit} rootstock`, cultivar].filter(Boolean).join(' ')
  const between = typed.interstem.trim() === '' ? '' : ` on interstem ‘${typed.interstem.trim()}’`
  if (cultivar !== '')
    return `${fruit} ${namesOf(typed)
      .map(name => `‘${name}’`)
      .join(', ')}${between}`
  return form === 'seedling' ? `${fruit} seedling` : fruit
}

/**
 * What is said so that the nursery makes this kind: its cultivar, the protocols that it takes over from the facts, the
 * rootstock that it stands on where there is none yet, and the kind itself. Of a kind that is changed, what the form
 * does not ask stays as it is. Null while something lacks.
 */
export function kindBodies(ground: Ground, typed: KindTyped, before: Kind | null): readonly Body[] | null {
  const species = ground.fruits.byId(typed.species)
  const kept = before?.ways.map(({ protocol }) => protocol)
  const all = waysOffered(ground, typed.species, typed.product, unionsOf(typed), kept)
  const ways = all.filter(({ protocol }) => typed.ways.includes(protocol))
  const [first] = ways
  if (species === undefined || first === undefined || typed.price === null) return null
  const bodies: Body[] = ways.flatMap(({ fromFacts }) =>
    fromFacts === null ? [] : [{ kind: 'protocol-set/1', protocol: fromFacts }],
  )
  const form = typed.product === 'rootstock' ? 'rootstock' : formOfMethod(first.method)
  const known = [...ground.cultivars]
  const named = (name: string, ofAnyFruit: boolean): Cultivar['id'] => {
    const cultivar = cultivarOf(known, species, name, ofAnyFruit)
    if (!known.includes(cultivar)) {
      known.push(cultivar)
      bodies.push({ kind: 'cultivar-set/1', cultivar })
    }
    return cultivar.id
  }
  // Of a rootstock the name alone tells which it is, for its mother beds are known by the kind.
  const isTree = typed.product === 'tree'
  const cultivars = isTree
    ? namesOf(typed).map((name, nth) => named(name, nth > 0))
    : (before?.cultivars ?? [])
  const between = typed.interstem.trim()
  const isWorked = ways.some(({ onRootstock }) => onRootstock)
  const stock = !isWorked ? null : typed.rootstock === 'new' ? newStock(ground, species) : null
  if (stock !== null) bodies.push(...stock.bodies)
  const rootstock = !isWorked ? null : (stock?.kind.id ?? (typed.rootstock as KindId))
  const taken = [...ground.kinds, ...(stock === null ? [] : [stock.kind])]
  const plain = nameOf(typed, species, form)
  const size = typed.size.trim()
  const isTwice =
    plain !== before?.name && taken.some(({ id, name }) => id !== before?.id && sameName(name, plain))
  // A name that came of fruit and cultivar follows them; one that was given stays.
  const isGiven =
    before === null || before.name !== nameOf(typedOf(before, ground.cultivars), species, before.form)
  const said = isGiven || typed.name.trim() !== before.name ? typed.name.trim() : ''
  const name = said || (isTwice && size !== '' ? `${plain}, ${size}` : plain)
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
    cultivars,
    form: before?.form === 'reworked' ? 'reworked' : cultivars.length > 1 ? 'multi-worked' : form,
    rootstock,
    interstem: isTree ? (between === '' ? null : named(between, true)) : (before?.interstem ?? null),
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

/** The cultivar that is called so: of this fruit, or else of any, where it goes with another on one tree. */
export function cultivarCalled(
  cultivars: readonly Cultivar[],
  species: string,
  name: string,
  ofAnyFruit: boolean,
): Cultivar | undefined {
  const called = cultivars.filter(one => [one.name, ...one.synonyms].some(each => sameName(each, name)))
  return called.find(one => one.species === species) ?? (ofAnyFruit ? called[0] : undefined)
}

const cultivarOf = (
  cultivars: readonly Cultivar[],
  species: Species,
  name: string,
  ofAnyFruit: boolean,
): Cultivar =>
  cultivarCalled(cultivars, species.id, name, ofAnyFruit) ??
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
export function typedOf(kind: Kind, cultivars: readonly Cultivar[]): KindTyped {
  const nameOf = (id: Cultivar['id']) => cultivars.find(one => one.id === id)?.name ?? id
  const [cultivar = '', ...others] = kind.cultivars.map(nameOf)
  return {
    product: kind.form === 'rootstock' ? 'rootstock' : 'tree',
    species: kind.species,
    cultivar,
    others,
    interstem: kind.interstem === null ? '' : nameOf(kind.interstem),
    name: kind.name,
    size: kind.size,
    price: kind.price,
    ways: kind.ways.map(({ protocol }) => protocol),
    rootstock: kind.rootstock ?? 'new',
    boughtAt: kind.buyIn?.price ?? null,
    weeksNotice: kind.buyIn?.weeksNotice ?? NEW_STOCK.weeksNotice,
  }
}
