import { betaQuantile, needed, normalQuantile } from '../../science/index.ts'
import type { Margins } from '../model/season-model.ts'
import { daysToReady } from '../rates/days-to-ready.ts'
import type { Course, Season } from '../season.ts'
import { orderChains } from './order-chains.ts'
import { SET_ASIDE_WEEKS } from './with-cover.ts'

/** Batches over which the need of a chain of orders is taken to be spread, at most. */
const MOST_BATCHES = 4
/** Numbers are rounded up by so much, so that like orders share one search for what is needed. */
const BUCKET = 1.25
/** Of many orders the need is read off a Beta of the same mean and variance: it is where to begin, and the simulation corrects it. */
const MANY_ORDERS = 100
/** Part of the spread in time that is met by starting earlier; the rest by number. The simulation corrects both. */
const TIME_PART = 0.5

/**
 * What to plan each order with before anything is simulated: the number that `needed` starts would finish on
 * average, and a due week earlier by part of the spread of the days.
 * @param isKnown chains of orders that are all known otherwise are left at their numbers
 */
export function firstMargins(season: Season, isKnown: (order: number) => boolean = () => false): Margins {
  const plannedNumber = Float64Array.from(season.orders, order => order.number)
  const plannedDueWeek = Int32Array.from(season.orders, order => order.dueWeek)
  const isMany = season.orders.length > MANY_ORDERS
  for (const chain of orderChains(season)) {
    if (chain.every(isKnown)) continue
    const course = usualCourse(season, season.orders[chain[0]!]!.kinds[0]!.kind)
    if (!course) continue
    const days = daysToReady(course.steps)
    const sdWeeks = (days.meanDays * days.batchSdLog) / 7
    let wanted = 0
    let before = 0
    chain.forEach((o, place) => {
      const { number, sure, dueWeek, earliestWeek } = season.orders[o]!
      if (number <= 0) return
      wanted += number
      const factor = isMany
        ? roughFactor(course, wanted, sure, place + 1)
        : factorOf(course, rounded(wanted), sure, place + 1)
      const planned = Math.max(before, wanted * factor)
      plannedNumber[o] = planned - before
      before = planned
      plannedDueWeek[o] = Math.max(
        Math.min(dueWeek, Math.max(0, Math.min(earliestWeek, dueWeek - SET_ASIDE_WEEKS))),
        dueWeek - Math.round(TIME_PART * Math.max(0, normalQuantile(sure)) * sdWeeks),
      )
    })
  }
  return { plannedNumber, plannedDueWeek }
}

/** The next of 1, b, b² … */
const rounded = (wanted: number): number =>
  Math.max(1, Math.round(BUCKET ** Math.ceil(Math.log(wanted) / Math.log(BUCKET))))

/** The search takes long, and the next plan begins from the same rates. */
const factors = new Map<string, number>()
const MOST_FACTORS = 10_000

/** Mean number finished from the start that is needed, over the number wanted. */
function factorOf(course: Course, wanted: number, sure: number, ordersSoFar: number): number {
  const batches = Math.min(ordersSoFar, MOST_BATCHES)
  const shares = course.steps.map(({ alpha, beta }) => `${alpha}/${beta}`).join(' ')
  const name = `${shares} ${wanted} ${sure} ${batches}`
  const before = factors.get(name)
  if (before !== undefined) return before
  const steps = course.steps
    .filter(({ beta }) => beta > 0)
    .map(({ alpha, beta }) => ({ kind: 'uncertain', alpha, beta }) as const)
  const survival = steps.reduce((product, { alpha, beta }) => (product * alpha) / (alpha + beta), 1)
  const factor = steps.length === 0 ? 1 : (needed({ wanted, sure, steps, batches }).start * survival) / wanted
  if (factors.size >= MOST_FACTORS) factors.clear()
  factors.set(name, factor)
  return factor
}

/** The same from the mean and the variance of the share that survives alone. */
function roughFactor({ steps }: Course, wanted: number, sure: number, ordersSoFar: number): number {
  let mean = 1
  let square = 1
  for (const { alpha, beta } of steps) {
    if (beta <= 0) continue
    mean *= alpha / (alpha + beta)
    square *= 1 + beta / (alpha * (alpha + beta + 1))
  }
  if (mean >= 1) return 1
  const batches = Math.min(ordersSoFar, MOST_BATCHES)
  const variance = (mean ** 2 * (square - 1)) / batches + (mean ** 2 * (1 - mean)) / wanted
  const weight = Math.max(1, (mean * (1 - mean)) / variance - 1)
  return mean / Math.max(mean / 4, betaQuantile(1 - sure, mean * weight, (1 - mean) * weight))
}

/** The course of the way that makes the kind for the least material, in a week when it is open. */
function usualCourse(season: Season, kind: number): Course | undefined {
  let best: Course | undefined
  let least = Number.POSITIVE_INFINITY
  for (const way of season.ways) {
    if (way.kind !== kind) continue
    const week = way.open.indexOf(1)
    if (week < 0) continue
    const course = way.courses[way.courseOfWeek[week]!]!
    const cost =
      way.costPerPlant /
      Math.max(
        1e-9,
        course.ready.reduce((sum, share) => sum + share, 0),
      )
    if (cost < least) {
      least = cost
      best = course
    }
  }
  return best
}
