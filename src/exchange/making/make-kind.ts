import {
  canBeUnited,
  type Importance,
  ONE_UNION,
  productsOf,
  type Species,
  type SpeciesWay,
  severalUnions,
  starterProtocol,
  type Unions,
} from '../../trade/facts/index.ts'
import {
  Cultivar,
  type CultivarId,
  formOfMethod,
  Kind,
  type KindId,
  type MethodId,
  type Protocol,
  type TreeForm,
} from '../../trade/index.ts'
import { shortFruitName } from '../words/fruit-names.ts'
import { folded } from './folded.ts'
import type { Making } from './making.ts'
import type { TreeNamed } from './name-tree.ts'
import { freeId, slug } from './slug.ts'

/** Money for one tree where no price is said, so that the plan can weigh one order against another. No source. */
const ASSUMED_PRICE: Readonly<Record<TreeForm, number>> = {
  seedling: 5,
  rootstock: 2,
  'cutting-grown': 8,
  layered: 15,
  divided: 8,
  worked: 12,
  'multi-worked': 25,
  reworked: 20,
}
export const HOLDING_SHARE_A_WEEK = 0.004
const BUY_IN = { dearer: 1.6, weeksNotice: 8, mostPerWeek: 500 }
const WAYS_AT_MOST = 2

const rank: readonly Importance[] = ['main', 'common', 'minor', 'experimental']
const needsSpecialStock: ReadonlySet<MethodId> = new Set<MethodId>([
  'bench_graft_on_cutting',
  'double_graft_clonal',
])

const isForTrees = (species: Species, way: SpeciesWay): boolean =>
  productsOf(species, way.method).includes('tree') &&
  way.importance !== 'experimental' &&
  !/^top-working|breeding/.test(way.role) &&
  formOfMethod(way.method) !== 'reworked'

const byRank = (ways: readonly SpeciesWay[]): SpeciesWay[] =>
  [...ways].sort((a, b) => rank.indexOf(a.importance) - rank.indexOf(b.importance))

/** What is worked on one stock of a tree. */
const unionsOf = ({ others, interstem }: TreeNamed): Unions =>
  others.length === 0 && interstem === null
    ? ONE_UNION
    : { cultivars: 1 + others.length, hasInterstem: interstem !== null }

/**
 * The methods by which a named tree is usually made. A named cultivar is not raised from seed; one that stands on a
 * rootstock is grafted or budded; several unions are made by what can be done so many times on one stock.
 */
export function usualMethods(
  making: Making,
  tree: TreeNamed & { readonly species: Species },
): readonly MethodId[] {
  const { species } = tree
  const unions = unionsOf(tree)
  const fits = (method: MethodId): boolean =>
    unions === ONE_UNION || canBeUnited(starterOf(making, method, species, 'tree'), unions)
  if (tree.method !== undefined && fits(tree.method)) return [tree.method]
  const form = tree.rootstock !== null || unions !== ONE_UNION ? 'worked' : tree.form
  const all = byRank(species.ways.filter(way => isForTrees(species, way) && fits(way.method)))
  const allowed = all.filter(({ method }) => tree.cultivar === null || method !== 'seed')
  const plain = allowed.filter(({ method }) => !needsSpecialStock.has(method))
  const fitting = form === undefined ? [] : all.filter(({ method }) => formOfMethod(method) === form)
  const choice = fitting.length > 0 ? fitting : plain.length > 0 ? plain : allowed.length > 0 ? allowed : all
  const first = choice[0]
  if (first === undefined) return []
  return choice
    .filter(
      ({ method, importance }) =>
        formOfMethod(method) === formOfMethod(first.method) && importance === first.importance,
    )
    .slice(0, WAYS_AT_MOST)
    .map(({ method }) => method)
}

/** As the facts have the fruit: what the nursery states of it follows into the protocol of itself. */
export const starterOf = (
  { fruits }: Making,
  method: MethodId,
  { id }: Species,
  product: 'tree' | 'rootstock',
): Protocol => starterProtocol(method, fruits.asGiven(id)!, product)

const protocolsFor = (
  making: Making,
  species: Species,
  methods: readonly MethodId[],
  product: 'tree' | 'rootstock',
  unions: Unions = ONE_UNION,
): Protocol[] =>
  methods.map(method => {
    const one = starterOf(making, method, species, product)
    const starter = unions === ONE_UNION ? one : severalUnions(one, unions)
    const own = making.protocols.get(starter.id)
    if (own) return own
    making.setProtocol(starter)
    return starter
  })

/**
 * The cultivar by its name or a synonym, or a new one.
 * @param id as a table that was written out has it
 */
export function cultivarNamed(making: Making, species: Species, name: string, id?: CultivarId): Cultivar {
  const known = (id && making.cultivars.get(id)) ?? making.cultivarByName(species.id, name)
  if (known) return known
  const cultivar = Cultivar.parse({
    id: id ?? freeId(`${slug(species.id)}-${slug(name)}`, id => making.cultivars.has(id as CultivarId)),
    name,
    species: species.id,
    pollination: species.reproduction.pollination.text,
  })
  making.setCultivar(cultivar)
  return cultivar
}

/** What goes with another on one tree: of this fruit, or of another where only that has a cultivar called so. */
export function besideNamed(making: Making, species: Species, name: string): Cultivar {
  const called = [...making.cultivars.values()].filter(one =>
    [one.name, ...one.synonyms].some(each => folded(each) === folded(name)),
  )
  return called.find(one => one.species === species.id) ?? called[0] ?? cultivarNamed(making, species, name)
}

const fruitOf = (species: Species): string => shortFruitName(species)

/** A rootstock that is raised for the nursery's own use, and can be bought in when it runs short. */
export function rootstockNamed(making: Making, species: Species, name: string | null): Kind {
  const wanted = folded((name ?? '').replace(/\b(root\s?stocks?|stocks?|seedlings?)\b/giu, ''))
  const stocks = [...making.kinds.values()].filter(({ form }) => form === 'rootstock')
  const known =
    wanted === ''
      ? stocks.find(({ species: its }) => its === species.id)
      : stocks.find(kind => ` ${folded(kind.name)} `.includes(` ${wanted} `) || kind.id === name)
  if (known) return known
  const raised = byRank(
    species.ways.filter(
      way => productsOf(species, way.method).includes('rootstock') && way.importance !== 'experimental',
    ),
  )
  const protocols = protocolsFor(
    making,
    species,
    raised.slice(0, 1).map(({ method }) => method),
    'rootstock',
  )
  const price = ASSUMED_PRICE.rootstock
  const label =
    name === null || wanted === '' || wanted === folded(fruitOf(species))
      ? `${fruitOf(species)} rootstock`
      : `${fruitOf(species)} rootstock ${name}`
  const kind = Kind.parse({
    id: freeId(slug(label), id => making.kinds.has(id as KindId)),
    name: label,
    species: species.id,
    cultivars: [],
    form: 'rootstock',
    size: '',
    price,
    holdingCostPerWeek: price * HOLDING_SHARE_A_WEEK,
    buyIn: { price: price * BUY_IN.dearer, weeksNotice: BUY_IN.weeksNotice, mostPerWeek: BUY_IN.mostPerWeek },
    ways: protocols.map(({ id }) => ({ protocol: id, rootstocks: [] })),
  })
  making.setKind(kind)
  making.assume(
    kind.name,
    `New rootstock "${kind.name}": ${
      protocols.length > 0 ? `raised by ${protocols.map(({ name: way }) => way).join(' or ')}, or ` : ''
    }bought in at ${kind.buyIn?.price} with ${BUY_IN.weeksNotice} weeks of notice (a price of ours, no source). Say your own under "What we grow".`,
  )
  return kind
}

/** A kind made from the facts: its cultivar, its usual methods with their starter protocols, and what it stands on. */
export function makeKind(
  making: Making,
  tree: TreeNamed & { readonly species: Species },
  price: number | null,
): Kind {
  const { species } = tree
  if (tree.form === 'rootstock') return rootstockNamed(making, species, tree.cultivar)
  const unions = unionsOf(tree)
  const methods = usualMethods(making, tree)
  const form: TreeForm =
    unions.cultivars > 1
      ? 'multi-worked'
      : methods[0] === undefined
        ? (tree.form ?? 'seedling')
        : formOfMethod(methods[0])
  const protocols = protocolsFor(making, species, methods, 'tree', unions)
  const isWorked = protocols.some(({ takes }) => takes.some(({ what }) => what === 'rootstock'))
  const rootstock = isWorked ? rootstockNamed(making, species, tree.rootstock) : null
  const cultivar = tree.cultivar === null ? null : cultivarNamed(making, species, tree.cultivar)
  const others = tree.others.map(other => besideNamed(making, species, other))
  const between = tree.interstem === null ? null : besideNamed(making, species, tree.interstem)
  const cultivars = [...(cultivar === null ? [] : [cultivar]), ...others]
  const ofCultivars =
    cultivars.length === 0
      ? `${fruitOf(species)}${form === 'seedling' ? ' seedling' : ''}`
      : `${fruitOf(species)} ${cultivars.map(one => `‘${one.name}’`).join(', ')}`
  const plain = between === null ? ofCultivars : `${ofCultivars} on interstem ‘${between.name}’`
  const standing = tree.rootstock !== null && rootstock !== null ? `${plain} on ${tree.rootstock}` : plain
  const isTaken = (name: string) =>
    [...making.kinds.values()].some(kind => folded(kind.name) === folded(name))
  const name = isTaken(standing) && tree.size !== '' ? `${standing}, ${tree.size}` : standing
  const ofOne = price ?? ASSUMED_PRICE[form]
  const kind = Kind.parse({
    id: freeId(slug(name), id => making.kinds.has(id as KindId)),
    name,
    species: species.id,
    cultivars: cultivars.map(({ id }) => id),
    form,
    rootstock: rootstock?.id ?? null,
    interstem: between?.id ?? null,
    size: tree.size,
    price: ofOne,
    holdingCostPerWeek: Math.round(ofOne * HOLDING_SHARE_A_WEEK * 1000) / 1000,
    ways: protocols.map(protocol => ({
      protocol: protocol.id,
      rootstocks:
        rootstock !== null && protocol.takes.some(({ what }) => what === 'rootstock') ? [rootstock.id] : [],
    })),
  })
  making.setKind(kind)
  making.assume(
    kind.name,
    `New kind "${kind.name}": ${
      protocols.length === 0
        ? 'no way to make it is known'
        : `made by ${protocols.map(protocol => `"${protocol.name}"`).join(' or ')}, as the facts have it`
    }${rootstock === null ? '' : `, on "${rootstock.name}"`}; ${
      price === null ? `price ${ofOne} (ours, no source)` : `price ${ofOne}`
    }. Say your own under "What we grow".`,
  )
  return kind
}
