/**
 * The second door of the trade: what the program assumes before a nursery has records of its own.
 * Apart from `trade/index.ts` because the facts are heavy: a screen that needs only the words does not load them.
 */
export { followFacts } from '../protocols/follow-facts.ts'
export {
  canBeUnited,
  MOST_CULTIVARS,
  ONE_UNION,
  severalUnions,
  type Unions,
  unionsId,
} from '../protocols/several-unions.ts'
export type { Product } from '../protocols/start.ts'
export { productsOf, starterProtocol, starterProtocols } from '../protocols/starter-protocol.ts'
export { allSpecies, speciesById } from './all-species.ts'
export { type Fact, factsOf, withFact } from './fact.ts'
export { type Fruits, fruitsWith, type OwnFacts } from './fruits.ts'
export {
  benchShareOfFloor,
  crowdedDays,
  plantsPerSquareMetre,
  plantsPerSquareMetreAt,
} from './general/bench-density.ts'
export { ibaPpm } from './general/hormone-strength.ts'
export { type Keeping, scionKeeping } from './general/keeping-wood.ts'
export {
  monthsOfSupply,
  motherYieldPerYear,
  restAfterHeavyCuttingMonths,
  usualYield,
  yearsToNewRootstock,
} from './general/mother-yield.ts'
export { type Pot, pots } from './general/pot.ts'
export { safetyAllowance } from './general/safety-allowance.ts'
export { stageSurvival } from './general/stage-survival.ts'
export { beginner, minutesPerPlant, plantsPerPersonHour, productiveHoursPerDay } from './general/work-rate.ts'
export { allMethods, Method, methodById, Quantities } from './method.ts'
export { type QuantityKey, quantityByKey } from './quantity.ts'
export { allSources, citation, Source, sourceById } from './source.ts'
export { Hazard, Importance, knownAs, losesLeaves, Species, SpeciesWay, wayOf } from './species.ts'
export { speciesByName } from './species-by-name.ts'
export { TextFact } from './text-fact.ts'
