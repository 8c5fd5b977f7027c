import { bearingShare } from '../../science/index.ts'
import type { Figure } from '../../trade/index.ts'
import { atDeviation } from '../assumptions/figures.ts'
import { taken } from '../assumptions/taken.ts'
import type { TreeFigures } from '../assumptions/tree-figures.ts'
import type { Question } from '../question.ts'
import type { TreeWay } from '../ways.ts'
import type { Future } from './futures.ts'
import { goodOf } from './good-of.ts'
import type { SiteYears } from './site-years.ts'
import { type Stand, vigourOf } from './stand.ts'

/** What one way of planting gives in one future, year by year from 0 (now). */
export interface Course {
  /** Kilograms of the wanted fruit, from the whole planting. */
  readonly crop: Float64Array
  /** Share of the planted trees that still live as the wanted tree. */
  readonly standing: Float64Array
  /** Money in and out. */
  readonly flows: Float64Array
  /** Years from now to the first wanted fruit; infinite where none comes within the years looked at. */
  readonly firstFruit: number
  /** Share of the trees that bear the wanted fruit. */
  readonly trueShare: number
}

/** What a way costs, for each tree: figured once, used in every future. */
export interface WayCosts {
  readonly price: number
  /** The tree in the ground: price, planting, stake. */
  readonly setUp: number
  /** One scion worked onto it later. */
  readonly reworking: number
  readonly firstYearLoss: number
  readonly staked: boolean
}

const HARDENING_YEARS = taken.hardening.value
const SEEDLING_HARDENING_YEARS = taken.hardeningOfSeedlings.value
const CONTAINER_CELSIUS = taken.inContainer.value
const COVER_CELSIUS = taken.cover.value
const COVERED_YEARS = taken.covered.value
const ROOTS_CELSIUS = taken.rootsDie.value
const CONTAINER_ROOTS_CELSIUS = taken.rootsDieInContainer.value
const SINGED_CELSIUS = taken.singed.value
const SINGED_CROP = taken.singedCrop.value
const SPROUTS = { ownRoots: taken.sprouts.value, seedling: taken.sproutsOfSeedlings.value }
const AGAIN = taken.again.value
const REWORKED_YEARS = taken.reworked.value
const LAYER_YEARS = taken.layered.value
const BLOWN = { taproot: taken.blown.value, none: taken.blownWithoutTaproot.value }
const EXPOSURE = { sheltered: taken.sheltered.value, open: 1, windy: taken.windy.value }
const STAKED = taken.staked.value
const DRIED = taken.dried.value

const share = (figure: Figure, deviations: number): number =>
  Math.min(1, Math.max(0, atDeviation(figure, deviations)))

export interface CourseInput {
  readonly way: TreeWay
  readonly question: Question
  readonly figures: TreeFigures
  readonly stand: Stand
  readonly costs: WayCosts
  /** Share of the full crop that pollination allows, before chance: null where a partner is there. */
  readonly alone: Figure | null
  /** Share of seedlings of a sex that bears. */
  readonly bearingSex: number
}

/** Where the years of a course are written down. */
export type Ledger = Pick<Course, 'crop' | 'standing' | 'flows'>

export const ledgerOf = (years: number): Ledger => ({
  crop: new Float64Array(years + 1),
  standing: new Float64Array(years + 1),
  flows: new Float64Array(years + 1),
})

/** @param ledger what it holds is written over, so that one serves many courses */
export function courseOf(input: CourseInput, future: Future, site: SiteYears, ledger: Ledger): Course {
  const { way, question, figures, stand, costs } = input
  const years = question.yearsAhead
  const { crop, standing, flows } = ledger
  crop.fill(0)
  standing.fill(0)
  flows.fill(0)
  const inPot = question.ground.kind === 'container'
  const rootsFreeze = question.ground.kind === 'container' && question.ground.winter !== 'moved inside'
  const covered = question.ground.kind === 'ground' && question.ground.covered
  const { trees, partners } = stand

  const waits = way.offer === null ? 0 : way.offer.waitYears + (future.promise < way.offer.chance ? 0 : 1)
  const planted = Math.ceil(waits)
  const nothing = { crop, standing, flows, firstFruit: Number.POSITIVE_INFINITY, trueShare: 0 }
  if (planted >= years) return nothing

  const seedlings = goodOf(
    trees,
    input.bearingSex *
      share(
        question.wanted === 'named' ? figures.trueFromSeedShare : figures.worthKeepingShare,
        future.seedlingShare,
      ),
    future.seedlingLuck,
  )
  const clonalYears = Math.max(
    0.4,
    atDeviation(figures.yearsToFruitClonal, future.clonalYears) *
      (way.rootstock?.yearsToFruitTimes ?? 1) *
      (way.form === 'layered' ? LAYER_YEARS : 1),
  )
  const seedlingYears = Math.max(0.4, atDeviation(figures.yearsToFruitSeedling, future.seedlingYears))
  const small = 0.5 + 0.5 * Math.min(1, vigourOf(way)) * (inPot ? 0.6 : 1)
  const rise = Math.max(0.3, atDeviation(figures.yearsFirstToFull, future.bearing)) * small
  const named = way.form === 'multi-worked' && question.wanted === 'named' ? 0.5 : 1
  const full =
    Math.max(0, atDeviation(figures.fullCropKgPerSquareMetre, future.fullCrop)) *
    stand.canopyEach *
    trees *
    (input.alone === null ? 1 : share(input.alone, future.alone))

  let first = way.fromSeed ? seedlingYears : clonalYears
  let since = planted
  let good = way.fromSeed ? seedlings : named
  let alive = 1
  let upright = 1
  let reworked = false
  let firstFruit = Number.POSITIVE_INFINITY
  const reworkShare = share(figures.reworkTakeShare, future.reworkShare)
  const blown = inPot
    ? DRIED
    : question.ground.kind === 'ground'
      ? (way.ownRoots || way.rootstock?.stakeForLife ? BLOWN.none : BLOWN.taproot) *
        EXPOSURE[question.ground.exposure] *
        (costs.staked ? STAKED : 1)
      : 0

  const young = atDeviation(figures.minYoungCelsius, future.tolerance)
  const mature = Math.min(young, atDeviation(figures.minMatureCelsius, future.tolerance))
  const moreTender = (rootsFreeze ? CONTAINER_CELSIUS : 0) - (way.rootstock?.hardierCelsius ?? 0)
  const hardeningYears = way.fromSeed ? SEEDLING_HARDENING_YEARS : HARDENING_YEARS
  const worth = figures.fruitWorthPerKg.typical
  const leastCare = figures.careLeastPerTree.typical
  const fullCare = figures.carePerSquareMetre.typical * stand.canopyEach

  flows[planted] = -(trees * (1 + costs.firstYearLoss) + partners) * costs.setUp
  standing[planted] = 1

  for (let year = planted + 1; year <= years; year++) {
    const age = year - planted
    if (alive === 0) break
    if (
      way.reworkedInYear !== null &&
      (age === way.reworkedInYear || (age === way.reworkedInYear + 1 && good < 1))
    ) {
      const again = age > way.reworkedInYear
      const taken = goodOf(trees, reworkShare, again ? future.secondRework : future.firstRework)
      flows[year]! -= trees * (again ? 1 - good : 1) * costs.reworking
      const now = again ? good + (1 - good) * taken : taken + (1 - taken) * seedlings
      if (taken > 0 && !reworked) {
        reworked = true
        since = year
        first = clonalYears * REWORKED_YEARS
      }
      good = now
    }

    const hardened = Math.min(1, Math.max(0, (age - 0.5) / hardeningYears))
    const limit =
      young + hardened * (mature - young) + moreTender - (covered && age <= COVERED_YEARS ? COVER_CELSIUS : 0)
    const beyond = limit - site.coldestNight[year]!
    if (beyond > 0) {
      const rootsDie = beyond > (rootsFreeze ? CONTAINER_ROOTS_CELSIUS : ROOTS_CELSIUS)
      const sprouts = way.ownRoots ? SPROUTS.ownRoots : SPROUTS.seedling
      const comesTrue = way.ownRoots || (way.fromSeed && !reworked)
      if (rootsDie || !comesTrue || future.sprout >= sprouts) {
        alive = 0
        break
      }
      since = year
      first = AGAIN * (way.ownRoots ? clonalYears : seedlingYears)
    }
    upright *= 1 - blown * (age > 8 ? 0.5 : 1)
    standing[year] = upright
    const singed = beyond > -SINGED_CELSIUS ? SINGED_CROP : 1
    const bearing = bearingShare(year - since, first, first + rise)
    const kilograms =
      full * good * upright * bearing * singed * site.weatherShare[year]! * future.season[year]!
    crop[year] = kilograms
    if (kilograms > 0 && firstFruit === Number.POSITIVE_INFINITY)
      firstFruit = year - 1 < since + first ? since + first : year
    const grown = Math.min(1, age / Math.max(1, first + rise))
    flows[year] =
      flows[year]! + kilograms * worth - (trees + partners) * Math.max(leastCare, fullCare * grown)
  }
  return { crop, standing, flows, firstFruit, trueShare: good }
}
