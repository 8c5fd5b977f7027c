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
  /** All that a simulation of it rests on beside the starts. */
  readonly says: string
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
  return {
    name: season.kinds[kinds[0]!]!.id,
    kinds,
    orders,
    season: part,
    isIdle,
    says: isIdle ? '' : fingerprint(part, isOwn),
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
    season.orders,
    season.batches.map(({ id, portions, onHold, finishedWeeksAgo, course }) => [
      id,
      portions,
      onHold,
      finishedWeeksAgo,
      course.steps.map(stepSaid),
      course.caliper,
    ]),
    ways.map(({ name, courses, courseOfWeek }) => [
      name,
      courses.map(({ steps, rootstock, caliper, material }) => [
        steps.map(stepSaid),
        rootstock,
        caliper,
        material,
      ]),
      courses.length > 1 ? [...courseOfWeek] : 0,
    ]),
    [...isOwn].map(kind => season.kinds[kind]!.usableWeeks),
    season.planted?.filter(({ pool }) => pools.has(pool)) ?? null,
    [...pools].map(pool => {
      const { perYear, stored, keepsWeeks, young, perWeek } = season.pools[pool]!
      return [
        perYear,
        stored,
        keepsWeeks,
        young !== null,
        perWeek.reduce((sum, most, w) => sum + most * (w + 1), 0),
      ]
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
]
