import { plantsPerSquareMetre } from '../facts/general/bench-density.ts'
import { fromMemory } from '../facts/general/published.ts'
import { stageSurvival } from '../facts/general/stage-survival.ts'
import { plantsPerPersonHour } from '../facts/general/work-rate.ts'
import { commonPractice } from '../figure.ts'
import type { Step } from '../protocol.ts'
import { caution } from './cautions.ts'
import { type Draft, takeMaterial } from './draft.ts'
import { daysLeft, finish, laterLoss, stage, task } from './stages.ts'
import { measure, type Start } from './start.ts'

/** A layer roots on its mother: there is nothing to keep. */
const notKept = commonPractice(0, 0, 0, 'it stays on the mother')

const settling = (start: Start, work: Step['work']): Step =>
  stage(
    'settling',
    'Severed, potted, settling under shade',
    'shade house',
    start.way?.timing.daysAfterSeveringToEstablished ?? commonPractice(45, 60, 90),
    laterLoss(start, stageSurvival.severedLayerAliveAfter90Days),
    'alive',
    plantsPerSquareMetre.potToPot,
    work,
  )

const onMother = (start: Start, id: string, name: string, work: Step['work']): Step =>
  stage(
    id,
    name,
    'mother block',
    start.way?.timing.daysToRoot ?? start.method.daysOnBench ?? commonPractice(30, 60, 120),
    start.success,
    'rooted',
    null,
    work,
  )

/** A branch ringed, packed and rooted on the mother tree, then cut off and potted. */
export function airLayer(start: Start): Draft {
  const putOn = task(
    'Ring, dress, pack and tie',
    'layering',
    'begin',
    start.method.perPersonHour,
    caution.ladder,
  )
  const cutOff = task(
    'Cut off, trim, pot',
    'layering',
    'begin',
    plantsPerPersonHour.airLayersCutAndPotted,
    caution.blade,
  )
  return {
    before: [],
    takes: [takeMaterial('branches', 'whole plant', 1, notKept)],
    steps: finish(start, [
      onMother(start, 'rooting', 'Ringed and packed, on the mother', [putOn]),
      settling(start, [cutOff]),
    ]),
    tray: 1,
    smallestBatch: 5,
    note: 'No tap-root: spread the roots at potting; stake and shelter the young tree.',
  }
}

/** One shoot pegged down and covered. */
export function simpleLayer(start: Start): Draft {
  const peg = task('Peg down and cover', 'layering', 'begin', start.method.perPersonHour)
  const cutOff = task(
    'Sever, lift, pot',
    'layering',
    'begin',
    plantsPerPersonHour.airLayersCutAndPotted,
    caution.blade,
  )
  return {
    before: [],
    takes: [takeMaterial('branches', 'whole plant', 1, notKept)],
    steps: finish(start, [
      onMother(start, 'rooting', 'Pegged down, on the mother', [peg]),
      settling(start, [cutOff]),
    ]),
    tray: 1,
    smallestBatch: 5,
  }
}

/** Shoots of a stool mounded until they root, lifted at rest and graded. */
export function moundLayer(start: Start): Draft {
  const mound = task(
    'Mound the shoots',
    'layering',
    'begin',
    fromMemory(150, 300, 600, 'three roundings of a season'),
  )
  const lift = task('Lift and grade', 'layering', 'begin', start.method.perPersonHour, caution.lifting)
  const countsTransplants = start.way?.counts.includes('transplant') ?? false
  const rooted: Step = {
    ...onMother(start, 'rooting', 'Mounded, in the stool bed', [mound]),
    ...(countsTransplants ? { survival: stageSurvival.airLayerRooted } : {}),
  }
  const common = {
    before: [],
    takes: [takeMaterial('shoots', 'whole plant', 1, notKept)],
    tray: 1,
    smallestBatch: 50,
  }
  const lifted = countsTransplants ? start.success : stageSurvival.weanedAndPottedAlive
  if (!start.isDeciduous)
    return { ...common, steps: finish(start, [rooted, { ...settling(start, [lift]), survival: lifted }]) }
  const graded = stage(
    'lifting',
    'Lifted at rest, graded and kept cold with roots moist',
    'cold store',
    commonPractice(7, 14, 42),
    measure(start, 'fieldReadyShare') ??
      (start.product === 'rootstock' ? stageSurvival.reachesWorkableSizeInItsWindow : lifted),
    'saleable',
    plantsPerSquareMetre.boxed,
    [lift],
  )
  return { ...common, steps: [{ ...rooted, days: daysLeft(start.months, [graded]) }, graded] }
}
