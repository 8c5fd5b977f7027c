import { knownAs, type Species, stageSurvival } from '../../trade/facts/index.ts'
import type { Figure } from '../../trade/index.ts'
import type { AssumptionKey, Question } from '../question.ts'
import { careLeastPerTree, carePerSquareMetre, plantingCost, reworkCost, stakeCost } from './costs.ts'
import { fromMemory, movedTo, setTo } from './figures.ts'
import { groupFigures } from './fruit-group.ts'
import { cropAlone, partnerNeed } from './partner.ts'
import { trueFromSeed, worthKeeping } from './true-from-seed.ts'

/** Every figure that an answer rests on, with its basis; overruled ones say so. */
export type TreeFigures = Readonly<Record<AssumptionKey, Figure>>

const temperatures: ReadonlySet<AssumptionKey> = new Set<AssumptionKey>([
  'minYoungCelsius',
  'minMatureCelsius',
  'warmestMonthCelsius',
])

/** A standing tree worked anew: the fruit's own figure where it has one. */
const topWorking = (species: Species): Figure =>
  species.ways.find(way => way.role.includes('top-working'))?.success ??
  species.ways.find(way => way.role.includes('scion'))?.success ??
  stageSurvival.taken

/** Where the facts have no juvenile years: twice those of the clonal tree, at least four more. A rule of thumb. */
const seedlingYears = (species: Species): Figure => {
  const { yearsToFruitSeedling, yearsToFruitClonal: clonal } = species.orchard
  if (yearsToFruitSeedling !== null) return yearsToFruitSeedling
  return fromMemory(clonal.low + 2, 2 * clonal.typical + 4, 3 * clonal.high + 4, 'not known for this fruit')
}

/** Fruits without chill hours in the facts are taken to need none. */
const noChill = fromMemory(0, 0, 0, 'no need known')

export function treeFigures(species: Species, set: Question['set'] = {}): TreeFigures {
  const { orchard } = species
  const group = groupFigures(knownAs(species))
  const figures: Record<AssumptionKey, Figure> = {
    yearsToFruitSeedling: seedlingYears(species),
    yearsToFruitClonal: orchard.yearsToFruitClonal,
    yearsFirstToFull: orchard.yearsFirstToFull ?? group.yearsFirstToFull,
    fullCropKgPerSquareMetre: orchard.fullCropKgPerSquareMetre ?? group.fullCropKgPerSquareMetre,
    trueFromSeedShare: orchard.trueFromSeedShare ?? trueFromSeed(species),
    worthKeepingShare: orchard.worthKeepingShare ?? worthKeeping(species),
    cropAloneShare: orchard.cropAloneShare ?? cropAlone(partnerNeed(knownAs(species))),
    reworkTakeShare: topWorking(species),
    minYoungCelsius: orchard.minYoungCelsius,
    minMatureCelsius: orchard.minMatureCelsius,
    chillHours: orchard.chillHours ?? noChill,
    warmestMonthCelsius: orchard.warmestMonthCelsius ?? group.warmestMonthCelsius,
    heightMetres: orchard.heightMetres ?? group.heightMetres,
    rowSpacingMetres: orchard.rowSpacingMetres,
    inRowSpacingMetres: orchard.inRowSpacingMetres,
    fruitWorthPerKg: orchard.fruitWorthPerKg ?? group.fruitWorthPerKg,
    plantingCost,
    stakeCost,
    reworkCost,
    carePerSquareMetre,
    careLeastPerTree,
  }
  for (const [key, value] of Object.entries(set) as [AssumptionKey, number][])
    figures[key] = temperatures.has(key) ? movedTo(figures[key], value) : setTo(figures[key], value)
  return figures
}
