import { quantityByKey } from '../facts/quantity.ts'
import { commonPractice, type Figure } from '../figure.ts'
import type { Setting } from '../protocol.ts'
import type { Drawing } from './drawing.ts'
import type { Guide, GuideStep } from './guide.ts'

/** Short ways to write a guide down. */
export const step = (drawing: Drawing, act: string, look: string, why: string): GuideStep => ({
  drawing,
  act,
  look,
  why,
})

export const usual = (
  name: string,
  unit: string,
  low: number,
  typical: number,
  high: number,
  note?: string,
): Setting => ({
  name,
  unit,
  figure: commonPractice(low, typical, high, note),
})

export const known = (name: string, unit: string, figure: Figure): Setting => ({ name, unit, figure })

/** Rooting hormone under the name that protocols give it, so that a nursery's own strength stands beside it. */
export const hormone = (how: string, figure: Figure): Setting => ({
  name: quantityByKey.ibaPpm.name,
  unit: quantityByKey.ibaPpm.unit,
  figure: { ...figure, note: figure.note === undefined ? how : `${how}: ${figure.note}` },
})

export const fails = (sign: string, ...causes: readonly string[]): Guide['failures'][number] => ({
  sign,
  causes,
})

export const weeks = (fromWeek: number, toWeek: number, care: string): Guide['aftercare'][number] => ({
  fromWeek,
  toWeek,
  care,
})
