import { stageSurvival } from '../facts/general/stage-survival.ts'
import { type Method, methodById } from '../facts/method.ts'
import type { QuantityKey } from '../facts/quantity.ts'
import { losesLeaves, type Species, type SpeciesWay, wayOf } from '../facts/species.ts'
import { commonPractice, type Figure, type ShareFigure } from '../figure.ts'
import { markOfMethod } from '../mark-of-method.ts'
import type { MethodId } from '../vocabulary.ts'
import type { Window } from '../window.ts'
import { usualWindow } from './usual-window.ts'

export type Product = 'tree' | 'rootstock'

/** What is known before a protocol is written: the fruit, the method, and what the facts say of the two together. */
export interface Start {
  readonly species: Species
  readonly method: Method
  /** Undefined where the facts do not know this method for this fruit. */
  readonly way: SpeciesWay | undefined
  readonly product: Product
  readonly success: ShareFigure
  /** The share of success already holds what is lost after take or rooting. */
  readonly successHoldsLaterLoss: boolean
  /** From the act of the method to the finished plant. */
  readonly months: Figure
  readonly window: Window
  readonly isDeciduous: boolean
}

const generalSuccess = (method: MethodId): ShareFigure => {
  if (method === 'air_layer' || method === 'mound_layer' || method === 'simple_layer')
    return stageSurvival.airLayerRooted
  const mark = markOfMethod(method)
  if (mark === 'seed') return stageSurvival.germinated
  if (mark === 'graft' || mark === 'bud') return stageSurvival.taken
  return mark === 'division' ? stageSurvival.weanedAndPottedAlive : stageSurvival.rooted
}

const usualMonths = (method: MethodId, isDeciduous: boolean): Figure => {
  const note = 'no figure for this fruit and method'
  switch (markOfMethod(method)) {
    case 'seed':
      return commonPractice(8, 12, 18, note)
    case 'cutting':
      return commonPractice(8, 12, 18, note)
    case 'layer':
      return commonPractice(6, 9, 14, note)
    case 'bud':
      return isDeciduous ? commonPractice(14, 15, 18, note) : commonPractice(8, 11, 15, note)
    case 'graft':
      return method === 'double_graft_clonal'
        ? commonPractice(16, 20, 28, note)
        : commonPractice(7, 10, 14, note)
    case 'division':
      return commonPractice(3, 6, 10, note)
  }
}

/** A fruit of the tropics may be grown where months say little. */
const nearEquator = (species: Species, window: Window): Window =>
  species.climates.includes('tropical')
    ? {
        ...window,
        note: [window.note, 'near the equator go by rains and flush, not by these months']
          .filter(note => note !== undefined)
          .join('; '),
      }
    : window

const laterLoss = /surviv|60|10 weeks|final|finished|first-grade|weaned/

export function startOf(method: MethodId, species: Species, product: Product): Start {
  const way = wayOf(species, method)
  const isDeciduous = losesLeaves(species)
  const sown = product === 'rootstock' && method === 'seed' ? species.rootstocks.monthsSowToWorkable : null
  return {
    species,
    method: methodById(method),
    way,
    product,
    success: way?.success ?? generalSuccess(method),
    successHoldsLaterLoss: way !== undefined && laterLoss.test(way.counts),
    months: sown ?? way?.timing.monthsToSaleable ?? usualMonths(method, isDeciduous),
    window: nearEquator(species, way?.window ?? usualWindow(method, species)),
    isDeciduous,
  }
}

/** The fruit's own measure, else the method's. */
export const measure = (start: Start, key: QuantityKey): Figure | undefined =>
  start.way?.materials[key] ??
  start.way?.environment[key] ??
  start.method.materials[key] ??
  start.method.environment[key]
