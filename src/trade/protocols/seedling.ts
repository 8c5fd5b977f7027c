import { plantsPerSquareMetre } from '../facts/general/bench-density.ts'
import { stageSurvival } from '../facts/general/stage-survival.ts'
import { minutesPerPlant, plantsPerPersonHour } from '../facts/general/work-rate.ts'
import { commonPractice, type ShareFigure } from '../figure.ts'
import type { Preparation, Step } from '../protocol.ts'
import { type Draft, takeMaterial } from './draft.ts'
import { allOf } from './share.ts'
import { finish, stage, task } from './stages.ts'
import { measure, type Start } from './start.ts'

const usualViability = commonPractice(30, 180, 365, 'no figure for this fruit')

/** Where off-types are thrown out before working, the stage holds both losses. */
function prickedOutSurvival(start: Start): ShareFigure {
  const rogued = measure(start, 'roguedShare')
  if (rogued === undefined) return stageSurvival.prickedOutAliveAfter30Days
  const kept = { ...rogued, low: 1 - rogued.high, typical: 1 - rogued.typical, high: 1 - rogued.low }
  return allOf(
    [stageSurvival.prickedOutAliveAfter30Days, kept],
    `alive after 30 days, and not rogued as off-type (${rogued.typical} is)`,
  )
}

export const germinating = (start: Start, survival: ShareFigure = start.success): Step =>
  stage(
    'germinating',
    'Sown, until germinated',
    'seed house',
    start.species.seed?.daysToGerminate ?? commonPractice(14, 30, 60, 'no figure for this fruit'),
    survival,
    'germinated',
    plantsPerSquareMetre.tubes,
    [task('Sow', 'seed', 'begin', plantsPerPersonHour.largeSeedSown)],
  )

/** Seed must be cleaned, soaked, cracked or chilled before the day of sowing. */
export function seedPreparations({ species: { seed } }: Start): Preparation[] {
  if (seed === null) return []
  const chill = seed.coldStratificationDays
  const minutes = minutesPerPlant(commonPractice(600, 1500, 3000, 'seeds an hour'))
  const chilling: Preparation[] =
    chill === null || chill.typical === 0
      ? []
      : [
          {
            task: `Chill the seed, moist, at 1 to 5 °C, for ${chill.typical} days (${chill.low} to ${chill.high})`,
            daysBefore: Math.round(chill.typical),
            skill: 'seed',
            minutesPerPlant: minutes,
          },
        ]
  return [
    ...chilling,
    {
      task: seed.pretreatment.text,
      daysBefore: chilling.length > 0 ? Math.round(chill!.typical) + 1 : 1,
      skill: 'seed',
      minutesPerPlant: minutes,
    },
  ]
}

export const seedKeeps = (start: Start) => start.species.seed?.viabilityDays ?? usualViability

/** A seedling on its own roots, or one raised to be worked. */
export function seedling(start: Start): Draft {
  const prickedOut = stage(
    'pricked-out',
    'Pricked out, first thirty days',
    'seed house',
    commonPractice(21, 30, 40),
    prickedOutSurvival(start),
    'alive',
    plantsPerSquareMetre.tubes,
    [task('Prick out', 'seed', 'begin', plantsPerPersonHour.prickedOut)],
  )
  return {
    before: seedPreparations(start),
    takes: [takeMaterial('seed', 'whole plant', 1, seedKeeps(start))],
    steps: finish(start, [germinating(start), prickedOut]),
    tray: 50,
    smallestBatch: 50,
  }
}
