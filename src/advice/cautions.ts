import { knownAs, type Species } from '../trade/facts/index.ts'
import type { Caution, WayAnswer } from './answer.ts'
import type { PartnerNeed } from './assumptions/partner.ts'
import type { Question } from './question.ts'

/** Hazards of a fruit that matter to whoever plants and eats it. */
const forBuyers: ReadonlySet<string> = new Set(['health', 'structure', 'buyer'])

/** What to say beside the figures. The label, local rules and licensed practice go before anything here. */
export function cautionsFor(
  species: Species,
  question: Question,
  need: PartnerNeed,
  ways: readonly WayAnswer[],
  warm: { readonly enoughChill: number; readonly enoughWarmth: number },
): readonly Caution[] {
  const out: Caution[] = species.hazards
    .filter(hazard => forBuyers.has(hazard.kind))
    .map(hazard => ({
      kind: hazard.kind === 'structure' ? 'structure' : 'fruit',
      text: hazard.text,
    }))
  if (species.hazards.some(({ kind }) => kind === 'ip' || kind === 'movement'))
    out.push({
      kind: 'law',
      text: 'Plants and wood may be moved only as plant-health rules allow, and protected cultivars raised only under licence.',
    })
  if (stonesAreToxic.has(knownAs(species)))
    out.push({
      kind: 'fruit',
      text: 'The kernel inside the stone or pip holds a poison: do not eat it, least of all children.',
    })
  if (ways.some(({ way }) => way.ownRoots) && question.ground.kind === 'ground')
    out.push({
      kind: 'structure',
      text: 'Cuttings and layers have no taproot: stake them for the first years, and plant out of the wind.',
    })
  const coldest = Math.min(...ways.map(way => way.survives))
  if (coldest < 0.9)
    out.push({
      kind: 'frost',
      text: 'Frost may kill it here: shelter and cover in the first winters. Heaters and open flame only by local rules and never unwatched; no heater in a closed room without air.',
    })
  if (question.ground.kind === 'container')
    out.push({
      kind: 'container',
      text: 'A filled pot is heavy: ask what a balcony or roof may carry, stand it safe from wind, lift with two people. It dries out fast.',
    })
  if (need === 'needed' || need === 'male needed')
    out.push({
      kind: 'partner',
      text:
        need === 'male needed'
          ? 'Male and female plants are separate: without a male near there is no fruit.'
          : 'It needs another cultivar in flower at the same time within reach of the insects.',
    })
  if (warm.enoughChill < 0.5)
    out.push({
      kind: 'climate',
      text: 'Winters here are too mild for it in most years: ask for a low-chill cultivar.',
    })
  if (warm.enoughWarmth < 0.5)
    out.push({
      kind: 'climate',
      text: 'Summers here are too cool to ripen it in most years in the open.',
    })
  return out
}

/** Bitter kernels that give off prussic acid. Common knowledge of food safety, from memory. */
const stonesAreToxic: ReadonlySet<string> = new Set([
  'plum',
  'peach',
  'cherry',
  'apricot',
  'apple',
  'pear',
  'loquat',
])
