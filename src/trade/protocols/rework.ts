import { plantsPerSquareMetre } from '../facts/general/bench-density.ts'
import { stageSurvival } from '../facts/general/stage-survival.ts'
import { plantsPerPersonHour } from '../facts/general/work-rate.ts'
import { commonPractice } from '../figure.ts'
import { caution } from './cautions.ts'
import { type Draft, takeMaterial } from './draft.ts'
import { scionPreparations, takeScionSticks } from './scion.ts'
import { daysLeft, laterLoss, stage, task } from './stages.ts'
import { measure, type Start } from './start.ts'

/**
 * A standing tree worked over to another cultivar on its trunk: bark, cleft or four-flap. One tree is one trunk;
 * a tree of several limbs takes as many scions and minutes for each.
 */
export function rework(start: Start): Draft {
  const scions =
    measure(start, 'scionsPerLimb')?.typical ?? (start.method.method === 'four_flap_graft' ? 1 : 3)
  const healing = stage(
    'healing',
    'Cut over, worked and sealed, until a scion grows',
    'standing ground',
    start.way?.timing.daysToBudBreak ?? commonPractice(21, 35, 60),
    start.success,
    'sprouted',
    plantsPerSquareMetre.finishingPots,
    [
      task('Cut over, graft, tie and seal', 'grafting', 'begin', start.method.perPersonHour, caution.ladder),
      task('Check, rub off stock shoots', 'general', 'end', plantsPerPersonHour.headedBackAndRubbed),
    ],
  )
  const tiedIn = stage(
    'tying-in',
    'Best scion tied in, others stopped',
    'standing ground',
    commonPractice(45, 60, 90),
    laterLoss(start, stageSurvival.aliveFromTakeToHardened),
    'alive',
    plantsPerSquareMetre.finishingPots,
    [
      task(
        'Tie in, shade the bark, stop rivals',
        'general',
        'begin',
        plantsPerPersonHour.stakedAndTied,
        caution.ladder,
      ),
    ],
  )
  const steps = [healing, tiedIn]
  const grown = stage(
    'growing',
    'New head grown',
    'standing ground',
    daysLeft(start.months, steps),
    stageSurvival.grownToSaleable,
    'saleable',
    plantsPerSquareMetre.finishingPots,
    [task('Thin and tie the new head', 'general', 'begin', plantsPerPersonHour.stakedAndTied)],
  )
  return {
    before: scionPreparations(start),
    takes: [
      takeMaterial('standing trees', 'whole plant', 1, commonPractice(0, 0, 0, 'it stands')),
      takeScionSticks(start, scions),
    ],
    steps: [...steps, grown],
    tray: 1,
    smallestBatch: 1,
    note: 'Counted by trunk or limb, not by tree: for a tree of several limbs set scions and minutes for each.',
  }
}
