import { plantsPerSquareMetre } from '../facts/general/bench-density.ts'
import { dormantWood, leafyCuttings, scionKeeping } from '../facts/general/keeping-wood.ts'
import { fromMemory } from '../facts/general/published.ts'
import { stageSurvival } from '../facts/general/stage-survival.ts'
import { plantsPerPersonHour } from '../facts/general/work-rate.ts'
import { commonPractice } from '../figure.ts'
import type { Step } from '../protocol.ts'
import { caution } from './cautions.ts'
import { weaning } from './cutting.ts'
import { type Draft, takeMaterial } from './draft.ts'
import { healing, settledGraft, topGraft } from './pot-graft.ts'
import { scionPreparations, takeRootstock, takeScionSticks } from './scion.ts'
import { germinating, seedKeeps, seedPreparations } from './seedling.ts'
import { allOf, spreadOver } from './share.ts'
import { growOnInPots, growOnInRows, laterLoss, stage, task } from './stages.ts'
import { measure, type Start } from './start.ts'

const linedOut = (start: Start): Step =>
  stage(
    'lining-out',
    'Planted in the row, until shoots have hardened',
    'field row',
    commonPractice(45, 60, 75),
    laterLoss(start, stageSurvival.aliveFromTakeToHardened),
    'alive',
    plantsPerSquareMetre.nurseryRow,
    [task('Plant out', 'general', 'begin', fromMemory(60, 120, 240), caution.lifting)],
  )

/** Bench grafts of wood at rest, callused in boxes and planted out; on an evergreen, a graft in the pot. */
export function whipAndTongue(start: Start): Draft {
  if (!start.isDeciduous) return topGraft(start)
  const isWarm = (measure(start, 'callusCelsius')?.typical ?? 15) > 20
  return {
    before: [],
    takes: [takeRootstock(start), takeScionSticks(start)],
    steps: growOnInRows(start, [
      healing(
        start,
        isWarm ? 'hot bed' : 'cold store',
        'grafting',
        plantsPerSquareMetre.boxed,
        'Graft, tie, wax and box',
      ),
      linedOut(start),
    ]),
    tray: 1,
    smallestBatch: 50,
  }
}

/** Where callus forms only with heat at the union. */
export const hotCallusGraft = (start: Start): Draft => ({
  before: [],
  takes: [takeRootstock(start), takeScionSticks(start)],
  steps: growOnInPots(start, [
    healing(start, 'hot bed', 'grafting', plantsPerSquareMetre.boxed, 'Graft, tie, wax, warm at the union'),
    settledGraft(start, 'tunnel'),
  ]),
  tray: 1,
  smallestBatch: 50,
})

/** Worked on an unrooted cutting at rest: union and roots form one after the other. */
function dormantCuttingGraft(start: Start): Draft {
  const share = spreadOver(start.success, 2)
  const callusing = {
    ...healing(start, 'hot bed', 'grafting', plantsPerSquareMetre.boxed, 'Graft, wax and box'),
    survival: share,
  }
  const rooting = stage(
    'rooting',
    'Planted out, until rooted and growing',
    'field row',
    commonPractice(40, 60, 80),
    share,
    'rooted',
    fromMemory(8, 12, 18, 'close in the row'),
    [task('Plant out', 'general', 'begin', fromMemory(60, 120, 240))],
  )
  return {
    before: [],
    takes: [
      takeMaterial('cuttings', 'rootstock', 1, dormantWood.days),
      takeScionSticks(start, 1 / (measure(start, 'budsPerBudstick')?.typical ?? 4)),
    ],
    steps: growOnInRows(start, [callusing, rooting]).map(step =>
      step.id === 'growing' ? { ...step, survival: laterLoss(start, stageSurvival.grownToSaleable) } : step,
    ),
    tray: 1,
    smallestBatch: 100,
  }
}

/** Cutting-graft: worked on an unrooted leafy cutting, then under mist while union and roots form together. */
function leafyCuttingGraft(start: Start): Draft {
  const rooting = stage(
    'rooting',
    'Worked and stuck, until united and rooted',
    'mist bed',
    commonPractice(40, 60, 100),
    start.way === undefined
      ? allOf(
          [stageSurvival.taken, stageSurvival.rooted],
          'take times rooting, both general: no figure for this fruit',
        )
      : start.success,
    'rooted',
    commonPractice(100, 200, 350),
    [
      task(
        'Graft on the cutting, tie, dip and stick',
        'grafting',
        'begin',
        plantsPerPersonHour.wedgesInPots,
        caution.blade,
      ),
      task('Check take and roots', 'general', 'end', plantsPerPersonHour.unwrappedAndChecked),
    ],
  )
  return {
    before: scionPreparations(start),
    takes: [takeMaterial('cuttings', 'rootstock', 1, leafyCuttings.days), takeScionSticks(start)],
    steps: growOnInPots(start, [rooting, weaning(start)]),
    tray: 25,
    smallestBatch: 25,
  }
}

export const cuttingGraft = (start: Start): Draft =>
  start.way !== undefined && start.isDeciduous ? dormantCuttingGraft(start) : leafyCuttingGraft(start)

/** A clonal rootstock grown up from a nurse seedling, rooted in the dark, then worked with the scion. */
export function clonalDoubleGraft(start: Start): Draft {
  const share =
    start.way === undefined
      ? spreadOver(
          allOf(
            [stageSurvival.germinated, stageSurvival.taken, stageSurvival.rooted, stageSurvival.taken],
            'seed, two grafts and rooting, all general: no figure for this fruit',
          ),
          4,
        )
      : spreadOver(start.success, 4)
  const graft = (id: string, name: string) =>
    stage(
      id,
      name,
      'healing tent',
      commonPractice(30, 45, 60),
      share,
      'united',
      plantsPerSquareMetre.potToPot,
      [task('Graft, tie and cover', 'grafting', 'begin', plantsPerPersonHour.wedgesInPots, caution.blade)],
    )
  const stockGrafted = graft('stock-grafted', 'Rootstock worked on the nurse seedling')
  const rooting = stage(
    'rooting',
    'Shoot drawn up in the dark, nicked, dressed and rooted',
    'hot bed',
    commonPractice(90, 150, 210),
    share,
    'rooted',
    plantsPerSquareMetre.smallPots,
    [
      task(
        'Nick, dress, set the rooting sleeve',
        'cuttings',
        'begin',
        plantsPerPersonHour.veneersInPots,
        caution.hormone,
      ),
    ],
  )
  const scionGrafted = graft('healing', 'Scion worked on the rooted rootstock, until united')
  return {
    before: seedPreparations(start),
    takes: [
      takeMaterial('seed', 'rootstock', 1, seedKeeps(start)),
      takeMaterial('scion sticks', 'rootstock', 1, scionKeeping(start.species).days, stockGrafted.id),
      takeScionSticks(start, 1, scionGrafted.id),
    ],
    steps: growOnInPots(start, [germinating(start, share), stockGrafted, rooting, scionGrafted]),
    tray: 12,
    smallestBatch: 24,
  }
}
