import type { Species } from '../../trade/facts/index.ts'
import { firstYearLoss, quantityShare, usualPriceOf } from '../assumptions/costs.ts'
import type { TreeFigures } from '../assumptions/tree-figures.ts'
import type { Question } from '../question.ts'
import type { TreeWay } from '../ways.ts'
import type { WayCosts } from './course.ts'

/** What it costs to set up one tree: the nursery's own price where it has one. */
export function costsOf(
  way: TreeWay,
  species: Species,
  question: Question,
  figures: TreeFigures,
  trees: number,
): WayCosts {
  const fewer = quantityShare(trees)
  const staked =
    question.ground.kind === 'ground' &&
    ((question.ground.staked && way.ownRoots) || way.rootstock?.stakeForLife === true)
  // A seedling that is to be reworked is bought as a seedling.
  const price = way.offer?.price ?? fewer * usualPriceOf(species, way.form, way.method)
  return {
    price,
    setUp: price + fewer * (figures.plantingCost.typical + (staked ? figures.stakeCost.typical : 0)),
    reworking: fewer * figures.reworkCost.typical,
    firstYearLoss: firstYearLoss[way.form].typical,
    staked,
  }
}
