import { type Importance, knownAs, type Species, type SpeciesWay } from '../trade/facts/index.ts'
import { type MethodId, markOfMethod, type TreeForm } from '../trade/index.ts'
import { type FruitGroup, groupOf } from './assumptions/fruit-group.ts'
import { type Rootstock, rootstocksOf } from './assumptions/rootstock.ts'
import type { Offer, Question } from './question.ts'

/** One kind of tree that the buyer could plant. */
export interface TreeWay {
  readonly id: string
  readonly form: TreeForm
  /** Of a worked tree, what it stands on. */
  readonly rootstock: Rootstock | null
  /** The commonest method by which it is made. */
  readonly method: MethodId
  /** What the nursery has of it; null where it has none and a usual price stands in. */
  readonly offer: Offer | null
  /** It has roots of its own, without a taproot: cuttings, layers, offsets. */
  readonly ownRoots: boolean
  /** It begins as a seedling: juvenile, with a taproot. */
  readonly fromSeed: boolean
  /** Years after planting in which a seedling is worked to the wanted fruit. */
  readonly reworkedInYear: number | null
}

/** A seedling stem is thick enough to be worked after so many years. Common practice, no source. */
const REWORK_YEAR = 3

const rank: Readonly<Record<Importance, number>> = { main: 0, common: 1, minor: 2, experimental: 3 }
const usual = (ways: readonly SpeciesWay[]): SpeciesWay | undefined =>
  [...ways]
    .filter(way => way.importance !== 'experimental')
    .sort((a, b) => rank[a.importance] - rank[b.importance])[0]

/** Plants without a trunk are not worked anew, and carry no second cultivar. */
const hasNoTrunk: ReadonlySet<FruitGroup> = new Set<FruitGroup>([
  'vine',
  'berry bush',
  'bean',
  'cactus',
  'giant herb',
])

const isOwnRoot = (way: SpeciesWay) => way.role.includes('own-root')
const isScion = (way: SpeciesWay) => way.role.startsWith('scion') || way.role === 'grafted vine'

/** How a fruit's trees can be had, apart from what the nursery offers. */
function formsOf(species: Species, wouldRework: boolean): readonly Omit<TreeWay, 'id' | 'offer'>[] {
  const byMark = (mark: string) =>
    usual(
      species.ways.filter(way => markOfMethod(way.method) === mark && (mark === 'seed' || isOwnRoot(way))),
    )
  const graft = usual(species.ways.filter(isScion))
  const plain = { rootstock: null, ownRoots: false, fromSeed: false, reworkedInYear: null } as const
  const seed = byMark('seed')
  const cutting = byMark('cutting')
  const layer = byMark('layer')
  const division = byMark('division')
  const isTree = !hasNoTrunk.has(groupOf(knownAs(species)))
  const stocks = graft === undefined ? [] : rootstocksOf(knownAs(species))
  return [
    ...(seed === undefined
      ? []
      : [{ ...plain, form: 'seedling' as const, method: seed.method, fromSeed: true }]),
    ...(seed !== undefined && graft !== undefined && isTree && wouldRework
      ? [
          {
            ...plain,
            form: 'reworked' as const,
            method: graft.method,
            fromSeed: true,
            reworkedInYear: REWORK_YEAR,
          },
        ]
      : []),
    ...(cutting === undefined
      ? []
      : [{ ...plain, form: 'cutting-grown' as const, method: cutting.method, ownRoots: true }]),
    ...(layer === undefined
      ? []
      : [{ ...plain, form: 'layered' as const, method: layer.method, ownRoots: true }]),
    ...(division === undefined
      ? []
      : [{ ...plain, form: 'divided' as const, method: division.method, ownRoots: true }]),
    ...stocks.map(rootstock => ({ ...plain, form: 'worked' as const, method: graft!.method, rootstock })),
    ...(graft === undefined || !isTree
      ? []
      : [{ ...plain, form: 'multi-worked' as const, method: graft.method, rootstock: stocks[0]! }]),
  ]
}

/** An offer that does not say its rootstock is taken to stand on the middling one of those usual for the fruit. */
function fits(offer: Offer, way: Omit<TreeWay, 'id' | 'offer'>, species: Species): boolean {
  if (offer.form !== way.form) return false
  if (way.rootstock === null || way.form === 'multi-worked') return true
  const stocks = rootstocksOf(knownAs(species))
  const said = offer.rootstock ?? stocks[Math.floor((stocks.length - 1) / 2)]!.id
  return said === way.rootstock.id
}

/** The ways to compare: each form by each usual rootstock, once for every offer of it, now or later. */
export function waysOf(
  species: Species,
  question: Pick<Question, 'wouldRework' | 'offers'>,
): readonly TreeWay[] {
  return formsOf(species, question.wouldRework).flatMap((form): TreeWay[] => {
    // A seedling to be reworked is bought as a seedling.
    const asSold = form.form === 'reworked' ? { ...form, form: 'seedling' as const } : form
    const offers = question.offers.filter(offer => fits(offer, asSold, species))
    const name = form.rootstock === null ? form.form : `${form.form}/${form.rootstock.id}`
    if (offers.length === 0) return [{ ...form, id: name, offer: null }]
    return offers.map((offer, place) => ({ ...form, id: place === 0 ? name : `${name}/${place + 1}`, offer }))
  })
}
