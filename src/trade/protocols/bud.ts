import { plantsPerSquareMetre } from '../facts/general/bench-density.ts'
import { stageSurvival } from '../facts/general/stage-survival.ts'
import { plantsPerPersonHour } from '../facts/general/work-rate.ts'
import { commonPractice } from '../figure.ts'
import type { Step } from '../protocol.ts'
import type { PlaceKind } from '../vocabulary.ts'
import { caution } from './cautions.ts'
import type { Draft } from './draft.ts'
import { healing } from './pot-graft.ts'
import { takeBudwood, takeRootstock } from './scion.ts'
import { growOnInPots, growOnInRows, laterLoss, stage, task } from './stages.ts'
import type { Start } from './start.ts'

const headBack = task(
  'Head back the stock, rub off its shoots',
  'general',
  'end',
  plantsPerPersonHour.headedBackAndRubbed,
  caution.blade,
)

const waiting = (start: Start, place: PlaceKind, asleep: boolean): Step =>
  stage(
    'forcing',
    asleep ? 'Bud asleep until headed back in spring' : 'Headed back, until the bud has grown and hardened',
    place,
    asleep ? commonPractice(150, 190, 240) : commonPractice(25, 40, 60),
    laterLoss(start, stageSurvival.aliveFromTakeToHardened),
    'sprouted',
    place === 'field row' ? plantsPerSquareMetre.nurseryRow : plantsPerSquareMetre.potToPot,
    [asleep ? headBack : { ...headBack, when: 'begin' }],
  )

/** T-bud, chip bud, patch bud: in the row where the tree loses its leaves, in the pot where it does not. */
export function budding(start: Start): Draft {
  const inRow = start.isDeciduous
  const place = inRow ? 'field row' : 'shade house'
  const asleep = inRow && start.months.typical >= 12
  const budded = healing(
    start,
    place,
    'budding',
    inRow ? plantsPerSquareMetre.nurseryRow : plantsPerSquareMetre.potToPot,
    'Bud and tie',
  )
  const steps = [budded, waiting(start, place, asleep)]
  return {
    before: [],
    takes: [takeRootstock(start), takeBudwood(start)],
    steps: inRow ? growOnInRows(start, steps) : growOnInPots(start, steps),
    tray: inRow ? 1 : 12,
    smallestBatch: inRow ? 50 : 12,
  }
}
