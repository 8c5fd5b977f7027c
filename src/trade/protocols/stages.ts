import { plantsPerSquareMetre } from '../facts/general/bench-density.ts'
import { fromMemory } from '../facts/general/published.ts'
import { stageSurvival } from '../facts/general/stage-survival.ts'
import { minutesPerPlant, plantsPerPersonHour } from '../facts/general/work-rate.ts'
import { commonPractice, type Figure, type ShareFigure } from '../figure.ts'
import { StepId } from '../ids.ts'
import type { Step, Work } from '../protocol.ts'
import type { PlaceKind, Sign, Skill } from '../vocabulary.ts'
import { caution } from './cautions.ts'
import type { Start } from './start.ts'

export const DAYS_IN_MONTH = 30.4375
const LEAST_DAYS = 7

export const task = (
  name: string,
  skill: Skill,
  when: Work['when'],
  perHour: Figure,
  warning?: string,
): Work => ({
  task: name,
  skill,
  when,
  minutesPerPlant: minutesPerPlant(perHour),
  minutesPerBatch: 0,
  ...(warning === undefined ? {} : { caution: warning }),
})

export const stage = (
  id: string,
  name: string,
  place: PlaceKind,
  days: Figure,
  survival: ShareFigure,
  sign: Sign,
  plantsPerSquareMetre: Figure | null,
  work: readonly Work[],
): Step => ({
  id: StepId.parse(id),
  name,
  place,
  days,
  survival,
  sign,
  plantsPerSquareMetre,
  work,
  materialCostPerPlant: 0,
})

/** Watering, weeding, looking over. Set your own: houses and machines differ more than fruits. */
export const weeklyCare: Work = {
  task: 'Water, weed, look over',
  skill: 'general',
  when: 'each week',
  minutesPerPlant: fromMemory(0.02, 0.05, 0.1, 'a plant a week'),
  minutesPerBatch: 0,
}

/** Time that is left for growing on: months from the act to the finished plant, less the steps before and after. */
export function daysLeft(months: Figure, others: readonly Step[]): Figure {
  const left = (end: 'low' | 'typical' | 'high') =>
    Math.max(
      LEAST_DAYS,
      Math.round(months[end] * DAYS_IN_MONTH - others.reduce((sum, step) => sum + step.days[end], 0)),
    )
  const typical = left('typical')
  return {
    low: Math.min(left('low'), typical),
    typical,
    high: Math.max(left('high'), typical),
    basis: months.basis,
    sources: months.sources,
    note: `${months.typical} months from the start to the finished plant, less the other steps`,
  }
}

/** Stages whose length the grower chooses; union, roots and germination take the time they take. */
const elastic: ReadonlySet<string> = new Set([
  'pricked-out',
  'weaning',
  'settling',
  'hardening-off',
  'hardening',
])

/** Where a quick crop leaves no time for the usual stages, the elastic ones are cut, at most by half. */
function fitted(months: Figure, steps: readonly Step[]): Step[] {
  const typical = (some: readonly Step[]) => some.reduce((sum, step) => sum + step.days.typical, 0)
  const excess = typical(steps) + LEAST_DAYS - months.typical * DAYS_IN_MONTH
  if (excess <= 0) return [...steps]
  const share = Math.max(0.5, 1 - excess / typical(steps.filter(step => elastic.has(step.id))))
  const shorter = (days: Figure): Figure => ({
    ...days,
    low: Math.round(days.low * share),
    typical: Math.round(days.typical * share),
    high: Math.round(days.high * share),
    note: 'cut short: a quick crop',
  })
  return steps.map(step => (elastic.has(step.id) ? { ...step, days: shorter(step.days) } : step))
}

export const growingPlace = (start: Start): PlaceKind =>
  !start.isDeciduous && start.species.climates.some(climate => climate !== 'temperate')
    ? 'shade house'
    : 'standing ground'

export const laterLoss = (start: Start, share: ShareFigure): ShareFigure =>
  start.successHoldsLaterLoss ? stageSurvival.alreadyCounted : share

const hardening = stage(
  'hardening',
  'Hardened in full sun, graded and held for dispatch',
  'standing ground',
  commonPractice(10, 14, 28, 'published 14 for avocado (PAULL2011)'),
  stageSurvival.heldAndDispatched,
  'saleable',
  plantsPerSquareMetre.spaced,
  [task('Grade, label, move out', 'general', 'end', plantsPerPersonHour.spacedAndMoved, caution.lifting)],
)

/** From a plant alive in a small pot to one that is fit to sell. */
export function growOnInPots(start: Start, before: readonly Step[]): Step[] {
  const others = fitted(start.months, [...before, hardening])
  const grown = stage(
    'growing',
    'Potted on and grown to size',
    growingPlace(start),
    daysLeft(start.months, others),
    stageSurvival.grownToSaleable,
    'alive',
    plantsPerSquareMetre.spaced,
    [
      task('Pot on', 'potting', 'begin', plantsPerPersonHour.pottedLarge, caution.lifting),
      task('Stake and tie', 'general', 'end', plantsPerPersonHour.stakedAndTied),
      weeklyCare,
    ],
  )
  return [...others.slice(0, -1), grown, ...others.slice(-1)]
}

const lifting = stage(
  'lifting',
  'Lifted at rest, graded and kept cold with roots moist',
  'cold store',
  commonPractice(7, 14, 42),
  stageSurvival.heldAndDispatched,
  'saleable',
  fromMemory(40, 60, 100, 'bare-root trees in bundles'),
  [
    task(
      'Lift, grade, bundle',
      'general',
      'begin',
      fromMemory(20, 40, 80, 'with a lifting plough; by spade a third of it'),
      caution.lifting,
    ),
  ],
)

/** From a plant started in the row to a bare-root tree. */
export function growOnInRows(start: Start, before: readonly Step[]): Step[] {
  const grown = stage(
    'growing',
    'Grown on in the row',
    'field row',
    daysLeft(start.months, [...before, lifting]),
    stageSurvival.grownToSaleable,
    'alive',
    plantsPerSquareMetre.nurseryRow,
    [
      task('Stake, tie, rub off side shoots', 'general', 'begin', plantsPerPersonHour.stakedAndTied),
      weeklyCare,
    ],
  )
  return [...before, grown, lifting]
}

/** From a plant alive in a small pot to a rootstock of workable stem. */
export function growToWorkable(start: Start, before: readonly Step[]): Step[] {
  const others = fitted(start.months, before)
  const work = [task('Pot', 'potting', 'begin', plantsPerPersonHour.pottedSmall), weeklyCare]
  const grown = stage(
    'growing',
    'Grown to a stem that can be worked',
    growingPlace(start),
    daysLeft(start.months, others),
    stageSurvival.reachesWorkableSizeInItsWindow,
    'alive',
    plantsPerSquareMetre.smallPots,
    work,
  )
  return [...others, grown]
}

export const finish = (start: Start, before: readonly Step[]): Step[] =>
  start.product === 'rootstock' ? growToWorkable(start, before) : growOnInPots(start, before)
