/**
 * The second door of the trade: what the program assumes before a nursery has records of its own.
 * Apart from `trade/index.ts` because the facts are heavy: a screen that needs only the words does not load them.
 */
export { multiWorkedProtocol } from '../protocols/multi-worked.ts'
export type { Product } from '../protocols/start.ts'
export { productsOf, starterProtocol, starterProtocols } from '../protocols/starter-protocol.ts'
export {
  benchShareOfFloor,
  crowdedDays,
  plantsPerSquareMetre,
  plantsPerSquareMetreAt,
} from './general/bench-density.ts'
export { ibaPpm } from './general/hormone-strength.ts'
export { type Keeping, scionKeeping } from './general/keeping-wood.ts'
export {
  motherYieldPerYear,
  restAfterHeavyCuttingMonths,
  yearsToNewRootstock,
} from './general/mother-yield.ts'
export { type Pot, pots } from './general/pot.ts'
export { safetyAllowance } from './general/safety-allowance.ts'
export { stageSurvival } from './general/stage-survival.ts'
export { beginner, minutesPerPlant, plantsPerPersonHour, productiveHoursPerDay } from './general/work-rate.ts'
export { allMethods, Method, methodById, Quantities } from './method.ts'
export { type QuantityKey, quantityByKey } from './quantity.ts'
export { allSources, citation, Source, sourceById } from './source.ts'
export {
  allSpecies,
  Hazard,
  Importance,
  losesLeaves,
  Species,
  SpeciesWay,
  speciesById,
  wayOf,
} from './species.ts'
export { speciesByName } from './species-by-name.ts'
export { TextFact } from './text-fact.ts'
