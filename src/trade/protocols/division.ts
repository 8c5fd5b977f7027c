import { plantsPerSquareMetre } from '../facts/general/bench-density.ts'
import { bananaSuckers } from '../facts/general/keeping-wood.ts'
import { plantsPerPersonHour } from '../facts/general/work-rate.ts'
import { commonPractice } from '../figure.ts'
import { caution } from './cautions.ts'
import { type Draft, takeMaterial } from './draft.ts'
import { growOnInPots, stage, task } from './stages.ts'
import { measure, type Start } from './start.ts'

/** A sucker or offset dug with roots, trimmed and potted. */
export const offset = (start: Start): Draft => ({
  before: [],
  takes: [takeMaterial('offsets', 'whole plant', 1, bananaSuckers.days)],
  steps: growOnInPots(start, [
    stage(
      'settling',
      'Dug, trimmed and potted, until growing',
      'shade house',
      start.method.daysOnBench ?? commonPractice(30, 60, 120),
      start.success,
      'alive',
      plantsPerSquareMetre.spaced,
      [task('Dig, trim, pot', 'general', 'begin', start.method.perPersonHour, caution.lifting)],
    ),
  ]),
  tray: 1,
  smallestBatch: 10,
})

const usualPlantletsPerCorm = commonPractice(5, 10, 20, 'no figure for this fruit')

/** Buds forced from a pared corm; a plant started is one plantlet. */
export const cormPlantlets = (start: Start): Draft => ({
  before: [],
  takes: [
    takeMaterial(
      'offsets',
      'whole plant',
      1 / (measure(start, 'plantletsPerCorm') ?? usualPlantletsPerCorm).typical,
      bananaSuckers.days,
    ),
  ],
  steps: growOnInPots(start, [
    stage(
      'weaning',
      'Corm pared and bedded; plantlets detached and weaned',
      'tunnel',
      start.method.daysOnBench ?? commonPractice(60, 90, 120),
      start.success,
      'rooted',
      plantsPerSquareMetre.smallPots,
      [task('Detach and pot plantlets', 'potting', 'end', plantsPerPersonHour.pottedSmall, caution.blade)],
    ),
  ]),
  tray: 10,
  smallestBatch: 20,
})

/** Plantlets bought in flasks, hardened under cover. */
export const flaskPlantlets = (start: Start): Draft => ({
  before: [],
  takes: [takeMaterial('shoots', 'whole plant', 1, commonPractice(3, 7, 14, 'in the flask, cool and light'))],
  steps: growOnInPots(start, [
    stage(
      'weaning',
      'Out of the flask, weaned to open air',
      'healing tent',
      start.method.daysOnBench ?? commonPractice(21, 35, 56),
      start.success,
      'alive',
      plantsPerSquareMetre.tubes,
      [task('Wash, grade, plant', 'potting', 'begin', start.method.perPersonHour)],
    ),
  ]),
  tray: 50,
  smallestBatch: 50,
})
