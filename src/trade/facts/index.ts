/**
 * The second door of the trade: what the program assumes before a nursery has records of its own.
 * Apart from `trade/index.ts` because the facts are heavy: a screen that needs only the words does not load them.
 */
export { allMethods, Method, methodById, Quantities } from './method.ts'
export { type QuantityKey, quantityByKey } from './quantity.ts'
export { allSources, citation, Source, sourceById } from './source.ts'
export { allSpecies, Hazard, Importance, Species, SpeciesWay, speciesById, wayOf } from './species.ts'
export { TextFact } from './text-fact.ts'
