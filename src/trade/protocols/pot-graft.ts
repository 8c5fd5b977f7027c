import { plantsPerSquareMetre } from '../facts/general/bench-density.ts'
import { stageSurvival } from '../facts/general/stage-survival.ts'
import { plantsPerPersonHour } from '../facts/general/work-rate.ts'
import { commonPractice, type Figure } from '../figure.ts'
import type { Step } from '../protocol.ts'
import type { PlaceKind, Skill } from '../vocabulary.ts'
import { caution } from './cautions.ts'
import { type Draft, takeMaterial } from './draft.ts'
import { scionPreparations, takeRootstock, takeScionSticks } from './scion.ts'
import { germinating, seedKeeps, seedPreparations } from './seedling.ts'
import { DAYS_IN_MONTH, growOnInPots, laterLoss, stage, task } from './stages.ts'
import type { Start } from './start.ts'

export const daysToUnion = (start: Start): Figure =>
  start.way?.timing.daysToUnion ??
  start.way?.timing.daysToCallus ??
  start.method.daysOnBench ??
  start.way?.timing.daysToBudBreak ??
  commonPractice(21, 35, 60)

const check = task(
  'Open, check take, rub off stock shoots',
  'general',
  'end',
  plantsPerPersonHour.unwrappedAndChecked,
)

/** From the cut until the union holds. */
export const healing = (
  start: Start,
  place: PlaceKind,
  skill: Skill,
  plantsPerSquareMetre: Figure | null,
  act: string,
): Step =>
  stage(
    'healing',
    `${act}, until united`,
    place,
    daysToUnion(start),
    start.success,
    'united',
    plantsPerSquareMetre,
    [task(act, skill, 'begin', start.method.perPersonHour, caution.blade), check],
  )

/** Out of the tent, wraps off, first flush made. */
export const settledGraft = (start: Start, place: PlaceKind, work: Step['work'] = []): Step =>
  stage(
    'hardening-off',
    'Out of cover, first flush hardened',
    place,
    commonPractice(21, 30, 45),
    laterLoss(start, stageSurvival.aliveFromTakeToHardened),
    'alive',
    plantsPerSquareMetre.potToPot,
    [task('Move out and space', 'general', 'begin', plantsPerPersonHour.spacedAndMoved), ...work],
  )

/** Top wedge, or whip-and-tongue on an evergreen: the stock's top is cut off and the scion set in its place. */
export const topGraft = (start: Start): Draft => ({
  before: scionPreparations(start),
  takes: [takeRootstock(start), takeScionSticks(start)],
  steps: growOnInPots(start, [
    healing(start, 'healing tent', 'grafting', plantsPerSquareMetre.potToPot, 'Graft, tie and cover'),
    settledGraft(start, 'shade house'),
  ]),
  tray: 12,
  smallestBatch: 12,
})

/** Side veneer: the stock keeps its top until the union holds. */
export const veneerGraft = (start: Start): Draft => ({
  before: scionPreparations(start),
  takes: [takeRootstock(start), takeScionSticks(start)],
  steps: growOnInPots(start, [
    healing(start, 'shade house', 'grafting', plantsPerSquareMetre.potToPot, 'Graft at the side and tie'),
    settledGraft(start, 'shade house', [
      task(
        'Head back the stock in two cuts',
        'general',
        'begin',
        plantsPerPersonHour.headedBackAndRubbed,
        caution.blade,
      ),
    ]),
  ]),
  tray: 12,
  smallestBatch: 12,
})

/** On a stock of two to four weeks: it is sown as the first step of the same batch. */
export function epicotylGraft(start: Start): Draft {
  const sown = germinating(start, start.species.seed?.germination ?? stageSurvival.germinated)
  const stock = { ...sown, name: 'Stock sown, until it can be worked', days: stockDays(start, sown.days) }
  const grafted = healing(
    start,
    'healing tent',
    'grafting',
    plantsPerSquareMetre.smallPots,
    'Graft, tie and cover',
  )
  return {
    before: [...seedPreparations(start), ...scionPreparations(start)],
    takes: [takeMaterial('seed', 'rootstock', 1, seedKeeps(start)), takeScionSticks(start, 1, grafted.id)],
    steps: growOnInPots({ ...start, months: fromSowing(start.months, stock.days) }, [
      stock,
      grafted,
      settledGraft(start, 'shade house'),
    ]),
    tray: 12,
    smallestBatch: 12,
  }
}

/** The facts count from the graft; this batch begins with the seed. */
const fromSowing = (months: Figure, stock: Figure): Figure => ({
  ...months,
  low: months.low + stock.low / DAYS_IN_MONTH,
  typical: months.typical + stock.typical / DAYS_IN_MONTH,
  high: months.high + stock.high / DAYS_IN_MONTH,
})

const stockDays = (start: Start, germination: Figure): Figure => {
  const age = start.way?.timing.stockAgeDays ?? commonPractice(10, 14, 21)
  return {
    ...age,
    low: germination.low + age.low,
    typical: germination.typical + age.typical,
    high: germination.high + age.high,
    note: 'days to germinate and age of the stock when it is worked',
  }
}

/** Potted stock tied to a branch that stays on its mother until the two have joined. */
export const approachGraft = (start: Start): Draft => ({
  before: [],
  takes: [
    takeRootstock(start),
    takeMaterial('branches', 'scion', 1, commonPractice(0, 0, 0, 'it stays on the mother')),
  ],
  steps: growOnInPots(start, [
    healing(start, 'mother block', 'grafting', null, 'Join stock and branch, tie'),
    settledGraft(start, 'shade house', [
      task('Sever in steps', 'grafting', 'begin', plantsPerPersonHour.approachGrafts, caution.blade),
    ]),
  ]),
  tray: 1,
  smallestBatch: 5,
})
