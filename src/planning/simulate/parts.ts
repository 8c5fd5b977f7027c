import type { Season } from '../season.ts'
import { componentsOf } from './components.ts'

/** Kinds of a season that share neither mothers nor rootstocks nor orders with others, as a season to simulate by itself. */
export interface Part {
  readonly name: string
  readonly kinds: readonly number[]
  /** Indices of its orders in the whole season. */
  readonly orders: readonly number[]
  readonly season: Season
  /** Nothing is asked of it and nothing stands. */
  readonly isIdle: boolean
  /** All that a simulation of it rests on beside the starts, and the same without its orders. */
  readonly says: string
  readonly rests: string
}

export const partsOf = (season: Season): readonly Part[] =>
  componentsOf(season).map(kinds => partOf(season, kinds))

function partOf(season: Season, kinds: readonly number[]): Part {
  const isOwn = new Set(kinds)
  const orders = season.orders.flatMap(({ kinds: accepted }, o) => (isOwn.has(accepted[0]!.kind) ? [o] : []))
  const part: Season = {
    ...season,
    orders: orders.map(o => season.orders[o]!),
    batches: season.batches.filter(({ kind }) => isOwn.has(kind)),
  }
  const isIdle = orders.length === 0 && part.batches.length === 0
  const rests = isIdle ? '' : fingerprint(part, isOwn)
  return {
    name: season.kinds[kinds[0]!]!.id,
    kinds,
    orders,
    season: part,
    isIdle,
    says: isIdle ? '' : `${JSON.stringify(part.orders)}\n${rests}`,
    rests,
  }
}

function fingerprint(season: Season, isOwn: ReadonlySet<number>): string {
  const ways = season.ways.filter(({ kind }) => isOwn.has(kind))
  const pools = new Set(
    ways.flatMap(way => way.courses.flatMap(({ material }) => material.map(({ pool }) => pool))),
  )
  return JSON.stringify([
    season.firstWeek,
    season.weeks,
    weighed(season.growing ?? []),
    season.batches.map(({ id, portions, onHold, finishedWeeksAgo, course, labour }) => [
      id,
      portions,
      onHold,
      finishedWeeksAgo,
      course.steps.map(stepSaid),
      course.caliper,
      labour.map(({ skill, minutes }) => [skill, weighed(minutes)]),
    ]),
    ways.map(({ name, courses, courseOfWeek }) => [
      name,
      courses.map(({ steps, rootstock, caliper, material, labour }) => [
        steps.map(stepSaid),
        rootstock,
        caliper,
        material,
        labour.map(({ skill, perPlant, perBatch }) => [skill, weighed(perPlant), weighed(perBatch)]),
      ]),
      courses.length > 1 ? [...courseOfWeek] : 0,
    ]),
    [...isOwn].map(kind => [season.kinds[kind]!.usableWeeks, season.kinds[kind]!.standsAt]),
    season.planted?.filter(({ pool }) => pools.has(pool)) ?? null,
    [...pools].map(pool => {
      const { perYear, stored, keepsWeeks, young, perWeek } = season.pools[pool]!
      return [perYear, stored, keepsWeeks, young !== null, weighed(perWeek)]
    }),
  ])
}

const stepSaid = (step: Season['ways'][number]['courses'][number]['steps'][number]) => [
  step.alpha,
  step.beta,
  step.yearShare,
  step.medianDays,
  step.sdLogDays,
  step.plantSdLogDays,
  step.place,
  step.squareMetresPerPlant,
]

/** One number for many: it changes with any of them. */
const weighed = (numbers: ArrayLike<number>): number => {
  let sum = 0
  for (let i = 0; i < numbers.length; i++) sum += numbers[i]! * (i + 1)
  return sum
}
