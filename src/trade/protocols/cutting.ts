import { plantsPerSquareMetre } from '../facts/general/bench-density.ts'
import { dormantWood, leafyCuttings } from '../facts/general/keeping-wood.ts'
import { stageSurvival } from '../facts/general/stage-survival.ts'
import { plantsPerPersonHour } from '../facts/general/work-rate.ts'
import { commonPractice, type Figure } from '../figure.ts'
import type { Step } from '../protocol.ts'
import type { PlaceKind } from '../vocabulary.ts'
import { caution } from './cautions.ts'
import { type Draft, takeMaterial } from './draft.ts'
import { finish, laterLoss, stage, task } from './stages.ts'
import { measure, type Start } from './start.ts'

const daysToRoot = (start: Start): Figure =>
  start.way?.timing.daysToRoot ??
  start.way?.timing.daysToShoot ??
  start.method.daysOnBench ??
  commonPractice(30, 60, 120)

export const weaning = (start: Start, place: PlaceKind = 'shade house'): Step =>
  stage(
    'weaning',
    'Weaned to open air and potted',
    place,
    commonPractice(10, 21, 30, 'mist is cut down over 7 to 14 days'),
    laterLoss(start, stageSurvival.weanedAndPottedAlive),
    'alive',
    plantsPerSquareMetre.smallPots,
    [task('Pot', 'potting', 'begin', plantsPerPersonHour.pottedSmall)],
  )

const rooting = (start: Start, place: PlaceKind, work: Step['work']): Step =>
  stage(
    'rooting',
    'Stuck, until rooted',
    place,
    daysToRoot(start),
    start.success,
    'rooted',
    measure(start, 'cuttingsPerSquareMetre') ?? plantsPerSquareMetre.cuttings,
    work,
  )

const collectAndStick = (start: Start) =>
  task('Collect, strip, dip and stick', 'cuttings', 'begin', start.method.perPersonHour, caution.hormone)

/** Softwood and semi-hardwood: leaves on, under mist. */
export const mistCutting = (start: Start): Draft => ({
  before: [],
  takes: [takeMaterial('cuttings', 'whole plant', 1, leafyCuttings.days)],
  steps: finish(start, [rooting(start, 'mist bed', [collectAndStick(start)]), weaning(start)]),
  tray: 50,
  smallestBatch: 50,
})

/** Leafless wood of last season, in a warm bin where the fruit needs heat below, else under cover. */
export function hardwoodCutting(start: Start): Draft {
  const place = start.way?.environment.bottomHeatCelsius === undefined ? 'tunnel' : 'hot bed'
  return {
    before: [],
    takes: [
      takeMaterial(
        'cuttings',
        'whole plant',
        1,
        start.isDeciduous ? dormantWood.days : commonPractice(1, 3, 7),
      ),
    ],
    steps: finish(start, [rooting(start, place, [collectAndStick(start)]), weaning(start, 'tunnel')]),
    tray: 50,
    smallestBatch: 50,
  }
}

/** Succulent stems: the cut dries before it is stuck. */
export function cladodeCutting(start: Start): Draft {
  const drying = stage(
    'drying',
    'Cut dried and callused',
    'shade house',
    commonPractice(4, 7, 14),
    commonPractice(0.96, 0.99, 1),
    'alive',
    measure(start, 'cuttingsPerSquareMetre') ?? plantsPerSquareMetre.smallPots,
    [task('Cut and lay out', 'cuttings', 'begin', start.method.perPersonHour, caution.blade)],
  )
  const stick = task('Stick', 'cuttings', 'begin', plantsPerPersonHour.pottedSmall)
  return {
    before: [],
    takes: [takeMaterial('cuttings', 'whole plant', 1, commonPractice(3, 10, 30))],
    steps: finish(start, [drying, rooting(start, 'shade house', [stick])]),
    tray: 10,
    smallestBatch: 20,
  }
}

/** Pieces of root, laid flat, that must make both a shoot and roots. */
export const rootCutting = (start: Start): Draft => ({
  before: [],
  takes: [takeMaterial('cuttings', 'whole plant', 1, commonPractice(1, 7, 30))],
  steps: finish(start, [
    rooting(start, 'tunnel', [
      task('Dig roots, cut, lay', 'cuttings', 'begin', start.method.perPersonHour, caution.blade),
    ]),
    weaning(start),
  ]),
  tray: 25,
  smallestBatch: 25,
})
