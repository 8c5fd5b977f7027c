import { markOfMethod } from '../mark-of-method.ts'
import type { Protocol } from '../protocol.ts'
import { measure, type Start } from './start.ts'

/** The usual cautions of the work. Labels, local rules and licensed practice go before anything written here. */
export const caution = {
  blade: 'Sharp blade: cut away from the body, thumb guard on, knife closed when not cutting.',
  tools:
    'Dip or wipe the blade between mother trees. Disinfectants burn and give off fumes: follow the label, local rules and licensed practice.',
  hormone:
    'Rooting hormone: gloves, no dust or mist to breathe; follow the label, local rules and licensed practice.',
  electricity:
    'Mist, bottom heat and electricity: only circuits with a residual-current breaker, fitted by an electrician; switch off before reaching in.',
  lifting: 'Lift with the knees, two people or a trolley for big pots.',
  ladder: 'Ladder on firm ground with someone near; no cutting at arm’s length.',
  heat: 'Closed houses and tents heat up fast: drink, rest in the shade, never alone in the heat of the day.',
  sap: 'Sap may irritate skin and eyes, more so in sun: gloves, sleeves, wash at once.',
} as const

const cutsWood = (start: Start) => markOfMethod(start.method.method) !== 'seed'
const reachesUp = new Set([
  'air_layer',
  'bark_graft',
  'cleft_graft_topwork',
  'four_flap_graft',
  'approach_graft',
])
const heavyTask = /lift|pot on|dig/i

/** What a protocol must warn of: by method, by place, by chemicals used, and by the fruit's own hazards. */
export function cautionsOf(start: Start, steps: Protocol['steps']): string[] {
  const { species, method } = start
  const places = new Set(steps.map(step => step.place))
  const hazards = species.hazards.filter(hazard =>
    ['health', 'movement', 'ip', 'disease'].includes(hazard.kind),
  )
  const isRarelyDone = start.way === undefined
  return [
    ...(isRarelyDone
      ? [
          `No figures are known for ${species.commonName.toLowerCase()} by this method: general figures, try a few first.`,
        ]
      : []),
    ...(start.way !== undefined && start.success.typical < 0.2
      ? [`This method rarely succeeds with ${species.commonName.toLowerCase()}.`]
      : []),
    ...(cutsWood(start) ? [caution.blade, caution.tools] : []),
    ...(species.hazards.some(hazard => /sap|latex/i.test(hazard.text)) ? [caution.sap] : []),
    ...(measure(start, 'ibaPpm') === undefined ? [] : [caution.hormone]),
    ...(places.has('mist bed') || places.has('hot bed') ? [caution.electricity] : []),
    ...(places.has('healing tent') || places.has('tunnel') || places.has('mist bed') ? [caution.heat] : []),
    ...(reachesUp.has(method.method) ? [caution.ladder] : []),
    ...(steps.some(step => step.work.some(work => heavyTask.test(work.task))) ? [caution.lifting] : []),
    ...hazards.map(hazard => hazard.text),
  ]
}
