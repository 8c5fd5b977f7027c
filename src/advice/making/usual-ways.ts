import { productsOf, type Species, starterProtocol, starterProtocols } from '../../trade/facts/index.ts'
import { type MethodMark, markOfMethod } from '../../trade/index.ts'
import { usualPriceOf } from '../assumptions/costs.ts'
import type { WayToMake } from './cost-of-way.ts'

/** Bed made ready, tools set, the first hour lost: money for each batch by group of methods. From memory. */
const setUpByMark: Readonly<Record<MethodMark, number>> = {
  seed: 12,
  cutting: 45,
  layer: 8,
  graft: 25,
  bud: 15,
  division: 10,
}
/** Wood, seed or branch of one started plant, apart from cutting it. From memory. */
const materialByMark: Readonly<Record<MethodMark, number>> = {
  seed: 0.1,
  cutting: 0.1,
  layer: 0.6,
  graft: 0.3,
  bud: 0.15,
  division: 0.3,
}
const BOUGHT_ROOTSTOCK = 2.5

const formByMark = {
  seed: 'seedling',
  cutting: 'cutting-grown',
  layer: 'layered',
  graft: 'worked',
  bud: 'worked',
  division: 'divided',
} as const

/** The ways in which the facts know a fruit to be made as a tree, by the starter protocols and usual prices. */
export function usualWays(species: Species): readonly WayToMake[] {
  const stock = species.ways.find(way => productsOf(species, way.method).includes('rootstock'))
  return starterProtocols(species)
    .filter(({ id }) => !id.endsWith('-rootstock'))
    .filter(({ method }) => !species.ways.find(way => way.method === method)!.role.includes('top-working'))
    .map(protocol => {
      const mark = markOfMethod(protocol.method)
      const worked = protocol.takes.some(taking => taking.what === 'rootstock')
      const rootstock =
        worked && stock !== undefined
          ? {
              protocol: starterProtocol(stock.method, species, 'rootstock'),
              price: 0,
              setUp: setUpByMark[markOfMethod(stock.method)],
              materialCost: materialByMark[markOfMethod(stock.method)],
              rootstock: null,
              rootstockPrice: 0,
            }
          : null
      return {
        protocol,
        price: usualPriceOf(species, formByMark[mark], protocol.method),
        setUp: setUpByMark[mark],
        materialCost: materialByMark[mark],
        rootstock,
        rootstockPrice: worked && rootstock === null ? BOUGHT_ROOTSTOCK : 0,
      }
    })
}
