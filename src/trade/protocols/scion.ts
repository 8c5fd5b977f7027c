import { dormantWood, scionKeeping, summerBudsticks } from '../facts/general/keeping-wood.ts'
import { fromMemory } from '../facts/general/published.ts'
import { minutesPerPlant } from '../facts/general/work-rate.ts'
import { commonPractice } from '../figure.ts'
import type { StepId } from '../ids.ts'
import type { Preparation, Taking } from '../protocol.ts'
import { caution } from './cautions.ts'
import { takeMaterial } from './draft.ts'
import { measure, type Start } from './start.ts'

/** Fruits whose scion wood is stripped of its leaves, or girdled, on the tree before it is cut. */
const defoliated: Readonly<Record<string, number>> = { mango: 9, cherimoya_atemoya: 10, mulberry: 10 }
const girdledWeeks: Readonly<Record<string, number>> = { macadamia: 6, white_sapote: 4, sapodilla: 4 }

/** What must be done on the mother tree, days or weeks before the scion wood is cut. */
export function scionPreparations(start: Start): Preparation[] {
  const strip = measure(start, 'scionDefoliationDaysBefore')?.typical ?? defoliated[start.species.id]
  const girdle = measure(start, 'scionGirdleWeeksBefore')?.typical ?? girdledWeeks[start.species.id]
  return [
    ...(girdle === undefined
      ? []
      : [
          {
            task: `Girdle the scion branches, ${girdle} weeks before cutting`,
            daysBefore: Math.round(7 * girdle),
            skill: 'grafting' as const,
            minutesPerPlant: minutesPerPlant(commonPractice(60, 120, 200, 'sticks an hour')),
            caution: caution.blade,
          },
        ]),
    ...(strip === undefined
      ? []
      : [
          {
            task: `Strip the leaves from the scion shoots, ${strip} days before cutting`,
            daysBefore: Math.round(strip),
            skill: 'general' as const,
            minutesPerPlant: minutesPerPlant(commonPractice(100, 200, 400, 'sticks an hour')),
          },
        ]),
  ]
}

/** A stick to a graft, or several to a limb. */
export const takeScionSticks = (start: Start, perPlant = 1, atStep?: StepId): Taking =>
  takeMaterial(
    'scion sticks',
    'scion',
    perPlant,
    measure(start, 'scionStorageDays') ?? scionKeeping(start.species).days,
    atStep,
  )

const usualBudsOnStick = fromMemory(4, 8, 12)

/** A budstick serves as many plants as it has good buds. Summer wood keeps for days, wood at rest for months. */
export function takeBudwood(start: Start): Taking {
  const buds = measure(start, 'budsPerBudstick') ?? usualBudsOnStick
  const budsInWinter = start.window.northMonths.every(month => month <= 3 || month === 12)
  const kept = start.isDeciduous
    ? budsInWinter
      ? dormantWood.days
      : summerBudsticks.days
    : (measure(start, 'scionStorageDays') ?? scionKeeping(start.species).days)
  return takeMaterial('budwood', 'scion', 1 / buds.typical, kept)
}

/** Stems that the cut can be made in, for this method and fruit. */
export function takeRootstock(start: Start): Taking {
  const stem = measure(start, 'stockDiameterMm') ?? start.species.rootstocks.stemDiameterMm
  return {
    what: 'rootstock',
    perPlant: 1,
    caliperMm: stem === null ? { min: 5, max: 12 } : { min: stem.low, max: stem.high },
  }
}
