import { equivalentYearlyValue, seedlingsFor } from '../science/index.ts'
import { knownAs, type Species } from '../trade/facts/index.ts'
import type { Against, Answer, WayAnswer } from './answer.ts'
import { partnerNeed } from './assumptions/partner.ts'
import { type TreeFigures, treeFigures } from './assumptions/tree-figures.ts'
import { bearingSexShare } from './assumptions/true-from-seed.ts'
import { cautionsFor } from './cautions.ts'
import { chillHoursOf } from './climate/chill-and-heat.ts'
import { coldestNightOnceIn, readClimate } from './climate/read-climate.ts'
import { beatenWays, bestOf, leadersOf } from './leaders.ts'
import { costsOf } from './planting/costs-of.ts'
import type { CourseInput } from './planting/course.ts'
import { type Courses, coursesOf } from './planting/courses.ts'
import { type Future, futures } from './planting/futures.ts'
import { type SiteYears, siteYears } from './planting/site-years.ts'
import { standOf } from './planting/stand.ts'
import type { AssumptionKey, Question } from './question.ts'
import { meanOf, spreadOf, yearlySpread } from './spreads.ts'
import { type TreeWay, waysOf } from './ways.ts'

/** So many futures give shares to about three in a hundred; twice as many cost twice the time. */
export const USUAL_FUTURES = 200
const WINTERS = 10

/**
 * Which tree to plant: every way in which the fruit can be had, through the same futures at the asked place.
 * @param species the fruit that is asked for, as the nursery has it
 */
export function whichTree(question: Question, species: Species, count: number = USUAL_FUTURES): Answer {
  const figures = treeFigures(species, question.set)
  const need = partnerNeed(knownAs(species))
  const climate = readClimate(question.climate)
  const all = futures(count, question.yearsAhead)
  const site = siteYears(climate, question.ground, figures, question.yearsAhead, all)
  const ways = waysOf(species, question).map(way => wayAnswer(way, species, question, figures, all, site))
  const weather = weatherShares(site, question.yearsAhead)
  return {
    years: question.yearsAhead,
    need,
    ways,
    leaders: leadersOf(ways, question.yearsAhead),
    best: bestOf(ways),
    beaten: beatenWays(ways),
    climate: {
      coldestNightUsual: coldestNightOnceIn(climate, 2),
      coldestNightOnceInTen: coldestNightOnceIn(climate, WINTERS),
      coldestNightError: climate.coldestNightError,
      chillHours: chillHoursOf(climate, 0),
      ...weather,
    },
    assumptions: (Object.keys(figures) as AssumptionKey[]).map(key => ({ key, figure: figures[key] })),
    cautions: cautionsFor(species, question, need, ways, weather),
  }
}

/** Shares of the years over all futures with chill enough, and with summer warm enough. */
function weatherShares(site: readonly SiteYears[], years: number) {
  const of = site.length * years
  return {
    enoughChill: site.reduce((sum, { chilledYears }) => sum + chilledYears, 0) / of,
    enoughWarmth: site.reduce((sum, { warmYears }) => sum + warmYears, 0) / of,
  }
}

function wayAnswer(
  way: TreeWay,
  species: Species,
  question: Question,
  figures: TreeFigures,
  all: readonly Future[],
  site: readonly SiteYears[],
): WayAnswer {
  const need = partnerNeed(knownAs(species))
  const stand = standOf(way, question, figures, need)
  const costs = costsOf(way, species, question, figures, stand.trees)
  const isServed =
    question.partner === 'near' ||
    way.form === 'multi-worked' ||
    (question.partner === 'planted too' && (need === 'needed' || need === 'male needed'))
  const alone = need === 'none' || isServed ? null : figures.cropAloneShare
  const bearingSex = bearingSexShare(species)
  const input = { way, question, figures, stand, costs, alone, bearingSex }
  return summed(input, coursesOf(input, all, site))
}

function summed({ way, question, figures, stand, costs }: CourseInput, courses: Courses): WayAnswer {
  const years = question.yearsAhead
  const { crop, standing, firstFruit, presentValue, payback } = courses
  const worth = { ...spreadOf(presentValue), mean: meanOf(presentValue) }
  const middlePaid = spreadOf(payback).middle
  const first = spreadOf(firstFruit)
  const spend =
    (stand.trees * (1 + costs.firstYearLoss) + stand.partners) * costs.setUp +
    (way.reworkedInYear === null ? 0 : stand.trees * costs.reworking)
  const against: Against[] = []
  if (question.onlyOffered && way.offer === null) against.push('not offered')
  if (question.firstFruitWithinYears !== null && first.middle > question.firstFruitWithinYears)
    against.push('too late')
  if (question.spendAtMost !== null && spend > question.spendAtMost) against.push('too dear')
  if (stand.tooBig) against.push('too big')
  else if (stand.pruned) against.push('needs pruning')
  if (stand.crowded) against.push('crowded')
  return {
    way,
    stand,
    rootstock: way.rootstock,
    firstFruit: first,
    fruitBy: fruitBy(firstFruit, years),
    trueShare: meanOf(courses.trueShare),
    seedlingsForGood: seedlingsForGood(way, question, figures),
    crop,
    cropSoFar: yearlySpread(courses.cropSoFar),
    standing,
    survives: standing[Math.min(years, WINTERS)]!,
    halfLostBy: halfLostBy(standing),
    price: costs.price,
    spend,
    presentValue: worth,
    equivalentYearlyValue: equivalentYearlyValue(worth.mean, question.interest, years),
    presentValuePerSquareMetre: worth.mean / stand.squareMetres,
    payback: Number.isFinite(middlePaid) ? middlePaid : null,
    paysBackShare: payback.filter(Number.isFinite).length / payback.length,
    against,
  }
}

/** Share of the futures in which the first wanted fruit has come by each year. */
function fruitBy(firstFruit: Float64Array, years: number): readonly number[] {
  const out = new Array<number>(years + 1).fill(0)
  for (const first of firstFruit) {
    const from = Math.ceil(first - 1e-9)
    if (from <= years) out[from]! += 1 / firstFruit.length
  }
  for (let year = 1; year <= years; year++) out[year] = Math.min(1, out[year]! + out[year - 1]!)
  return out
}

/** How sure to have at least one good seedling. */
const SURE = 0.9

/** Where more trees are asked for, luck evens out, and one good one is told instead. */
const MOST_GOOD = 100

function seedlingsForGood(
  way: TreeWay,
  { amount, wanted }: Question,
  figures: TreeFigures,
): WayAnswer['seedlingsForGood'] {
  if (!way.fromSeed || way.reworkedInYear !== null) return null
  const good = amount.kind === 'trees' && amount.trees <= MOST_GOOD ? amount.trees : 1
  const share = (wanted === 'named' ? figures.trueFromSeedShare : figures.worthKeepingShare).typical
  if (share <= 0) return { good, plant: Number.POSITIVE_INFINITY }
  return { good, plant: share >= 1 ? good : seedlingsFor(good, { kind: 'known', share }, SURE) }
}

/** Years before planting do not count: nothing stands yet. */
function halfLostBy(standing: readonly number[]): number | null {
  const planted = standing.findIndex(share => share >= 0.5)
  const lost = planted < 0 ? -1 : standing.findIndex((share, year) => year > planted && share < 0.5)
  return lost < 0 ? null : lost
}
